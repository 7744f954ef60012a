import type { Gear } from '$lib/drivetrain/bike';
import type { SlipEvent } from './analysis';

/** Fewer events say nothing of a sprocket. */
const LEAST_EVENTS = 4;
/** A sprocket in which the rider pedals more than this share of the time collects any kind of event. */
const LARGEST_SHARE = 0.4;
/** One or two teeth at a time. */
const MOST_TEETH = 2;
/** A skipping chain takes up again at once: not all of the power is lost in the record. */
const LARGEST_LOSS = 0.9;

/**
 * Names events "possible chain skip" where all signs point to the chain: every slip under load of the ride lies in
 * one sprocket, though most of the pedalling was done in others, and every one is as large as one or two teeth of
 * the chainring (360 / teeth crank degrees each), within its limits. A clutch does not know which sprocket is in.
 * A recording of one value a second does not show angles that small, so in practice this speaks for loggers.
 *
 * @param events all events of the ride
 * @param gears gears of the ride with the seconds that were pedalled in each
 * @returns the events, in order; unchanged wherever one sign is missing
 */
export function nameChainSkips(events: readonly SlipEvent[], gears: readonly Gear[]): SlipEvent[] {
	const slips = events.filter((event) => event.kind === 'slip');
	const sprocket = slips[0]?.gear?.sprocket ?? null;
	const same =
		sprocket !== null &&
		slips.length >= LEAST_EVENTS &&
		shareOf(sprocket, gears) <= LARGEST_SHARE &&
		slips.every((event) => event.gear?.sprocket === sprocket && isTeeth(event));
	if (!same) return [...events];
	return events.map((event) =>
		event.kind === 'slip'
			? { ...event, kind: 'possible chain skip', reasons: [...event.reasons, reasonOf(sprocket)] }
			: event
	);
}

function isTeeth({ overrunCrankDeg, gear, powerLost }: SlipEvent): boolean {
	if (!gear?.chainring || !(powerLost === null || powerLost <= LARGEST_LOSS)) return false;
	const toothDeg = 360 / gear.chainring;
	for (let teeth = 1; teeth <= MOST_TEETH; teeth++) {
		if (overrunCrankDeg.lower <= teeth * toothDeg && teeth * toothDeg <= overrunCrankDeg.upper) return true;
	}
	return false;
}

function shareOf(sprocket: number, gears: readonly Gear[]): number {
	const all = gears.reduce((sum, gear) => sum + gear.seconds, 0);
	const here = gears.reduce((sum, gear) => sum + (gear.sprocket === sprocket ? gear.seconds : 0), 0);
	return all > 0 ? here / all : 1;
}

function reasonOf(sprocket: number): string {
	return `For a chain that skips: every such event of this ride lies in the sprocket of ${sprocket}, and each is as large as one or two teeth.`;
}
