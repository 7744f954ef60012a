import type { RideContext } from '../../../src/lib/slip/rideContext';
import { observationFeatures } from '../../../src/lib/slip/observationFeatures';
import type { TrueEvent } from './labelledRides';

/** The observation features of the second in which each event begins. */
export function observationRows(context: RideContext, events: readonly TrueEvent[]): Float64Array[] {
	const columns = observationFeatures(context);
	return events.map((event) => {
		const t = Math.min(columns[0].length - 1, Math.floor(event.t0));
		return Float64Array.from(columns, (column) => column[t]);
	});
}
