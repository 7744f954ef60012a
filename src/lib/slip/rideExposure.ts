import type { Gear } from '$lib/drivetrain/bike';
import { DRIVE_STATES, type DriveState, type ObservedStretch } from './analysis';
import type { ExposureAmount, ExposureCell, ExposureHour, RideExposure } from './exposure';
import { HUB_TORQUE_EDGES_NM, hubTorqueBin } from './hubTorqueBins';
import { markExposures } from './markExposures';
import { onsetGear, onsetTorque } from './onsetTorques';
import type { RideContext } from './rideContext';

/** States in which the rider drives the wheel; they make the driven distance. */
export const UNDER_DRIVE: ReadonlySet<DriveState> = new Set(['driving', 'shifting', 'picking up', 'slip']);

/** The same by the state's number. */
const DRIVEN = Uint8Array.from(DRIVE_STATES, (state) => (UNDER_DRIVE.has(state) ? 1 : 0));

const NOT_OBSERVED = DRIVE_STATES.indexOf('not observed');

type Sums = { -readonly [name in keyof ExposureAmount]: number };

/**
 * Driven and observed distance, time, crank turns and pick-ups of a ride by hub torque and gear, and by
 * hour. Each second is filed as a slip that began in it would be: with the gear and the mean hub torque of
 * the last engaged seconds before it. Where that torque is not known (right after a rest, below 30 rpm,
 * without power, in no known gear) the second has a bin of its own, because "not known" is no small torque.
 * A pick-up begins where pressing begins after coasting, soft pedalling or standing, as failed pick-ups do;
 * what follows missing records is none. Its torque is never known.
 *
 * @param context what was learned of the ride
 * @param states state of the drive a second, index in DRIVE_STATES
 * @param observed observed stretches in order
 * @param marksS rider's laps, seconds from the first record
 * @param powerAt where power is measured
 * @returns cells and hours that each add up to the ride; only those in which anything was driven or observed
 */
export function rideExposure(
	context: RideContext,
	states: Uint8Array,
	observed: readonly ObservedStretch[],
	marksS: readonly number[],
	powerAt: 'crank' | 'hub'
): RideExposure {
	const { grid } = context.signals;
	const driven = new Uint8Array(states.length);
	for (let t = 0; t < states.length; t++) driven[t] = DRIVEN[states[t]];
	const seen = new Uint8Array(grid.seconds);
	for (const { startS, endS } of observed) seen.fill(1, startS, endS);
	const cells = new Map<number, { place: Place; sums: Sums }>();
	const hours: Sums[] = [];
	for (let t = 0; t < grid.seconds; t++) {
		if (!driven[t] && !seen[t]) continue;
		const gear = onsetGear(context, t);
		const bin = hubTorqueBin(onsetTorque(context, t, powerAt));
		const key = (gear ? context.named.gears.indexOf(gear) + 1 : 0) * BINS + bin + 1;
		let cell = cells.get(key);
		if (!cell) cells.set(key, (cell = { place: placeOf(gear, bin), sums: nothing() }));
		addSecond(cell.sums, context, states, t, driven[t], seen[t]);
		addSecond((hours[Math.floor(t / 3600)] ??= nothing()), context, states, t, driven[t], seen[t]);
	}
	return {
		cells: [...cells.values()].map(({ place, sums }): ExposureCell => ({ ...place, ...sums })).sort(inOrder),
		// hours in which nothing was driven or observed were skipped above
		hours: Object.entries(hours).map(([hour, sums]): ExposureHour => ({ hour: Number(hour), ...sums })),
		marks: markExposures(marksS, driven, seen)
	};
}

/** torque bins and "not known" */
const BINS = HUB_TORQUE_EDGES_NM.length + 1;

type Place = Pick<ExposureCell, 'torqueFromNm' | 'torqueToNm' | 'gear' | 'ratio'>;

function placeOf(gear: Gear | null, bin: number): Place {
	return {
		torqueFromNm: bin < 0 ? null : HUB_TORQUE_EDGES_NM[bin],
		torqueToNm: bin < 0 ? null : (HUB_TORQUE_EDGES_NM[bin + 1] ?? null),
		gear: gear?.label ?? null,
		ratio: gear?.ratio ?? null
	};
}

/** Adds one second. It stands for the way to the next one, so the last second of a ride has none. */
function addSecond(
	sums: Sums,
	context: RideContext,
	states: Uint8Array,
	t: number,
	driven: number,
	seen: number
): void {
	const { distanceM, cadenceRpm, seconds } = context.signals.grid;
	const metres = t + 1 < seconds ? distanceM[t + 1] - distanceM[t] : 0;
	sums.observedM += seen * metres;
	sums.observedS += seen;
	if (!driven) return;
	const turns = cadenceRpm[t] > 0 ? cadenceRpm[t] / 60 : 0;
	const begins = context.sinceRest[t] === 1 && t > 0 && states[t - 1] !== NOT_OBSERVED ? 1 : 0;
	sums.drivenM += metres;
	sums.drivenS++;
	sums.drivenTurns += turns;
	sums.observedTurns += seen * turns;
	sums.pickUps += begins;
	sums.observedPickUps += seen * begins;
}

function nothing(): Sums {
	return {
		drivenM: 0,
		drivenS: 0,
		observedM: 0,
		observedS: 0,
		drivenTurns: 0,
		observedTurns: 0,
		pickUps: 0,
		observedPickUps: 0
	};
}

/** By torque, what is not known last; then by ratio. */
function inOrder(a: ExposureCell, b: ExposureCell): number {
	const torque = (a.torqueFromNm ?? Infinity) - (b.torqueFromNm ?? Infinity);
	if (torque < 0 || torque > 0) return torque;
	return (a.ratio ?? 0) - (b.ratio ?? 0);
}
