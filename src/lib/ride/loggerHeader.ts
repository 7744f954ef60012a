import { parseInstant } from './parseInstant';

export interface LoggerHeader {
	readonly delimiter: ',' | ';' | '\t';
	/** the place of each column in a row, -1 = not there */
	readonly time: number;
	readonly crankRpm: number;
	readonly wheelRpm: number;
	readonly crankTorqueNm: number;
	readonly columns: number;
	/** instant of time_s = 0 from a comment `# started_at: ISO`, milliseconds since 1970 UTC; null = none */
	readonly startedAtMs: number | null;
	/** where the first row of values begins, characters */
	readonly bodyAt: number;
	/** lines before it */
	readonly lines: number;
}

/**
 * The head of a logger's CSV file: comment lines beginning with #, then the names of the columns. The
 * default is `time_s,crank_rpm,wheel_rpm,crank_torque_nm`; other orders and further columns are taken.
 * @param text the beginning of the file
 * @returns the head, or null when no line names a time and a crank or wheel
 */
export function loggerHeader(text: string): LoggerHeader | null {
	let bodyAt = 0;
	let startedAtMs: number | null = null;
	for (let lines = 1; bodyAt < text.length; lines++) {
		const end = text.indexOf('\n', bodyAt);
		const line = text
			.slice(bodyAt, end === -1 ? text.length : end)
			.replace(/^\uFEFF/, '')
			.trim();
		bodyAt = end === -1 ? text.length : end + 1;
		if (line === '') continue;
		if (line.startsWith('#')) {
			const stated = /^#\s*started_at\s*:\s*(\S+)$/i.exec(line);
			if (stated) startedAtMs = parseInstant(stated[1])?.atMs ?? null;
			continue;
		}
		const delimiter = ([',', ';', '\t'] as const).find((character) => line.includes(character));
		if (!delimiter) return null;
		const names = line.split(delimiter).map((name) =>
			name
				.trim()
				.replace(/^"(.*)"$/, '$1')
				.toLowerCase()
		);
		const at = (name: string) => names.indexOf(name);
		const [time, crankRpm, wheelRpm] = [at('time_s'), at('crank_rpm'), at('wheel_rpm')];
		const crankTorqueNm = at('crank_torque_nm');
		if (time === -1 || (crankRpm === -1 && wheelRpm === -1 && crankTorqueNm === -1)) return null;
		const places = { time, crankRpm, wheelRpm, crankTorqueNm, columns: names.length };
		return { delimiter, ...places, startedAtMs, bodyAt, lines };
	}
	return null;
}
