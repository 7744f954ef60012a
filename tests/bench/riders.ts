// Many riders at once, as a process of its own: npx tsx tests/bench/riders.ts ORIGIN FOLDER RIDERS
// Each takes the next file of the folder, uploads it as the page does, and goes on until none is left.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { chooseName, uploadFile } from './serverClient';

const [origin, folder, riders] = process.argv.slice(2);
const files = readdirSync(folder).sort();
const tookMs: number[] = [];
let next = 0;
await Promise.all(Array.from({ length: Number(riders) }, (_, rider) => ride(rider + 1)));
process.stdout.write(JSON.stringify(tookMs));

async function ride(rider: number): Promise<void> {
	const cookie = await chooseName(origin, `Rider ${rider}`);
	while (next < files.length) {
		const name = files[next++];
		const bytes = readFileSync(join(folder, name));
		const from = performance.now();
		await uploadFile(origin, cookie, name, bytes);
		tookMs.push(performance.now() - from);
	}
}
