import { evidenceOfHigherRate } from '$lib/reliability/evidenceOfHigherRate';
import { poissonRateLimits } from '$lib/reliability/poissonRateLimits';
import { counted } from './counted';
import type { NumberWords, ReleaseCriteria } from './criteria';

const UNIT_M = 1_000_000;

/** Chance that the rule on the rate ever raises an alarm about a build that slips no more often than was asked for. */
export const FALSE_ALARM_CHANCE = 0.05;
/** one-sided, of the lower limit that is shown beside the rule */
const ONE_LOOK = 0.95;

/** What the field has shown of a build since it was released. */
export interface FieldEvidence {
	readonly rides: number;
	readonly observedM: number;
	/** counted slips (unreviewed among them) by the observed metres at which they came; those less than 10 s apart are one */
	readonly slipsAtObservedM: readonly number[];
	readonly confirmedAtObservedM: readonly number[];
	/** events that nobody has reviewed */
	readonly unreviewed: number;
	readonly largestConfirmedCrankDeg: number;
	/** reports without a ride file that count as slips, and those in which somebody fell or was hurt */
	readonly reported: number;
	readonly harmed: number;
}

/** Whether the field contradicts a release. */
export interface FieldWatch {
	/**
	 * `alarm`: it does; `look`: reports or unreviewed events have to be looked at first; `no alarm`; `nothing yet`:
	 * nothing was ridden that could contradict it
	 */
	readonly state: 'alarm' | 'look' | 'no alarm' | 'nothing yet';
	/** why, one sentence a reason; none without alarm and look */
	readonly reasons: readonly string[];
	/** what the field has shown and by which rule it is judged */
	readonly sentence: string;
	readonly evidence: FieldEvidence;
	/** slips per 1000 observed km that confirmed ones speak for at least (exact, one-sided, one look) */
	readonly lowerPerThousandKm: number;
}

/**
 * Judges the field by a rule that was fixed beforehand: the rate that the release was signed on, watched with however
 * many looks, and the stop rule of its criteria. A rider who fell or one large slip is an alarm by itself. Only
 * confirmed slips raise the alarm by the rate; with the unreviewed ones it asks for a review.
 */
export function fieldWatch(
	criteria: Pick<ReleaseCriteria, 'rateAtMostPerThousandKm' | 'stopAtCrankDeg'>,
	field: FieldEvidence,
	words: NumberWords
): FieldWatch {
	const limit = criteria.rateAtMostPerThousandKm;
	const judged = (slipsAtM: readonly number[]) =>
		evidenceOfHigherRate(
			slipsAtM.map((atM) => atM / UNIT_M),
			field.observedM / UNIT_M,
			limit,
			FALSE_ALARM_CHANCE
		);
	const confirmed = field.confirmedAtObservedM.length;
	const lowerPerThousandKm = poissonRateLimits(confirmed, field.observedM / UNIT_M, 2 * ONE_LOOK - 1).lower;
	const alarms: string[] = [];
	const looks: string[] = [];
	if (field.harmed > 0)
		alarms.push(`Somebody fell or was hurt (${words.number(field.harmed)}): reported since the release.`);
	if (field.largestConfirmedCrankDeg >= criteria.stopAtCrankDeg)
		alarms.push(
			`A slip of ${words.number(field.largestConfirmedCrankDeg)} crank degrees was confirmed; the stop rule names ${words.number(criteria.stopAtCrankDeg)}.`
		);
	if (judged(field.confirmedAtObservedM).alarmAt !== null)
		alarms.push(
			`${counted(confirmed, 'confirmed slip', 'confirmed slips', words)} on ${words.km(field.observedM)} observed: more than ${words.set(limit)} per 1000 km allow, which the release was signed on.`
		);
	else if (judged(field.slipsAtObservedM).alarmAt !== null)
		looks.push(
			`Review ${counted(field.unreviewed, 'event', 'events', words)}: with them as slips the field contradicts the release.`
		);
	if (field.reported > field.harmed)
		looks.push(
			`${counted(field.reported - field.harmed, 'slip was', 'slips were', words)} reported without a ride file: open the hub and find out.`
		);
	const nothing = field.observedM === 0 && field.reported === 0;
	return {
		state: alarms.length > 0 ? 'alarm' : looks.length > 0 ? 'look' : nothing ? 'nothing yet' : 'no alarm',
		reasons: [...alarms, ...looks],
		sentence: `${shown(field, lowerPerThousandKm, words)} An alarm comes when confirmed slips speak against ${words.set(limit)} per 1000 observed km, the rate of the release; the chance that it ever comes falsely, however often one looks, is at most ${words.share(FALSE_ALARM_CHANCE)} if slips come singly.`,
		evidence: field,
		lowerPerThousandKm
	};
}

function shown(field: FieldEvidence, lower: number, words: NumberWords): string {
	if (field.observedM === 0) return 'No ride since the release could have shown a slip.';
	const slips = field.confirmedAtObservedM.length;
	const open =
		field.unreviewed > 0 ? `, ${counted(field.unreviewed, 'event', 'events', words)} not reviewed` : '';
	const rides = counted(field.rides, 'ride', 'rides', words);
	return slips === 0
		? `Since the release ${rides} with ${words.km(field.observedM)} observed: no slip is confirmed${open}; that is not "none will happen".`
		: `Since the release ${rides} with ${words.km(field.observedM)} observed: ${counted(slips, 'slip is', 'slips are', words)} confirmed${open}, which speaks for at least ${words.figure(lower)} per 1000 observed km (exact one-sided ${words.share(ONE_LOOK)} limit of one look).`;
}
