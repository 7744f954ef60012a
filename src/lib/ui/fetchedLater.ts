/** what came, by how it is fetched */
const come = new Map<() => Promise<unknown>, unknown>();

/**
 * A part of the program that a page fetches when it is asked for; null when it did not come. Browsers remember of a
 * module that its fetching failed for as long as the page stands. So the server is asked first whether it still has
 * the program of this page: as long as it does not answer nothing is spoilt, and asking again can succeed.
 *
 * @param load always the same function for the same part: what came once is kept
 */
export async function fetchedLater<Part>(load: () => Promise<Part>): Promise<Part | null> {
	if (come.has(load)) return come.get(load) as Part;
	try {
		const { ok } = await fetch(import.meta.url, { method: 'HEAD', cache: 'no-store' });
		if (!ok) return null;
		const part = await load();
		come.set(load, part);
		return part;
	} catch {
		return null;
	}
}
