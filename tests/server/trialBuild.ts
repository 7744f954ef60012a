import {
	buildHardware,
	changeBuild,
	createBuild,
	createPart,
	createWheel,
	fitBuild,
	type BuildContentsInput
} from '$lib/server';
import { addRide, freshLedger, HOUR_MS, START_MS } from './testLedger';

export const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();
export const PASSED = { staticTorqueNm: 120, torqueHeld: true, coastsFreely: true, noCreep: true };

/** A ledger with a ring in two revisions, a lubricant, and a draft build that holds the first ring. */
export function workshop() {
	const test = freshLedger();
	const { ledger, actor } = test;
	const ring = { number: 'RR-24', name: 'ring', kind: 'ratchet ring', pointsOfEngagement: 24 };
	const ringA = createPart(ledger, actor, { ...ring, revision: 'A' });
	const ringB = createPart(ledger, actor, { ...ring, revision: 'B' });
	const grease = createPart(ledger, actor, { number: 'LUB-1', name: 'thin grease', kind: 'lubricant' });
	const buildId = createBuild(ledger, actor, { name: 'Trial', description: '', stepHubDeg: 15 });
	const input = (change: Partial<BuildContentsInput> = {}): BuildContentsInput => ({
		name: 'Trial',
		description: '',
		stepHubDeg: 15,
		bill: [
			{ partId: ringA, quantity: 1, serial: '7' },
			{ partId: grease, quantity: 0.5 }
		],
		torques: [{ joint: 'axle cap', wantedNm: 12 }],
		...change
	});
	const change = (changes: Partial<BuildContentsInput> = {}, id = buildId, name?: string) =>
		changeBuild(ledger, actor, id, buildHardware(ledger, id)!.rowVersion, {
			...input(changes),
			name: changes.name ?? name ?? buildHardware(ledger, id)!.name
		});
	change();
	const state = (id = buildId) => buildHardware(ledger, id)!.state;
	return { ...test, ringA, ringB, grease, buildId, input, change, state };
}

/** The same with the build on a wheel and a ride on it. */
export async function ridden() {
	const test = workshop();
	const wheelId = createWheel(test.ledger, test.actor, { name: 'Wheel A', hub: '' });
	fitBuild(test.ledger, test.actor, { wheelId, buildId: test.buildId, from: at(-10) });
	const rideId = await addRide(test);
	return { ...test, wheelId, rideId };
}
