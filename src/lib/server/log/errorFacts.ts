export interface ErrorFacts {
	error: string;
	code: string | null;
	/** what the engine itself says; null where the text may quote a file, a path or a person */
	message: string | null;
	/** places in the program, without the folder it lies in */
	at: string[];
}

/** errors whose texts the engine or SQLite make from the program's own names */
const SPEAKS_OF_THE_PROGRAM = new Set(['TypeError', 'ReferenceError', 'SqliteError']);
const MOST_PLACES = 12;
const LONGEST_MESSAGE = 200;

/**
 * What a log may know of an error: its kind, its code, where in the program it came up. Texts that may quote
 * what a person wrote, a file's content or a path (JSON, files, refusals) are left out.
 */
export function errorFacts(error: unknown): ErrorFacts {
	if (!(error instanceof Error)) return { error: typeof error, code: null, message: null, at: [] };
	const { code } = error as { code?: unknown };
	const name = /^\w{1,40}$/.test(error.name) ? error.name : 'Error';
	// quotes in an engine's text hold values
	const message = SPEAKS_OF_THE_PROGRAM.has(name)
		? error.message.slice(0, LONGEST_MESSAGE).replace(/(["'`]).*?\1/g, '...')
		: null;
	return {
		error: name,
		code: typeof code === 'string' && /^[A-Z_0-9a-z-]{1,60}$/.test(code) ? code : null,
		message,
		at: placesOf(error.stack ?? '')
	};
}

/** "function file.js:12:3" of each frame; the way to the file may hold a person's name. */
function placesOf(stack: string): string[] {
	const places: string[] = [];
	for (const line of stack.split('\n')) {
		const frame = /^\s+at (?:async )?(?:(\S+) (?:\[as \w+\] )?\()?(?:file:\/\/)?(.*?):(\d+):(\d+)\)?$/.exec(
			line
		);
		if (!frame) continue;
		const file = frame[2].split(/[\\/]/).at(-1) ?? '';
		places.push(`${frame[1] ?? ''} ${file}:${frame[3]}:${frame[4]}`.trim());
		if (places.length === MOST_PLACES) break;
	}
	return places;
}
