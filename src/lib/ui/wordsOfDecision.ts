import type { WordText } from './words';

/** Words of builds, tests and decisions: the last group of the list. */
export const WORDS_OF_DECISION = {
	build: {
		group: 'The way to a decision',
		says: 'One configuration of a wheel: parts with revision and batch, measured stack, assembly torques, date. What is changed later is a new build.'
	},
	'fitted-period': {
		group: 'The way to a decision',
		says: 'From the instant at which a build went on a wheel to the one at which it came off. Rides find their build by it.'
	},
	service: {
		group: 'The way to a decision',
		says: 'The hub was opened, cleaned, greased or its parts turned. It starts a clock of its own.'
	},
	incident: {
		group: 'The way to a decision',
		says: 'A slip that was reported without a ride file. It stands beside the rate, and an open one holds a release back.'
	},
	'bench-check': {
		group: 'The way to a decision',
		says: 'Before the first ride: does it hold torque standing, coast freely, and does the ring stay where it is?'
	},
	criteria: {
		group: 'The way to a decision',
		says: 'What the new build has to show, written down before its test. A change is a new version and begins with fresh kilometres.'
	},
	'stop-rule': {
		group: 'The way to a decision',
		says: 'What ends the test at once, whatever the rate says: a crash, an injury, or one confirmed slip as large as was written down before.'
	},
	'test-spread': {
		group: 'The way to a decision',
		says: 'How many wheels and riders the test needs, and how many wet and dry kilometres. Many kilometres of one wheel say nothing about the others.'
	},
	'last-third': {
		group: 'The way to a decision',
		says: 'The last third of the observed kilometres by itself: a build that wears into slipping passes on its first ones. Its bound is one-sided.',
		source: 'Garwood 1936'
	},
	'frozen-design': {
		group: 'The way to a decision',
		says: 'Nothing of the build changes any more, and every part is as it will be produced, its batch written down.'
	},
	confidence: {
		group: 'The way to a decision',
		says: 'At 90 % a build that truly slips as often as the limit passes in at most one of ten tests, as far as slips come singly.'
	},
	'file-hash': {
		group: 'The way to a decision',
		says: 'A number worked out from every byte of a file or record. With one byte changed it is another, so a copy can be checked.'
	},
	plan: {
		group: 'The way to a decision',
		says: 'How many kilometres and how many slips decide, fixed beforehand. All before its end is interim. A plan tells two risks: to pass a bad build, and to fail a good one.',
		source: 'Wald 1947; IEC 61124; chi-square for a fixed distance'
	},
	record: {
		group: 'The way to a decision',
		says: 'What an owner signed, with frozen copies of the figures it rests on and a hash by which it can be checked later.'
	},
	'distance-to-limit': {
		group: 'The way to a decision',
		says: 'Where a measured wear would reach its limit if it went on in a straight line. With few or scattered measurements it may have no end, and then that is said.',
		source: 'Fieller 1954'
	},
	'analysis-version': {
		group: 'The way to a decision',
		says: 'The number of the rules by which rides were read. No figure mixes two versions, and a person switches to a newer one after seeing what it changes.'
	}
} as const satisfies Record<string, WordText>;
