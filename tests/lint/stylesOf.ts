import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';

export interface Rule {
	/** path of the file from src */
	readonly file: string;
	readonly selector: string;
	readonly property: string;
	readonly value: string;
}

/** Files below a folder whose names end in one of the endings, as paths from it. */
export function filesBelow(folder: string, endings: readonly string[]): string[] {
	return readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
		.map((entry) => relative(folder, join(entry.parentPath, entry.name)));
}

/** Every declaration in a style sheet or in the style block of a component. */
export function rulesOf(folder: string, file: string): Rule[] {
	const text = readFileSync(join(folder, file), 'utf8');
	const css = file.endsWith('.css') ? text : (/<style>([\s\S]*?)<\/style>/.exec(text)?.[1] ?? '');
	// a block without blocks inside it is a rule: media queries fall away by themselves
	return [...css.replace(/\/\*[\s\S]*?\*\//g, '').matchAll(/([^{};]+)\{([^{}]*)\}/g)].flatMap(
		([, selector, declarations]) =>
			[...declarations.matchAll(/([\w-]+)\s*:\s*([^;]+)/g)].map(([, property, value]) => ({
				file,
				selector: selector.trim().replace(/\s+/g, ' '),
				property,
				value: value.trim()
			}))
	);
}
