import type { CriteriaVersion } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

/** The criteria of one version as sentences, in the order in which they are judged. */
export function criteriaWords(
	{ criteria }: Pick<CriteriaVersion, 'criteria'>,
	reference: string | null,
	formats: Formats
): string[] {
	const { plan } = criteria;
	const counted = (count: number, one: string, several: string) =>
		`${formats.number(count)} ${count === 1 ? one : several}`;
	const rate = `fewer than ${formats.set(criteria.rateAtMostPerThousandKm)} slips per 1000 observed km at ${formats.share(criteria.confidence)} confidence`;
	const how =
		plan.kind === 'fixed'
			? `${formats.kmSet(plan.observedMPerWheel)} observed on each of ${counted(criteria.wheels, 'wheel', 'wheels')}, ${plan.slipsAllowed === 0 ? 'no slip allowed' : `at most ${counted(plan.slipsAllowed, 'slip', 'slips')}`}`
			: `a plan that may end early: a build with ${formats.set(plan.goodPerThousandKm)} per 1000 km fails with a risk of ${formats.share(plan.riskOfFailingGood)}, the test ends at ${formats.kmSet(plan.longestObservedM)}; at least ${counted(criteria.wheels, 'wheel', 'wheels')}`;
	const optional = [
		criteria.expectedRatioAtMost === null
			? null
			: `At most ${formats.set(criteria.expectedRatioAtMost)} times the slips that ${reference ?? 'the old build'} would have had at the same torque and age, upper limit.`,
		criteria.plannedLifeM === null
			? null
			: `Measured wear stays within its limits up to ${formats.kmSet(criteria.plannedLifeM)}.`
	];
	return [
		`Stop at once: a crash, an injury, or a confirmed slip of ${formats.number(criteria.stopAtCrankDeg)} crank degrees or more.`,
		`The rate: ${rate}, by ${how}.`,
		`At least ${counted(criteria.riders, 'rider', 'riders')}.`,
		riddenWords(criteria, formats),
		...optional.filter((line) => line !== null),
		'The last third of the distance keeps the rate by itself, and the whole keeps it also with the slips that these rides would not have shown; the design is frozen, of parts as produced; a bench check, every event reviewed, every rider mark answered, no open incident, a complete build sheet.'
	];
}

/** How it has to be ridden; what was not asked for is said, since nothing holds it back. */
function riddenWords(criteria: CriteriaVersion['criteria'], formats: Formats): string {
	const kinds = [
		{
			metres: criteria.observedMAboveHardTorque,
			how: `above ${formats.number(criteria.hardTorqueNm)}\u00a0Nm at the hub`
		},
		{ metres: criteria.observedMWet, how: 'wet' },
		{ metres: criteria.observedMDry, how: 'dry' }
	];
	const asked = kinds.filter(({ metres }) => metres > 0);
	const not = kinds.filter(({ metres }) => metres === 0);
	return [
		asked.length > 0
			? `Observed ${asked.map(({ metres, how }) => `${formats.kmSet(metres)} ${how}`).join(', ')}.`
			: '',
		not.length > 0 ? `No distance is asked for ${not.map(({ how }) => how).join(', ')}.` : ''
	]
		.filter(Boolean)
		.join(' ');
}
