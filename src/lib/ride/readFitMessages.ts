import FitParser from 'fit-file-parser';
import type { FitMessage, FitMessages } from './fitMessages';

/**
 * Reads the messages of one whole FIT file with the FIT parser; its records, which are nearly all of a file, are
 * read apart (`fitRecords`).
 * @param file a file whose framing is known to be whole (`fitWithoutRecords`)
 * @returns its messages
 * @throws Error when the parser gives up, whatever it threw
 */
export async function readFitMessages(file: Uint8Array<ArrayBuffer>): Promise<FitMessages> {
	let parsed: unknown;
	try {
		// force: the checksum has been looked at, and what could be saved is whole
		parsed = await new FitParser({ mode: 'list', force: true }).parseAsync(file.buffer);
	} catch (cause) {
		// the parser rejects with strings and throws errors, both happen
		throw new Error(cause instanceof Error ? cause.message : String(cause), { cause });
	}
	const messages = (parsed as { messages?: Record<string, FitMessage[] | undefined> }).messages ?? {};
	const of = (name: string) => messages[name] ?? [];
	return {
		events: of('event'),
		laps: of('lap'),
		sessions: of('session'),
		sports: of('sport'),
		devices: of('device_info'),
		activities: of('activity'),
		fileIds: of('file_id')
	};
}
