/** One case of a reference file: inputs, what R (or a published table) says, and how far ours may be off. */
export interface ReferenceCase {
	readonly id: string;
	readonly source?: string;
	// the files hold many shapes; each test names the fields it reads
	// eslint-disable-next-line @typescript-eslint/no-explicit-any
	readonly inputs: any;
	// eslint-disable-next-line @typescript-eslint/no-explicit-any
	readonly expected: any;
	readonly tolerance: { readonly rel: number; readonly abs?: number };
}

/** The cases of a reference file whose name begins so. */
export function referenceCases(file: { cases: unknown }, idBegins = ''): ReferenceCase[] {
	return (file.cases as ReferenceCase[]).filter((one) => one.id.startsWith(idBegins));
}

/** The files write what JSON cannot: "Inf", "-Inf", "NaN", "NA", "undefined". */
export function readNumber(value: number | string): number {
	if (typeof value === 'number') return value;
	if (value === 'Inf') return Infinity;
	return value === '-Inf' ? -Infinity : NaN;
}
