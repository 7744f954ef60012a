import { afterEach, expect, it, vi } from 'vitest';
import { childLimits } from '$lib/server/queue/analysisChild';
import { PROGRAM_LIMITS, readLimits } from '$lib/server/ledger/programLimits';
import { archiveLimitBytes, limitByName, unpackLimits } from '$lib/server/store/uploadLimit';
import { freshLedger } from './testLedger';

const MEGABYTE = 2 ** 20;

afterEach(() => vi.unstubAllEnvs());

/** What every place that looks at a limit is told, by the limit's name. */
function inForce() {
	const { ledger } = freshLedger();
	const unpack = unpackLimits(ledger);
	const read = readLimits();
	const child = childLimits();
	return {
		archiveMegabytes: archiveLimitBytes() / MEGABYTE,
		unpackedMegabytes: unpack.totalBytes / MEGABYTE,
		archiveMembers: unpack.members,
		archiveRatio: unpack.ratio,
		archiveDepth: unpack.depth,
		jobSeconds: child.wallMs / 1000,
		jobMegabytes: child.residentBytes / MEGABYTE,
		records: read.records,
		samples: read.samples,
		gzipMegabytes: read.unpackedBytes / MEGABYTE
	};
}

it('are the standards where nothing is set, at every place that looks at one', () => {
	for (const { variable } of Object.values(PROGRAM_LIMITS)) vi.stubEnv(variable, '');
	const standards = Object.entries(PROGRAM_LIMITS).map(([name, { standard }]) => [name, standard]);
	expect(inForce()).toEqual(Object.fromEntries(standards));
});

it.each(Object.entries(PROGRAM_LIMITS))(
	'%s is what was set, and nothing else changes with it',
	(name, limit) => {
		for (const { variable } of Object.values(PROGRAM_LIMITS)) vi.stubEnv(variable, '');
		const before = inForce();
		const set = limit.standard - 1;
		vi.stubEnv(limit.variable, String(set));
		expect(inForce()).toEqual({ ...before, [name]: set });
	}
);

it('an archive may be as large as its own setting says, any other file as the one of the ledger', () => {
	vi.stubEnv('SLIP_LEDGER_ARCHIVE_MB', '1000');
	const { ledger } = freshLedger();
	expect([limitByName(ledger, 'rides.zip'), limitByName(ledger, 'ride.fit')]).toEqual([
		1000 * MEGABYTE,
		256 * MEGABYTE
	]);
});
