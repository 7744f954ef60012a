import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import { ZipFile } from 'yazl';
import {
	answerRides,
	createBuild,
	exportArchive,
	fitBuild,
	openLedger,
	recordVerdict,
	rideView,
	splitRide,
	withdrawRide,
	type ExportOptions,
	type Ledger
} from '$lib/server';
import { openArchive } from '$lib/server/archive/openArchive';
import { packChannel } from '../../../src/jobs/analysis/packChannel';
import {
	addRide,
	freshFolder,
	freshLedger,
	HOUR_MS,
	slipAt,
	START_MS,
	storeSomething,
	withHardware,
	type TestLedger
} from '../testLedger';

export const instant = (ms: number) => new Date(ms).toISOString();

/** A ledger with hardware, rides, a copy, a split, a verdict, a lap, answers and a file that waits. */
export async function richLedger(): Promise<TestLedger> {
	const test = freshLedger();
	const { ledger, actor } = test;
	const { wheelId } = withHardware(test);
	const trace = Float64Array.from({ length: 3601 }, (_, s) => s * 8);
	const channels = [
		packChannel('distanceM', trace, 0.1),
		packChannel(
			'state',
			trace.map(() => 4),
			1
		)
	];
	const exposure = {
		cells: [
			{
				torqueFromNm: 4,
				torqueToNm: 8,
				gear: '40/20',
				ratio: 2,
				drivenM: 10,
				drivenS: 2,
				observedM: 5.123456789,
				observedS: 1,
				drivenTurns: 3,
				observedTurns: 1,
				pickUps: 1,
				observedPickUps: 0
			}
		],
		hours: [],
		marks: [{ timeS: 600.25, observed: true }]
	};
	const rideId = await addRide(test, { events: [slipAt(100)], channels, exposure }, { lapsMeanSlips: true });
	await addRide(test, { format: 'tcx', channels });
	const third = await addRide(test, { startedAtMs: START_MS + 9 * HOUR_MS });
	const next = createBuild(ledger, actor, { name: '=New', description: 'ünïcödé\n"quoted"' });
	fitBuild(ledger, actor, { wheelId, buildId: next, from: instant(START_MS + HOUR_MS / 2) });
	splitRide(ledger, actor, rideId);
	const [event] = rideView(ledger, rideId)!.eventList;
	recordVerdict(ledger, actor, event.id, { verdict: 'confirmed', note: '=1+1' }, { rideId, verdictId: null });
	answerRides(ledger, actor, 'wet', [{ rideId, value: 'yes' }]);
	withdrawRide(ledger, actor, third, 'wrong bicycle');
	await storeSomething(test, { name: 'waits.fit' });
	return test;
}

export async function exported({ ledger }: { ledger: Ledger }, options: ExportOptions = {}): Promise<string> {
	const path = join(freshFolder(), 'ledger.zip');
	await pipeline(exportArchive(ledger, options), createWriteStream(path));
	return path;
}

export async function manifestOf(path: string) {
	const archive = await openArchive(path);
	archive.close();
	return archive.manifest;
}

export const hashOf = (content: Buffer | string) => createHash('sha256').update(content).digest('hex');

export async function partsOf(path: string): Promise<Map<string, Buffer>> {
	const archive = await openArchive(path);
	const parts = new Map<string, Buffer>();
	const names = [
		'README.txt',
		'manifest.json',
		...archive.manifest.tables.map(({ name }) => `tables/${name}.json`)
	];
	for (const name of [
		...names,
		...archive.manifest.files
			.filter((file) => file.included)
			.map(({ sha256 }) => `sources/${sha256.slice(0, 2)}/${sha256}`)
	]) {
		const pieces: Buffer[] = [];
		for await (const piece of await archive.read(name)) pieces.push(piece as Buffer);
		parts.set(name, Buffer.concat(pieces));
	}
	archive.close();
	return parts;
}

/** The archive with some of its parts changed. */
export async function changed(
	path: string,
	change: (parts: Map<string, Buffer>) => void,
	extra: [string, Buffer][] = []
): Promise<string> {
	const parts = await partsOf(path);
	change(parts);
	const zip = new ZipFile();
	for (const [name, content] of [...parts, ...extra]) zip.addBuffer(content, name);
	zip.end();
	const target = join(freshFolder(), 'changed.zip');
	await pipeline(zip.outputStream, createWriteStream(target));
	return target;
}

/** A ledger with nothing at all in it, not even a person. */
export function emptyLedger(): Ledger {
	return openLedger(freshFolder(), { migrate: true, now: () => START_MS + 2000 * HOUR_MS });
}
