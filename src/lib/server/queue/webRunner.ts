import { finishErasures } from '../erasure/finishErasures';
import { cleanOldPictures } from '../hardware/cleanOldPictures';
import { foldLogs } from '../ledger/foldLogs';
import { getLedger } from '../ledger/getLedger';
import { log } from '../log/log';
import { recoverUploads } from '../store/recoverUploads';
import { ImportRunner } from './importRunner';

const CLEAR_UP_EVERY_MS = 6 * 3600 * 1000;

let runner: ImportRunner | null = null;
let endFolding = () => {};

/**
 * Starts the web app's part in the queue: clears up what the last stop left, then analyses while this
 * process holds the lease, until the server stops.
 */
export function startWebRunner(): void {
	if (runner) return;
	const ledger = getLedger();
	const own = (runner = new ImportRunner(ledger));
	endFolding = foldLogs(ledger);
	const clearUp = () =>
		recoverUploads(ledger)
			.then(() => finishErasures(ledger))
			.catch((error) => log.failure('uploads not cleared up', error));
	// pictures wait for nobody and nobody for them: a ledger that was made by an older program may hold hundreds
	const cleanPictures = () =>
		cleanOldPictures(ledger)
			.then(({ cleaned, left }) => cleaned + left > 0 && log.info('pictures cleaned', { cleaned, left }))
			.catch((error) => runner === own && log.failure('pictures not cleaned', error));
	void clearUp()
		.then(() => runner === own && own.start())
		.then(() => runner === own && cleanPictures());
	const timer = setInterval(
		() => (runner === own ? void clearUp().then(cleanPictures) : clearInterval(timer)),
		CLEAR_UP_EVERY_MS
	);
	timer.unref();
}

/** Something was queued: no need to wait for the next look. */
export function pokeWebRunner(): void {
	runner?.look();
}

/** Hands the lease back and ends the children at once; resolves when nothing of it is left. */
export function stopWebRunner(): Promise<void> {
	const own = runner;
	runner = null;
	endFolding();
	return own?.stop() ?? Promise.resolve();
}
