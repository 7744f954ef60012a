/** The address that computes instead of saying first that it would take a while. */
export function computingNow(url: URL): string {
	const now = new URL(url);
	now.searchParams.set('now', '1');
	return `${now.pathname}${now.search}`;
}

/** Whether an address asks for the result, however long it takes. */
export function asksForNow(url: URL): boolean {
	return url.searchParams.get('now') === '1';
}
