/**
 * Child process: computes what pages show of many rides, so that the server answers meanwhile. It opens the ledger for
 * reading alone and looks at one state of it for all of a page's figures.
 */
import {
	computeFigures,
	figureKey,
	LedgerRefusal,
	openLedger,
	packFigures,
	type FigureAnswer,
	type FigureRequest
} from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { endWithParent } from '../jobs/analysis/endWithParent';

const [parent, folder] = process.argv.slice(2);
endWithParent(Number(parent));
const ledger = openLedger(folder, { migrate: false, forReading: true });
process.on('message', (request: FigureRequest) => {
	process.send?.(answer(request), undefined, undefined, (error) => {
		if (error) process.exit(1);
	});
});

function answer({ requestId, kind, asked, locale, zone }: FigureRequest): FigureAnswer {
	try {
		// one state of the ledger, whatever is written meanwhile
		ledger.database.exec('BEGIN');
		const key = figureKey(ledger);
		const figures = computeFigures(ledger, kind, asked as never, createFormats(locale, zone));
		return { kind: 'computed', requestId, key, bytes: packFigures(figures) };
	} catch (error) {
		if (error instanceof LedgerRefusal)
			return { kind: 'refused', requestId, code: error.code, sentence: error.sentence };
		const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
		return { kind: 'failed', requestId, detail };
	} finally {
		if (ledger.database.inTransaction) ledger.database.exec('COMMIT');
	}
}
