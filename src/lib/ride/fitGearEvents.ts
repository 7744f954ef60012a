import { instantOf, numberOf, type FitMessage } from './fitMessages';
import { MAX_MARKS } from './limits';
import type { RecordedGearEvent } from './recordedRide';

type Gear = Omit<RecordedGearEvent, 'atMs'>;

/**
 * Recorded shifts. A gear-change event holds both ends of the drivetrain in its 32 data bits (FIT
 * profile, event, gear_change_data): rear position in bits 0 to 7, rear teeth 8 to 15, front position
 * 16 to 23, front teeth 24 to 31; 0 and 255 mean not known. What one event leaves open about the end
 * that did not shift is carried over from the one before.
 * @param events event messages in file order
 * @returns the shifts in file order, those without an instant left out
 */
export function fitGearEvents(events: readonly FitMessage[]): RecordedGearEvent[] {
	const shifts: RecordedGearEvent[] = [];
	let last: Gear = { frontIndex: null, rearIndex: null, frontTeeth: null, rearTeeth: null };
	for (const event of events) {
		const front = event.event === 'front_gear_change';
		if (!front && event.event !== 'rear_gear_change') continue;
		const atMs = instantOf(event, 'timestamp');
		if (Number.isNaN(atMs) || shifts.length >= MAX_MARKS) continue;
		const read = gearOf(event);
		last = {
			frontIndex: read.frontIndex ?? (front ? null : last.frontIndex),
			frontTeeth: read.frontTeeth ?? (front ? null : last.frontTeeth),
			rearIndex: read.rearIndex ?? (front ? last.rearIndex : null),
			rearTeeth: read.rearTeeth ?? (front ? last.rearTeeth : null)
		};
		shifts.push({ atMs, ...last });
	}
	return shifts;
}

function gearOf(event: FitMessage): Gear {
	const data = numberOf(event, 'data');
	if (Number.isInteger(data) && data >= 0) {
		return {
			rearIndex: known(data & 255),
			rearTeeth: known((data >>> 8) & 255),
			frontIndex: known((data >>> 16) & 255),
			frontTeeth: known((data >>> 24) & 255)
		};
	}
	return {
		rearIndex: known(numberOf(event, 'rear_gear_num')),
		rearTeeth: known(numberOf(event, 'rear_gear')),
		frontIndex: known(numberOf(event, 'front_gear_num')),
		frontTeeth: known(numberOf(event, 'front_gear'))
	};
}

function known(value: number): number | null {
	return value > 0 && value < 255 ? value : null;
}
