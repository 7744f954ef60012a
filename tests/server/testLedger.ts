import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import {
	actorOf,
	choosePerson,
	createBuild,
	createWheel,
	fitBuild,
	openLedger,
	storeFile,
	type Actor,
	type Ledger,
	type RideHints
} from '$lib/server';
import { takeNextImport } from '$lib/server/queue/importQueue';
import { newHolder, takeLease, type LeaseHolder } from '$lib/server/queue/lease';
import { saveImport } from '$lib/server/queue/saveImport';
import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import type { SlipEvent } from '$lib/slip/analysis';
import { packChannel } from '../../src/jobs/analysis/packChannel';
import { rideSignature } from '../../src/jobs/analysis/rideSignature';
import type { AnalysedFile } from '../../src/jobs/analysis/messages';

const folders: string[] = [];
const ledgers: Ledger[] = [];

afterEach(() => {
	for (const ledger of ledgers.splice(0)) ledger.close();
	for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** A folder of this test's own, removed after it. */
export function freshFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-'));
	folders.push(folder);
	return folder;
}

export const START_MS = Date.UTC(2026, 4, 4, 8);
export const HOUR_MS = 3_600_000;

export interface TestLedger {
	ledger: Ledger;
	actor: Actor;
	holder: LeaseHolder;
	/** moves the ledger's clock */
	clock: { ms: number };
}

/** A ledger on disk with its owner, its clock in the test's hand, and the runner lease taken. */
export function freshLedger(folder = freshFolder()): TestLedger {
	const clock = { ms: START_MS + 1000 * HOUR_MS };
	const ledger = openLedger(folder, { migrate: true, now: () => clock.ms });
	ledgers.push(ledger);
	const actor = actorOf(choosePerson(ledger, 'Owner of the test'));
	const holder = newHolder();
	takeLease(ledger, 'runner', holder);
	return { ledger, actor, holder, clock };
}

/** One wheel with one build on it since before every test ride. */
export function withHardware({ ledger, actor }: TestLedger): { wheelId: number; buildId: number } {
	const wheelId = createWheel(ledger, actor, { name: 'Wheel A', hub: 'a hub' });
	const buildId = createBuild(ledger, actor, { name: 'Old', description: 'as it came', stepHubDeg: 15 });
	fitBuild(ledger, actor, { wheelId, buildId, from: new Date(START_MS - 10 * HOUR_MS).toISOString() });
	return { wheelId, buildId };
}

export function slipAt(startS: number, change: Partial<SlipEvent> = {}): SlipEvent {
	return {
		startS,
		endS: startS + 2,
		kind: 'slip',
		overrunCrankDeg: { value: 120, lower: 100, upper: 140 },
		overrunHubDeg: 240,
		gear: null,
		hubTorqueNm: { value: 30, lower: 28, upper: 32 },
		powerLost: 0.8,
		strength: 0.9,
		atM: startS * 8,
		observed: true,
		reasons: ['the crank ran ahead'],
		...change
	};
}

/** What the child process hands back, for rides whose file does not matter. */
export function analysedFile(change: Partial<AnalysedFile> = {}): AnalysedFile {
	const durationS = change.durationS ?? 3600;
	const startedAtMs = change.startedAtMs ?? START_MS;
	const seconds = Math.floor(durationS) + 1;
	const trace = (shape: (second: number) => number) =>
		Float64Array.from({ length: seconds }, (_, i) => shape(i));
	const phase = (startedAtMs / 1000) % 997;
	const cadenceRpm = trace((s) => 80 + Math.round(10 * Math.sin((s + phase) / 7)));
	const speedMps = trace((s) => 8 + Math.sin((s + phase) / 40));
	const traces = { speedMps, cadenceRpm } as Parameters<typeof rideSignature>[1];
	return {
		format: 'fit',
		startedAtMs,
		localOffsetS: 7200,
		durationS,
		trainer: null,
		motorAssisted: null,
		signature: rideSignature(startedAtMs, traces),
		analysisVersion: ANALYSIS_VERSION,
		totalM: 30_000,
		observedM: 20_000,
		drivenM: 25_000,
		observed: [{ startS: 0, endS: 2400, startM: 0, endM: 20_000 }],
		events: [],
		exposure: { cells: [], hours: [], marks: [] },
		recording: { speedFrom: 'wheel', rhythm: 'each second' },
		detail: { gears: [], warnings: [], sensors: [], marksS: [], gaps: [], pauses: [] },
		channels: [packChannel('speedMps', speedMps, 0.001), packChannel('cadenceRpm', cadenceRpm, 0.05)],
		...change
	};
}

let files = 0;

/** Stores bytes that no other test has. */
export async function storeSomething(
	{ ledger, actor }: TestLedger,
	input: { name?: string; content?: string; hints?: RideHints; example?: boolean } = {}
): Promise<number> {
	const content = Buffer.from(input.content ?? `file ${files++} of ${process.pid}`);
	const { importId } = await storeFile(ledger, actor, {
		name: input.name ?? 'ride.fit',
		bytes: pieces(content),
		hints: input.hints,
		example: input.example
	});
	return importId;
}

async function* pieces(content: Uint8Array) {
	yield content.subarray(0, content.length >> 1);
	yield content.subarray(content.length >> 1);
}

/** A ride of the ledger, by the way that every file takes, without the child process. */
export async function addRide(
	test: TestLedger,
	file: Partial<AnalysedFile> = {},
	hints: RideHints = {},
	example = false
): Promise<number> {
	await storeSomething(test, { hints, example });
	const queued = takeNextImport(test.ledger, test.holder);
	if (!queued) throw new Error('nothing was queued');
	const rideId = saveImport(test.ledger, test.holder, queued, analysedFile(file));
	if (rideId === null) throw new Error('the ride was not saved');
	return rideId;
}

/** All rows of a query, for looking past the functions under test. */
export function rowsOf(ledger: Ledger, sql: string): Record<string, unknown>[] {
	return ledger.database.prepare<[], Record<string, unknown>>(sql).all();
}
