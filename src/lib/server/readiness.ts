import { accessSync, constants, statfsSync } from 'node:fs';
import { join } from 'node:path';
import type { Ledger } from './ledger/openLedger';

/** Whether this server can do its work now; nothing about people, rides, places or amounts. */
export interface Readiness {
	ready: boolean;
	/** somebody holds the right to analyse and shows that he lives */
	runner: boolean;
	/** the ledger can be written to */
	ledgerWritable: boolean;
	/** the folder of the files can be written to */
	storeWritable: boolean;
	/** the disk has room for what comes */
	diskSpace: boolean;
	/** what waits is being worked on */
	queueMoves: boolean;
}

/** less is too little for an upload, its traces and the ledger's log; common practice, no source */
const LEAST_FREE_BYTES = 256 * 2 ** 20;
const HEARTBEAT_OLD_AFTER_MS = 30_000;
/** longer than the time that one file may take */
const STANDS_AFTER_MS = 10 * 60 * 1000;

export function readiness(ledger: Ledger): Readiness {
	const answers = {
		runner: asked(() => runnerLives(ledger)),
		ledgerWritable: asked(() => canWrite(ledger)),
		storeWritable: asked(() => {
			for (const part of ['sources', 'incoming']) accessSync(join(ledger.folder, part), constants.W_OK);
			return true;
		}),
		diskSpace: asked(() => {
			const { bavail, bsize } = statfsSync(ledger.folder);
			return bavail * bsize >= LEAST_FREE_BYTES;
		}),
		queueMoves: asked(() => queueMoves(ledger))
	};
	return { ready: Object.values(answers).every(Boolean), ...answers };
}

/** a question that cannot be answered is answered no */
function asked(question: () => boolean): boolean {
	try {
		return question();
	} catch {
		return false;
	}
}

/** Takes the write lock and gives it back; nothing is written. A lock that another holds is not "no". */
function canWrite({ database }: Ledger): boolean {
	if (database.inTransaction) return true;
	const waitMs = database.pragma('busy_timeout', { simple: true }) as number;
	database.pragma('busy_timeout = 0');
	try {
		database.exec('BEGIN IMMEDIATE');
		database.exec('ROLLBACK');
		return !database.readonly;
	} catch (error) {
		return (error as { code?: string }).code === 'SQLITE_BUSY';
	} finally {
		database.pragma(`busy_timeout = ${waitMs}`);
	}
}

function runnerLives(ledger: Ledger): boolean {
	const heartbeatMs = ledger.database
		.prepare<[], number>("SELECT heartbeat_ms FROM lease WHERE name = 'runner'")
		.pluck()
		.get();
	return heartbeatMs !== undefined && Math.abs(ledger.now() - heartbeatMs) < HEARTBEAT_OLD_AFTER_MS;
}

function queueMoves(ledger: Ledger): boolean {
	const { waiting, changedMs } = ledger.database
		.prepare<[], { waiting: number; changedMs: number | null }>(
			`SELECT coalesce(sum(stage IN ('waiting', 'analysing')), 0) AS waiting, max(changed_ms) AS changedMs
			FROM import WHERE stage IN ('waiting', 'analysing')
				OR changed_ms > (SELECT max(changed_ms) FROM import WHERE stage IN ('waiting', 'analysing'))`
		)
		.get()!;
	return waiting === 0 || Math.abs(ledger.now() - (changedMs ?? 0)) < STANDS_AFTER_MS;
}
