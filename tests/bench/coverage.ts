import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { borrowableDispersion } from '$lib/reliability/borrowableDispersion';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { unitTotals } from '$lib/reliability/unitCounts';
import { widestCountedAgainstExpected } from '$lib/reliability/widestCountedAgainstExpected';
import { widestRateInterval } from '$lib/reliability/widestRateInterval';
import { widestRateRatio } from '$lib/reliability/widestRateRatio';
import { simulateProgramme, type Conditions } from './programmes/programme';
import { passedAtTarget } from './programmes/passing';
import { strataOf } from './programmes/strataOf';
import { trendAlarms } from './programmes/trendAlarms';

/*
 * How often 95 % limits hold the truth, in simulated programmes: a reference of 30 outings and about 40 events,
 * then a new build. Both on three hubs, on other loads. `npx tsx tests/bench/coverage.ts [programmes a cell]`
 * writes tests/bench/coverage-figures.md.
 */
const CONFIDENCE = 0.95;
const programmes = Number(process.argv[2] ?? 2000);

interface Tally {
	held: number;
	readonly widths: number[];
}
const COLUMNS = ['exact', 'alone', 'rate', 'reference', 'ratio', 'expected'] as const;
type Column = (typeof COLUMNS)[number];

function runCell(conditions: Conditions, firstSeed: number): Record<Column, Tally> {
	const tallies = Object.fromEntries(COLUMNS.map((c) => [c, { held: 0, widths: [] }])) as unknown as Record<
		Column,
		Tally
	>;
	const note = (column: Column, limits: { lower: number; upper: number }, truth: number) => {
		if (limits.lower <= truth && truth <= limits.upper) tallies[column].held++;
		tallies[column].widths.push((limits.upper - limits.lower) / truth);
	};
	for (let i = 0; i < programmes; i++) {
		const { reference, fresh } = simulateProgramme(firstSeed + i, conditions);
		const { count, exposure } = unitTotals(fresh.outings);
		const borrowed = borrowableDispersion(reference.outings);
		note('exact', poissonRateLimits(count, exposure, CONFIDENCE), fresh.rate);
		note('alone', widestRateInterval(fresh.outings, CONFIDENCE), fresh.rate);
		note('rate', widestRateInterval(fresh.outings, CONFIDENCE, borrowed), fresh.rate);
		note('reference', widestRateInterval(reference.outings, CONFIDENCE), reference.rate);
		const ratio = widestRateRatio(fresh.outings, reference.outings, CONFIDENCE);
		note('ratio', ratio, fresh.rate / reference.rate);
		const { strata, truth } = strataOf(reference, fresh);
		note(
			'expected',
			widestCountedAgainstExpected(strata, fresh.outings, reference.outings, CONFIDENCE),
			truth
		);
	}
	return tallies;
}

const lines: string[] = [];
const lowest = Object.fromEntries(COLUMNS.map((c) => [c, 1])) as Record<Column, number>;
let seed = 1;
const began = process.hrtime.bigint();
for (const clustering of ['single', 'bursts', 'outings'] as const)
	for (const hubSpread of [0, 0.7])
		for (const outings of [12, 40])
			for (const expectedEvents of [1, 4, 12, 40]) {
				const tallies = runCell({ clustering, hubSpread, outings, expectedEvents }, seed);
				seed += 1_000_003;
				const cells = COLUMNS.map((column) => {
					const { held, widths } = tallies[column];
					widths.sort((a, b) => a - b);
					lowest[column] = Math.min(lowest[column], held / programmes);
					const width = widths[widths.length >> 1];
					return `${((100 * held) / programmes).toFixed(1)} / ${width.toFixed(2)}`;
				});
				lines.push(
					`| ${clustering} | ${hubSpread} | ${outings} | ${expectedEvents} | ${cells.join(' | ')} |`
				);
				console.log(lines.at(-1));
			}
