import { matchVerdicts } from '../review/matchVerdicts';

/** An event as one version of the analysis tells it. */
export interface EventBrief {
	readonly id: number;
	readonly startMs: number;
	readonly endMs: number;
	readonly startS: number;
	readonly kind: string;
	readonly crankDeg: number;
	readonly crankLowerDeg: number;
	readonly crankUpperDeg: number;
	readonly strength: number;
	/** slips of the reference size on observed stretches: what the rate is about */
	readonly inRate: boolean;
	readonly verdict: 'confirmed' | 'rejected' | null;
}

export const EVENT_CHANGES = ['start', 'kind', 'size', 'strength', 'rate'] as const;
export type EventChange = (typeof EVENT_CHANGES)[number];

export interface EventDifference {
	readonly what: 'appeared' | 'vanished' | 'changed';
	/** what changed of an event that both versions report */
	readonly changes: readonly EventChange[];
	readonly before: EventBrief | null;
	readonly after: EventBrief | null;
}

/** two versions may place an onset within the same second of a recording */
const SAME_START_MS = 1_000;
/** where the words for the strength of signs change (ui/strengthWords) */
const STRENGTH_CLASSES = [0.5, 0.9];

/**
 * What differs between the events of one ride by two versions of the analysis. Events are taken for the same as
 * verdicts find theirs; one that is told alike within the limits of the recording is no difference.
 *
 * @returns in order of time
 */
export function eventDifferences(
	before: readonly EventBrief[],
	after: readonly EventBrief[]
): EventDifference[] {
	const same = matchVerdicts(after, before);
	const known = new Set(same.values());
	const differences: EventDifference[] = before
		.filter(({ id }) => !known.has(id))
		.map((event) => ({ what: 'vanished', changes: [], before: event, after: null }));
	for (const event of after) {
		const earlier = before.find(({ id }) => id === same.get(event.id));
		if (!earlier) {
			differences.push({ what: 'appeared', changes: [], before: null, after: event });
			continue;
		}
		const changes = changesOf(earlier, event);
		if (changes.length > 0) differences.push({ what: 'changed', changes, before: earlier, after: event });
	}
	return differences.sort((a, b) => startOf(a) - startOf(b));
}

function changesOf(before: EventBrief, after: EventBrief): EventChange[] {
	const is: Record<EventChange, boolean> = {
		start: Math.abs(before.startMs - after.startMs) > SAME_START_MS,
		kind: before.kind !== after.kind,
		size: !within(after.crankDeg, before) || !within(before.crankDeg, after),
		strength: strengthClass(before.strength) !== strengthClass(after.strength),
		rate: before.inRate !== after.inRate
	};
	return EVENT_CHANGES.filter((change) => is[change]);
}

function within(crankDeg: number, { crankLowerDeg, crankUpperDeg }: EventBrief): boolean {
	return crankDeg >= crankLowerDeg && crankDeg <= crankUpperDeg;
}

/** By the figure as it is printed, with two decimals. */
function strengthClass(strength: number): number {
	const printed = Math.round(100 * strength) / 100;
	return STRENGTH_CLASSES.filter((from) => printed >= from).length;
}

function startOf({ before, after }: EventDifference): number {
	return (before ?? after)?.startS ?? 0;
}
