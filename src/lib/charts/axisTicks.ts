import { ticks } from 'd3';
import type { RideAxis } from './rideAxis';
import type { ChartFormats } from './strip';
import { timeTicks } from './timeTicks';

/**
 * Round places on the axis of a ride with their labels: times as the clock writes them, distances in km with
 * as many decimals as the step needs.
 *
 * @param span shown part of the axis, seconds or metres
 * @param most how many labels fit, >= 1
 * @example axisTicks(timeAxis(90), [0, 90], 4, formats) // 0:00, 0:30, 1:00, 1:30
 */
export function axisTicks(
	axis: Pick<RideAxis, 'kind' | 'zeroS'>,
	span: readonly [number, number],
	most: number,
	formats: Pick<ChartFormats, 'clock' | 'number'>
): { readonly place: number; readonly label: string }[] {
	if (axis.kind === 'time') {
		const zero = axis.zeroS ?? 0;
		return timeTicks([span[0] - zero, span[1] - zero], most).map((since) => ({
			place: zero + since,
			label: formats.clock(zero + since)
		}));
	}
	const placesM = ticks(span[0], span[1], Math.max(1, most - 1));
	const stepM = placesM.length > 1 ? placesM[1] - placesM[0] : 1000;
	const decimals = Math.max(0, Math.ceil(3 - Math.log10(stepM) - 1e-9));
	return placesM.map((place) => ({ place, label: `${formats.number(place / 1000, decimals)}\u00a0km` }));
}
