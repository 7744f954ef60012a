import type { FineLines } from './fineLines';
import type { Levels } from './minMaxLevels';

/**
 * The gained angle between whole seconds: what a second gained is laid out within it as the logger saw crank and
 * wheel part, so that the step of a slip stands where the slip was. At the end of each second it is what the
 * analysis counted.
 *
 * @param counted gained angle, hub degrees: value i is reached when second i ends
 * @param fine crank and engaged cadence at the logger's own rate
 * @param window shown seconds [from, to]
 * @returns null where the logger's lines do not say both
 */
export function fineGained(
	counted: Float32Array,
	{ cadenceRpm, engagedCadenceRpm, groupS }: FineLines,
	window: readonly [number, number]
): Levels | null {
	if (!cadenceRpm || !engagedCadenceRpm || groupS > 0.5) return null;
	const fromS = Math.max(0, Math.floor(window[0]) - 1);
	const seconds = Math.min(counted.length, Math.ceil(window[1]) + 2) - fromS;
	// as many places in each second as it has groups
	const places = Math.max(1, Math.round(1 / groupS));
	const values = new Float32Array(Math.max(0, seconds) * places).fill(NaN);
	const ahead = new Float64Array(places);
	for (let second = 0; second < seconds; second++) {
		const end = counted[fromS + second];
		const start = counted[fromS + second - 1] ?? end;
		let sum = 0;
		for (let place = 0; place < places; place++) {
			const lead = leadAt(cadenceRpm, engagedCadenceRpm, fromS + second + (place + 0.5) / places);
			// what gains while the angle rises, what loses while it falls
			ahead[place] = Math.max(0, end >= start ? lead : -lead) || 0;
			sum += ahead[place];
		}
		let reached = 0;
		for (let place = 0; place < places; place++) {
			reached += sum > 0 ? ahead[place] / sum : 1 / places;
			values[second * places + place] = start + (end - start) * reached;
		}
	}
	// each value is reached when its place ends
	return { stepS: 1 / places, fromS: fromS + 1 / places, levels: [{ size: 1, low: values, high: values }] };
}

/** rpm by which the crank is ahead at an instant */
function leadAt(crank: Levels, engaged: Levels, timeS: number): number {
	return middleAt(crank, timeS) - middleAt(engaged, timeS);
}

function middleAt({ stepS, fromS = 0, levels: [{ size, low, high }] }: Levels, timeS: number): number {
	const group = Math.floor((timeS - fromS) / (size * stepS));
	return (low[group] + high[group]) / 2;
}
