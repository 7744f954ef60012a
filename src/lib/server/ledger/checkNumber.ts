import { LedgerRefusal } from '../refusal';

export interface NumberLimits {
	/** both included */
	readonly min: number;
	readonly max: number;
	/** said in the refusal, unless `what` names it */
	readonly unit?: string;
	readonly whole?: boolean;
}

/**
 * A number that a person typed, within its limits.
 *
 * @param what the word for it in a refusal: "The wanted torque"
 * @returns null for null, undefined and an empty field
 * @throws LedgerRefusal wrong-value for what is no number and for what lies outside
 */
export function checkNumber(
	what: string,
	value: number | null | undefined,
	limits: NumberLimits
): number | null {
	if (value === null || value === undefined) return null;
	const { min, max, unit, whole } = limits;
	if (typeof value !== 'number' || !Number.isFinite(value))
		throw new LedgerRefusal('wrong-value', `${what} is not a number.`);
	if (whole && !Number.isInteger(value))
		throw new LedgerRefusal('wrong-value', `${what} must be a whole number.`);
	if (value < min || value > max)
		throw new LedgerRefusal(
			'wrong-value',
			`${what} must lie between ${min} and ${max}${unit ? ` ${unit}` : ''}.`
		);
	return value;
}

/** The same where an empty field will not do. */
export function checkNeededNumber(
	what: string,
	value: number | null | undefined,
	limits: NumberLimits
): number {
	const checked = checkNumber(what, value, limits);
	if (checked === null) throw new LedgerRefusal('wrong-value', `${what} is missing.`);
	return checked;
}
