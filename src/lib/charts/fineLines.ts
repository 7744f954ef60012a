import type { Levels } from './minMaxLevels';
import type { RideTraces } from './readChannels';

/** What a logger saw of a stretch at its own rate, as strips draw it; a line that it did not record is left out. */
export interface FineLines {
	/** seconds that the lines cover */
	readonly coversS: readonly [number, number];
	/** seconds of one group of values: finer is better */
	readonly groupS: number;
	readonly cadenceRpm?: Levels;
	readonly engagedCadenceRpm?: Levels;
	readonly speedKmh?: Levels;
	/** at each instant, not the mean of a turn */
	readonly crankTorqueNm?: Levels;
}

const LINES = {
	cadenceRpm: ['crankRpm', 1],
	engagedCadenceRpm: ['engagedRpm', 1],
	speedKmh: ['wheelMps', 3.6],
	crankTorqueNm: ['crankTorqueNm', 1]
} as const;

/**
 * Reads the answer for a stretch: of each line the lowest and highest values of its groups.
 *
 * @returns null when the stretch holds nothing
 */
export function fineLines({ length, traces, facts }: RideTraces): FineLines | null {
	const { sampleS, size, fromS } = facts as { sampleS: number; size: number; fromS: number };
	if (length === 0) return null;
	const groupS = size * sampleS;
	const line = (name: string, factor: number): Levels | undefined => {
		const [low, high] = [traces[`${name}.low`], traces[`${name}.high`]].map((values) =>
			factor === 1 ? values : values?.map((value) => value * factor)
		);
		return low && high && { stepS: sampleS, fromS, levels: [{ size, low, high }] };
	};
	return {
		coversS: [fromS, fromS + length * groupS],
		groupS,
		...Object.fromEntries(
			Object.entries(LINES).flatMap(([name, [stored, factor]]) => {
				const levels = line(stored, factor);
				return levels ? [[name, levels]] : [];
			})
		)
	};
}
