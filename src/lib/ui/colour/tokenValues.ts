export type Scheme = 'light' | 'dark' | 'print';
export type TokenValues = Readonly<Record<string, string>>;

/**
 * The tokens of src/lib/ui/tokens.css as each scheme has them: the dark and the printed scheme name only what
 * differs from the light one.
 *
 * @param css text of the file
 * @example tokenValues(css).dark.ink // "#ece7d9"
 */
export function tokenValues(css: string): Readonly<Record<Scheme, TokenValues>> {
	const blocks = [...css.matchAll(/(@media ([^{]+)\{\s*)?:root\s*\{([^}]*)\}/g)];
	const named = (condition: RegExp | null): TokenValues =>
		Object.fromEntries(
			blocks
				.filter(([, , media = '']) => (condition ? condition.test(media) : media === ''))
				.flatMap(([, , , rules]) => [...rules.matchAll(/--([\w-]+):\s*([^;]+);/g)])
				.map(([, name, value]) => [name, value.trim()])
		);
	const light = named(null);
	return { light, dark: { ...light, ...named(/dark/) }, print: { ...light, ...named(/print/) } };
}
