import type { Ledger } from '../ledger/openLedger';
import type { UnpackLimits } from '../../../jobs/unpack/messages';
import { programLimits } from '../ledger/programLimits';
import { readSetting } from '../settings/storedSetting';

export const MEGABYTE = 2 ** 20;
/** four hours of a logger at 200 Hz are about 120 MB as text */
const DEFAULT_MEGABYTES = 256;

/** The largest file that is taken, bytes; archives have a limit of their own. */
export function uploadLimitBytes(ledger: Ledger): number {
	const stored = Number(readSetting(ledger, 'uploadLimitMegabytes'));
	return (Number.isInteger(stored) && stored > 0 ? stored : DEFAULT_MEGABYTES) * MEGABYTE;
}

/** The largest archive that is taken, bytes. */
export function archiveLimitBytes(): number {
	return programLimits().archiveMegabytes * MEGABYTE;
}

/** As much as may come under a name: whether it is an archive is told from its bytes when they are there. */
export function limitByName(ledger: Ledger, name: string): number {
	const asRide = uploadLimitBytes(ledger);
	return /\.zip$/i.test(name.trim()) ? Math.max(asRide, archiveLimitBytes()) : asRide;
}

/** What the files of an archive may ask of this machine. */
export function unpackLimits(ledger: Ledger): UnpackLimits {
	const limits = programLimits();
	return {
		members: limits.archiveMembers,
		totalBytes: limits.unpackedMegabytes * MEGABYTE,
		memberBytes: uploadLimitBytes(ledger),
		ratio: limits.archiveRatio,
		depth: limits.archiveDepth
	};
}
