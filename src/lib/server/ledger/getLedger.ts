import { openLedger, type Ledger } from './openLedger';
import { readConfig } from './readConfig';

let opened: Ledger | null = null;

/** The web app's ledger, opened when first asked for. */
export function getLedger(): Ledger {
	if (!opened) {
		const { dataFolder } = readConfig(process.env, []);
		opened = openLedger(dataFolder, { migrate: true });
	}
	return opened;
}

/** Closes the web app's ledger; the next `getLedger` opens it again. */
export function closeLedger(): void {
	opened?.close();
	opened = null;
}
