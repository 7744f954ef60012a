import type { Chain, StackUp } from './stackUp';

/** The workshop's own limits, millimetres; null = none set, nothing is judged by it. The maker's come first. */
export interface StackLimits {
	/** how much wider than the over-locknut distance the stack may be */
	readonly tooWideMm: number | null;
	/** how far the rim may stand from where it is wanted */
	readonly rimOffsetMm: number | null;
	/** least engagement depth */
	readonly engagementDepthMm: number | null;
	/** largest end float; the least is 0 whatever is set, since less is a clamped bearing */
	readonly endFloatMm: number | null;
}

export type StackWarningCode =
	| 'too wide'
	| 'too narrow'
	| 'bearing clamped'
	| 'end float too large'
	| 'engagement too shallow'
	| 'rim off';

export interface StackWarning {
	readonly code: StackWarningCode;
	/** false = only if the lengths that are not measured lie at the wrong end of their tolerance */
	readonly certain: boolean;
	/** the value at the wrong end, millimetres */
	readonly valueMm: number;
	/** the limit that it is held against, millimetres */
	readonly limitMm: number;
}

/** measuring and rounding: less than this is no difference, millimetres */
const NO_DIFFERENCE_MM = 0.0005;

/**
 * What must be said of a stack before the wheel is ridden: too wide for the frame, a bearing that clamping
 * would preload, too little engagement, a rim that stands off. Judged at the worst case of what was built:
 * measured lengths as they are, the rest by their tolerances.
 *
 * @param stack from `stackUp`
 * @param wanted over-locknut distance, the rim offset as it comes out and as it is wanted; null = not known
 * @param limits the workshop's own
 * @returns the certain ones first; what cannot be judged is not in it
 * @example stackWarnings(stackUp(elements), { overLocknutMm: 142, rimOffsetMm: null,
 *   rimOffsetWantedMm: null }, limits) // [{ code: 'too wide', certain: true, valueMm: 142.9, ... }]
 * Source: common practice, no source; the limits are the workshop's.
 */
export function stackWarnings(
	stack: StackUp,
	wanted: {
		readonly overLocknutMm: number | null;
		readonly rimOffsetMm: number | null;
		readonly rimOffsetWantedMm: number | null;
	},
	limits: StackLimits
): StackWarning[] {
	const { overLocknutMm, rimOffsetMm, rimOffsetWantedMm } = wanted;
	const found: (StackWarning | null)[] = [
		below('bearing clamped', stack.endFloat, 0),
		below('engagement too shallow', stack.engagementDepth, limits.engagementDepthMm),
		above('end float too large', stack.endFloat, limits.endFloatMm)
	];
	if (overLocknutMm !== null && limits.tooWideMm !== null) {
		found.push(above('too wide', stack.total, overLocknutMm + limits.tooWideMm));
		// the frame is pulled together as far as it may be spread
		found.push(below('too narrow', stack.total, overLocknutMm - limits.tooWideMm));
	}
	if (rimOffsetMm !== null && rimOffsetWantedMm !== null && limits.rimOffsetMm !== null) {
		const off = Math.abs(rimOffsetMm - rimOffsetWantedMm);
		if (off > limits.rimOffsetMm + NO_DIFFERENCE_MM)
			found.push({ code: 'rim off', certain: true, valueMm: off, limitMm: limits.rimOffsetMm });
	}
	return found.filter((warning) => warning !== null).sort((a, b) => Number(b.certain) - Number(a.certain));
}

function below(code: StackWarningCode, chain: Chain | null, limitMm: number | null): StackWarning | null {
	if (chain === null || limitMm === null) return null;
	const { lowestMm, highestMm } = chain.built.worstCase;
	if (lowestMm >= limitMm - NO_DIFFERENCE_MM) return null;
	return { code, certain: highestMm < limitMm - NO_DIFFERENCE_MM, valueMm: lowestMm, limitMm };
}

function above(code: StackWarningCode, chain: Chain | null, limitMm: number | null): StackWarning | null {
	if (chain === null || limitMm === null) return null;
	const { lowestMm, highestMm } = chain.built.worstCase;
	if (highestMm <= limitMm + NO_DIFFERENCE_MM) return null;
	return { code, certain: lowestMm > limitMm + NO_DIFFERENCE_MM, valueMm: highestMm, limitMm };
}
