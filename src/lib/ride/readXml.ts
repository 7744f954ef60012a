import { SaxesParser } from 'saxes';
import { MAX_XML_BYTES, MAX_XML_DEPTH, MAX_XML_TEXT } from './limits';
import { refusal } from './refusal';

export interface XmlHandlers {
	/**
	 * @param path local names from the root to the element that opens
	 * @param attributes by name as written
	 */
	open(path: readonly string[], attributes: Readonly<Record<string, string>>): void;
	/**
	 * @param path local names from the root to the element that closes
	 * @param text its own text, trimmed
	 */
	close(path: readonly string[], text: string): void;
}

const CHUNK = 65_536;

/**
 * Streams an XML file through a strict parser. Document types are refused, so that no entity can be
 * declared; depth, size and text are bounded.
 * @param bytes UTF-8
 * @param handlers called in document order
 * @returns null for a whole file; where it is cut off or broken, what stands where: what was handed to
 * the handlers until then is sound
 * @throws RideRefused 'too-large' or 'not-a-ride-file'
 */
export function readXml(bytes: Uint8Array, handlers: XmlHandlers): string | null {
	if (bytes.length > MAX_XML_BYTES) {
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_XML_BYTES}`);
	}
	const parser = new SaxesParser();
	const path: string[] = [];
	let text = '';
	let broken: string | null = null;
	const add = (more: string) => {
		if (text.length + more.length > MAX_XML_TEXT)
			throw refusal('too-large', `text of more than ${MAX_XML_TEXT}`);
		text += more;
	};
	parser.on('error', (error) => {
		broken ??= error.message;
	});
	parser.on('doctype', () => {
		throw refusal('not-a-ride-file', 'the file declares a document type');
	});
	parser.on('opentag', ({ name, attributes }) => {
		if (broken !== null) return;
		if (path.length >= MAX_XML_DEPTH)
			throw refusal('too-large', `elements nested deeper than ${MAX_XML_DEPTH}`);
		path.push(localName(name));
		text = '';
		handlers.open(path, attributes as Readonly<Record<string, string>>);
	});
	parser.on('closetag', () => {
		if (broken !== null) return;
		handlers.close(path, text.trim());
		path.pop();
		text = '';
	});
	parser.on('text', add);
	parser.on('cdata', add);
	const decoder = new TextDecoder('utf-8');
	for (let at = 0; at < bytes.length && broken === null; at += CHUNK) {
		parser.write(decoder.decode(bytes.subarray(at, at + CHUNK), { stream: true }));
	}
	if (broken === null) parser.close();
	return broken;
}

function localName(name: string): string {
	return name.slice(name.indexOf(':') + 1);
}
