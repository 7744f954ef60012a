import {
	REVIEW_AFTER_S,
	REVIEW_BEFORE_S,
	REVIEW_TRACES,
	type ReviewProbe,
	type ReviewTrace
} from '$lib/slip/reviewProbe';
import type { SlipEvent } from '$lib/slip/analysis';
import type { ResultDetail } from '../../../jobs/analysis/messages';
import type { Ledger } from '../ledger/openLedger';
import { rideChannels } from '../rides/rideChannels';
import { rideEvents } from '../rides/rideEvents';
import type { ReviewItem } from './reviewItems';
import { similarEvents, type SimilarEvent } from './similarEvents';

/** One event as a reviewer sees it: nothing of wheel, build, rider, day, place or file. Seconds count from the onset. */
export interface ReviewScene {
	readonly token: string;
	readonly endS: number;
	/** the seconds of the traces, from the onset */
	readonly fromS: number;
	/** null = the traces are not there */
	readonly traces: Readonly<Record<ReviewTrace, readonly (number | null)[]>> | null;
	/** metres for one turn of the crank in each gear of the ride */
	readonly developmentsM: readonly number[];
	readonly overrunCrankDeg: { readonly value: number; readonly lower: number; readonly upper: number };
	readonly overrunHubDeg: number;
	readonly torqueBeforeNm: number | null;
	readonly torqueAfterNm: number | null;
	readonly powerLost: number | null;
	readonly reasons: readonly string[];
	readonly similar: readonly SimilarEvent[];
}

interface Shown {
	readonly event: Pick<
		SlipEvent,
		'startS' | 'endS' | 'overrunCrankDeg' | 'overrunHubDeg' | 'hubTorqueNm' | 'powerLost' | 'reasons'
	>;
	readonly fromS: number;
	readonly traces: ReviewScene['traces'];
	readonly developmentsM: readonly number[];
}

/** @returns null when the event is not there any more */
export function reviewScene(ledger: Ledger, item: ReviewItem): ReviewScene | null {
	const shown = item.eventId === null ? probeOf(ledger, item) : eventOf(ledger, item);
	if (!shown) return null;
	const { event, fromS, traces, developmentsM } = shown;
	const onsetS = Math.floor(event.startS);
	return {
		token: item.token,
		endS: round(event.endS - onsetS),
		fromS: fromS - onsetS,
		traces,
		developmentsM,
		overrunCrankDeg: event.overrunCrankDeg,
		overrunHubDeg: event.overrunHubDeg,
		torqueBeforeNm: event.hubTorqueNm?.value ?? null,
		torqueAfterNm: traces && meanOf(traces.hubTorqueNm, event.endS - fromS + 2, event.endS - fromS + 6),
		powerLost: event.powerLost,
		reasons: event.reasons,
		similar: similarEvents(ledger, {
			eventId: item.eventId,
			version: item.version,
			crankDeg: event.overrunCrankDeg.value,
			powerLost: event.powerLost,
			torqueNm: event.hubTorqueNm?.value ?? null
		})
	};
}

function probeOf(ledger: Ledger, { rideId, version, probe }: ReviewItem): Shown | null {
	const row = ledger.database
		.prepare<[number, number, number | null], { content: string }>(
			'SELECT content FROM review_probe WHERE ride_id = ? AND version = ? AND probe = ?'
		)
		.get(rideId, version, probe);
	return row ? (JSON.parse(row.content) as ReviewProbe) : null;
}

function eventOf(ledger: Ledger, { rideId, version, eventId }: ReviewItem): Shown | null {
	const event = rideEvents(ledger, { id: rideId, startMs: 0 }, version, () => null).find(
		({ id }) => id === eventId
	);
	if (!event) return null;
	const fromS = Math.max(0, Math.floor(event.startS) - REVIEW_BEFORE_S);
	const toS = Math.floor(event.startS) + REVIEW_AFTER_S;
	const found = rideChannels(ledger, rideId, { version, names: REVIEW_TRACES });
	const cut = (name: ReviewTrace) =>
		Array.from(
			found?.channels.find((channel) => channel.name === name)?.values.subarray(fromS, toS) ?? [],
			(value) => (Number.isNaN(value) ? null : round(value))
		);
	const detail = ledger.database
		.prepare<[number, number], { detail: string }>(
			'SELECT detail FROM result_detail WHERE ride_id = ? AND version = ?'
		)
		.get(rideId, version);
	const gears = detail ? (JSON.parse(detail.detail) as ResultDetail).gears : [];
	return {
		event,
		fromS,
		traces: found
			? (Object.fromEntries(REVIEW_TRACES.map((name) => [name, cut(name)])) as Record<
					ReviewTrace,
					(number | null)[]
				>)
			: null,
		developmentsM: gears.map(({ developmentM }) => developmentM)
	};
}

function meanOf(values: readonly (number | null)[], from: number, to: number): number | null {
	const known = values.slice(Math.round(from), Math.round(to)).filter((value) => value !== null);
	return known.length > 0 ? known.reduce((sum, value) => sum + value, 0) / known.length : null;
}

function round(value: number): number {
	return Math.round(value * 1000) / 1000;
}
