import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import {
	actorOf,
	attachFeltPhoto,
	attachmentFile,
	createPerson,
	eraseRider,
	FELT_PHOTOS,
	findPerson,
	historyOf,
	LARGEST_ATTACHMENT_BYTES,
	mayTouch,
	ownRide,
	recordFeltSlip,
	removeExample,
	rideView,
	takeBackFeltPhoto,
	takeBackFeltSlip,
	type Actor
} from '$lib/server';
import { grayPng } from '$lib/server/example/grayPng';
import { ridesTouchedSince } from '$lib/server/queue/ridesTouchedSince';
import { jpegWith, SECRET } from './photos';
import { addRide, freshLedger, rowsOf, withHardware } from './testLedger';

const PHOTO = jpegWith({ orientation: 6 });
const other = (shade: number) => grayPng(1, 1, Uint8Array.of(shade));

async function withFelt() {
	const test = freshLedger();
	const { ledger, actor } = test;
	withHardware(test);
	const make = (name: string): Actor =>
		actorOf(findPerson(ledger, createPerson(ledger, actor, { name, role: 'rider' }))!);
	const [rider, second] = [make('Ro Nowhere'), make('Si Nowhere')];
	const rideId = await addRide(test, {}, { riderId: rider.personId });
	const feltId = recordFeltSlip(ledger, rider, rideId, { clock: '10:20' });
	const of = { rideId, feltId };
	const attach = (bytes: Uint8Array, by = rider) =>
		attachFeltPhoto(ledger, by, of, { name: 'photo.jpg', bytes });
	return { ...test, rider, second, rideId, feltId, of, attach };
}

