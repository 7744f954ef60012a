import { describe, expect, it } from 'vitest';
import { BulkSend } from '$lib/ui/bulk/bulkSend';
import { ridesAmong } from '$lib/ui/bulk/filesOf';
import { timeLeft } from '$lib/ui/bulk/timeLeft';
import { shaOf, uploadServer } from './uploadServer';

const chosen = (count: number, from = 0) =>
	Array.from({ length: count }, (_, i) => ({
		file: new File([`ride ${from + i}`], `ride ${from + i}.fit`),
		folder: 'spring'
	}));

function bulkOn(one: ReturnType<typeof uploadServer>) {
	const bulk = new BulkSend({ fetch: one.fetch, onChange: () => {}, wait: async () => {} });
	const ended = async () => {
		await expect.poll(() => bulk.view().state, { timeout: 5000, interval: 5 }).not.toBe('sending');
		return bulk.view().counts;
	};
	return { bulk, ended };
}

/** Five files, of the first two of which the server knows while its answers are held on the way. */
async function announcing() {
	const one = uploadServer();
	const open = one.hold('answer');
	const { bulk, ended } = bulkOn(one);
	bulk.add(chosen(5), {});
	await expect.poll(() => one.uploads.size).toBe(2);
	return { one, bulk, ended, open };
}

describe('BulkSend', () => {
	it('sends hundreds of files, shows a dozen lines and counts the rest', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		bulk.add(chosen(300), { wet: true });
		expect(bulk.view().shown.length).toBeLessThanOrEqual(12);
		expect(await ended()).toMatchObject({ all: 300, sent: 300, waiting: 0 });
		expect(one.stored.size).toBe(300);
		const { doneBytes, allBytes } = bulk.view();
		expect(doneBytes).toBe(allBytes);
	});

	it('does not send what the ledger has: a folder chosen again after a closed page sends the rest alone', async () => {
		const one = uploadServer();
		const first = bulkOn(one);
		first.bulk.add(chosen(90), {});
		await expect.poll(() => one.stored.size, { interval: 1 }).toBeGreaterThan(20);
		first.bulk.pause();
		await first.ended();
		const arrived = one.stored.size;
		expect(arrived).toBeLessThan(90);
		const again = bulkOn(one);
		again.bulk.add(chosen(90), {});
		const counts = await again.ended();
		expect(counts.known).toBe(arrived);
		expect(counts.sent).toBe(90 - arrived);
		expect(one.stored.size).toBe(90);
	});

	it('pauses and goes on without sending anything twice', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		const open = one.hold();
		bulk.add(chosen(5), {});
		await expect.poll(() => one.requests.filter((r) => r.startsWith('PATCH')).length).toBe(2);
		bulk.pause();
		bulk.goOn();
		bulk.pause();
		open();
		expect(await ended()).toMatchObject({ waiting: 5, sent: 0 });
		expect(bulk.view().state).toBe('paused');
		bulk.goOn();
		expect(await ended()).toMatchObject({ sent: 5 });
		expect(one.requests.filter((request) => request === 'POST /uploads')).toHaveLength(5);
	});

	it('paused while the server answers an announcement goes on with that upload, and leaves none behind', async () => {
		const { one, bulk, ended, open } = await announcing();
		bulk.pause();
		bulk.goOn();
		bulk.pause();
		open();
		await expect.poll(() => bulk.view().counts).toMatchObject({ waiting: 5, sent: 0 });
		bulk.goOn();
		expect(await ended()).toMatchObject({ sent: 5 });
		expect(one.requests.filter((request) => request === 'POST /uploads')).toHaveLength(5);
		expect(one.uploads.size).toBe(0);
	});

	it('given up while the server answers an announcement takes that upload back', async () => {
		const { one, bulk, ended, open } = await announcing();
		const given = bulk.cancel();
		open();
		await given;
		expect(await ended()).toMatchObject({ all: 0 });
		await expect.poll(() => one.uploads.size).toBe(0);
		expect(one.stored.size).toBe(0);
	});

	it('given up keeps what arrived and takes back what was on its way', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		bulk.add(chosen(2), {});
		await ended();
		const open = one.hold();
		bulk.add(chosen(8, 2), {});
		await expect.poll(() => one.uploads.size).toBe(2);
		const given = bulk.cancel();
		open();
		await given;
		expect(await ended()).toMatchObject({ all: 2, sent: 2 });
		expect(one.uploads.size).toBe(0);
		expect(one.stored.size).toBe(2);
	});

	it('tells a broken connection from a refusal, and tries again what broke', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		one.faults.push((request) => request.startsWith('PATCH'));
		bulk.add(chosen(3), {});
		expect(await ended()).toMatchObject({ interrupted: 3 });
		one.faults.length = 0;
		bulk.retry();
		expect(await ended()).toMatchObject({ sent: 3 });
	});

	it('sends by itself what broke off as soon as another file shows that the line is back', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		let broke = 0;
		// as long as it takes some ten files to break off
		one.faults.push(() => {
			broke = Math.max(broke, bulk.view().counts.interrupted);
			return one.requests.length < 60;
		});
		bulk.add(chosen(20), {});
		expect(await ended()).toMatchObject({ sent: 20, interrupted: 0 });
		expect(broke).toBeGreaterThan(3);
		expect(one.stored.size).toBe(20);
	});

	it('leaves to a person a file that breaks off again and again, and its bytes are in no time left', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		one.faults.push((request) => request === 'PATCH /uploads/u2');
		bulk.add(chosen(20), {});
		const { sent, interrupted } = await ended();
		expect({ sent, interrupted }).toEqual({ sent: 19, interrupted: 1 });
		expect(bulk.view().shown.find(({ stage }) => stage === 'interrupted')?.broke).toBe(3);
	});

	it('reads at most so much of large files before it sends the first one', async () => {
		const one = uploadServer();
		const { bulk, ended } = bulkOn(one);
		const read: string[] = [];
		const files = chosen(4).map(({ file, folder }) => {
			// as large as it says to the one who plans; its few bytes are what is sent
			Object.defineProperty(file, 'size', { value: 30 * 2 ** 20 });
			const bytes = file.arrayBuffer.bind(file);
			file.arrayBuffer = () => {
				read.push(file.name);
				return bytes();
			};
			return { file, folder };
		});
		const open = one.hold();
		bulk.add(files, {});
		await expect.poll(() => one.requests.includes('POST /uploads/known')).toBe(true);
		expect(read).toHaveLength(2);
		bulk.pause();
		open();
		await ended();
	});

	it('foretells from what the line brings, not from what the server held of a file before', async () => {
		const content = Buffer.alloc(9_500_000, 'slip');
		const one = uploadServer();
		one.uploads.set('u0', { name: 'all.zip', size: content.length, bytes: content.subarray(0, 8_000_000) });
		let now = 0;
		const bulk = new BulkSend({
			fetch: async (input, init) => {
				if (init?.method === 'PATCH') now += 5000;
				return one.fetch(input, init);
			},
			onChange: () => {},
			nowMs: () => now,
			wait: async () => {}
		});
		const open = one.hold();
		bulk.add([{ file: new File([content], 'all.zip'), folder: '' }, ...chosen(1)], {});
		await expect.poll(() => now).toBeGreaterThanOrEqual(5000);
		// the second file's few bytes are all that has come; eight million were there before
		expect(bulk.view().leftS ?? Infinity).toBeGreaterThan(60);
		open();
	});

	it('goes on with a large file of a closed page where its pieces agree, and begins anew where they do not', async () => {
		const content = Buffer.alloc(9_500_000, 'slip');
		for (const same of [true, false]) {
			const one = uploadServer();
			const held = Buffer.from(content.subarray(0, 5_300_000));
			if (!same) held[4_200_000] ^= 1;
			one.uploads.set('u0', { name: 'all.zip', size: content.length, bytes: held });
			const { bulk, ended } = bulkOn(one);
			bulk.add([{ file: new File([content], 'all.zip'), folder: '' }], {});
			expect(await ended()).toMatchObject({ sent: 1 });
			expect([...one.stored.keys()]).toEqual([shaOf(content)]);
			expect(one.requests.filter((request) => request.startsWith('PATCH'))).toHaveLength(same ? 5 : 10);
			expect(one.requests.includes('DELETE /uploads/u0')).toBe(!same);
		}
	});
});

