import type { Bike } from '$lib/drivetrain/bike';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { DEFAULT_CIRCUMFERENCE_M } from '$lib/drivetrain/nameGears';
import { rideLearning } from '$lib/drivetrain/rideLearning';
import { secondGrid, type SecondGrid } from '$lib/drivetrain/secondGrid';
import type { Ride } from '$lib/ride/ride';
import { DRIVE_STATES, type ObservedStretch, type RideAnalysis } from './analysis';
import { isLoggerRide, loggerDetectionLimit, loggerEvents } from './analyseLoggerRide';
import { ANALYSIS_VERSION } from './analysisVersion';
import { describeEvent } from './describeEvent';
import { detectionLimit } from './detectionLimit';
import { driveStates, driveTraces } from './driveTraces';
import { nameChainSkips } from './nameChainSkips';
import { observedStretches } from './observedStretches';
import { rideContext } from './rideContext';
import { rideExposure } from './rideExposure';
import { rideWarnings } from './rideWarnings';
import { strengthOfSigns } from './strengthOfSigns';
import { speedFollowsHub } from './speedFollowsHub';
import { takeEvents } from './takeEvents';
import { tyreSpinEvents } from './tyreSpinEvents';

const SLIP = DRIVE_STATES.indexOf('slip');

/**
 * Finds the slips of one ride and says on which stretches it could have shown one.
 *
 * @param ride a decoded ride
 * @param bike what is known of the bike; what is not given is learned from the ride
 * @returns events, stretches, distances and the lines a page draws; a ride that shows nothing has no
 *   observed stretches and says why in its warnings
 */
export function analyseRide(ride: Ride, bike: Bike = {}): RideAnalysis {
	const grid = secondGrid(ride, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M);
	const context = rideContext(driveSignals(grid), bike);
	const { named } = context;
	const powerAt = bike.powerAt ?? 'crank';
	const logger = isLoggerRide(ride);
	const limitDeg = logger ? loggerDetectionLimit(context) : detectionLimit(context);
	if (ride.trainer || ride.motorAssisted || !speedFollowsHub(ride, bike)) limitDeg.fill(NaN);
	const observed = observedStretches(grid, limitDeg);
	const taken = logger ? [] : takeEvents(context);
	const states = driveStates(
		context,
		taken.map(({ placed }) => placed)
	);
	const learning = rideLearning(ride, context.signals, named, bike);
	const facts = {
		powerAt,
		followsHub: speedFollowsHub(ride, bike),
		byTurn: learning.cadenceByTurn
	};
	const seen = (second: number) => isObserved(observed, second);
	const found = logger
		? loggerEvents(ride, context, named.gears, bike)
		: taken.map(({ placed, logOdds }) =>
				describeEvent(context, placed, strengthOfSigns(logOdds), seen, facts)
			);
	const spins = logger || !facts.followsHub ? [] : tyreSpinEvents(context, seen, powerAt);
	const events = [...nameChainSkips(found, named.gears), ...spins].sort((a, b) => a.startS - b.startS);
	for (const event of found) states.fill(SLIP, Math.floor(event.startS), Math.ceil(event.endS));
	const marksS = ride.marks.map((mark) => mark.timeS);
	return {
		analysisVersion: ANALYSIS_VERSION,
		totalM: grid.distanceM[grid.seconds - 1] ?? 0,
		observedM: observed.reduce((sum, stretch) => sum + stretch.endM - stretch.startM, 0),
		drivenM: drivenDistance(grid, states),
		observed,
		events,
		gears: named.gears,
		warnings: [...ride.warnings, ...rideWarnings(ride, context, bike, named, learning)],
		learning,
		marksS,
		gaps: ride.gaps,
		exposure: rideExposure(context, states, observed, marksS, powerAt),
		traces: driveTraces(context, named.gears, states, limitDeg, powerAt)
	};
}

function isObserved(observed: readonly ObservedStretch[], second: number): boolean {
	return observed.some((stretch) => second >= stretch.startS && second < stretch.endS);
}

/** States in which the rider presses, by their number. */
const UNDER_DRIVE = DRIVE_STATES.map((state) =>
	['driving', 'shifting', 'picking up', 'slip'].includes(state)
);

/** Distance under drive: seconds in which the rider presses. */
function drivenDistance(grid: SecondGrid, states: Uint8Array): number {
	let sum = 0;
	for (let t = 0; t + 1 < grid.seconds; t++) {
		if (UNDER_DRIVE[states[t]]) sum += grid.distanceM[t + 1] - grid.distanceM[t];
	}
	return sum;
}
