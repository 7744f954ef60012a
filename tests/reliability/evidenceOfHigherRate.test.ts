import { describe, expect, it } from 'vitest';
import { evidenceOfHigherRate } from '$lib/reliability/evidenceOfHigherRate';
import { randomNumbers } from '$lib/reliability/randomNumbers';

/** Events of a programme whose rate changes once, up to the end of it. */
function drawnEvents(
	next: () => number,
	rates: [before: number, after: number],
	changeAt: number,
	end: number
) {
	const events: number[] = [];
	for (let at = 0; ;) {
		const rate = at < changeAt ? rates[0] : rates[1];
		const wait = -Math.log(1 - next()) / rate;
		// what has not come before the change is drawn anew from there
		const changes = at < changeAt && at + wait >= changeAt;
		at = changes ? changeAt : at + wait;
		if (at > end) return events;
		if (!changes) events.push(at);
	}
}

describe('evidenceOfHigherRate', () => {
	it('gives the mixture of likelihood ratios of 1.5 to 64 times the limit', () => {
		const { strongest, alarmAt } = evidenceOfHigherRate([0.1, 0.2, 0.3, 0.4], 1, 1, 0.05);
		const ratio = (times: number) => times ** 4 * Math.exp(-(times - 1) * 0.4);
		// only the one that began at 0 has seen events: weight 1/2; the later ones stand at 1 and weigh 1/2 together
		const mean = [1.5, 2, 4, 16, 64].map(ratio).reduce((sum, one) => sum + one, 0) / 5;
		expect(strongest).toBeCloseTo(mean / 2 + 1 / 2, 9);
		expect(alarmAt).toBe(0.4);
	});

	it('is 1 without events, and an alarm stays whatever is watched afterwards', () => {
		expect(evidenceOfHigherRate([], 50, 1, 0.05)).toEqual({ strongest: 1, alarmAt: null });
		const burst = [0.1, 0.2, 0.3, 0.4, 0.5];
		expect(evidenceOfHigherRate(burst, 1000, 1, 0.05).alarmAt).toBe(0.4);
	});

	it('takes events at one exposure as several events', () => {
		expect(evidenceOfHigherRate([0.1, 0.1, 0.1, 0.1], 1, 1, 0.05).alarmAt).toBe(0.1);
	});

	it('refuses events that fall or lie beyond the exposure, and a chance that is none', () => {
		expect(() => evidenceOfHigherRate([2, 1], 3, 1, 0.05)).toThrow(RangeError);
		expect(() => evidenceOfHigherRate([4], 3, 1, 0.05)).toThrow(RangeError);
		expect(() => evidenceOfHigherRate([], 3, 0, 0.05)).toThrow(RangeError);
		expect(() => evidenceOfHigherRate([], 3, 1, 1)).toThrow(RangeError);
	});

	it('alarms in at most 5 % of 2,000 programmes at the limit, looked at after every event', () => {
		const draw = randomNumbers(71);
		let alarms = 0;
		for (let programme = 0; programme < 2000; programme++) {
			const events = drawnEvents(() => draw.next(), [1, 1], 0, 40);
			if (evidenceOfHigherRate(events, 40, 1, 0.05).alarmAt !== null) alarms++;
		}
		expect(alarms / 2000).toBeLessThanOrEqual(0.05);
	});

	it('finds a rate of four times the limit nearly always, also one that rises after a long good time', () => {
		const draw = randomNumbers(72);
		const found = (rates: [number, number], changeAt: number) => {
			let alarms = 0;
			for (let programme = 0; programme < 300; programme++) {
				const events = drawnEvents(() => draw.next(), rates, changeAt, changeAt + 10);
				const { alarmAt } = evidenceOfHigherRate(events, changeAt + 10, 1, 0.05);
				if (alarmAt !== null && alarmAt >= changeAt) alarms++;
			}
			return alarms / 300;
		};
		expect(found([4, 4], 0)).toBeGreaterThan(0.98);
		// thirty times the exposure of one allowed event went well before
		expect(found([0.2, 4], 30)).toBeGreaterThan(0.95);
	});
});
