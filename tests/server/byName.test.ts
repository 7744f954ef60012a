import { describe, expect, it } from 'vitest';
import { createBike, createWheel, listBikes, listWheels } from '$lib/server';
import { byName } from '$lib/server/hardware/byName';
import { freshLedger } from './testLedger';

describe('byName', () => {
	it('orders by names as people count, and equal names by their number', () => {
		const named = ['Wheel 10', 'wheel 2', 'Wheel 1', 'Axle rig', 'Wheel 1'].map((name, id) => ({ id, name }));
		expect(named.sort(byName).map(({ id, name }) => `${name} (${id})`)).toEqual([
			'Axle rig (3)',
			'Wheel 1 (2)',
			'Wheel 1 (4)',
			'wheel 2 (1)',
			'Wheel 10 (0)'
		]);
	});

	it('is the order of lists of wheels and bikes', () => {
		const { ledger, actor } = freshLedger();
		for (const name of ['No. 11', 'No. 2']) {
			createWheel(ledger, actor, { name, hub: '' });
			createBike(ledger, actor, { name });
		}
		expect(listWheels(ledger).map(({ name }) => name)).toEqual(['No. 2', 'No. 11']);
		expect(listBikes(ledger).map(({ name }) => name)).toEqual(['No. 2', 'No. 11']);
	});
});
