import { counted, countedSlips } from './counted';
import { fails, holds, notYet, outOfReach } from './criterionState';
import type { CriterionState, NumberWords, ReleaseCriteria, SequentialPlan, TestEvidence } from './criteria';
import { planLines, sequentialCourse } from './sequentialCourse';

/**
 * How the rate stands under a sequential plan. It fails by confirmed slips only; while unreviewed events
 * would make it fail, it waits for their review.
 */
export function sequentialPlanState(
	criteria: Pick<ReleaseCriteria, 'rateAtMostPerThousandKm' | 'confidence'>,
	plan: SequentialPlan,
	evidence: Pick<TestEvidence, 'wheels' | 'slipsAtObservedM' | 'confirmedAtObservedM' | 'unreviewed'>,
	words: NumberWords
): CriterionState {
	const lines = planLines(criteria, plan);
	const asked = `Fewer than ${words.set(criteria.rateAtMostPerThousandKm)} slips per 1000 observed km at ${words.share(criteria.confidence)} confidence, by a plan that may end early and ends at ${words.kmSet(plan.longestObservedM)}`;
	if (!lines) return outOfReach('rate', `${asked}; no plan can tell these rates apart.`);
	const observedM = evidence.wheels.reduce((sum, wheel) => sum + wheel.observedM, 0);
	const all = sequentialCourse(lines, evidence.slipsAtObservedM, observedM);
	const confirmed = sequentialCourse(lines, evidence.confirmedAtObservedM, observedM);
	const slips = evidence.slipsAtObservedM.length;
	const sentence = `${asked}; ${words.km(observedM)} are observed, ${countedSlips(slips, evidence.confirmedAtObservedM.length, words)}.`;
	if (confirmed.state === 'fail') return fails('rate', sentence);
	if (all.state === 'pass') return holds('rate', sentence);
	if (all.state === 'fail')
		return notYet(
			'rate',
			sentence,
			`Review of ${counted(evidence.unreviewed, 'event', 'events', words)}: with all of them slips the plan has failed.`
		);
	return notYet(
		'rate',
		sentence,
		`${words.km((all.passesAtM ?? plan.longestObservedM) - observedM)} observed, if nothing more counts.`
	);
}
