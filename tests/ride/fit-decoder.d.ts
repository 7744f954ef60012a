/** The second decoder, which ships no types: only what the check uses. */
declare module 'fit-decoder' {
	export interface RawField {
		readonly recordNumber: number;
		readonly baseType: number;
		readonly data: unknown;
	}
	export interface RawRecord {
		readonly globalMessageNumber: number;
		readonly fields: readonly RawField[];
	}
	export function fit2json(file: ArrayBuffer): { readonly records: readonly RawRecord[] };
	const decoder: { readonly fit2json: typeof fit2json };
	export default decoder;
}
