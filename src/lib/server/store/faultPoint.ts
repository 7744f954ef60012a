/**
 * Places at which the fault tests end the process as a power cut would. Named by the environment variable
 * SLIP_LEDGER_FAULT; without it this does nothing.
 */
export type FaultName =
	| 'upload-half'
	| 'source-stored'
	| 'source-moved'
	| 'archive-stored'
	| 'archive-moved'
	| 'member-written'
	| 'member-moved'
	| 'member-recorded'
	| 'archive-recorded'
	| 'archive-done'
	| 'archive-aside'
	| 'leased'
	| 'analysed'
	| 'channels-written'
	| 'done'
	| 'deriving'
	| 'derived'
	| 'derived-channels-written'
	| 'derivation-done'
	| 'inserting'
	| 'inserted'
	| 'insertion-done'
	| 'restore-read'
	| 'restore-files'
	| 'restore-done'
	| 'backup-ledger'
	| 'backup-sources'
	| 'backup-manifest'
	| 'backup-named'
	| 'backup-done'
	| 'migration-backed-up'
	| 'migration-step'
	| 'migration-done'
	| 'erasure-written'
	| 'erasure-file-gone'
	| 'erasure-done'
	| 'picture-cleaned'
	| 'picture-recorded'
	| 'picture-gone';

export function faultPoint(name: FaultName): void {
	if (process.env.SLIP_LEDGER_FAULT === name) process.kill(process.pid, 'SIGKILL');
}
