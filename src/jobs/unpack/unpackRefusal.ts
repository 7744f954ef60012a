import type { FileRefusal } from '../analysis/messages';

const SENTENCES = {
	'archive-damaged':
		'This archive is damaged or was cut off on its way. Pack it again, or hand in the files themselves.',
	'archive-empty': 'There is no file in this archive.',
	'archive-too-many':
		'There are more files in this archive than are taken at once. Pack them into several archives.',
	'archive-too-large':
		'Unpacked, this archive is larger than what is taken at once. Pack the files into several archives.',
	'archive-overlaps':
		'The files in this archive share their bytes, which no honest archive does. It was not opened.',
	'member-locked': 'This file is locked with a password. Pack it again without one.',
	'member-packing':
		'This file is packed in a way that is not read here. Pack it again as an ordinary zip archive.',
	'member-no-file': 'This is a link or a device, no file. Hand in the file itself.',
	'member-name': 'The name of this file points out of the archive, which no honest archive does.',
	'member-too-deep': 'This file lies in too many folders within folders. Hand in the file itself.',
	'member-too-large': 'Unpacked, this file is larger than any ride that is taken. Split the recording.',
	'member-expands': 'This file would unpack to far more than a ride does. It was not unpacked.',
	'member-damaged': 'This file is damaged in the archive. Copy it from the device again.',
	'member-archive':
		'This is an archive within the archive, which is not opened. Unpack it and hand in what is in it.'
} as const;

export type UnpackRefusalCode = keyof typeof SENTENCES;

/** Thrown while an archive is read; what is thrown for one member ends that member alone. */
export class UnpackRefused extends Error {
	readonly refusal: FileRefusal;

	constructor(code: UnpackRefusalCode, detail: string) {
		super(detail);
		this.name = 'UnpackRefused';
		this.refusal = { code, sentence: SENTENCES[code], detail };
	}
}
