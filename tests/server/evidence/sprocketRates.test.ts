import { expect, test } from 'vitest';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import type { BuildEvidence, EvidenceRide } from '$lib/server/evidence/buildEvidence';
import { sprocketRates } from '$lib/server/evidence/sprocketRates';
import { cell, ride, slip } from './rides';

const COUNTING = { unit: 'slips', unreviewed: 'slip' } as const;
const build = (rides: EvidenceRide[]): BuildEvidence => ({
	buildId: 1,
	build: 'Old',
	wheels: [{ id: 1, name: 'Wheel 1', endM: 500_000 }],
	rides
});
const on = (sprocket: number | null, torqueBin: number, observedM: number) => ({
	...cell(torqueBin, observedM),
	gear: sprocket === null ? '1.90:1' : `40/${sprocket}`
});
const TEETH = [11, 13, 15, 17, 19, 21, 24, 28];

/** 60 rides over eight sprockets; the easy ones are ridden at high torque, where it slips more whatever the sprocket */
function drawn(timesAsOften: (teeth: number) => number, seed = 5): BuildEvidence {
	const draw = randomNumbers(seed);
	return build(
		Array.from({ length: 60 }, () => {
			const cells = TEETH.flatMap((teeth) => [
				on(teeth, 1, teeth < 19 ? 6_000 : 1_500),
				on(teeth, 7, teeth < 19 ? 500 : 4_000)
			]);
			const events = cells.flatMap(({ gear, torqueBin, observedM }) => {
				const rate = (torqueBin === 7 ? 4 : 0.5) * timesAsOften(Number(gear!.split('/')[1]));
				return Array.from({ length: draw.poisson((rate * observedM) / 100_000) }, (_, place) =>
					slip({ gear, torqueBin, startS: 100 + 50 * place })
				);
			});
			return ride({ cells, events });
		})
	);
}

test('Hardly a programme names a sprocket where slips go with torque alone', () => {
	let named = 0;
	for (let seed = 1; seed <= 60; seed++)
		if (
			sprocketRates(
				drawn(() => 1, seed),
				COUNTING
			).sprockets.some(({ standsOut }) => standsOut)
		)
			named++;
	// at most 5 % are wanted, 3 of 60; 8 or more would come once in a hundred times
	expect(named).toBeLessThan(8);
});

test('One sprocket that slips five times as often stands out, and no other does', () => {
	const { sprockets, confidence } = sprocketRates(
		drawn((teeth) => (teeth === 21 ? 5 : 1)),
		COUNTING
	);
	expect(confidence).toBeCloseTo(1 - 0.05 / 8, 12);
	expect(sprockets.map(({ teeth }) => teeth)).toEqual(TEETH);
	expect(sprockets.filter(({ standsOut }) => standsOut).map(({ teeth }) => teeth)).toEqual([21]);
	const worn = sprockets.find(({ teeth }) => teeth === 21)!;
	expect(worn.lower).toBeLessThan(5);
	expect(worn.upper!).toBeGreaterThan(5);
});

test('What has no teeth or no torque is left out and its share told; one sprocket alone is not set against any', () => {
	const one = sprocketRates(
		build([ride({ cells: [on(21, 5, 30_000), on(null, 5, 6_000), on(21, -1, 4_000)] })]),
		COUNTING
	);
	expect(one.sprockets).toEqual([]);
	expect(one.notKnownShare).toBeCloseTo(0.25, 12);
	expect(sprocketRates(build([]), COUNTING)).toMatchObject({ sprockets: [], notKnownShare: 0 });
});

test('A sprocket of a few hundred metres is not asked', () => {
	const cells = [on(19, 5, 20_000), on(21, 5, 20_000), on(24, 5, 400)];
	const { sprockets } = sprocketRates(build([ride({ cells })]), COUNTING);
	expect(sprockets.map(({ teeth }) => teeth)).toEqual([19, 21]);
	// no slip anywhere: no ratio, and no upper limit that could calm anybody
	expect(sprockets[0]).toMatchObject({ ratio: null, upper: null, standsOut: false });
});
