import { expect, test } from 'vitest';
import { buildAgainstBuild, createBuild, fitBuild } from '$lib/server';
import { evidenceAsText } from '../../src/cli/evidence/evidenceAsText';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../server/testLedger';

test('The terminal says what the page says, in plain spaces, and that it is no certificate', async () => {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(ledger, actor, { name: 'New', description: 'harder spring' });
	fitBuild(ledger, actor, {
		wheelId,
		buildId: newId,
		from: new Date(START_MS + 12 * HOUR_MS).toISOString()
	});
	await addRide(test, { events: [slipAt(100), slipAt(200), slipAt(300)] });
	await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS });
	const told = buildAgainstBuild(
		ledger,
		[
			{ id: oldId, name: 'Old' },
			{ id: newId, name: 'New' }
		],
		{ unit: 'slips', shown: 'found' }
	);
	const text = evidenceAsText(told, 2);
	expect(text).toContain(
		'New against Old (each slip counts; charts count all events that are not rejected; age is the distance since the build was fitted; analysis version 2)'
	);
	expect(text).toContain(
		'No event of Old is confirmed yet: nothing can be decided before its 3 are reviewed.'
	);
	expect(text).toContain('Old: 3 events counted as slips on 20.0 observed km: 15.0 per 100 observed km');
	expect(text).toContain('(3 not reviewed, counted here)');
	expect(text).toContain('New: No slip of the reference size counts on 20.0 observed km');
	expect(text).toContain('Unreviewed events count on both:');
	expect(text).toContain('is no certificate');
	expect(text).not.toContain('\u00a0');
});
