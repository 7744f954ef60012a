import type { ReportView } from '$lib/server';
import { againstWords } from '$lib/ui/againstWords';
import type { Formats } from '$lib/ui/formats';

const DECIDED = {
	released: "Released by this workshop's criteria",
	'not released': 'Not released',
	continue: 'The test goes on'
} as const;

/** before anybody signed */
const STANDS = {
	'all hold': 'Every criterion holds; it is for an owner to decide.',
	'not yet': 'Not every criterion holds yet: the test goes on.',
	stopped: 'A criterion fails or is out of reach: the build does not pass by these criteria.'
} as const;

/** What the rides say of the two builds, and how the new one stands against its criteria: a sentence or two each. */
export function answerWords(view: ReportView, formats: Formats): { rides: string; release: string } {
	const [reference, build] = view.told.builds;
	const rides = againstWords(
		view.told.against[0],
		{
			build: build.name,
			reference: reference.name,
			buildObservedM: build.observedM,
			referenceObservedM: reference.observedM,
			referenceUnreviewed: reference.unreviewed,
			referenceConfirmed: reference.best.pooled.count,
			buildUnreviewed: build.unreviewed
		},
		formats
	);
	return { rides, release: releaseWords(view.release, view.after.name, formats) };
}

function releaseWords(
	{ criteria, decisions }: ReportView['release'],
	build: string,
	formats: Formats
): string {
	const [last] = decisions;
	if (!criteria)
		return `No criteria were set for ${build}, so this report cannot say whether it may go into production.`;
	const asked = criteria.states.length;
	const hold = criteria.states.filter(({ state }) => state === 'holds').length;
	const tally =
		hold === asked
			? `all ${formats.number(asked)} criteria hold`
			: `${formats.number(hold)} of ${formats.number(asked)} criteria hold`;
	if (!last) return `${STANDS[criteria.state]} ${tally.charAt(0).toUpperCase()}${tally.slice(1)}.`;
	const ends = criteria.state === 'stopped' ? ', and one of them fails or is out of reach' : '';
	return `${DECIDED[last.decision]}: signed by an owner of the workshop on ${formats.dateTime(last.at)}. As the rides stand now, ${tally}${ends}.`;
}

/** The last word of a signed decision. */
export function decisionWords(decision: keyof typeof DECIDED): string {
	return DECIDED[decision];
}
