import { redirect } from '@sveltejs/kit';
import { PREFIX } from './prefix';

/**
 * Sends a browser on to a page of the ledger.
 *
 * @param path as the routes know it, for instance "/rides/3"; the prefix is put before it
 * @throws always: the framework's redirect
 */
export function redirectTo(status: 303, path: string): never {
	redirect(status, PREFIX + path);
}
