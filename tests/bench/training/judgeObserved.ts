import { REFERENCE_SLIP_CRANK_DEG } from '../../../src/lib/slip/analysis';
import { treeLogOdds } from '../../../src/lib/slip/model/treeModel';
import { learnObserved, type Trial } from './learnObserved';
import type { TrainingPart } from './trainingRides';

/** A slip with what is needed to judge by rides left out. */
export interface JudgedTrial extends Trial {
	readonly fold: number;
	readonly origin: string;
	/** a slip of the ride's own, not put in to probe */
	readonly labelled: boolean;
}

export interface Promise90 {
	readonly least: number;
	/** share of the distance observed, by origin; NaN for generated rides, which are no sample of anything */
	readonly share: Readonly<Record<string, number>>;
	/** of the slips of 90 degrees and more on observed seconds: found, all */
	readonly kept: Readonly<Record<string, readonly [number, number]>>;
}

const LEAST = Array.from({ length: 13 }, (_, i) => -0.5 + 0.25 * i);

/**
 * What share of the distance is observed, and how many of the large slips there are found, at a row of limits; each
 * ride judged by an observation model that saw neither it nor its device, on slips found by such a detector.
 *
 * @param rides rides as labelled with their fold
 */
export function judgeObserved(
	trials: readonly JudgedTrial[],
	rides: readonly { part: TrainingPart; fold: number }[],
	trees: number,
	seed: number
): Promise90[] {
	const folds = [...new Set(trials.map((trial) => trial.fold))];
	const models = new Map(
		folds.map((fold) => [
			fold,
			learnObserved(
				trials.filter((trial) => trial.fold !== fold),
				trees,
				seed,
				0
			)
		])
	);
	const large = trials
		.filter((trial) => trial.crankDeg >= REFERENCE_SLIP_CRANK_DEG)
		.map((trial) => ({ trial, logOdds: treeLogOdds(models.get(trial.fold)!, trial.features) }));
	const along = rides.map(({ part, fold }) => ({
		part,
		logOdds: part.observation.along.map((row) => treeLogOdds(models.get(fold)!, row))
	}));
	return LEAST.map((least) => {
		const share: Record<string, number> = {};
		const kept: Record<string, [number, number]> = {};
		for (const origin of ['simulated', 'real']) {
			let seen = 0;
			let total = 0;
			for (const { part, logOdds } of along) {
				if (part.origin !== origin) continue;
				total += part.observation.totalM;
				logOdds.forEach((value, i) => (seen += value >= least ? part.observation.alongM[i] : 0));
			}
			share[origin] = seen / total;
		}
		for (const { trial, logOdds } of large) {
			if (logOdds < least) continue;
			const name = `${trial.origin}${trial.labelled ? '' : ', probes'}`;
			const count = (kept[name] ??= [0, 0]);
			count[0] += trial.found ? 1 : 0;
			count[1]++;
		}
		return { least, share, kept };
	});
}

/**
 * Smallest limit from which on the wanted share of large slips on observed seconds is found, labelled ones and probes
 * together, on simulated and on real rides alike; the largest limit of the row where none is enough.
 */
export function chooseLimit(rows: readonly Promise90[], wanted: number): number {
	const keeps = ({ kept }: Promise90) =>
		['simulated', 'real'].every((origin) => {
			const [hit, all] = [origin, `${origin}, probes`].reduce(
				(sum, name) => [sum[0] + (kept[name]?.[0] ?? 0), sum[1] + (kept[name]?.[1] ?? 0)],
				[0, 0]
			);
			return all === 0 || hit >= wanted * all;
		});
	return (rows.find(keeps) ?? rows[rows.length - 1]).least;
}

/** Lines of a table of them. */
export function promiseTable(rows: readonly Promise90[], inUse: number): string[] {
	const names = ['simulated', 'simulated, probes', 'real', 'real, probes', 'generated', 'generated, probes'];
	const percent = (hit: number, all: number) => (all > 0 ? `${((100 * hit) / all).toFixed(0)} %` : '');
	const lines = [
		`| limit | ${['simulated', 'real'].map((name) => `${name} observed`).join(' | ')} | ${names.map((name) => `${name}: found`).join(' | ')} |`,
		`|${'---|'.repeat(names.length + 3)}`
	];
	for (const { least, share, kept } of rows) {
		const cells = names.map((name) => {
			const [hit, all] = kept[name] ?? [0, 0];
			return `${hit}/${all} = ${percent(hit, all)}`;
		});
		const mark = Math.abs(least - inUse) < 1e-9 ? ' (in use)' : '';
		lines.push(
			`| ${least.toFixed(2)}${mark} | ${percent(share.simulated, 1)} | ${percent(share.real, 1)} | ${cells.join(' | ')} |`
		);
	}
	return lines;
}
