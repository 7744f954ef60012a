import { constantsOf, type Constant } from './constantsOf';

/** Sources of the two rooms that judge rides, as text. */
const SOURCES = import.meta.glob<string>(['/src/lib/drivetrain/*.ts', '/src/lib/slip/*.ts'], {
	query: '?raw',
	import: 'default',
	eager: true
});

/** What the benchmark wrote down of the detector that ships. */
const FIGURES = import.meta.glob<string>('/tests/bench/detection-figures.md', {
	query: '?raw',
	import: 'default',
	eager: true
});

export interface ConstantsOfFile {
	/** "find candidates" for findCandidates.ts */
	readonly step: string;
	readonly file: string;
	/** first sentence of what the file says of its function; empty where it says nothing */
	readonly does: string;
	readonly constants: readonly Constant[];
}

/** Fixed numbers of every source file that has some, by file. */
export function allConstants(): ConstantsOfFile[] {
	return Object.entries(SOURCES)
		.map(([path, source]) => {
			const file = path.replace('/src/lib/', '');
			return { step: stepOf(file), file, does: firstSentence(source), constants: constantsOf(source) };
		})
		.filter(({ constants }) => constants.length > 0)
		.sort((a, b) => (a.file < b.file ? -1 : 1));
}

/** The benchmark's own words; empty where they are not part of this copy of the program. */
export function writtenFigures(): string {
	return Object.values(FIGURES)[0] ?? '';
}

/** File names are what the function does: findCandidates becomes "find candidates". */
function stepOf(file: string): string {
	return file
		.replace(/^.*\//, '')
		.replace('.ts', '')
		.replace(/([a-z0-9])([A-Z])/g, '$1 $2')
		.toLowerCase();
}

/** First sentence of the doc block over the exported function. */
function firstSentence(source: string): string {
	const block = /\/\*\*\s*((?:(?!\*\/)[\s\S])*?)\s*\*\/\s*export (?:async )?function/.exec(source)?.[1] ?? '';
	const text = block
		.split(/\n\s*\*\s*@/)[0]
		.replace(/\s*\n\s*\*?\s*/g, ' ')
		.replace(/^\*?\s*/, '')
		.trim();
	return /^.*?[.:](?=\s|$)/.exec(text)?.[0].replace(/:$/, '.') ?? text;
}
