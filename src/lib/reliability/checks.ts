/** Refuses what is not a count of events; the message names the parameter and the value. */
export function checkCount(name: string, value: number): void {
	if (!Number.isSafeInteger(value) || value < 0)
		throw new RangeError(`${name} must be a whole number of events, 0 or more; it is ${value}`);
}

/** Refuses what is not an exposure (distance, time, number of pick-ups). */
export function checkExposure(name: string, value: number): void {
	if (!(value >= 0 && value < Infinity))
		throw new RangeError(`${name} must be a finite number, 0 or more; it is ${value}`);
}

/** Refuses what is not a confidence. */
export function checkConfidence(name: string, value: number): void {
	if (!(value > 0 && value < 1)) throw new RangeError(`${name} must lie between 0 and 1; it is ${value}`);
}

/** Refuses what is not a risk, chance or share: 0 < value < 1. */
export const checkRisk = checkConfidence;

/** Refuses what is not a positive, finite quantity (a rate, an end of watching, a shape). */
export function checkPositive(name: string, value: number): void {
	if (!(value > 0 && value < Infinity))
		throw new RangeError(`${name} must be a finite number above 0; it is ${value}`);
}

/** Refuses what is not a finite number. */
export function checkFinite(name: string, value: number): void {
	if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number; it is ${value}`);
}
