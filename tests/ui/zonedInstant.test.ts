import { describe, expect, it } from 'vitest';
import { wallClock, zonedInstant } from '$lib/ui/zonedInstant';

describe('zonedInstant', () => {
	it('reads a wall clock in summer and in winter', () => {
		expect(zonedInstant('2026-05-04T18:30', 'Europe/Zurich')).toBe('2026-05-04T16:30:00.000Z');
		expect(zonedInstant('2026-01-04T18:30', 'Europe/Zurich')).toBe('2026-01-04T17:30:00.000Z');
		expect(zonedInstant('2026-01-04T18:30', 'Asia/Kathmandu')).toBe('2026-01-04T12:45:00.000Z');
	});

	it('takes an hour that the clock skipped as if it had not been put forward', () => {
		expect(zonedInstant('2026-03-29T02:30', 'Europe/Zurich')).toBe('2026-03-29T01:30:00.000Z');
	});

	it('takes the first of an hour that was shown twice', () => {
		expect(zonedInstant('2026-10-25T02:30', 'Europe/Zurich')).toBe('2026-10-25T00:30:00.000Z');
	});

	it('refuses what is no date and time', () => {
		expect(zonedInstant('2026-02-30T10:00', 'UTC')).toBeNull();
		expect(zonedInstant('2026-02-20T25:00', 'UTC')).toBeNull();
		expect(zonedInstant('yesterday', 'UTC')).toBeNull();
		expect(zonedInstant('', 'UTC')).toBeNull();
	});

	it('comes back from the wall clock it shows', () => {
		for (const zone of ['UTC', 'America/St_Johns', 'Pacific/Chatham']) {
			const instant = '2026-07-14T05:12:00.000Z';
			expect(zonedInstant(wallClock(instant, zone), zone)).toBe(instant);
		}
	});
});
