/** What the benchmark found on one set of rides. */
export interface BenchSet {
	readonly name: string;
	/** sentences as the benchmark wrote them */
	readonly lines: readonly string[];
}

/**
 * The sets of the benchmark's written figures: a heading and its list. Tables and other text are left out.
 *
 * @param written the file that the benchmark writes, Markdown
 * @example benchFigures('### Rides\n\n- found: 3/4\n') // [{ name: 'Rides', lines: ['found: 3/4'] }]
 */
export function benchFigures(written: string): { title: string; sets: BenchSet[] } {
	const sets: { name: string; lines: string[] }[] = [];
	let title = '';
	for (const line of written.split('\n')) {
		if (line.startsWith('# ')) title = line.slice(2).trim();
		if (line.startsWith('### ')) sets.push({ name: line.slice(4).trim(), lines: [] });
		if (line.startsWith('- ')) sets[sets.length - 1]?.lines.push(line.slice(2).trim());
	}
	return { title, sets: sets.filter(({ lines }) => lines.length > 0) };
}
