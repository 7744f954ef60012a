import { randomUUID } from 'node:crypto';
import { readFileSync, readlinkSync } from 'node:fs';
import { hostname } from 'node:os';
import type { Ledger } from '../ledger/openLedger';
import { writeUnsynced } from '../ledger/writeUnsynced';

/** Who holds a lease: enough to tell from another process whether the holder still lives. */
export interface LeaseHolder {
	/** unique to this holder for all time */
	readonly owner: string;
	/** machine, its start and its process numbering; process ids mean nothing elsewhere */
	readonly machine: string;
	readonly pid: number;
	readonly processStarted: string;
}

interface LeaseRow {
	owner: string;
	machine: string;
	pid: number;
	processStarted: string;
	heartbeatMs: number;
}

export const HEARTBEAT_EVERY_MS = 2_000;
/** a holder that cannot be looked at, or hangs, is taken for gone after this */
export const STALE_AFTER_MS = 30_000;

export function newHolder(): LeaseHolder {
	return {
		owner: randomUUID(),
		machine: machineName(),
		pid: process.pid,
		processStarted: startOfProcess(process.pid) ?? ''
	};
}

/**
 * Takes the lease if nobody holds it, if its holder's process is gone, or if its heartbeat is old.
 *
 * @returns true when it is ours now (or was before)
 */
export function takeLease(ledger: Ledger, name: string, holder: LeaseHolder): boolean {
	return ledger.database
		.transaction((): boolean => {
			const now = ledger.now();
			const held = readLease(ledger, name);
			if (held && held.owner !== holder.owner && isAlive(held, now)) return false;
			ledger.database
				.prepare(
					`INSERT INTO lease (name, owner, machine, pid, process_started, heartbeat_ms)
					VALUES (?, ?, ?, ?, ?, ?)
					ON CONFLICT (name) DO UPDATE SET owner = excluded.owner, machine = excluded.machine,
						pid = excluded.pid, process_started = excluded.process_started,
						heartbeat_ms = excluded.heartbeat_ms`
				)
				.run(name, holder.owner, holder.machine, holder.pid, holder.processStarted, now);
			return true;
		})
		.immediate();
}

/** Shows that the holder lives; false when somebody else has taken the lease meanwhile. */
export function keepLease(ledger: Ledger, name: string, holder: LeaseHolder): boolean {
	const write = ledger.database.prepare('UPDATE lease SET heartbeat_ms = ? WHERE name = ? AND owner = ?');
	return writeUnsynced(ledger, () => write.run(ledger.now(), name, holder.owner)).changes === 1;
}

export function holdsLease(ledger: Ledger, name: string, holder: LeaseHolder): boolean {
	return readLease(ledger, name)?.owner === holder.owner;
}

export function giveLeaseBack(ledger: Ledger, name: string, holder: LeaseHolder): void {
	ledger.database.prepare('DELETE FROM lease WHERE name = ? AND owner = ?').run(name, holder.owner);
}

function readLease(ledger: Ledger, name: string): LeaseRow | undefined {
	return ledger.database
		.prepare<[string], LeaseRow>(
			`SELECT owner, machine, pid, process_started AS processStarted, heartbeat_ms AS heartbeatMs
			FROM lease WHERE name = ?`
		)
		.get(name);
}

function isAlive(held: LeaseRow, nowMs: number): boolean {
	if (Math.abs(nowMs - held.heartbeatMs) > STALE_AFTER_MS) return false;
	if (held.machine !== machineName()) return true;
	try {
		process.kill(held.pid, 0);
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ESRCH') return false;
	}
	const started = startOfProcess(held.pid);
	return started === null || started === held.processStarted;
}

/** Start time of a process as the kernel counts it; null where the system does not say. */
function startOfProcess(pid: number): string | null {
	try {
		const stat = readFileSync(`/proc/${pid}/stat`, 'latin1');
		// the name in brackets may hold blanks and brackets; the start is field 22
		return stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null;
	} catch {
		return null;
	}
}

let machine: string | null = null;

function machineName(): string {
	if (machine) return machine;
	const parts = [hostname()];
	try {
		parts.push(readFileSync('/proc/sys/kernel/random/boot_id', 'latin1').trim());
		parts.push(readlinkSync('/proc/self/ns/pid'));
	} catch {
		// elsewhere the host's name has to do
	}
	return (machine = parts.join(' '));
}
