import type { Gear } from '$lib/drivetrain/bike';
import { DRIVE_STATES, type DriveState, type ObservedStretch } from './analysis';
import type { ExposureCell, ExposureHour, RideExposure } from './exposure';
import { ExposureSums, type ExposureSecond } from './exposureSums';
import { HUB_TORQUE_EDGES_NM, hubTorqueBin } from './hubTorqueBins';
import { markExposures } from './markExposures';
import { onsetTorque } from './onsetTorques';
import type { RideContext } from './rideContext';

/** States in which the rider drives the wheel; they make the driven distance. */
export const UNDER_DRIVE: ReadonlySet<DriveState> = new Set(['driving', 'shifting', 'picking up', 'slip']);

/** The same by the state's number. */
const DRIVEN = Uint8Array.from(DRIVE_STATES, (state) => (UNDER_DRIVE.has(state) ? 1 : 0));

const NOT_OBSERVED = DRIVE_STATES.indexOf('not observed');

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
	const { gears } = context.named;
	const cells = new ExposureSums((gears.length + 1) * BINS);
	const hours = new ExposureSums(Math.ceil(grid.seconds / HOUR_S) + 1);
	const one: ExposureSecond = { metres: 0, driven: 0, seen: 0, crankTurns: 0, begins: 0 };
	for (let t = 0; t < grid.seconds; t++) {
		if (!driven[t] && !seen[t]) continue;
		fillSecond(one, context, states, t);
		one.driven = driven[t];
		one.seen = seen[t];
		const inGear = context.path[Math.max(0, t - 1)];
		const gear = inGear >= 0 && inGear < gears.length ? inGear + 1 : 0;
		cells.add(gear * BINS + hubTorqueBin(onsetTorque(context, t, powerAt)) + 1, one);
		hours.add(Math.floor(t / HOUR_S), one);
	}
	return {
		cells: cells.filled
			.map((cell): ExposureCell => ({
				...placeOf(gears[Math.floor(cell / BINS) - 1] ?? null, (cell % BINS) - 1),
				...cells.amounts(cell)
			}))
			.sort(inOrder),
		// hours in which nothing was driven or observed are left out
		hours: hours.filled.map((hour): ExposureHour => ({ hour, ...hours.amounts(hour) })),
		marks: markExposures(marksS, driven, seen)
	};
}

const HOUR_S = 3600;

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

/** What a second adds. It stands for the way to the next one, so the last second of a ride has none. */
function fillSecond(one: ExposureSecond, context: RideContext, states: Uint8Array, t: number): void {
	const { distanceM, cadenceRpm, seconds } = context.signals.grid;
	one.metres = t + 1 < seconds ? distanceM[t + 1] - distanceM[t] : 0;
	one.crankTurns = cadenceRpm[t] > 0 ? cadenceRpm[t] / 60 : 0;
	one.begins = context.sinceRest[t] === 1 && t > 0 && states[t - 1] !== NOT_OBSERVED ? 1 : 0;
}

/** By torque, what is not known last; then by ratio. */
function inOrder(a: ExposureCell, b: ExposureCell): number {
	const torque = (a.torqueFromNm ?? Infinity) - (b.torqueFromNm ?? Infinity);
	if (torque < 0 || torque > 0) return torque;
	return (a.ratio ?? 0) - (b.ratio ?? 0);
}