describe('timeLeft', () => {
	it('says nothing at first, then what the last half minute foretells, and forgets a pause', () => {
		let now = 0;
		const speed = timeLeft(() => now);
		speed.add(1000);
		expect(speed.leftS(1000)).toBeNull();
		for (now = 1000; now <= 60_000; now += 1000) speed.add(2000);
		now = 60_000;
		expect(speed.leftS(20_000)).toBeCloseTo(10, 0);
		// all has come and the last answer has not: "0:00 left" may stand for minutes
		expect(speed.leftS(0)).toBeNull();
		now = 75_000;
		expect(speed.leftS(20_000)).toBeCloseTo(20, 0);
		now = 95_000;
		expect(speed.leftS(20_000)).toBeNull();
		now = 600_000;
		speed.restart();
		expect(speed.leftS(20_000)).toBeNull();
	});
});

describe('ridesAmong', () => {
	it('leaves out of a folder what is no ride by its name, and takes what was chosen by itself', () => {
		const names = ['a.fit', 'b.TCX.GZ', 'c.zip', 'cat.jpg', '.hidden.fit', 'no ending'];
		const of = (folder: string) =>
			ridesAmong(names.map((name) => ({ file: new File(['x'], name), folder }))).rides.map(
				({ file }) => file.name
			);
		expect(of('spring')).toEqual(['a.fit', 'b.TCX.GZ', 'c.zip']);
		expect(of('')).toEqual(names);
		expect(of('__MACOSX/spring')).toEqual([]);
	});
});
