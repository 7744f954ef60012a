import { join } from 'node:path';
import { toInstant } from '../ledger/instants';
import { CHANNEL_MIGRATIONS, LEDGER_MIGRATIONS } from '../ledger/migrations';
import { versionOf } from '../ledger/migrate';
import { checkAgain } from './checkAgain';
import { checkDatabase } from './checkDatabase';
import { checkDecisions } from './checkDecisions';
import { checkSources, readSourceRows } from './checkSources';
import { checkStrays } from './checkStrays';
import { checkSums } from './checkSums';
import { checkTraces } from './checkTraces';
import { openForReading, type OpenForReading } from './openForReading';
import { PartFindings, type VerifyPart, type VerifyPartName, type VerifyReport } from './verifyReport';

export interface VerifyOptions {
	/** how many rides are analysed again; 0 = none */
	readonly sample?: number;
	/** draws them */
	readonly seed: string;
	readonly now?: () => number;
	/** called before each part, for a terminal */
	readonly onPart?: (name: VerifyPartName) => void;
}

export const DEFAULT_SAMPLE = 3;

const SENTENCES: Readonly<Record<VerifyPartName, (checked: number) => string>> = {
	ledger: (n) => `Every page of the ledger, ${n} tables, and every reference between their rows.`,
	traces: (n) => `The traces of ${n} rides, each unpacked.`,
	files: (n) => `${n} files in the store, each hashed again and held against its name and its row.`,
	strays: (n) => `${n} files that lie in the folder, each looked for in the ledger.`,
	sums: (n) =>
		`${n} results: cells and hours of exposure, observed stretches and slips put in, added up again.`,
	decisions: (n) => `${n} signed decisions, the hash of each record taken anew.`,
	'analysed again': (n) => `${n} rides, drawn by the seed, analysed again from their files.`
};

/**
 * Looks at everything in a data folder and says what is whole and what is not. Changes nothing, and works on a
 * folder whose ledger cannot be opened: each part stands for itself. Reads in small slices beside whoever works
 * with the ledger, and gives way between them.
 */
export async function verifyLedger(dataFolder: string, options: VerifyOptions): Promise<VerifyReport> {
	const now = options.now ?? Date.now;
	const startedMs = performance.now();
	const checkedAt = toInstant(now());
	const parts: VerifyPart[] = [];
	const ledger = tryOpen(join(dataFolder, 'ledger.sqlite'));
	const traces = tryOpen(join(dataFolder, 'channels.sqlite'));
	const part = async (
		name: VerifyPartName,
		needs: Opened[],
		work: () => Promise<PartFindings> | PartFindings
	) => {
		options.onPart?.(name);
		parts.push(await onePart(name, needs, work));
	};
	try {
		await part('ledger', [], () => checkOpened(ledger, newestOf(LEDGER_MIGRATIONS)));
		await part('traces', [], async () => {
			const found = checkOpened(traces, newestOf(CHANNEL_MIGRATIONS));
			if (traces.open) await checkTraces(traces.open.database, ridesOf(ledger), found);
			return found;
		});
		await part('files', [], () => {
			const database = ledger.open?.database;
			const rows = database ? readSourceRows(database) : null;
			const known = (sha256: string) =>
				!database || database.prepare('SELECT 1 FROM source WHERE sha256 = ?').get(sha256) !== undefined;
			return checkSources(dataFolder, rows, known);
		});
		await part('strays', [ledger], () => checkStrays(dataFolder, ledger.open!.database, now()));
		await part('sums', [ledger], () => checkSums(ledger.open!.database));
		await part('decisions', [ledger], () => checkDecisions(ledger.open!.database));
		const sample = options.sample ?? DEFAULT_SAMPLE;
		if (sample > 0)
			await part('analysed again', [ledger], () =>
				checkAgain(dataFolder, ledger.open!.database, { sample, seed: options.seed })
			);
	} finally {
		ledger.open?.close();
		traces.open?.close();
	}
	return {
		checkedAt,
		seconds: Math.round((performance.now() - startedMs) / 100) / 10,
		whole: parts.every(({ state }) => state !== 'damaged'),
		seed: options.seed,
		parts
	};
}

interface Opened {
	open: OpenForReading | null;
	/** why it could not be opened */
	why: string;
}

function tryOpen(file: string): Opened {
	try {
		return { open: openForReading(file), why: '' };
	} catch (error) {
		return { open: null, why: (error as Error).message };
	}
}

function checkOpened({ open, why }: Opened, newest: number): PartFindings {
	if (open) return checkDatabase(open.database, newest);
	const found = new PartFindings();
	found.damage('file', `It cannot be opened: ${why}.`);
	return found;
}

async function onePart(
	name: VerifyPartName,
	needs: readonly Opened[],
	work: () => Promise<PartFindings> | PartFindings
): Promise<VerifyPart> {
	const notChecked = (why: string): VerifyPart => ({
		...new PartFindings().part(name, `Not looked at: ${why}.`),
		state: 'not checked'
	});
	if (needs.some(({ open }) => open === null)) return notChecked('the ledger cannot be opened');
	const newest = newestOf(LEDGER_MIGRATIONS);
	if (needs.some(({ open }) => versionOf(open!.database) < newest))
		return notChecked('the ledger is of an older layout; start Slip Ledger once, it brings it up to date');
	try {
		const found = await work();
		return found.part(name, SENTENCES[name](found.checked));
	} catch (error) {
		const found = new PartFindings();
		found.damage(name, `It could not be read to the end: ${(error as Error).message}.`);
		return found.part(name, SENTENCES[name](0));
	}
}

function newestOf(steps: readonly { number: number }[]): number {
	return steps[steps.length - 1].number;
}

/** Rides whose traces must be there or can be made again; none when the ledger does not say. */
function ridesOf({ open }: Opened): { id: number; sha256: string }[] {
	try {
		return (
			open?.database
				.prepare<[], { id: number; sha256: string }>(
					'SELECT id, sha256 FROM ride WHERE sha256 NOT IN (SELECT sha256 FROM erased_source) ORDER BY id'
				)
				.all() ?? []
		);
	} catch {
		return [];
	}
}
