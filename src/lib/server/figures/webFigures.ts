import { getLedger } from '../ledger/getLedger';
import { builtEntry } from '../ledger/builtEntry';
import { FigureDesk, type FigureWords, type Shown, type ShowOptions } from './figureDesk';
import type { Asked, FigureKind, Figures } from './figureKinds';
import { FigureReader } from './figureReader';

let desk: FigureDesk | null = null;

/** Figures for a page of the web app. */
export function showFigures<Kind extends FigureKind>(
	kind: Kind,
	asked: Asked<Kind>,
	words: FigureWords,
	options: ShowOptions
): Promise<Shown<Figures<Kind>>> {
	desk ??= openDesk();
	return desk.show(kind, asked, words, options);
}

/** Ends the child process; the next page starts another one. */
export function stopFigures(): void {
	desk?.stop();
	desk = null;
}

function openDesk(): FigureDesk {
	const ledger = getLedger();
	const entry = builtEntry('readers', 'figures');
	return new FigureDesk(ledger, entry ? new FigureReader(entry, ledger.folder) : null);
}
