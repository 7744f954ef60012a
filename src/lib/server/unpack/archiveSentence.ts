import type { Ledger } from '../ledger/openLedger';

interface Counts {
	taken: number;
	leftOut: number;
	refused: number;
}

/** What came out of an archive so far, in one sentence. */
export function archiveSentence(ledger: Ledger, archiveId: number, whole: boolean): string {
	const { taken, leftOut, refused } = ledger.database
		.prepare<[number], Counts>(
			`SELECT count(sha256) AS taken, coalesce(sum(stage = 'left out'), 0) AS leftOut,
				coalesce(sum(stage = 'refused' AND sha256 IS NULL), 0) AS refused
			FROM import WHERE archive_id = ?`
		)
		.get(archiveId)!;
	const said = [
		`${files(taken)} taken out`,
		...(leftOut > 0 ? [`${leftOut} left out because they are no rides`] : []),
		...(refused > 0 ? [`${refused} refused`] : [])
	];
	return `${said.join(', ')}${whole ? '.' : ' so far.'}`;
}

const files = (count: number) => `${count} ${count === 1 ? 'file' : 'files'}`;
