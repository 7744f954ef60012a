import { PREFIX } from '$lib/address/prefix';
import { BulkSend, type BulkOptions, type BulkView } from '$lib/ui/bulk/bulkSend';

/** a thousand files must not redraw the page, or load it anew, a thousand times */
const DRAW_EVERY_MS = 150;
const LOAD_EVERY_MS = 3_000;
/** where nothing comes through for a while, what is said of the time left must not stand still */
const DRAW_AT_LEAST_EVERY_MS = 1_000;

/**
 * The files of this page on their way, as state that is drawn a few times a second.
 *
 * @param further how it sends on this page
 * @param load loads the page's data anew, after files have arrived
 */
export function bulkUpload(
	load: () => unknown,
	further: Pick<BulkOptions, 'slowLine' | 'brokeSentence'> = {}
) {
	const bulk = new BulkSend({ ...further, fetch: (...args) => fetch(...args), onChange: changed });
	let view = $state.raw<BulkView>(bulk.view());
	let drawing: ReturnType<typeof setTimeout> | null = null;
	let loading: ReturnType<typeof setTimeout> | null = null;
	let arrived = 0;
	let ticking: ReturnType<typeof setInterval> | null = null;

	function changed() {
		drawing ??= setTimeout(draw, DRAW_EVERY_MS);
	}

	function draw() {
		drawing = null;
		view = bulk.view();
		// lines are told apart by their key, their content by being new
		view = { ...view, shown: view.shown.map((one) => ({ ...one })) };
		tick(view.state === 'sending');
		window.onbeforeunload = view.state === 'sending' ? (event) => event.preventDefault() : null;
		const { sent, refused } = view.counts;
		if (sent + refused === arrived) return;
		arrived = sent + refused;
		loadIn(view.state === 'sending' ? LOAD_EVERY_MS : 0);
	}

	function loadIn(ms: number) {
		loading ??= setTimeout(async () => {
			const answers = await serverAnswers();
			// the page may have been left meanwhile
			if (loading === null) return;
			loading = null;
			if (answers) void load();
			else loadIn(LOAD_EVERY_MS);
		}, ms);
	}

	function tick(on: boolean) {
		if (on) ticking ??= setInterval(changed, DRAW_AT_LEAST_EVERY_MS);
		else if (ticking) {
			clearInterval(ticking);
			ticking = null;
		}
	}

	return {
		get view() {
			return view;
		},
		add: bulk.add.bind(bulk),
		pause: bulk.pause.bind(bulk),
		goOn: bulk.goOn.bind(bulk),
		cancel: bulk.cancel.bind(bulk),
		retry: bulk.retry.bind(bulk),
		/** the page is left: what is on its way stops, and the server keeps what arrived */
		leave: () => {
			bulk.pause();
			if (drawing) clearTimeout(drawing);
			if (loading) clearTimeout(loading);
			loading = null;
			tick(false);
			if (typeof window !== 'undefined') window.onbeforeunload = null;
		}
	};
}

/**
 * Asked before the page's data is loaded anew: where the server is away the framework would leave the page for the
 * browser's own, and every file that waits would be forgotten.
 */
async function serverAnswers(): Promise<boolean> {
	try {
		return (await fetch(`${PREFIX}/health.json`)).ok;
	} catch {
		return false;
	}
}

export type BulkUpload = ReturnType<typeof bulkUpload>;
