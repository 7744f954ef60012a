import { readFileSync } from 'node:fs';
import { send, type GuardedServer } from './guardedServer';

/** Hands in a file by the resumable protocol, as the page does, and waits until it was read. */
export async function handIn(
	server: GuardedServer,
	cookie: string,
	path: string,
	said: Record<string, unknown> = {}
): Promise<{ uploadId: string; rideId: number }> {
	const headers = { host: new URL(server.origin).host, origin: server.origin, cookie };
	const body = readFileSync(path);
	const announced = await send(server, '/uploads', {
		method: 'POST',
		headers: { ...headers, 'content-type': 'application/json' },
		body: JSON.stringify({ name: 'ride.fit', size: body.length, ...said })
	});
	const { id } = JSON.parse(announced.body) as { id: string };
	await send(server, `/uploads/${id}`, {
		method: 'PATCH',
		headers: { ...headers, 'content-type': 'application/octet-stream', 'upload-offset': '0' },
		body
	});
	const finished = await send(server, `/uploads/${id}/finish`, { method: 'POST', headers });
	const { importId } = JSON.parse(finished.body) as { importId: number };
	const ledger = server.ledger();
	for (let tried = 0; tried < 600; tried++) {
		const row = ledger.database
			.prepare<[number], { rideId: number | null }>('SELECT ride_id AS rideId FROM import WHERE id = ?')
			.get(importId);
		if (row?.rideId) return { uploadId: id, rideId: row.rideId };
		await new Promise((wait) => setTimeout(wait, 100));
	}
	throw new Error('the file was not read');
}
