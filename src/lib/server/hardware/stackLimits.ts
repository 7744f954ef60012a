import type { StackLimits } from '$lib/hardware/stackWarnings';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import { readSetting, writeSetting } from '../settings/storedSetting';

/** The workshop's own limits for stacks, and how spacers and wear are looked at. The maker's come first. */
export interface HardwareLimits extends StackLimits {
	/** how far off the sum of chosen spacers may be, millimetres */
	readonly spacerToleranceMm: number;
	/** distance of the run-in: what is measured before it is no part of a wear line, metres */
	readonly runInM: number;
}

interface Limit {
	readonly setting: string;
	readonly what: string;
	readonly most: number;
	/** until the workshop sets its own; common practice, no source. null = nothing is judged */
	readonly first: number | null;
	readonly mayBeNone: boolean;
}

const LIMITS: Readonly<Record<keyof HardwareLimits, Limit>> = {
	tooWideMm: limit('limitTooWideMm', 'The width over the over-locknut distance', 5, 0.5),
	rimOffsetMm: limit('limitRimOffsetMm', 'The limit of the rim offset', 10, 1),
	engagementDepthMm: limit('limitEngagementDepthMm', 'The least engagement depth', 30, null),
	endFloatMm: limit('limitEndFloatMm', 'The largest end float', 5, null),
	spacerToleranceMm: { ...limit('spacerToleranceMm', 'The tolerance of spacers', 2, 0.05), mayBeNone: false },
	runInM: { ...limit('runInM', 'The run-in distance', 1e7, 0), mayBeNone: false }
};

function limit(setting: string, what: string, most: number, first: number | null): Limit {
	return { setting, what, most, first, mayBeNone: true };
}

const NONE = 'none';

/** What the workshop set; what it did not set begins with common practice. */
export function hardwareLimits(ledger: Ledger): HardwareLimits {
	const values = Object.entries(LIMITS).map(([name, { setting, first }]) => {
		const stored = readSetting(ledger, setting);
		return [name, stored === null ? first : stored === NONE ? null : Number(stored)];
	});
	return Object.fromEntries(values) as HardwareLimits;
}

/**
 * Changes limits that are named; null takes a limit away. What was set before stays in the trail.
 *
 * @throws LedgerRefusal wrong-value; conflict when another person set one since it was shown, nothing is
 *   changed then
 */
export function setHardwareLimits(
	ledger: Ledger,
	actor: Actor,
	wanted: Partial<HardwareLimits>,
	seen: Partial<HardwareLimits> = {}
): void {
	ledger.database
		.transaction(() => {
			const before = hardwareLimits(ledger);
			for (const [name, value] of Object.entries(wanted) as [keyof HardwareLimits, number | null][]) {
				const { setting, what } = LIMITS[name];
				checkLimit(name, value);
				if (value === before[name]) continue;
				if (name in seen && seen[name] !== before[name])
					throw new LedgerRefusal(
						'conflict',
						`${what} was changed by someone else to ${before[name] ?? 'none'} meanwhile; look again.`
					);
				writeSetting(ledger, setting, value === null ? NONE : String(value));
				leaveTrail(ledger, actor, 'changed', 'setting', setting, { before: before[name], after: value });
			}
		})
		.immediate();
}

function checkLimit(name: keyof HardwareLimits, value: number | null): void {
	const { what, most, mayBeNone } = LIMITS[name];
	if (value === null ? mayBeNone : value >= 0 && value <= most) return;
	const unit = name === 'runInM' ? `${most / 1000} km` : `${most} mm`;
	throw new LedgerRefusal('wrong-value', `${what} is a number from 0 to ${unit}.`);
}
