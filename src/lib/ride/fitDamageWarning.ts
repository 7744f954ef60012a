import type { FitDamage, FitPart } from './fitPart';
import type { RideWarning } from './ride';

const SAID = {
	'not-closed': {
		code: 'recording-not-closed',
		sentence: 'The recording was never finished by the device; it was read up to its last whole point.'
	},
	'cut-off': {
		code: 'file-cut-off',
		sentence: 'The file ends too early; it was read up to its last whole point.'
	},
	'broken-inside': {
		code: 'file-broken-inside',
		sentence: 'The file is damaged inside; it was read up to the damage, what follows is lost.'
	},
	'bad-checksum': {
		code: 'bad-checksum',
		sentence: 'The checksum of the file does not match: some of its values may have been changed on the way.'
	}
} as const;

/**
 * Names what was lost of a damaged part.
 * @param part the part
 * @param damage what was lost of it
 * @param stepS seconds between two records, for the guess of how much time was lost
 * @returns the warning
 */
export function fitDamageWarning(part: FitPart, damage: FitDamage, stepS: number): RideWarning {
	const { kind, lostBytes, detail } = damage;
	const { code, sentence } = SAID[kind];
	const bytesARecord = (part.dataEnd - part.dataStart) / part.records;
	const lostS = Math.round((lostBytes / bytesARecord) * stepS);
	const lost =
		lostBytes === 0
			? ''
			: ` Lost: ${lostBytes} bytes${lostS > 0 ? `, about ${lostS} s of riding by their size` : ''}.`;
	return { code, sentence: sentence + lost, detail: `${detail}; ${lostBytes} bytes lost` };
}
