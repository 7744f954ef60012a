import { checkOdometer, type OdometerCheck } from '$lib/hardware/checkOdometer';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import { axisOfWheel } from './distances';
import { listOdometerReadings } from './odometerReadings';

export interface OdometerView extends OdometerCheck {
	at: Instant;
	readingM: number;
	note: string;
	byCode: string;
}

/** The odometer readings of a wheel, each held against the ledger's distance. */
export function checkedOdometer(ledger: Ledger, wheelId: number): OdometerView[] {
	const readings = listOdometerReadings(ledger, wheelId);
	const byId = new Map(readings.map((reading) => [reading.id, reading]));
	return checkOdometer(readings, axisOfWheel(ledger, wheelId)).map((check) => {
		const { atMs, readingM, note, byCode } = byId.get(check.id)!;
		return { ...check, at: toInstant(atMs), readingM, note, byCode };
	});
}
