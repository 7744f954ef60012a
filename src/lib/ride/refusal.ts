import { RideRefused, type RefusalCode } from './ride';

const SENTENCES: Readonly<Record<RefusalCode, string>> = {
	'not-a-ride-file':
		'This is not a ride file that can be read here. Upload the file as the ride computer wrote it (FIT), a TCX or GPX export, or a logger CSV.',
	'columns-not-known':
		'This is a table of a logger whose columns are not known yet. Say once which column is what; files of the same kind are read by it from then on.',
	'not-a-bicycle-ride':
		'This recording is not a bicycle ride. If it is one, set its sport to cycling where it was recorded and export it again.',
	'no-records':
		'The file holds no recorded points, only a summary or settings. Export the full recording instead.',
	'no-clock': 'The recorded points carry no usable time, so nothing can be measured from them.',
	'no-speed':
		'The ride holds no speed. Slip is found by setting the crank against the wheel: pair a speed sensor, best at the rear wheel.',
	'no-cadence':
		'The ride holds no cadence. Slip is found by setting the crank against the wheel: pair a cadence sensor or a power meter.',
	'too-large': 'The file is larger than any ride that this program reads. Split the recording and try again.',
	damaged: 'The file is damaged and nothing in it could be saved. Copy it from the device again.'
};

/**
 * The error with which a decoder refuses a file.
 * @param code why; the sentence for the rider belongs to the code
 * @param detail for the engineer: what was found where
 * @returns the error, to be thrown by the caller
 * @example throw refusal('no-records', '1 part, 12 messages, none of them a record')
 */
export function refusal(code: RefusalCode, detail: string): RideRefused {
	return new RideRefused(code, SENTENCES[code], detail);
}
