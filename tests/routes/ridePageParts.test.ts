import { describe, expect, it } from 'vitest';
import EventPanel from '../../src/routes/rides/[id]/EventPanel.svelte';
import FeltSlips from '../../src/routes/rides/[id]/FeltSlips.svelte';
import ReadColumns from '../../src/routes/rides/[id]/ReadColumns.svelte';
import RideClock from '../../src/routes/rides/[id]/RideClock.svelte';
import RideSplit from '../../src/routes/rides/[id]/RideSplit.svelte';
import { load } from '../../src/routes/rides/[id]/+page';

const AT = '2026-06-18T08:00:00Z';
const SOUND = { looksWrong: false, recordedAt: AT, startedAt: AT };

const asked = async (
	address: string,
	felt: object[] = [],
	changes: object[] = [],
	clock = SOUND,
	columns: object | null = null
) =>
	(await load({
		data: { ride: { felt }, said: { changes }, stages: { clock }, columns, history: ['kept'] },
		url: new URL(`http://ledger/rides/1${address}`)
	} as never)) as Record<string, unknown>;

describe('the page of a ride', () => {
	it('fetches the panel of an event where the address names one', async () => {
		expect((await asked('?event=3')).EventPanel).toBe(EventPanel);
		expect((await asked('')).EventPanel).toBeUndefined();
	});

	it('fetches what few rides have where this one has it, and keeps what the server sent', async () => {
		const all = await asked('', [{}], [{}]);
		expect([all.FeltSlips, all.RideSplit]).toEqual([FeltSlips, RideSplit]);
		const none = await asked('');
		expect([none.FeltSlips, none.RideSplit]).toEqual([undefined, undefined]);
		expect([none.RideClock, none.ReadColumns]).toEqual([undefined, undefined]);
		const wrong = await asked('', [], [], { ...SOUND, looksWrong: true }, {});
		expect([wrong.RideClock, wrong.ReadColumns]).toEqual([RideClock, ReadColumns]);
		expect((await asked('', [], [], { ...SOUND, startedAt: '2026-06-18T09:00:00Z' })).RideClock).toBe(
			RideClock
		);
		expect(none.history).toEqual(['kept']);
	});
});
