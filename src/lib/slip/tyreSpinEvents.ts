import type { SlipEvent } from './analysis';
import { findTyreSpins, type TyreSpin } from './findTyreSpins';
import { onsetGear, onsetTorques } from './onsetTorques';
import type { RideContext } from './rideContext';

/** Its strength is not calibrated: no ride with spins that a 1 Hz recording shows was at hand. */
const UNKNOWN_STRENGTH = 0.5;
/** What one second's rounding and the torque's swing leave open; common practice, no source. */
const SIZE_DOUBT = 0.4;

/**
 * Spins of the tyre as events of their own kind, which no rate counts. Their "overrun" is the crank's gain on the
 * bicycle: on the wheel it gained nothing, because the clutch held.
 *
 * @param context what was learned of the ride
 * @param isObserved whether a second lies on an observed stretch
 * @param powerAt where power is measured
 */
export function tyreSpinEvents(
	context: RideContext,
	isObserved: (second: number) => boolean,
	powerAt: 'crank' | 'hub'
): SlipEvent[] {
	return findTyreSpins(context, powerAt).map((spin): SlipEvent => {
		const gear = onsetGear(context, spin.from);
		const torques = onsetTorques(context, spin.from, powerAt);
		const crankDeg = gainOnGround(context, spin);
		return {
			startS: spin.from,
			endS: spin.to + 1,
			kind: 'possible tyre spin',
			overrunCrankDeg: {
				value: crankDeg,
				lower: (1 - SIZE_DOUBT) * crankDeg,
				upper: (1 + SIZE_DOUBT) * crankDeg
			},
			overrunHubDeg: crankDeg * (gear?.ratio ?? 1),
			gear,
			hubTorqueNm: torques.length
				? { value: mean(torques), lower: Math.min(...torques), upper: Math.max(...torques) }
				: null,
			powerLost: null,
			strength: UNKNOWN_STRENGTH,
			atM: context.signals.grid.distanceM[spin.from],
			observed: isObserved(spin.from),
			reasons: [
				`For a tyre that spun: wheel and crank sped up together by ${(3.6 * spin.gainMps).toFixed(1)} km/h within a second, more than the drive can have moved bicycle and rider, and fell back.`,
				'Against a slip: crank and wheel stayed in the proportion of the gear.'
			]
		};
	});
}

/** Crank degrees beyond those that the speed before would have turned. */
function gainOnGround(context: RideContext, { from, to }: TyreSpin): number {
	const { cadenceRpm } = context.signals.grid;
	let sum = 0;
	for (let t = from; t <= to; t++) sum += 6 * Math.max(0, cadenceRpm[t] - cadenceRpm[from - 1]);
	return sum;
}

function mean(values: readonly number[]): number {
	return values.reduce((sum, value) => sum + value, 0) / values.length;
}
