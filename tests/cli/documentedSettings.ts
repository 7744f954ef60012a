import { readFileSync } from 'node:fs';

/** The rows of the table of environment variables in DEVELOPERS.md. */
export function documentedSettings(): { name: string; value: string; meaning: string }[] {
	const text = readFileSync('DEVELOPERS.md', 'utf8');
	const section = text.split(/^## Settings$/m)[1]?.split(/^## /m)[0] ?? '';
	return [...section.matchAll(/^\| `([A-Z][A-Z_]+)`\s*\|([^|]*)\|([^|]*)\|$/gm)].map(
		([, name, value, meaning]) => ({ name, value: value.trim(), meaning: meaning.trim() })
	);
}
