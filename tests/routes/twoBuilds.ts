import {
	createBuild,
	fitBuild,
	recordVerdict,
	reportView,
	rideView,
	type ComparisonPolicy
} from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../server/testLedger';

export const POLICY: ComparisonPolicy = { unit: 'slips', shown: 'found' };
export const HOSTILE = '<script>alert(1)</script> & "so"';
export const formats = createFormats('en-GB', 'UTC');

/** the old build with three confirmed slips, the new one with none */
export async function twoBuilds(name = 'New', example = false) {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId, buildId: oldId } = withHardware(test);
	const newId = createBuild(ledger, actor, { name, description: '' }, { example });
	fitBuild(ledger, actor, { wheelId, buildId: newId, from: new Date(START_MS + 12 * HOUR_MS).toISOString() });
	const oldRide = await addRide(test, { events: [slipAt(100), slipAt(200), slipAt(300)] });
	for (const { id } of rideView(ledger, oldRide)!.eventList)
		recordVerdict(ledger, actor, id, { verdict: 'confirmed' });
	await addRide(test, { startedAtMs: START_MS + 24 * HOUR_MS });
	const builds = [
		{ id: oldId, name: 'Old' },
		{ id: newId, name }
	];
	const report = () => reportView(ledger, oldId, newId, POLICY, formats);
	return { ...test, oldId, newId, builds, report };
}
