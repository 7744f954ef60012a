import type { Formats } from './formats';

/** A figure corrected for what was not found; null = not known, or without bound. */
export interface CorrectedNumbers {
	readonly value: number | null;
	readonly lower: number;
	readonly upper: number | null;
}

/** What the correction of one build rests on; the server's view fits. */
export interface DetectionNumbers {
	readonly factor: number;
	readonly lower: number;
	readonly upper: number;
	readonly put: number;
	readonly found: number;
	readonly ridesTested: number;
	readonly rides: number;
}

/** "3.1 (1.2 to 8)"; "at most 5" where nothing counts; "cannot be said" without a bound. */
export function correctedWords({ value, lower, upper }: CorrectedNumbers, formats: Formats): string {
	if (upper === null) return lower > 0 ? `at least ${formats.figure(lower)}` : 'cannot be said';
	if (value === null || value === 0) return `at most ${formats.figure(upper)}`;
	return `${formats.figure(value)} (${formats.figure(lower)} to ${formats.figure(upper)})`;
}

/** Where the correction comes from, in a sentence; and why there is none. */
export function detectionWords(detection: DetectionNumbers | null, formats: Formats): string {
	if (detection === null)
		return 'It cannot be corrected for slips that were not found: too few were put into its rides so far to learn which share is found.';
	const { factor, lower, upper, put, found, ridesTested, rides } = detection;
	return `One found stands for ${formats.figure(factor)} (${formats.figure(lower)} to ${formats.figure(upper)}): of ${formats.number(put)} slips of 90 crank degrees and more put into observed stretches of ${formats.number(ridesTested)} of its ${formats.number(rides)} rides, ${formats.number(found)} were found again; each slip is taken at its own size and hub torque.`;
}
