import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { colourDifference } from '$lib/ui/colour/colourDifference';
import { contrastRatio } from '$lib/ui/colour/contrastRatio';
import { labOf } from '$lib/ui/colour/labOf';
import { laidOver } from '$lib/ui/colour/laidOver';
import { rgbaOf } from '$lib/ui/colour/rgbaOf';
import { seenBy, SIGHTS } from '$lib/ui/colour/seenBy';
import { tokenValues, type Scheme } from '$lib/ui/colour/tokenValues';
import { GROUNDS, MARK_INKS, NEUTRAL_INKS, TEXT_INKS } from '$lib/ui/colour/uses';

const CSS = readFileSync(new URL('../../../src/lib/ui/tokens.css', import.meta.url), 'utf8');
const TOKENS = tokenValues(CSS);
const SCHEMES: readonly Scheme[] = ['light', 'dark', 'print'];
/** WCAG 2.2, criteria 1.4.3 and 1.4.11 */
const TEXT_CONTRAST = 4.5;
const MARK_CONTRAST = 3;
/** Least CIELAB distance of two inks that data are drawn in; about 2 is just seen. Common practice, no source. */
const TOLD_APART = 14;
/** CIELAB chroma up to which an ink still looks like grey, pencil or paper. Common practice, no source. */
const NEUTRAL_CHROMA = 13;

const colour = (scheme: Scheme, name: string) => rgbaOf(TOKENS[scheme][name]);
const pairs = (one: readonly string[], other: readonly string[]) =>
	one.flatMap((a) => other.map((b) => [a, b] as const));

describe.each(SCHEMES)('the tokens, %s', (scheme) => {
	it.each(pairs(TEXT_INKS, GROUNDS))('let %s be read on %s', (ink, ground) => {
		expect(contrastRatio(colour(scheme, ink), colour(scheme, ground))).toBeGreaterThanOrEqual(TEXT_CONTRAST);
	});

	it('let the words on a filled button be read', () => {
		const ratio = contrastRatio(colour(scheme, 'on-accent'), colour(scheme, 'accent'));
		expect(ratio).toBeGreaterThanOrEqual(TEXT_CONTRAST);
	});

	it.each(pairs(MARK_INKS, GROUNDS))('let marks, lines and edges in %s be seen on %s', (ink, ground) => {
		expect(contrastRatio(colour(scheme, ink), colour(scheme, ground))).toBeGreaterThanOrEqual(MARK_CONTRAST);
	});

	it.each(GROUNDS)('let ink and accent be seen where the wash lies over %s', (ground) => {
		const washed = laidOver(colour(scheme, 'accent-wash'), colour(scheme, ground));
		for (const ink of ['ink', 'accent'])
			expect(contrastRatio(colour(scheme, ink), washed)).toBeGreaterThanOrEqual(MARK_CONTRAST);
	});

	it.each(SIGHTS)('keep the inks of data apart under simulated %s', (sight) => {
		const inks = ['ink', 'soft', 'rule-strong', 'accent', 'sheet'];
		for (const [one, other] of pairs(inks, inks).filter(([a, b]) => a < b)) {
			const distance = colourDifference(
				seenBy(sight, colour(scheme, one)),
				seenBy(sight, colour(scheme, other))
			);
			expect(distance, `${one} against ${other}`).toBeGreaterThanOrEqual(TOLD_APART);
		}
	});

	// where all but one ink are grey, nothing can be told by hue but "accent or not", which has a shape as well
	it('have one accent: all other inks and grounds are neutral', () => {
		const chroma = (name: string) => Math.hypot(...labOf(colour(scheme, name)).slice(1));
		for (const name of [...NEUTRAL_INKS, ...GROUNDS]) expect(chroma(name), name).toBeLessThan(NEUTRAL_CHROMA);
		expect(chroma('accent')).toBeGreaterThan(2 * NEUTRAL_CHROMA);
	});
});

describe('the tokens as a set', () => {
	it('name in print every colour that the dark scheme changes, so that nobody prints by night', () => {
		const block = (media: string) => CSS.slice(CSS.indexOf(media)).split(/\n\}/)[0];
		const names = (media: string) => [...block(media).matchAll(/--([\w-]+):/g)].map(([, name]) => name);
		expect(names('@media print').sort()).toEqual(names('@media (prefers-color-scheme: dark)').sort());
	});
});
