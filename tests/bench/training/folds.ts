import type { TrainingPart } from './trainingRides';

/** Rides that are left out together: a device or a rider must not be in both. */
export const FOLDS: readonly (readonly string[])[] = [
	['real/r01', 'simulated/a01', 'simulated/a04', 'simulated/a08'],
	['real/r06', 'real/r07', 'simulated/a02', 'simulated/a05', 'simulated/a12'],
	['real/r08', 'real/r12', 'simulated/a03', 'simulated/a06', 'simulated/a10'],
	['real/r09', 'simulated/a07', 'simulated/a09', 'simulated/a11'],
	['real/r10', 'real/r11']
];

/** Whether a ride is judged by what was learned without this fold (there is none behind the last); generated rides by their number. */
export function leftOutIn({ origin, group }: TrainingPart, fold: number): boolean {
	return origin === 'generated'
		? Number(group.split('/')[1]) % FOLDS.length === fold
		: (FOLDS[fold] ?? []).includes(group);
}

/** The parts that a fold is judged by, rides as recorded and probes: what was learned without it scores them in this order. */
export function judgedIn(parts: readonly TrainingPart[], fold: number): TrainingPart[] {
	return parts.filter((part) => leftOutIn(part, fold) && (part.asRecorded || part.probe));
}
