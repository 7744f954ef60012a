import type { ReportView } from '$lib/server';
import { REFERENCE_SLIP_CRANK_DEG } from '$lib/slip/analysis';
import { LEAST_REPORTED_DEG } from '$lib/slip/reportLimits';
import { countedNoun } from '$lib/ui/countedNoun';
import { expectedFalseAlarms } from '$lib/ui/expectedFalseAlarms';
import { falseAlarmWords } from '$lib/ui/falseAlarmWords';
import { feltWords } from '$lib/ui/feltWords';
import type { Formats } from '$lib/ui/formats';
import type { FoundOnObserved } from './foundOnObserved';

/** with fewer wheels nothing is known of how far hubs of one build differ */
const WHEELS_FOR_SPREAD = 5;

/** What the rides of this report did not show, with its figures, one sentence a point. */
export function notShownWords(
	view: ReportView,
	found: readonly FoundOnObserved[],
	formats: Formats
): string[] {
	return [
		...unobserved(view, formats),
		...notCompared(view, formats),
		torque(view, formats),
		...fewWheels(view, formats),
		...riders(view),
		`A slip of fewer than ${REFERENCE_SLIP_CRANK_DEG} crank degrees is in no rate here, and below ${LEAST_REPORTED_DEG} crank degrees nothing is reported: roads and sensors make as much without a slip. ${promise(found)}`,
		falseAlarms(view, formats),
		...felt(view, formats),
		...reported(view, formats),
		`Where ${view.before.name} came in because it slipped, its rate tells of worn hardware, not of a new part. A low rate on these kilometres does not show that it stays low on later ones.`,
		'Not looked for: failure to disengage, drag, a ring that creeps in the shell, cracks.'
	];
}

function promise(found: readonly FoundOnObserved[]): string {
	const aim = `"Observed" aims at finding 90 % of slips of ${REFERENCE_SLIP_CRANK_DEG} crank degrees and more, on all such kilometres together`;
	return found.length === 0
		? `${aim}.`
		: `${aim}; on test rides whose slips are known found were ${found.map(({ rides, found: share }) => `${plainShare(share)} in ${plainSet(rides)}`).join(' and ')}.`;
}

/** "3/4 = 75 %" as "3 of 4 (75 %)". */
function plainShare(found: string): string {
	return found.replace(/(\d+)\/(\d+) = (\d+) %/, '$1 of $2 ($3\u00a0%)');
}

/** The benchmark's name of a set for a reader who knows neither its folders nor how it is trained. */
function plainSet(name: string): string {
	const plain = name
		.replace(' (sample-rides)', '')
		.replace('seeds that no training uses', 'none of which it has learned from');
	return `"${plain}"`;
}

/** How often it is wrong and what that does to ratios; said once where nothing is known. */
function falseAlarms({ falseAlarms: { pooled }, told }: ReportView, formats: Formats): string {
	const often = falseAlarmWords(pooled, formats);
	return pooled.ratePerThousandKm === null
		? `${often} False alarms pull any ratio towards 1.`
		: `${often} ${expectedFalseAlarms(pooled, told.builds, formats)}`;
}

function unobserved({ before, after }: ReportView, formats: Formats): string[] {
	return [before, after].map(({ name, totalM, observedM }) =>
		totalM > 0
			? `Of the ${formats.km(totalM)} that count for ${name}, ${formats.km(Math.max(0, totalM - observedM))} (${formats.share(Math.max(0, totalM - observedM) / totalM)}) could not have shown a slip of the reference size; nothing is said of them.`
			: `No ride counts for ${name}.`
	);
}

function notCompared({ told, before, after }: ReportView, formats: Formats): string[] {
	const { expected } = told.against[0].decides;
	if (expected.notComparedM <= 0) return [];
	const slips =
		expected.slipsNotCompared > 0
			? ` ${formats.number(expected.slipsNotCompared)} of the ${countedNoun(2, told.builds[1].unreviewed)} of ${after.name} lie there.`
			: '';
	const named = expected.leftOut.reduce((sum, { observedM }) => sum + observedM, 0);
	const others = expected.notComparedM - named >= 100 ? ' and others like it' : '';
	return [
		`${formats.km(expected.notComparedM)} of the ${formats.km(expected.comparedM + expected.notComparedM)} observed on ${after.name} could not be set against ${before.name}, which was hardly ridden at that torque and age: ${expected.leftOut.map(({ torque: group, observedM }) => `${group} (${formats.km(observedM)})`).join(', ')}${others}.${slips}`
	];
}

