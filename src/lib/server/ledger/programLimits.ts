import type { ReadLimits } from '$lib/ride/limits';
import { LedgerRefusal } from '../refusal';

/** A bound on what hands may put in, set by an environment variable. */
interface ProgramLimit {
	readonly variable: string;
	/** unless set */
	readonly standard: number;
	readonly least: number;
	readonly most: number;
}

/**
 * What files may ask of this machine. The figures are ours, no source: generous against real rides and folders of
 * them, small against the machine's disk and memory.
 */
export const PROGRAM_LIMITS = {
	/** the largest archive, MB; any other file has its own limit */
	archiveMegabytes: { variable: 'SLIP_LEDGER_ARCHIVE_MB', standard: 4096, least: 1, most: 1_000_000 },
	/** all that an archive unpacks to, MB */
	unpackedMegabytes: { variable: 'SLIP_LEDGER_UNPACKED_MB', standard: 16_384, least: 1, most: 1_000_000 },
	/** files in an archive */
	archiveMembers: { variable: 'SLIP_LEDGER_ARCHIVE_FILES', standard: 20_000, least: 1, most: 1_000_000 },
	/** unpacked bytes for each packed one of a file in an archive; deflate reaches 1032 */
	archiveRatio: { variable: 'SLIP_LEDGER_ARCHIVE_RATIO', standard: 200, least: 2, most: 1100 },
	/** wall time of one file, seconds */
	jobSeconds: { variable: 'SLIP_LEDGER_JOB_SECONDS', standard: 180, least: 1, most: 86_400 },
	/** resident memory of a process that reads files, MB */
	jobMegabytes: { variable: 'SLIP_LEDGER_JOB_MB', standard: 1024, least: 128, most: 1_000_000 },
	/** records of a ride computer's or a track file; seven days at one a second are 604,800 */
	records: { variable: 'SLIP_LEDGER_RECORDS', standard: 700_000, least: 1, most: 100_000_000 },
	/** samples of a logger's file; four hours at 500 Hz */
	samples: { variable: 'SLIP_LEDGER_SAMPLES', standard: 7_200_000, least: 1, most: 100_000_000 },
	/** what comes out of a file packed with gzip, MB */
	gzipMegabytes: { variable: 'SLIP_LEDGER_GZIP_MB', standard: 200, least: 1, most: 2000 },
	/** folders within folders of an archive */
	archiveDepth: { variable: 'SLIP_LEDGER_ARCHIVE_DEPTH', standard: 32, least: 0, most: 1000 }
} as const satisfies Record<string, ProgramLimit>;

export type ProgramLimits = { readonly [name in keyof typeof PROGRAM_LIMITS]: number };

/**
 * The limits in force. An empty variable counts as not set.
 *
 * @throws LedgerRefusal wrong-setting
 */
export function programLimits(
	env: Readonly<Record<string, string | undefined>> = process.env
): ProgramLimits {
	const entries = Object.entries(PROGRAM_LIMITS).map(
		([name, limit]) => [name, readLimit(env, limit)] as const
	);
	return Object.fromEntries(entries) as ProgramLimits;
}

function readLimit(env: Readonly<Record<string, string | undefined>>, limit: ProgramLimit): number {
	const { variable, standard, least, most } = limit;
	const text = env[variable]?.trim();
	if (!text) return standard;
	const value = Number(text);
	if (!/^\d{1,9}$/.test(text) || value < least || value > most)
		throw new LedgerRefusal(
			'wrong-setting',
			`${variable} is "${text}": give a whole number from ${least} to ${most}.`
		);
	return value;
}

/** What a file may ask of the process that reads it. */
export function readLimits(): ReadLimits {
	const { records, samples, gzipMegabytes } = programLimits();
	return { records, samples, unpackedBytes: gzipMegabytes * 2 ** 20 };
}
