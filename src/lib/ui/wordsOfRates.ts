import type { WordLink, WordText } from './words';

export const RATE: WordLink = { href: '/method#rate', name: 'How rates and limits are made' };
export const OBSERVED: WordLink = { href: '/method#reference', name: 'How observed distance is decided' };

/** Words about rates, limits and what they rest on. */
export const RATE_WORDS = {
	rate: {
		group: 'How often, and how sure',
		says: 'Slips of at least the reference size that began on observed stretches, divided by the observed kilometres.',
		madeOf: 'Read it with its limits. It is per observed kilometre, not per kilometre.',
		more: RATE
	},
	limits: {
		group: 'How often, and how sure',
		says: 'The rates that these rides allow. Made this way again and again, such limits hold the true rate in at least 95 of 100 programmes.',
		madeOf: 'At each end the wider of the exact limits for single slips and of limits that allow for bursts.',
		source: 'Garwood 1936; Fay and Feuer 1997',
		more: RATE
	},
	'upper-limit': {
		group: 'How often, and how sure',
		says: 'Nothing found is never "no slips will happen". The upper limit says how often it may slip and still show nothing on so many kilometres: 300 observed km without a slip leave 10 per 1000 km possible.',
		madeOf:
			'One-sided 95 %, as here: 3.0 events / observed km; as the upper end of two-sided 95 % limits, as beside rates: 3.7.',
		source: 'Garwood 1936',
		more: RATE
	},
	unreviewed: {
		group: 'How often, and how sure',
		says: 'While events wait for a verdict two rates stand side by side: as if only the confirmed counted, and as if all did. In a comparison an event that waits counts against the new build and not against the old one.'
	},
	'not-found': {
		group: 'How often, and how sure',
		says: 'Slips that happened on observed stretches and left too few signs. How many there are is learned from slips of known size that the tool puts into copies of these rides: each one found stands for itself and for those missed beside it.',
		madeOf:
			'At the size and hub torque of each counted slip: 1 / share of those put in that are found, with limits.',
		source: 'Horvitz and Thompson 1952',
		more: OBSERVED
	},
	'false-alarms': {
		group: 'How often, and how sure',
		says: 'What the tool finds on wheels that are known to be good, per 1000 observed km. It stands beside every low rate, because it pulls any comparison towards "no difference".'
	},
	bursts: {
		group: 'How often, and how sure',
		says: 'Slips that come several on one ride. They say less than as many slips on as many rides, so limits are wider. With few slips it cannot be seen, and the page says that it is assumed.',
		source: 'Fay and Feuer 1997; McCullagh and Nelder 1989',
		more: RATE
	},
	'times-as-often': {
		group: 'How often, and how sure',
		says: 'The rate of one build divided by that of the other, per observed km. Below 1 is less often. Where the limits hold 1, the rides do not tell the two apart.',
		source: 'Clopper and Pearson 1934; Fay 1999'
	},
	'power-strokes': {
		group: 'How often, and how sure',
		says: 'One press of a leg: two for each turn of the crank under drive. Slips are set against those ridden at the same torque.'
	},
	'goes-along': {
		group: 'How often, and how sure',
		says: 'How many times as often it slips with one step more of a circumstance, the others held. A hint where to look, no cause.',
		source: 'Holm 1979, for asking several at once'
	},
	'slips-by-age': {
		group: 'How often, and how sure',
		says: 'How many slips a wheel had on average by each age, over the wheels that were watched there. A straight line is a steady rate, a bend upwards is wear.',
		source: 'Nelson 1995'
	},
	trend: {
		group: 'How often, and how sure',
		says: 'Whether slips come more often with distance. "Too few to say" is an answer of its own and does not mean steady.',
		madeOf: 'The growth exponent of a power law over the watched kilometres, with limits: 1 is steady.',
		source: 'IEC 61710; Crow 1975'
	},
	expected: {
		group: 'How often, and how sure',
		says: 'Slips of the new build against those that the old one would have had on the same kilometres, at the same hub torque and age. Below 1 is better. Kilometres that the old build never rode cannot be compared, and their share is told.',
		source: 'Fay 1999'
	},
	'two-lists': {
		group: 'How often, and how sure',
		says: 'Two lists of the same slips: what riders marked and what the tool found. From how many are on both, an estimate of how many happened. Felt slips are large, so it is a lower bound.',
		source: 'Chapman 1951'
	}
} as const satisfies Record<string, WordText>;
