import { describe, expect, it } from 'vitest';
import { moreHints } from '../../src/routes/rides/moreHints';

describe('moreHints', () => {
	it('sends only what was said', () => {
		expect(moreHints({ bike: '', surface: '', load: ' ' })).toEqual({});
		expect(moreHints({ bike: '3', surface: 'tarmac', load: '12,5' })).toEqual({
			bikeId: 3,
			surface: 'tarmac',
			loadKg: 12.5
		});
	});

	it('keeps no load apart from a load of nothing, and leaves nonsense to the ledger', () => {
		expect(moreHints({ bike: '', surface: '', load: '0' })).toEqual({ loadKg: 0 });
		expect(moreHints({ bike: '', surface: '', load: 'much' })).toEqual({ loadKg: 'much' });
	});
});
