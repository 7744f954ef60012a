import { PREFIX } from '$lib/address/prefix';
import type { ImportOverview } from '$lib/server/views';

const LOAD_EVERY_MS = 3_000;

const underWayOf = ({ underWay: { waiting, reading, unpacking, receiving } }: ImportOverview) =>
	waiting + reading + unpacking + receiving;

/**
 * Follows files that are still being read: asks the server once a second while any is, and tells the page
 * when some have settled, so that their rides appear in the list; of many together a few times.
 *
 * @param loaded what the page was loaded with
 * @param settled called after files have become rides or were refused
 */
export function pollImports(loaded: () => ImportOverview, settled: () => void) {
	let fresh = $state.raw<ImportOverview | null>(null);
	const current = $derived(fresh ?? loaded());
	const underWay = $derived(underWayOf(current));
	let toldMs = 0;

	$effect(() => {
		void loaded();
		fresh = null;
	});

	$effect(() => {
		if (underWay === 0) return;
		const before = underWay;
		const timer = setInterval(async () => {
			const response = await fetch(`${PREFIX}/imports.json?overview`).catch(() => null);
			if (!response?.ok) return;
			const answer = (await response.json()) as ImportOverview;
			fresh = answer;
			const left = underWayOf(answer);
			if (left >= before || (left > 0 && performance.now() - toldMs < LOAD_EVERY_MS)) return;
			toldMs = performance.now();
			settled();
		}, 1000);
		return () => clearInterval(timer);
	});

	return {
		get current() {
			return current;
		},
		get sentence() {
			const { waiting, reading, receiving, unpacking } = current.underWay;
			if (underWay === 0) return 'Everything that arrived has been read.';
			const said = [
				[receiving, 'on the way'],
				[unpacking, unpacking === 1 ? 'archive being unpacked' : 'archives being unpacked'],
				[waiting, 'waiting'],
				[reading, 'being read']
			].filter(([count]) => Number(count) > 0);
			return `${said.map(([count, word]) => `${count} ${word}`).join(', ')}; the page may be left.`;
		}
	};
}