function torque({ told, coverage, before, after }: ReportView, formats: Formats): string {
	const unreviewed = told.policy.shown === 'found' ? told.builds[0].unreviewed : 0;
	if (coverage.fromNm === null || coverage.highestNm === null)
		return `Nothing that counts on ${before.name} has a known hub torque, so it cannot be said whether ${after.name} was ridden as hard.`;
	const unknown =
		coverage.slipsWithoutTorque > 0
			? ` Of ${formats.number(coverage.slipsWithoutTorque)} of its ${countedNoun(2, unreviewed)} the torque is not known.`
			: '';
	const highest =
		coverage.highestNm === coverage.fromNm
			? ''
			: `, ${some(coverage.aboveHighestM, formats)} of it from ${formats.number(coverage.highestNm)}\u00a0Nm on, where those at the highest torque lie`;
	return `${before.name} ${unreviewed > 0 ? 'has events that count' : 'slipped'} from ${formats.number(coverage.fromNm)}\u00a0Nm mean hub torque on (lower edge of its group of torque); ${after.name} was observed on ${some(coverage.aboveM, formats)} there${highest}.${unknown} Above what was ridden nothing is known.`;
}

function some(metres: number, formats: Formats): string {
	return metres > 0 ? formats.km(metres) : 'no distance';
}

function fewWheels({ told }: ReportView, formats: Formats): string[] {
	const few = told.builds
		.map(({ name, worst }) => ({ name, count: worst.wheels.length }))
		.filter(({ count }) => count < WHEELS_FOR_SPREAD);
	if (few.length === 0) return [];
	const each = few.map(
		({ name, count }) =>
			`${name} on ${count === 0 ? 'no wheel' : count === 1 ? 'one wheel' : `${formats.number(count)} wheels`}`
	);
	return [
		`Ridden were ${each.join(' and ')}: how far hubs of one build differ from each other is not known from so few.`
	];
}

/** Torque and age are held, riders are not: who rode what decides how much of a difference may be theirs. */
function riders({ rides: { riders: both, ridersTogether } }: ReportView): string[] {
	const alone = both.filter(({ named, without }) => named === 1 && without === 0);
	const [before, after] = both;
	const shared = before.named + after.named - ridersTogether;
	return [
		...(alone.length === 0
			? []
			: [
					`By one rider only ${alone.length === 1 ? 'was' : 'were'} ridden ${alone.map(({ build }) => build).join(' and ')}: how other riders press is not known.`
				]),
		...(before.named > 0 && after.named > 0 && shared === 0
			? ['No rider is named on rides of both, so a difference between the builds may be one between riders.']
			: [])
	];
}

/** Only of builds whose riders said that laps mean slips: the others are told of on the page. */
function felt({ told }: ReportView, formats: Formats): string[] {
	return told.builds
		.filter(({ feltAndFound }) => feltAndFound !== null)
		.map(
			({ name, feltAndFound }) => `Felt and found on ${name}: ${feltWords(feltAndFound, formats).join(' ')}`
		);
}

function reported({ before, after }: ReportView, formats: Formats): string[] {
	return [before, after]
		.filter(({ incidents }) => incidents.counted > 0)
		.map(({ name, incidents }) => {
			const open = incidents.open > 0 ? `, ${formats.number(incidents.open)} of them still open` : '';
			const harmed =
				incidents.harmed > 0 ? `, ${formats.number(incidents.harmed)} with a fall or injury` : '';
			return `Reported of ${name} without a ride file: ${formats.number(incidents.counted)} ${incidents.counted === 1 ? 'slip' : 'slips'}${open}${harmed}. Such reports are in no rate.`;
		});
}
