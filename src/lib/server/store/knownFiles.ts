import type { Ledger } from '../ledger/openLedger';
import { syncLog } from '../ledger/syncLog';
import { LedgerRefusal } from '../refusal';

const MOST_ASKED = 500;

/**
 * Which of these files need not be sent, because they are in the ledger or wait there already: of a folder that is
 * dropped again only the rest is sent. Refused and failed ones are sent again. An archive is known while all that
 * could be taken from it is. What is not sent must not be lost with the power either, so the disk is waited for.
 *
 * @param hashes SHA-256 in hex
 * @throws LedgerRefusal wrong-value
 */
export async function knownFiles(ledger: Ledger, hashes: readonly unknown[]): Promise<string[]> {
	const sound = hashes.every((hash) => typeof hash === 'string' && /^[0-9a-f]{64}$/.test(hash));
	if (!sound || hashes.length > MOST_ASKED)
		throw new LedgerRefusal('wrong-value', `Name up to ${MOST_ASKED} files by their SHA-256.`);
	const known = ledger.database
		.prepare<[object], string>(
			`SELECT value FROM json_each(@hashes) WHERE value IN (SELECT sha256 FROM ride)
				OR EXISTS (SELECT 1 FROM import WHERE sha256 = value AND stage IN ('waiting', 'analysing', 'asks'))
				OR EXISTS (SELECT 1 FROM import a WHERE a.archive_sha256 = value AND a.stage IN ('unpacking', 'unpacked')
					AND NOT EXISTS (SELECT 1 FROM import m WHERE m.archive_id = a.id AND m.stage IN ('refused', 'failed')))`
		)
		.pluck()
		.all({ hashes: JSON.stringify(hashes) });
	if (known.length > 0) await syncLog(ledger);
	return known;
}
