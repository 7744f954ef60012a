import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { folderAboveWith } from '../ledger/projectFolder';
import { LedgerRefusal } from '../refusal';

/** What of programme.json the ledger takes over. */
export interface Programme {
	readonly workshop: { readonly name: string; readonly timeZone: string };
	readonly riders: readonly {
		readonly code: string;
		/** the rider presses a lap when a slip is felt, and for nothing else */
		readonly lapsMeanSlips?: boolean;
	}[];
	readonly wheels: readonly {
		readonly id: string;
		readonly name: string;
		readonly hub: string;
		readonly circumferenceM?: number;
	}[];
	readonly builds: readonly {
		readonly id: string;
		readonly name: string;
		readonly description: string;
		readonly stepHubDeg?: number;
		readonly parts?: readonly { readonly part: string; readonly detail: string }[];
	}[];
	readonly fittedPeriods: readonly {
		readonly wheel: string;
		readonly build: string;
		readonly from: string;
		readonly until: string | null;
	}[];
	readonly rides: readonly {
		readonly file: string;
		readonly wheel: string;
		readonly rider: string;
		readonly wet?: boolean;
		readonly trainer?: boolean;
	}[];
}

/**
 * The example workshop that ships with the program: folder of its files and its programme.
 * SLIP_LEDGER_EXAMPLE names another folder.
 *
 * @throws LedgerRefusal not-found when this copy of the program came without it
 */
export function readProgramme(): { folder: string; programme: Programme } {
	const above = folderAboveWith(join('sample-rides', 'programme.json'));
	const folder = process.env.SLIP_LEDGER_EXAMPLE ?? (above && join(above, 'sample-rides'));
	if (!folder)
		throw new LedgerRefusal(
			'not-found',
			'This copy of Slip Ledger came without its example workshop (folder sample-rides).'
		);
	return {
		folder,
		programme: JSON.parse(readFileSync(join(folder, 'programme.json'), 'utf8')) as Programme
	};
}
