import { toColumns, toRows, type RowColumns } from '$lib/tables/rowColumns';
import { parse, stringify } from 'devalue';

const texts = new WeakMap<object, string>();

/** Figures as bytes that another process can send and that stay small while nobody asks for them. */
export function packFigures(figures: object): Uint8Array {
	return Buffer.from(write(figures));
}

/** Figures from such bytes; their text is kept with them, since pages send it on as it is. */
export function unpackFigures(bytes: Uint8Array): object {
	const text = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString();
	const figures = parse(text, { Rows: (columns: RowColumns) => toRows(columns) }) as object;
	texts.set(figures, text);
	return figures;
}

/** The text of figures, written only where they were not sent from another process. */
export function figuresText(figures: object): string {
	return texts.get(figures) ?? write(figures);
}

function write(figures: object): string {
	return stringify(figures, { Rows: toColumns });
}
