import { expect, it } from 'vitest';
import { evidenceParts } from '$lib/server';
import { allRideFacts } from '$lib/server/rides/rideFacts';
import { addRide, freshLedger, withHardware } from './testLedger';

it('a ride that was not split is its own part: ten thousand of them are not kept twice', async () => {
	const test = freshLedger();
	withHardware(test);
	await addRide(test);
	const [ride] = allRideFacts(test.ledger);
	expect(ride).toMatchObject({ part: null, fromS: 0, toS: Infinity, fromM: 0 });
	expect(evidenceParts(test.ledger)).toHaveLength(1);
	expect(evidenceParts(test.ledger)[0]).toBe(ride);
});
