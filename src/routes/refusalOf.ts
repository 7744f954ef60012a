import { LedgerRefusal } from '$lib/server';

/**
 * Runs what a form asks for, for forms that show again what was typed.
 *
 * @returns the ledger's sentence when it refuses; null when it is done
 */
export function refusalOf(action: () => void): string | null {
	try {
		action();
		return null;
	} catch (refused) {
		if (!(refused instanceof LedgerRefusal)) throw refused;
		return refused.sentence;
	}
}