const passing: string[] = [];
for (const clustering of ['single', 'bursts', 'outings'] as const)
	for (const hubSpread of [0, 0.7])
		for (const allowed of [0, 1, 3]) {
			const shares = [false, true].map((told) =>
				passedAtTarget(clustering, hubSpread, allowed, told, programmes, (seed += 1_000_003))
			);
			const [single, told] = shares.map((share) => (100 * share).toFixed(1));
			passing.push(`| ${clustering} | ${hubSpread} | ${allowed} | ${single} | ${told} |`);
			console.log(passing.at(-1));
		}
const alarms: string[] = [];
for (const clustering of ['single', 'bursts', 'outings'] as const)
	for (const hubSpread of [0, 0.7])
		for (const expectedEvents of [12, 40]) {
			const conditions = { clustering, hubSpread, outings: 40, expectedEvents };
			const { single, scattered } = trendAlarms(conditions, programmes, (seed += 1_000_003));
			const shares = [single, scattered].map((share) => (100 * share).toFixed(1)).join(' | ');
			alarms.push(`| ${clustering} | ${hubSpread} | ${expectedEvents} | ${shares} |`);
			console.log(alarms.at(-1));
		}
const seconds = Number(process.hrtime.bigint() - began) / 1e9;
const low = COLUMNS.map((column) => (100 * lowest[column]).toFixed(1));
writeFileSync(
	new URL('coverage-figures.md', import.meta.url),
	`# How often the 95 % limits hold the truth

Measured by \`npx tsx tests/bench/coverage.ts ${programmes}\`: ${programmes} seeded programmes a cell, ${lines.length}
cells, ${seconds.toFixed(0)} s on one of ${cpus().length} cores. Each cell reads: covered in % / median width as a multiple of the truth.
One standard error of a coverage near 95 % is ${(100 * Math.sqrt((0.95 * 0.05) / programmes)).toFixed(1)} %.

A programme: a reference build (30 outings, 40 events expected), then a new build, each on three hubs; loads in
four bands, the new build ridden more gently. \`single\`: events come singly. \`bursts\`: 2.5 at a time on average
(geometric). \`outings\`: good and bad outings (rates of single outings spread with a coefficient of variation of
1). Hub spread: coefficient of variation of the rate between hubs. The truth is the rate of THESE hubs; three hubs
say next to nothing about others.

- exact: Poisson limits of the new build's rate, as if events came singly
- alone: THE interval of the rate without a borrowed dispersion (below 20 events it is marked "assumes that events
  do not cluster")
- rate: THE interval with the reference's dispersion borrowed
- reference: THE interval of the reference, from its own scatter
- ratio: THE interval of new rate / reference rate
- expected: THE interval of counted / expected over the four load bands

| events come | hub spread | outings | expected events | exact | alone | rate | reference | ratio | expected |
| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |
${lines.join('\n')}
| **lowest** | | | | **${low.join('** | **')}** |

# How often a fixed plan is passed at exactly the target rate

A plan of 90 % confidence may be passed by 10 %. \`for single\`: made as if events came singly. \`told\`: made with the
true variance / mean. 24 outings on three hubs; with a hub spread the target holds on average over hubs, and three
hubs that happen to be good ones pass: only more hubs help.

| events come | hub spread | allowed | for single | told |
| --- | --- | --- | --- | --- |
${passing.join('\n')}

# How often a trend is told although there is none

\`trendOfRate\` at 95 % may tell one in 5 % of programmes whose rates do not change with age. 40 outings on three hubs;
below five events none is told. \`single\`: events taken for single. \`scatter\`: with the dispersion of the outings.

| events come | hub spread | expected events | single | scatter |
| --- | --- | --- | --- | --- |
${alarms.join('\n')}
`
);
console.log(`lowest: ${COLUMNS.map((c, i) => `${c} ${low[i]}`).join(', ')}; ${seconds.toFixed(0)} s`);
