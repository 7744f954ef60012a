import { PREFIX } from '$lib/address/prefix';
import { fineLines, type FineLines } from '$lib/charts/fineLines';
import { readChannels } from '$lib/charts/readChannels';
import type { TimeWindow } from '$lib/charts/timeWindow';

/** A window that moves is not asked for until it has stood still for this long. */
const STILL_MS = 120;
/** What is asked for reaches beyond the window by this share of it on either side, so that it can be moved. */
const BEYOND = 0.5;

/**
 * The lines of a logger at its own rate: once the whole ride, then each stretch that is looked at. While a stretch
 * is on its way, what is there goes on being shown.
 */
export class OwnRateLines {
	/** of the whole ride */
	whole = $state.raw<FineLines | null>(null);
	#near = $state.raw<FineLines | null>(null);
	#waiting: ReturnType<typeof setTimeout> | undefined;
	#asked = '';

	/** @param endS length of the ride, seconds */
	constructor(
		readonly rideId: number,
		readonly endS: number
	) {}

	/** The lines to draw in a window: the nearer ones where they cover it. */
	shown([fromS, toS]: TimeWindow): FineLines | null {
		const near = this.#near;
		if (!near) return this.whole;
		const [start, end] = near.coversS;
		const covers = start <= fromS + near.groupS && end >= Math.min(toS, this.endS) - near.groupS;
		return covers && !(this.whole && this.whole.groupS <= near.groupS) ? near : this.whole;
	}

	/** Asks for what a window can show, once it stands still. */
	look([fromS, toS]: TimeWindow, pixels: number): void {
		clearTimeout(this.#waiting);
		this.#waiting = setTimeout(async () => {
			if (!this.whole) this.whole = await this.#fetch([0, this.endS], pixels);
			const beyond = (toS - fromS) * BEYOND;
			const stretch = [Math.max(0, fromS - beyond), Math.min(this.endS, toS + beyond)] as const;
			if (stretch[0] <= 0 && stretch[1] >= this.endS) return;
			const found = await this.#fetch(stretch, (1 + 2 * BEYOND) * pixels);
			// an answer that comes late is not put over a later one
			if (found) this.#near = found;
		}, STILL_MS);
	}

	/** Nothing more is asked for. */
	close(): void {
		clearTimeout(this.#waiting);
		this.#asked = 'nothing';
	}

	async #fetch([fromS, toS]: readonly [number, number], pixels: number): Promise<FineLines | null> {
		const query = `from=${fromS.toFixed(3)}&to=${toS.toFixed(3)}&pixels=${Math.min(4096, Math.ceil(pixels))}`;
		if (this.#asked === 'nothing') return null;
		this.#asked = query;
		// a look that fails leaves what is there
		const response = await fetch(`${PREFIX}/rides/${this.rideId}/channels?${query}`).catch(() => null);
		if (!response?.ok || this.#asked !== query) return null;
		return fineLines(readChannels(await response.arrayBuffer()));
	}
}
