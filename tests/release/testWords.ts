import type { NumberWords, ReleaseCriteria, TestEvidence } from '$lib/release/criteria';

export const WORDS: NumberWords = {
	km: (metres) => `${Number((metres / 1000).toPrecision(4))} km`,
	kmSet: (metres) => `${Number((metres / 1000).toPrecision(4))} km`,
	set: String,
	number: (value, decimals = 0) => value.toFixed(decimals),
	figure: (value) => String(Number(value.toPrecision(2))),
	share: (value) => `${Math.round(value * 100)} %`
};

/** 3 wheels x 500 km without a slip show 2 per 1000 km at 95 %: 2.996 / 1.5 = 1.997 */
export const CRITERIA: ReleaseCriteria = {
	rateAtMostPerThousandKm: 2,
	confidence: 0.95,
	plan: { kind: 'fixed', observedMPerWheel: 500_000, slipsAllowed: 0 },
	wheels: 3,
	riders: 2,
	expectedRatioAtMost: 0.2,
	hardTorqueNm: 30,
	observedMAboveHardTorque: 20_000,
	observedMWet: 100_000,
	observedMDry: 300_000,
	plannedLifeM: 8_000_000,
	stopAtCrankDeg: 360
};

/** evidence with which every criterion holds */
export const GOOD: TestEvidence = {
	wheels: [
		{ name: 'Wheel 1', observedM: 1_600_000 },
		{ name: 'Wheel 2', observedM: 1_600_000 },
		{ name: 'Wheel 3', observedM: 1_600_000 }
	],
	riders: 3,
	confirmed: 0,
	unreviewed: 0,
	slipsAtObservedM: [],
	confirmedAtObservedM: [],
	lastThird: { slips: 0, confirmed: 0, observedM: 1_600_000 },
	notFound: { ridesWaiting: 0, factor: { upper: 1.25, put: 400, found: 340 } },
	expected: { ratioUpper: 0.15, confidence: 0.95, comparableShare: 0.8 },
	observedMAboveHardTorque: 25_000,
	observedMWet: 400_000,
	observedMDry: 4_000_000,
	wear: [{ name: 'tooth height', reachesLimitAtLeastM: 9_000_000 }],
	design: { frozen: true, handFittedParts: [], partsWithoutBatch: [] },
	benchCheck: 'recorded',
	openMarks: 0,
	openIncidents: 0,
	injuries: 0,
	largestConfirmedCrankDeg: 0,
	missingOnBuildSheet: []
};
