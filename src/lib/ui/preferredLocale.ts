/**
 * The first locale that a browser's Accept-Language header asks for, so that the server writes dates and
 * decimal signs as the browser will.
 *
 * @param header the header's value, or null when there is none
 * @returns a BCP 47 tag; "en-GB" without a usable one
 * @example preferredLocale('de-CH,de;q=0.9,en;q=0.5') // "de-CH"
 */
export function preferredLocale(header: string | null): string {
	const ranked = (header ?? '')
		.split(',')
		.map((part) => {
			const [tag, ...options] = part.trim().split(';');
			const weight = options.find((option) => option.trim().startsWith('q='));
			return { tag: tag.trim(), weight: weight ? Number(weight.trim().slice(2)) : 1 };
		})
		.filter(({ tag, weight }) => tag !== '' && tag !== '*' && weight > 0)
		.sort((a, b) => b.weight - a.weight);
	for (const { tag } of ranked) {
		try {
			return Intl.getCanonicalLocales(tag)[0];
		} catch {
			// not a tag; try the next
		}
	}
	return 'en-GB';
}
