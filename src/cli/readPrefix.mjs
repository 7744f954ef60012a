/** folders of letters, digits, ".", "_", "~" and "-", none of them "." or ".." */
const PREFIX = /^(\/(?!\.{1,2}(\/|$))[A-Za-z0-9._~-]+)+$/;

/**
 * Under which folder of a site the ledger is served: SLIP_LEDGER_PREFIX. Not set or empty: under none.
 *
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {'' | `/${string}`} for instance "/slips"
 * @throws {Error} with a sentence that says what it must look like
 */
export function readPrefix(env) {
	const text = (env.SLIP_LEDGER_PREFIX ?? '').trim();
	if (text === '') return '';
	if (text.length <= 200 && PREFIX.test(text)) return /** @type {`/${string}`} */ (text);
	throw new Error(
		`SLIP_LEDGER_PREFIX is "${text.slice(0, 100)}": give the folder that the proxy passes on, like /slips (it begins with a slash, ends without one, and has only letters, digits, dots, "_", "~" and "-").`
	);
}
