import { expect } from 'vitest';
import { grayPng } from '$lib/server/example/grayPng';
import { chunk, pngWith, SECRET } from '../server/photos';
import type { Visit } from './workshop';

/** width of the photo that a rider sends, pixels */
const PHOTO_WIDTH = 320;

/**
 * A rider sends a photo of a slip that was felt, from the ride's own page; what is no photo or too large is refused,
 * and one that was sent by mistake is taken away.
 */
export async function expectPhotoOfFelt(phone: Visit): Promise<void> {
	const { page } = phone;
	const camera = page.getByLabel(/^Photo of what slipped about/);
	expect(await camera.getAttribute('capture')).toBe('environment');
	const send = (name: string, mimeType: string, buffer: Buffer) =>
		camera.setInputFiles({ name, mimeType, buffer });
	const pixels = Uint8Array.from({ length: PHOTO_WIDTH * 240 }, (_, i) => (i % PHOTO_WIDTH) % 256);
	const photo = Buffer.from(grayPng(PHOTO_WIDTH, 240, pixels));
	await send('a.png', 'image/png', pngWith(photo, [chunk('eXIf', SECRET)]));
	const shown = page.getByRole('img', { name: /^Photo 1/ });
	await shown.waitFor();
	expect(await widthOf(shown)).toBe(PHOTO_WIDTH);
	const kept = await shown.evaluate(async (one: HTMLImageElement) => {
		const answer = await fetch(one.src);
		return {
			type: answer.headers.get('content-type'),
			bytes: [...new Uint8Array(await answer.arrayBuffer())]
		};
	});
	expect(kept.type).toBe('image/png');
	expect(Buffer.from(kept.bytes).equals(photo)).toBe(true);
	await send('b.jpg', 'image/jpeg', Buffer.from('<svg/>'));
	await page.getByText('Only photos are taken here').waitFor();
	// told on the phone, before ten megabytes are sent over its line
	await send('c.png', 'image/png', Buffer.alloc(10 * 2 ** 20 + 1));
	await page.getByText('set the camera to smaller pictures').waitFor();
	await send('d.png', 'image/png', Buffer.from(grayPng(1, 1, new Uint8Array(1))));
	await page.getByRole('button', { name: /^Take it away: photo 2/ }).click();
	await page.getByRole('img', { name: /^Photo 2/ }).waitFor({ state: 'detached' });
	expect(await shown.count()).toBe(1);
	// the browser reports refused forms as failed requests; nothing else may be there
	expect(phone.complaints.filter((complaint) => !complaint.includes('status of 400'))).toEqual([]);
	phone.complaints.length = 0;
}

/** The workshop sees the same photo beside the slip. */
export async function expectPhotoSeen({ page }: Visit): Promise<void> {
	const photo = page.locator('#felt').getByRole('img', { name: /^Photo by P\d+/ });
	expect(await widthOf(photo)).toBe(PHOTO_WIDTH);
}

const widthOf = (shown: ReturnType<Visit['page']['locator']>) =>
	shown.evaluate((one: HTMLImageElement) => one.decode().then(() => one.naturalWidth));
