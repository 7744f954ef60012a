import type { ImportView } from '$lib/server/views';

const UNDER_WAY = new Set(['receiving', 'waiting', 'analysing', 'unpacking']);
const isUnderWay = ({ stage, brokeOff }: ImportView) => UNDER_WAY.has(stage) && !brokeOff;

/**
 * Follows files that are still being read: asks the server once a second while any is, and tells the page
 * when one has settled, so that its ride appears in the list.
 *
 * @param loaded what the page was loaded with
 * @param settled called after a file has become a ride or was refused
 */
export function pollImports(loaded: () => readonly ImportView[], settled: () => void) {
	let fresh = $state<readonly ImportView[] | null>(null);
	const current = $derived(fresh ?? loaded());
	const underWay = $derived(current.filter(isUnderWay).length);

	$effect(() => {
		void loaded();
		fresh = null;
	});

	$effect(() => {
		if (underWay === 0) return;
		const before = underWay;
		const timer = setInterval(async () => {
			const response = await fetch('/imports.json').catch(() => null);
			if (!response?.ok) return;
			const answer = (await response.json()) as ImportView[] | { imports: ImportView[] };
			fresh = Array.isArray(answer) ? answer : answer.imports;
			if (fresh.filter(isUnderWay).length < before) settled();
		}, 1000);
		return () => clearInterval(timer);
	});

	return {
		get current() {
			return current;
		},
		get sentence() {
			if (underWay === 0) return 'Everything that arrived has been read.';
			return `${underWay} ${underWay === 1 ? 'file is' : 'files are'} still being read; the page may be left.`;
		}
	};
}
