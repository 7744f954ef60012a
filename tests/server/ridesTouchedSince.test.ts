import { describe, expect, it } from 'vitest';
import { recordVerdict, rideView } from '$lib/server';
import { leaveTrail } from '$lib/server/ledger/leaveTrail';
import { listDerivations } from '$lib/server/queue/derivations';
import { ridesTouchedSince } from '$lib/server/queue/ridesTouchedSince';
import { addRide, freshLedger, slipAt } from './testLedger';

const START_MS = Date.UTC(2026, 4, 4, 8);

describe('ridesTouchedSince', () => {
	it('names the rides that were handed in or assigned, and none for a verdict', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const before = newest(test);
		const first = await addRide(test, { startedAtMs: START_MS, events: [slipAt(100)] });
		const second = await addRide(test, { startedAtMs: START_MS + 1e8 });
		expect(ridesTouchedSince(ledger, before)).toEqual([first, second]);
		const between = newest(test);
		recordVerdict(ledger, actor, rideView(ledger, first)!.eventList[0].id, { verdict: 'confirmed' });
		expect(ridesTouchedSince(ledger, between)).toEqual([]);
		leaveTrail(ledger, actor, 'assigned', 'ride', second);
		expect(ridesTouchedSince(ledger, between)).toEqual([second]);
	});

	it('says that any ride may be concerned where a bike, a wheel or a batch changed', () => {
		const test = freshLedger();
		for (const subject of ['bike', 'wheel', 'wheel on a bike', 'answers', 'setting', 'example']) {
			const before = newest(test);
			leaveTrail(test.ledger, test.actor, 'changed', subject, 1);
			expect([subject, ridesTouchedSince(test.ledger, before)]).toEqual([subject, null]);
		}
	});
});

describe('listDerivations of some rides', () => {
	it('lists those of them that it would list among all', async () => {
		const test = freshLedger();
		const ids: number[] = [];
		for (let day = 0; day < 3; day++) ids.push(await addRide(test, { startedAtMs: START_MS + day * 864e5 }));
		expect(listDerivations(test.ledger, ids)).toEqual([]);
		test.ledger.channels.prepare('DELETE FROM channel').run();
		const all = listDerivations(test.ledger);
		expect(all.map(({ rideId }) => rideId)).toEqual(ids);
		expect(listDerivations(test.ledger, [ids[1]])).toEqual([all[1]]);
		expect(listDerivations(test.ledger, [])).toEqual([]);
	});
});

function newest({ ledger }: ReturnType<typeof freshLedger>): number {
	const row = ledger.database.prepare('SELECT coalesce(max(id), 0) AS id FROM trail').get();
	return (row as { id: number }).id;
}
