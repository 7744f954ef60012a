import { listPeople, type Ledger } from '$lib/server';
import { userInfo } from 'node:os';

/** Who writes when nobody is named: the ledger's owner, or in a new ledger who is logged in here. */
export function whoImports(ledger: Ledger): string {
	const owner = listPeople(ledger).find(({ role }) => role === 'owner');
	if (owner) return owner.name;
	try {
		return userInfo().username || 'Terminal';
	} catch {
		return 'Terminal';
	}
}
