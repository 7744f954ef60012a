const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;
const LONGEST = 120;

/**
 * A name to show and to offer for saving, made from whatever a browser or an archive sent. It is never
 * used as a path: sources are named by their hash. Folders, control and direction characters, and
 * characters that mean something to shells, spreadsheets or file systems go; the ending stays.
 *
 * @returns a name of 1 to 120 characters; "unnamed" when nothing is left
 * @example cleanFileName('..\\..\\rides/Morning ride.fit') // 'Morning ride.fit'
 */
export function cleanFileName(name: string): string {
	const last = name.toWellFormed().normalize('NFC').split(/[/\\]/).pop() ?? '';
	const cleaned = last
		// eslint-disable-next-line no-control-regex
		.replace(/[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2066-\u2069\ufeff<>:"|?*`$;&]/g, '')
		.replace(/\s+/g, ' ')
		.trim()
		.replace(/^[.\-=+@ ]+/, '')
		.replace(/[. ]+$/, '');
	if (cleaned === '') return 'unnamed';
	const safe = RESERVED.test(cleaned) ? `_${cleaned}` : cleaned;
	return safe.length <= LONGEST ? safe : shorten(safe);
}

function shorten(name: string): string {
	const ending = /\.[a-z0-9]{1,8}$/i.exec(name)?.[0] ?? '';
	// cut between characters, not inside one that takes two code units
	const stem = Array.from(name.slice(0, name.length - ending.length));
	while (stem.join('').length + ending.length > LONGEST) stem.pop();
	return stem.join('') + ending;
}
