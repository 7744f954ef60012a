declare const __SLIP_LEDGER_PREFIX__: string | undefined;

/**
 * What stands before every path of the ledger in a browser's address line, for instance "/slips"; "" where the ledger
 * has a name of its own. Written in by the build (SLIP_LEDGER_PREFIX); in code that no build made it is "".
 */
export const PREFIX: string = typeof __SLIP_LEDGER_PREFIX__ === 'string' ? __SLIP_LEDGER_PREFIX__ : '';

/** the folder that cookies belong to: no other site under the same name gets them sent */
export const COOKIE_PATH = PREFIX || '/';

/**
 * A path as the routes know it.
 *
 * @param pathname of a browser's address, for instance "/slips/rides/3"
 * @returns for instance "/rides/3"; null for what does not lie under the prefix
 */
export function pathWithin(pathname: string, prefix: string = PREFIX): string | null {
	if (prefix === '') return pathname;
	if (pathname === prefix) return '/';
	return pathname.startsWith(`${prefix}/`) ? pathname.slice(prefix.length) : null;
}
