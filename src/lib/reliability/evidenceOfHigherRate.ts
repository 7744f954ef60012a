import { checkExposure, checkPositive } from './checks';

/** Rates that are weighed against the limit, as multiples of it. */
const TIMES = [1.5, 2, 4, 16, 64] as const;

export interface HigherRateEvidence {
	/** largest weight of the evidence so far; 1 = none. Under a rate at the limit it ever reaches 20 with a chance of at most 1 in 20 */
	readonly strongest: number;
	/** exposure at which it first reached 1 / falseAlarmChance; null = it never did */
	readonly alarmAt: number | null;
}

/**
 * Whether a rate lies above a limit, or came to lie above it at some time, looked at as often as one likes. Likelihood
 * ratios of 1.5 to 64 times the limit against the limit, begun anew each time the exposure has grown by 1 / limit,
 * are mixed with fixed weights 1 / (j (j + 1)): so a long good time does not hide a bad one after it. While the rate
 * is at most the limit the mixture is a supermartingale that starts at 1, so the chance that it EVER reaches
 * 1 / falseAlarmChance is at most falseAlarmChance. Events are taken for single ones.
 *
 * @param eventsAt exposures at which events came, in rising order, at most `exposure`
 * @param exposure watched so far
 * @param limit rate that must not be exceeded, per unit of exposure, > 0
 * @param falseAlarmChance over all looks, 0 to 1
 * @returns once it has sounded the alarm stays, whatever exposure follows
 * @example evidenceOfHigherRate([0.1, 0.2, 0.3, 0.4], 1, 1, 0.05).alarmAt // 0.4: the fourth event where 0.4 would be
 * Source: Wald 1947, Sequential Analysis (likelihood ratio); Robbins 1970, Ann. Math. Statist. 41:1397 (mixtures);
 * Ville 1939 (the inequality). The restarts and the multiples: common practice, no source.
 */
export function evidenceOfHigherRate(
	eventsAt: readonly number[],
	exposure: number,
	limit: number,
	falseAlarmChance: number
): HigherRateEvidence {
	checkExposure('exposure', exposure);
	checkPositive('limit', limit);
	if (!(falseAlarmChance > 0 && falseAlarmChance < 1))
		throw new RangeError(`falseAlarmChance must lie between 0 and 1; it is ${falseAlarmChance}`);
	let strongest = 1;
	let alarmAt: number | null = null;
	// between events the evidence only falls: it has to be looked at where they come
	eventsAt.forEach((at, index) => {
		if (!(at >= (eventsAt[index - 1] ?? 0) && at <= exposure))
			throw new RangeError(`events must rise within the exposure; one is at ${at}`);
		const weight = mixture(eventsAt.slice(0, index + 1), at, limit);
		strongest = Math.max(strongest, weight);
		if (alarmAt === null && weight >= 1 / falseAlarmChance) alarmAt = at;
	});
	return { strongest, alarmAt };
}

/** the mixture just after the last of these events */
function mixture(eventsAt: readonly number[], at: number, limit: number): number {
	const block = 1 / limit;
	let begun = 0;
	let sum = 0;
	for (let start = 0; start === 0 || start < at; start = begun * block) {
		const count = eventsAt.length - firstFrom(eventsAt, start);
		const expected = limit * (at - start);
		const ratio =
			TIMES.reduce((total, times) => total + Math.exp(count * Math.log(times) - (times - 1) * expected), 0) /
			TIMES.length;
		begun++;
		sum += ratio / (begun * (begun + 1));
	}
	// those that begin later stand at 1 each: their weights add up to 1 / (begun + 1)
	return sum + 1 / (begun + 1);
}

function firstFrom(eventsAt: readonly number[], start: number): number {
	let [low, high] = [0, eventsAt.length];
	while (low < high) {
		const middle = (low + high) >> 1;
		if (eventsAt[middle] >= start) high = middle;
		else low = middle + 1;
	}
	return low;
}