describe('a photo of a felt slip', () => {
	it('stands with the slip for rider and workshop, without the place where it was taken', async () => {
		const { ledger, actor, rider, rideId, attach } = await withFelt();
		const evidence = rowsOf(ledger, 'SELECT changes FROM evidence');
		const trail = rowsOf(ledger, 'SELECT max(id) AS last FROM trail')[0].last as number;
		const id = await attach(PHOTO);
		const kept = readFileSync(attachmentFile(ledger, id)!.path);
		expect(kept.toString('latin1')).not.toContain(SECRET);
		const photos = [{ id, byId: rider.personId, at: new Date(ledger.now()).toISOString() }];
		expect(ownRide(ledger, rider.personId, rideId)!.felt[0].photos).toMatchObject(photos);
		expect(rideView(ledger, rideId)!.felt[0].photos).toMatchObject(photos);
		expect(historyOf(ledger, 'ride', rideId)[0]).toMatchObject({
			action: 'attached',
			subject: 'felt slip',
			thing: { href: `/rides/${rideId}#felt` }
		});
		// it is no evidence, and no ride has to be looked at again for it
		expect(rowsOf(ledger, 'SELECT changes FROM evidence')).toEqual(evidence);
		expect(ridesTouchedSince(ledger, trail)).toEqual([]);
		takeBackFeltPhoto(ledger, actor, { rideId, feltId: 1 }, id);
		expect(rideView(ledger, rideId)!.felt[0].photos).toEqual([]);
	});

	it('is a picture of at most 10 MB, told from its bytes, and there are at most four', async () => {
		const { ledger, attach } = await withFelt();
		const large = Buffer.concat([PHOTO, Buffer.alloc(LARGEST_ATTACHMENT_BYTES)]);
		await expect(attach(large)).rejects.toMatchObject({ code: 'too-large' });
		for (const bytes of ['a note', '%PDF-1.7', '<svg onload="x"/>', '\u007fELF'])
			await expect(attach(Buffer.from(bytes))).rejects.toThrow('Only photos are taken here');
		await expect(attach(Buffer.alloc(0))).rejects.toThrow('No file was chosen');
		await expect(attach(PHOTO.subarray(0, 200))).rejects.toThrow('cut off or damaged');
		expect(rowsOf(ledger, 'SELECT 1 FROM attachment')).toEqual([]);
		for (let shade = 0; shade < FELT_PHOTOS; shade++) await attach(other(shade));
		await expect(attach(PHOTO)).rejects.toMatchObject({
			code: 'conflict',
			sentence: expect.stringContaining('There are 4 files attached here already')
		});
		expect(rowsOf(ledger, 'SELECT 1 FROM attachment')).toHaveLength(FELT_PHOTOS);
	});

	it('is not a fifth one, however many come at once; what is refused is not kept', async () => {
		const { ledger, attach } = await withFelt();
		for (let shade = 1; shade < FELT_PHOTOS; shade++) await attach(other(shade));
		const together = await Promise.allSettled([attach(PHOTO), attach(other(77)), attach(other(78))]);
		expect(together.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected', 'rejected']);
		expect(rowsOf(ledger, 'SELECT 1 FROM attachment')).toHaveLength(FELT_PHOTOS);
		const kept = readdirSync(join(ledger.folder, 'sources'), { recursive: true, withFileTypes: true })
			.filter((entry) => entry.isFile())
			.map(({ name }) => name);
		const named = rowsOf(ledger, 'SELECT sha256 FROM source').map(({ sha256 }) => sha256);
		expect(kept.filter((name) => !named.includes(name))).toEqual([]);
		expect(readdirSync(join(ledger.folder, 'incoming'))).toEqual([]);
	});

	it('belongs to whoever felt it: other riders neither attach nor take away nor see', async () => {
		const { ledger, rider, second, of, attach } = await withFelt();
		const refused = expect.objectContaining({ code: 'not-allowed' });
		await expect(attach(PHOTO, second)).rejects.toEqual(refused);
		const id = await attach(PHOTO);
		expect(() => takeBackFeltPhoto(ledger, second, of, id)).toThrow(refused);
		const sees = (who: Actor, photo: number) =>
			mayTouch(() => ledger, who, '/attachments/[id]', { id: String(photo) });
		expect([sees(rider, id), sees(second, id), sees(rider, 99)]).toEqual([true, false, false]);
		// what the workshop attached elsewhere is none of theirs
		ledger.database.prepare("UPDATE attachment SET subject = 'inspection' WHERE id = ?").run(id);
		expect(sees(rider, id)).toBe(false);
	});

	it('is not taken for a slip that was taken back, or that is of another ride', async () => {
		const { ledger, rider, rideId, feltId, attach } = await withFelt();
		const elsewhere = { rideId: rideId + 1, feltId };
		const missing = expect.objectContaining({ code: 'not-found' });
		await expect(attachFeltPhoto(ledger, rider, elsewhere, { name: 'a.jpg', bytes: PHOTO })).rejects.toEqual(
			missing
		);
		takeBackFeltSlip(ledger, rider, rideId, feltId);
		await expect(attach(PHOTO)).rejects.toEqual(missing);
	});

	it('goes with the example when it was taken of an invented ride', async () => {
		const test = freshLedger();
		const { ledger, actor } = test;
		const rideId = await addRide(test, {}, {}, true);
		const feltId = recordFeltSlip(ledger, actor, rideId, { clock: '10:20' });
		const file = { name: 'a.jpg', bytes: PHOTO };
		const { path } = attachmentFile(ledger, await attachFeltPhoto(ledger, actor, { rideId, feltId }, file))!;
		removeExample(ledger, actor);
		expect(rowsOf(ledger, 'SELECT 1 FROM attachment')).toEqual([]);
		expect(existsSync(path)).toBe(false);
	});

	it('goes with its bytes and its name when the files of the rider are erased', async () => {
		const { ledger, actor, rider, rideId, attach } = await withFelt();
		const id = await attach(PHOTO);
		const { path } = attachmentFile(ledger, id)!;
		expect(existsSync(path)).toBe(true);
		expect(eraseRider(ledger, actor, { personId: rider.personId, reason: 'asked for' })).toMatchObject({
			rides: 1,
			attached: 1
		});
		expect(existsSync(path)).toBe(false);
		expect(rideView(ledger, rideId)!.felt[0].photos).toEqual([]);
		expect(JSON.stringify(rowsOf(ledger, 'SELECT detail FROM trail'))).not.toContain('photo.jpg');
		await expect(attach(PHOTO)).rejects.toThrow('not taken again');
	});
});
