/** Inks on paper as src/lib/ui/tokens.css has them (a test holds both equal). */
const PRINTED: Readonly<Record<string, string>> = {
	ground: '#fff',
	sheet: '#fff',
	sunken: '#f2f2f2',
	ink: '#000',
	soft: '#333',
	rule: '#999',
	'rule-strong': '#5a5a5a',
	accent: '#5c1c52',
	'accent-wash': '#7b2d6f26'
};

/** Names of the inks that a drawing may use. */
export const INKS: readonly string[] = Object.keys(PRINTED);

/**
 * The plain colour of an ink on paper, for drawings that stand by themselves.
 *
 * @throws Error for an ink that no drawing may use
 * @example inkOf('ink') // "#000"
 */
export function inkOf(name: string): string {
	if (!Object.hasOwn(PRINTED, name)) throw new Error(`There is no ink "${name}" for drawings.`);
	return PRINTED[name];
}
