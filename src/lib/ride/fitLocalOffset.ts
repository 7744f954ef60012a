import { instantOf, type FitMessage } from './fitMessages';

const QUARTER_HOUR_S = 900;
/** UTC-12 to UTC+14 are in use */
const WEST_S = -12 * 3600;
const EAST_S = 14 * 3600;

/**
 * Local time minus UTC as the device recorded it in its activity message.
 * @param activities activity messages
 * @returns seconds, a multiple of a quarter of an hour; null when it is not recorded or cannot be one
 * @example an activity at 12:00:00 UTC with local time 14:00:01 gives 7200
 */
export function fitLocalOffset(activities: readonly FitMessage[]): number | null {
	for (const activity of activities) {
		const seconds = (instantOf(activity, 'local_timestamp') - instantOf(activity, 'timestamp')) / 1000;
		const rounded = Math.round(seconds / QUARTER_HOUR_S) * QUARTER_HOUR_S;
		if (Math.abs(seconds - rounded) <= 60 && rounded >= WEST_S && rounded <= EAST_S) return rounded;
	}
	return null;
}
