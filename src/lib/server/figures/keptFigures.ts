/** figures of pages that were asked for; the largest page takes half a megabyte */
const MOST_BYTES = 24 * 2 ** 20;

/** Figures as bytes by name, up to a size in all; what was asked for longest ago goes first. */
export class KeptFigures<Kept extends { readonly bytes: Uint8Array }> {
	readonly #kept = new Map<string, Kept>();
	#bytes = 0;

	constructor(private readonly mostBytes = MOST_BYTES) {}

	get(name: string): Kept | undefined {
		const kept = this.#kept.get(name);
		if (!kept) return undefined;
		this.#kept.delete(name);
		this.#kept.set(name, kept);
		return kept;
	}

	set(name: string, kept: Kept): void {
		this.#remove(name);
		this.#kept.set(name, kept);
		this.#bytes += kept.bytes.byteLength;
		for (const oldest of this.#kept.keys()) {
			// what was just asked for stays, however large
			if (this.#bytes <= this.mostBytes || oldest === name) break;
			this.#remove(oldest);
		}
	}

	#remove(name: string): void {
		this.#bytes -= this.#kept.get(name)?.bytes.byteLength ?? 0;
		this.#kept.delete(name);
	}
}
