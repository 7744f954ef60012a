import { gzipSync } from 'node:zlib';
import { cutOff, flipBytes, spoilText, splice } from './damage';
import { judgeArchive } from './judgeArchive';
import { judgeName } from './judgeName';
import { judgeRide } from './judgeRide';
import { judgeTable } from './judgeTable';
import { oneOf, type Pick } from './seeded';
import { CSV_RIDE, FIT_RIDE, GPX_RIDE, OTHER_FIT_RIDE, TCX_RIDE } from './soundRides';

/** One kind of hostile input: makes a case and judges what the program makes of it. */
export interface Family {
	readonly name: string;
	/** of a hundred cases */
	readonly share: number;
	readonly run: (pick: Pick) => Promise<unknown>;
}

const XML_INSERTS = [
	'<!DOCTYPE a [<!ENTITY x "y">]>',
	'<!DOCTYPE a [<!ENTITY a "&b;&b;&b;&b;"><!ENTITY b "&a;&a;">]>',
	'<!DOCTYPE a SYSTEM "file:///etc/passwd">',
	'&x;',
	'&#0;',
	'&#x110000;',
	'&amp',
	'<![CDATA[',
	']]>',
	'<!--',
	'<?php',
	'<a>'.repeat(200),
	'</Track>',
	'<trkpt lat="1e999" lon="NaN">',
	'<Time>2026-13-45T99:99:99Z</Time>',
	'<Cadence>-1</Cadence>',
	'<Watts>1e308</Watts>',
	'\0',
	'\uFFFE',
	'x'.repeat(20_000)
];

const CSV_INSERTS = [
	'=HYPERLINK("http://example.invalid","a")',
	'+1+1',
	'@SUM(1)',
	'"',
	'"""',
	',,,,',
	'\n\n',
	'\r',
	'\0',
	'1e999',
	'-1e308',
	'NaN',
	'Infinity',
	'0x10',
	'1,5',
	'\uFEFF',
	'# started_at: 9999-99-99T00:00:00Z\n',
	'time_s,crank_rpm\n',
	'9'.repeat(400)
];

const DAMAGE_CODES = new Set([
	'recording-not-closed',
	'file-cut-off',
	'file-broken-inside',
	'bad-checksum',
	'trailing-bytes'
]);

/** A changed byte is told by the file's checksum: it may be read, but never in silence. */
async function changedByteIsTold(pick: Pick): Promise<void> {
	const bytes = Uint8Array.from(FIT_RIDE);
	bytes[pick(bytes.length)] ^= 1 + pick(255);
	const ride = await judgeRide(bytes);
	if (ride && !ride.warnings.some(({ code }) => DAMAGE_CODES.has(code)))
		throw new Error('a changed byte was taken without a word');
}

/** A long field, in the head or in a row: each eighth a megabyte. */
function longField(pick: Pick): Uint8Array {
	const text = new TextDecoder().decode(CSV_RIDE);
	const at = pick(2) === 0 ? pick(40) : pick(text.length);
	const field = oneOf(pick, ['9', 'a', '"', ' ', '\0']).repeat(pick(8) === 0 ? 2 ** 20 : 2 ** 17);
	return new TextEncoder().encode(text.slice(0, at) + field + text.slice(at));
}

async function spoiltGzip(pick: Pick): Promise<void> {
	const sound = oneOf(pick, [FIT_RIDE, TCX_RIDE, GPX_RIDE, CSV_RIDE]);
	const packed = gzipSync(pick(3) === 0 ? gzipSync(sound) : sound);
	await judgeRide(oneOf(pick, [flipBytes, cutOff])(packed, pick));
}

export const FAMILIES: readonly Family[] = [
	{ name: 'FIT, bytes changed', share: 18, run: (pick) => judgeRide(flipBytes(FIT_RIDE, pick)) },
	{ name: 'FIT, one byte changed is told', share: 12, run: changedByteIsTold },
	{ name: 'FIT, cut off', share: 8, run: (pick) => judgeRide(cutOff(FIT_RIDE, pick)) },
	{ name: 'FIT, spliced', share: 10, run: (pick) => judgeRide(splice(FIT_RIDE, OTHER_FIT_RIDE, pick)) },
	{
		name: 'XML, spoilt',
		share: 14,
		run: (pick) => judgeRide(spoilText(oneOf(pick, [TCX_RIDE, GPX_RIDE]), XML_INSERTS, pick))
	},
	{
		name: 'XML, bytes changed',
		share: 4,
		run: (pick) => judgeRide(flipBytes(oneOf(pick, [TCX_RIDE, GPX_RIDE]), pick))
	},
	{
		name: 'logger table, spoilt',
		share: 9,
		run: (pick) => judgeRide(spoilText(CSV_RIDE, CSV_INSERTS, pick))
	},
	{ name: 'logger table, bytes changed', share: 3, run: (pick) => judgeRide(flipBytes(CSV_RIDE, pick)) },
	{ name: 'logger table, long field', share: 1, run: (pick) => judgeRide(longField(pick)) },
	{ name: 'logger table, by named columns', share: 6, run: judgeTable },
	{ name: 'gzip', share: 4, run: spoiltGzip },
	{ name: 'zip', share: 8, run: judgeArchive },
	{ name: 'names', share: 3, run: judgeName }
];

const TOTAL = FAMILIES.reduce((sum, { share }) => sum + share, 0);

/** The family of a case: the same for the same number, the shares kept in every hundred. */
export function familyOf(number: number): Family {
	let place = (number * 61) % TOTAL;
	for (const family of FAMILIES) {
		if (place < family.share) return family;
		place -= family.share;
	}
	throw new RangeError(`no family for ${number}`);
}
