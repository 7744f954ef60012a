import type { Formats } from './formats';

/** How the rate goes along with one circumstance; the server's view fits. */
export interface FactorFigures {
	readonly factor:
		| 'hub torque'
		| 'gear'
		| 'picking up'
		| 'age'
		| 'wet'
		| 'device temperature'
		| 'rider'
		| 'hour of the ride';
	readonly rider: string | null;
	readonly kind: 'fit' | 'unbounded' | 'inseparable' | 'constant' | 'too few' | 'not recorded';
	readonly ratio: number | null;
	readonly lower: number | null;
	readonly upper: number | null;
	/** corrected for all questions asked */
	readonly pValue: number | null;
}

/** from this corrected p-value down an influence is called shown */
const SHOWN_AT = 0.05;

/** beyond so many times, or so few, a ratio is only called that; common practice, no source */
const FARTHEST = 1000;
/** limits that lie so many times apart leave everything open; common practice, no source */
const SAYS_NOTHING = 1000;

/** What one more of it is, and where it would point to on the workbench. */
const MEANING = {
	'hub torque': { step: '10 Nm more at the hub', hint: 'ratchet: ring, pawls or toothed rings' },
	gear: { step: 'a proportion of chainring to sprocket larger by 1', hint: 'chain and sprockets' },
	'picking up': { step: 'one pick-up more on each km', hint: 'spring, pawls or grease' },
	age: { step: '100 km more of age', hint: 'wear' },
	wet: { step: 'wet instead of dry', hint: 'grease and seals' },
	'device temperature': { step: '10 °C warmer at the device', hint: 'grease that stiffens in the cold' },
	rider: { step: 'this rider', hint: 'way of pressing, weight, roads' },
	'hour of the ride': { step: 'an hour later in the ride', hint: 'warmth of the grease, tired legs' }
} as const;

export interface FactorWords {
	/** "10 Nm more at the hub" */
	readonly step: string;
	/** "1.9 times as often (1.4 to 2.6)", or why nothing can be said */
	readonly effect: string;
	/** only where an influence is shown */
	readonly hint: string | null;
}

/** One circumstance in words: a hint for the workbench, never a cause. */
export function factorWords(
	{ factor, rider, kind, ratio, lower, upper, pValue }: FactorFigures,
	referenceRider: string | null,
	formats: Formats
): FactorWords {
	const { step, hint } = MEANING[factor];
	const named = factor === 'rider' ? `${rider} instead of ${referenceRider}` : step;
	if (kind !== 'fit' || ratio === null || lower === null || upper === null)
		return { step: named, effect: WHY_NOT[kind === 'fit' ? 'too few' : kind], hint: null };
	const shown = pValue !== null && pValue < SHOWN_AT;
	const times = (value: number) => timesWords(value, formats);
	const limits = `${times(ratio)} times as often (${times(lower)} to ${times(upper)})`;
	if (!shown && upper / lower > SAYS_NOTHING)
		return {
			step: named,
			effect: `these rides cannot tell: from ${times(lower)} to ${times(upper)} times as often`,
			hint: null
		};
	return {
		step: named,
		effect: shown ? limits : `${limits}: not shown`,
		hint: shown ? hint : null
	};
}

/** a ratio of sizes that nobody rides: what lies beyond is not read digit by digit */
function timesWords(value: number, formats: Formats): string {
	if (value > FARTHEST) return `more than ${formats.number(FARTHEST)}`;
	return value < 1 / FARTHEST ? `less than ${formats.number(1 / FARTHEST, 3)}` : formats.figure(value);
}

const WHY_NOT = {
	unbounded: 'no slip on one side of it, so no figure can be given',
	inseparable: 'goes along with another circumstance; these rides cannot tell them apart',
	constant: 'was the same on all rides',
	'too few': 'too few slips to say',
	'not recorded': 'hardly any ride recorded it, so it is not asked'
} as const;
