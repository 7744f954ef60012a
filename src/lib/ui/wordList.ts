import { RATE, OBSERVED, RATE_WORDS } from './wordsOfRates';
import type { WordId } from './wordNames';
import type { WordLink, WordText } from './words';
import { WORDS_OF_DECISION } from './wordsOfDecision';

const FOUND: WordLink = { href: '/method#found', name: 'How a slip is found' };
const CANNOT: WordLink = { href: '/method#one-second', name: 'What a ride cannot show' };

/** What every word means that pages use and that a newcomer may ask about. */
export const WORDS = {
	freehub: {
		group: 'The hub',
		says: 'The body that carries the cassette: "freehub body" among the parts, "driver" where it turns the shell. It drives the hub shell through the clutch and lets it run free when the rider coasts.'
	},
	clutch: {
		group: 'The hub',
		says: 'The clutch between driver and shell. Pawls (or toothed rings) are pressed by a spring into the teeth of a ring. When they do not hold, the hub slips.'
	},
	step: {
		group: 'The hub',
		says: 'The angle from one position in which the clutch can take up drive to the next.',
		madeOf: '360 hub degrees divided by the points of engagement of one hub turn.'
	},
	stack: {
		group: 'The hub',
		says: 'Everything that lies along the axle between the faces of the end caps. Its lengths decide how deep the clutch engages and how much the freehub can move sideways.'
	},
	dish: {
		group: 'The hub',
		says: 'Where the rim lies against the middle of the locknut faces. A spacer added on one side moves the rim by half its thickness.'
	},
	'over-locknut': {
		group: 'The hub',
		says: 'The width of the hub between the faces of the locknuts or end caps.'
	},
	development: {
		group: 'On the road',
		says: 'Metres that the bicycle travels for one turn of the crank in a gear.',
		madeOf: 'Chainring teeth / sprocket teeth x circumference of the wheel; learned from the ride.'
	},
	'engaged-cadence': {
		group: 'On the road',
		says: 'The cadence that belongs to the speed of the wheel in the gear that is on, when driver and shell turn together. Cadence above it means that the crank runs ahead of the wheel.',
		madeOf: '60 x speed / development.',
		more: { href: '/method#compared', name: 'What is compared' }
	},
	'gained-angle': {
		group: 'On the road',
		says: 'How far the crank got ahead of the wheel, counted in degrees of the hub. Engaged riding is flat, coasting falls, a slip is a step up.',
		more: { href: '/method#worked', name: 'One event worked through' }
	},
	'hub-torque': {
		group: 'On the road',
		says: 'The torque that reaches the driver, as a mean over a turn of the crank. Peaks within a turn are 1.6 to 2 times as high.',
		madeOf:
			'Torque at the crank x sprocket / chainring x 0.97. At very low cadence it is "not known", never nought.',
		source: 'Efficiency and peaks: common practice, no source'
	},
	'pick-up': {
		group: 'On the road',
		says: 'From coasting to driving. Up to one engagement step plus slack of the chain is normal take-up and no event.'
	},
	trainer: {
		group: 'On the road',
		says: 'A ride on an indoor trainer does not follow the physics of the road. It counts in no rate and adds nothing to a build’s distance.'
	},
	slip: {
		group: 'What the tool finds',
		says: 'The driver gains on the shell while the rider is pressing, and the load is lost.',
		more: FOUND
	},
	'failed-pick-up': {
		group: 'What the tool finds',
		says: 'Pedalling begins again after coasting and the crank runs past the wheel by more than one step plus slack. It points to spring, pawls or grease rather than to the teeth.',
		madeOf: 'Counted apart from slips, per 1000 observed pick-ups.'
	},
	overrun: {
		group: 'What the tool finds',
		says: 'The degrees that the crank gained on the wheel in one event. Hub degrees are crank degrees x chainring / sprocket.',
		madeOf:
			'Surplus of cadence over the engaged cadence, added up; the limits hold what noise and rounding allow.'
	},
	'hub-degrees': {
		group: 'What the tool finds',
		says: 'The same overrun as the hub feels it: how far the driver turned in the shell. In a 2:1 gear 90 crank degrees are 180 hub degrees.',
		madeOf: 'Crank degrees x chainring / sprocket.'
	},
	'power-lost': {
		group: 'What the tool finds',
		says: 'How much of the power from before was missing at its lowest around the event. In a slip the load is gone, so much of it is lost; where only the cadence was read wrongly, nearly none is.',
		more: FOUND
	},
	'reference-slip': {
		group: 'What the tool finds',
		says: '90 crank degrees: what a rider clearly feels and what one value a second can show. Rates count slips of at least this size.',
		more: CANNOT
	},
	strength: {
		group: 'What the tool finds',
		says: 'How clearly the recording speaks for a slip, from 0.01 to 0.99. It is not the chance that it is one, and strengths are never added up.',
		madeOf: 'Calibrated at a stated share of slips among what is found; the table stands in the method.',
		more: FOUND
	},
	'detection-limit': {
		group: 'What the tool finds',
		says: 'The smallest overrun that this recording would have shown at this place nine times in ten.',
		more: CANNOT
	},
	episode: {
		group: 'What the tool finds',
		says: 'Slips of one ride that lie less than 10 s apart. Often one cause, so they can be counted as one.'
	},
	apart: {
		group: 'What the tool finds',
		says: 'Events that are in no rate: smaller than the reference slip, where the recording could not have shown one, or of another kind, such as a dropped chain.',
		more: FOUND
	},
	'rider-mark': {
		group: 'What the tool finds',
		says: 'A lap pressed, or a time told, because something was felt. Laps mean slips only if the rider has said so.'
	},
	verdict: {
		group: 'What the tool finds',
		says: 'What a person decided about an event: confirmed as a slip, or rejected with a reason. It keeps who and when, and it can be taken back.'
	},
	'total-distance': {
		group: 'Kilometres',
		says: 'All kilometres of the rides, whether or not their recordings could show a slip.'
	},
	'observed-distance': {
		group: 'Kilometres',
		says: 'Kilometres that could have shown a slip: on all of them together nine in ten of the reference size and more should be found. It is decided without looking at what was found there.',
		more: OBSERVED
	},
	'driven-distance': {
		group: 'Kilometres',
		says: 'Kilometres under drive: neither coasting nor standing.'
	},
	age: {
		group: 'Kilometres',
		says: 'Distance that the wheel was ridden outdoors since the build was fitted, also where no recording could show a slip.',
		more: RATE
	},
	'unlogged-distance': {
		group: 'Kilometres',
		says: 'Kilometres that somebody rode and wrote down. They age the hub and its parts and are in no rate.'
	},
	'run-in': {
		group: 'Kilometres',
		says: 'The first kilometres, in which surfaces settle. Wear is drawn from there on.'
	},
	...RATE_WORDS,
	...WORDS_OF_DECISION
} as const satisfies Record<WordId, WordText>;
