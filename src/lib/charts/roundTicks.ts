import { ticks } from 'd3';
import type { LinearScale } from './linearScale';
import type { ChartFormats } from './strip';
import { toTenth } from './toTenth';

/** A place on an axis, in pixels, and what is written there. */
export interface Tick {
	readonly at: number;
	readonly label: string;
}

/** Pixels that a label along the lower axis takes with the room beside it. */
const LABEL = 90;

/**
 * Round values of a scale, all with the decimals that their step needs.
 *
 * @param count about how many
 * @param unit what is written is the value divided by it: 1000 for kilometres of metres
 * @example roundTicks(linearScale([0, 1], [100, 0]), 2, formats) // labels 0.0, 0.5, 1.0
 */
export function roundTicks(
	scale: LinearScale,
	count: number,
	formats: Pick<ChartFormats, 'number'>,
	unit = 1
): Tick[] {
	const [from, to] = scale.domain;
	const values = ticks(from / unit, to / unit, count);
	const step = values.length > 1 ? values[1] - values[0] : 1;
	const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
	return values.map((value) => ({
		at: toTenth(scale(value * unit)),
		label: formats.number(value, decimals)
	}));
}

/** The same along the lower axis: as many as have room, three at least. */
export function ticksAcross(scale: LinearScale, formats: Pick<ChartFormats, 'number'>, unit = 1): Tick[] {
	return roundTicks(scale, Math.max(3, Math.floor((scale.range[1] - scale.range[0]) / LABEL)), formats, unit);
}
