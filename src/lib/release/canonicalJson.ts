/** digits that count of a stored number: more would only keep the last bits of one machine's arithmetic */
const DIGITS = 12;

/**
 * JSON with one spelling: keys in order of their code units, no spaces, numbers rounded to 12 significant
 * digits. Two equal values give equal text on every machine, so that a hash over it can be checked later.
 *
 * @param value plain data; `undefined` members are left out
 * @throws TypeError for what JSON cannot hold: NaN, infinite numbers, functions
 * @example canonicalJson({ b: 1 / 3, a: [true, null] }) // '{"a":[true,null],"b":0.333333333333}'
 * Source: ordering as in RFC 8785 (JSON canonicalization); the rounding is ours.
 */
export function canonicalJson(value: unknown): string {
	if (value === null || typeof value === 'boolean' || typeof value === 'string') return JSON.stringify(value);
	if (typeof value === 'number') return canonicalNumber(value);
	if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
	if (typeof value === 'object') {
		const members = Object.entries(value)
			.filter(([, member]) => member !== undefined)
			.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0))
			.map(([name, member]) => `${JSON.stringify(name)}:${canonicalJson(member)}`);
		return `{${members.join(',')}}`;
	}
	throw new TypeError(`JSON cannot hold a ${typeof value}`);
}

function canonicalNumber(value: number): string {
	if (!Number.isFinite(value)) throw new TypeError(`JSON cannot hold ${value}`);
	const rounded = Number(value.toPrecision(DIGITS));
	// -0 and 0 are the same figure
	return JSON.stringify(rounded === 0 ? 0 : rounded);
}
