/**
 * Measures sizes, their limits and the kinds of events, and writes tests/bench/event-sizes-figures.md.
 *
 *   npx tsx tests/bench/eventSizes.ts            every set
 *   npx tsx tests/bench/eventSizes.ts --print    print only
 *
 * Only events that were found are measured: those that noise made larger are found more often, so sizes near the least
 * reported one look larger than they are.
 */
import { writeFileSync } from 'node:fs';
import { randomSlippingSpec } from '../../sample-rides/generator/randomSpecs';
import { recordLogger } from '../../sample-rides/generator/recordLogger';
import { simulateRide } from '../../sample-rides/generator/simulateRide';
import { quantile } from '../../src/lib/drivetrain/median';
import type { WithLimits } from '../../src/lib/slip/analysis';
import { analyseRide } from '../../src/lib/slip/analyseRide';
import { ANALYSIS_VERSION } from '../../src/lib/slip/analysisVersion';
import { labelledRides, type LabelledRide, type TrueEvent } from './training/labelledRides';
import { generatedRide } from './training/trainingRides';

const GENERATED_SEEDS = 60_000;
const GENERATED_RIDES = 40;
const LOGGER_SEEDS = 70_000;
const LOGGER_RIDES = 12;
/** a detection this near to a slip is that slip, s */
const TOLERANCE_S = 3;
/** a logger's clock is finer: its slips may follow each other within a second */
const LOGGER_TOLERANCE_S = 0.4;

interface Sizes {
	readonly ratio: number[];
	readonly within: number[];
	readonly torqueRatio: number[];
	readonly torqueWithin: number[];
	torqueNotKnown: number;
	readonly kinds: Map<string, number>;
}

function addRide(sizes: Sizes, { ride, bike, events }: LabelledRide): void {
	const tolerance = ride.format === 'logger-csv' ? LOGGER_TOLERANCE_S : TOLERANCE_S;
	const found = new Set(analyseRide(ride, bike).events);
	for (const truth of events) {
		const best = [...found]
			.filter(({ startS }) => startS >= truth.t0 - tolerance && startS <= truth.t1 + tolerance)
			.sort((a, b) => Math.abs(a.startS - truth.t0) - Math.abs(b.startS - truth.t0))[0];
		if (!best) continue;
		found.delete(best);
		count(sizes.kinds, `${wordOf(truth)}, called ${best.kind}`);
		if (truth.kind === 'chain skip') continue;
		const { value, lower, upper } = best.overrunCrankDeg;
		sizes.ratio.push(value / truth.crankDeg);
		sizes.within.push(lower <= truth.crankDeg && truth.crankDeg <= upper ? 1 : 0);
		addTorque(sizes, truth, best.hubTorqueNm);
	}
	for (const { kind } of found) count(sizes.kinds, `none, called ${kind}`);
}

/** The simulator's torque is a mean over half a second, the event's one over the last engaged seconds. */
function addTorque(sizes: Sizes, { hubTorqueNm }: TrueEvent, found: WithLimits | null): void {
	if (!hubTorqueNm) return;
	if (!found) {
		sizes.torqueNotKnown++;
		return;
	}
	sizes.torqueRatio.push(found.value / hubTorqueNm);
	sizes.torqueWithin.push(found.lower <= hubTorqueNm && hubTorqueNm <= found.upper ? 1 : 0);
}

const wordOf = ({ kind }: TrueEvent) => (kind === 'failed engagement' ? 'failed pick-up' : kind);

function spread(ratios: readonly number[]): string {
	return [0.1, 0.5, 0.9].map((share) => `p${100 * share} ${quantile(ratios, share).toFixed(2)}`).join(', ');
}

function held(within: readonly number[]): string {
	return `${within.reduce((sum, one) => sum + one, 0)} of ${within.length}`;
}

function count(kinds: Map<string, number>, key: string): void {
	kinds.set(key, (kinds.get(key) ?? 0) + 1);
}

function loggerRides(): LabelledRide[] {
	return Array.from({ length: LOGGER_RIDES }, (_, k) => {
		const any = randomSlippingSpec(LOGGER_SEEDS + k);
		const spec = { ...any, maxDurationS: 2400, road: { ...any.road, trainer: false } };
		const { motion, truth } = simulateRide(spec, LOGGER_SEEDS + k);
		const { chainrings, cassette, circumferenceM } = spec.bike;
		return {
			name: spec.name,
			group: '',
			ride: recordLogger(spec, motion, k),
			bike: { chainrings, cassette, circumferenceM },
			km: truth.km,
			events: truth.events
		};
	});
}

async function main(): Promise<void> {
	const root = new URL('../../', import.meta.url).pathname;
	const generated = Array.from({ length: GENERATED_RIDES }, (_, k) =>
		generatedRide(GENERATED_SEEDS + k, false)
	);
	const sets: [string, LabelledRide[]][] = [
		['Labelled rides, simulated', await labelledRides('simulated')],
		['Labelled rides, real, slips put in', await labelledRides('real')],
		['Labelled rides, logger', await labelledRides('logger')],
		['Example workshop', await labelledRides('sample-rides', root)],
		['Generated slipping rides', generated.filter((ride) => ride !== null)],
		['Generated logger tables', loggerRides()]
	];
	const lines = [
		`# Sizes and kinds of events, analysis version ${ANALYSIS_VERSION}`,
		'',
		'Written by `npx tsx tests/bench/eventSizes.ts`, of the events that were found. The 90 % limits should hold the true size of 90 in 100.',
		''
	];
	for (const [name, rides] of sets) {
		lines.push(`### ${name}`, '');
		if (rides.length === 0) lines.push('Skipped, the folder is not here.');
		const sizes: Sizes = {
			ratio: [],
			within: [],
			torqueRatio: [],
			torqueWithin: [],
			torqueNotKnown: 0,
			kinds: new Map()
		};
		for (const ride of rides) addRide(sizes, ride);
		lines.push(`- size found / true ${spread(sizes.ratio)}`);
		lines.push(`- true size within the limits: ${held(sizes.within)}`);
		if (sizes.torqueRatio.length > 0) {
			lines.push(`- hub torque found / true ${spread(sizes.torqueRatio)}`);
			lines.push(
				`- true torque within the limits: ${held(sizes.torqueWithin)}; not known ${sizes.torqueNotKnown}`
			);
		}
		for (const [kind, n] of [...sizes.kinds].sort((a, b) => b[1] - a[1])) lines.push(`- ${kind}: ${n}`);
		lines.push('');
	}
	console.log(lines.join('\n'));
	if (process.argv.includes('--print')) return;
	writeFileSync(new URL('./event-sizes-figures.md', import.meta.url).pathname, lines.join('\n'));
}

await main();
