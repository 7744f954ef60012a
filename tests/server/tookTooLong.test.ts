import { describe, expect, it } from 'vitest';
import { processorMs } from '$lib/server/queue/processorMs';
import { tookTooLong } from '$lib/server/queue/tookTooLong';

describe('tookTooLong', () => {
	it('counts the time of a process that had a processor', () => {
		expect(tookTooLong(999, 999, 1000)).toBe(false);
		expect(tookTooLong(1001, 1001, 1000)).toBe(true);
		expect(tookTooLong(1001, null, 1000)).toBe(true);
	});

	it('gives one that waited for a processor up to four times as long, and no more', () => {
		expect(tookTooLong(3000, 400, 1000)).toBe(false);
		expect(tookTooLong(3000, 501, 1000)).toBe(true);
		expect(tookTooLong(4001, 0, 1000)).toBe(true);
	});
});

describe('processorMs', () => {
	it('rises with what a process computes, and knows nothing of one that is gone', () => {
		if (process.platform !== 'linux') return expect(processorMs(process.pid)).toBeNull();
		const before = processorMs(process.pid)!;
		const had = process.cpuUsage();
		for (let spent = 0; spent < 60_000;) {
			const { user, system } = process.cpuUsage(had);
			spent = user + system;
		}
		expect(processorMs(process.pid)! - before).toBeGreaterThanOrEqual(40);
		expect(processorMs(2 ** 30)).toBeNull();
	});
});
