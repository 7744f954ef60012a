import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import { IN_THE_RATE } from '../rates/eventTallies';

/** What of the example workshop the guided start leads to. */
export interface FirstLook {
	/** a slip with strong signs on a ride of the first build; null until such a ride was read */
	readonly slip: { readonly rideId: number; readonly eventId: number } | null;
	/** the build that came in, and the newest one; null without the example */
	readonly before: number | null;
	readonly after: number | null;
	/** verdicts that stand on rides of the example */
	readonly verdicts: number;
	/** files of the example that are not through yet */
	readonly filesLeft: number;
}

/** Finds the places of the example workshop that a newcomer should see; nothing is written. */
export function firstLook(ledger: Ledger): FirstLook {
	const { database } = ledger;
	const builds = database
		.prepare<[], number>(
			`SELECT b.id FROM build b JOIN fitted_period p ON p.build_id = b.id AND p.withdrawn_ms IS NULL
				WHERE b.example = 1 GROUP BY b.id ORDER BY min(p.from_ms), b.id`
		)
		.pluck()
		.all();
	const verdicts = database
		.prepare<[], number>(
			`SELECT count(*) FROM verdict v JOIN import i ON i.ride_id = v.ride_id
				WHERE i.example = 1 AND v.superseded_ms IS NULL`
		)
		.pluck()
		.get()!;
	const filesLeft = database
		.prepare<[], number>(
			`SELECT count(*) FROM import WHERE example = 1 AND stage IN ('receiving', 'waiting', 'analysing')`
		)
		.pluck()
		.get()!;
	const before = builds.at(0) ?? null;
	const slip = before === null ? null : clearestSlip(ledger, before);
	return { slip, before, after: builds.length > 1 ? builds[builds.length - 1] : null, verdicts, filesLeft };
}

/** Among the slips that nobody judged yet, if there are any, the one with the strongest signs. */
function clearestSlip(ledger: Ledger, buildId: number): FirstLook['slip'] {
	return (
		ledger.database
			.prepare<[number, number], { rideId: number; eventId: number }>(
				`SELECT e.ride_id AS rideId, e.id AS eventId FROM slip_event e JOIN ride r ON r.id = e.ride_id
					JOIN import i ON i.ride_id = r.id AND i.example = 1
					JOIN fitted_period p ON p.wheel_id = r.wheel_id AND p.build_id = ? AND p.withdrawn_ms IS NULL
						AND r.started_ms >= p.from_ms AND (p.until_ms IS NULL OR r.started_ms < p.until_ms)
					WHERE e.version = ? AND ${IN_THE_RATE}
					ORDER BY e.verdict_id IS NOT NULL, e.strength DESC, e.id LIMIT 1`
			)
			.get(buildId, currentVersion(ledger)) ?? null
	);
}
