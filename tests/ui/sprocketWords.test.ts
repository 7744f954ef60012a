import { expect, it } from 'vitest';
import { createFormats } from '$lib/ui/formats';
import { sprocketsWords } from '$lib/ui/sprocketWords';

const formats = createFormats('en-GB', 'UTC');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const one = (teeth: number, standsOut: boolean) => ({
	teeth,
	rate: { count: 6 },
	ratio: 3.1,
	lower: 1.2,
	upper: 8.4,
	standsOut
});

it('names the sprocket that stands out, with its limits, as a hint', () => {
	const words = plain(
		sprocketsWords({ sprockets: [one(19, false), one(21, true)], notKnownShare: 0.12 }, formats)
	);
	expect(words).toBe(
		'More than the others at the same hub torque: 21 teeth, 3.1 times (1.2 to 8.4). Look at the chain and at that sprocket first: a hint, no proof. Teeth or torque are not known of 12 % of the observed distance.'
	);
});

it('makes it a condition while events that count are not reviewed', () => {
	expect(sprocketsWords({ sprockets: [one(21, true)], notKnownShare: 0 }, formats, 3)).toMatch(
		/^More than the others at the same hub torque, if the 3 events that are not reviewed are slips: 21 teeth/
	);
});

it('claims no more than that none is shown, and says when nothing can be set against each other', () => {
	expect(sprocketsWords({ sprockets: [one(19, false)], notKnownShare: 0 }, formats)).toContain(
		'is shown to slip more'
	);
	expect(sprocketsWords({ sprockets: [], notKnownShare: 0 }, formats)).toContain('cannot be set');
});

it('does not let a few slips read like an answer', () => {
	const few = { ...one(19, false), rate: { count: 1 } };
	expect(sprocketsWords({ sprockets: [few, few], notKnownShare: 0 }, formats)).toContain(
		'Only 2 with known teeth'
	);
	const none = { ...few, rate: { count: 0 } };
	expect(sprocketsWords({ sprockets: [none], notKnownShare: 0 }, formats)).toContain('too few to set');
});
