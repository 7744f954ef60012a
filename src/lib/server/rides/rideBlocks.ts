/** rides of neighbouring numbers that are copied together */
const BLOCK = 64;

/**
 * Something known of each of many rides, by the ride's number. After a change of few rides only their blocks are made
 * anew: a map of ten thousand rides would be copied for each file that comes in. It is never changed itself.
 */
export class RideBlocks<Value> {
	private constructor(readonly blocks: ReadonlyMap<number, ReadonlyMap<number, Value>>) {}

	static of<Value>(values: ReadonlyMap<number, Value>): RideBlocks<Value> {
		return new RideBlocks<Value>(new Map()).anew([], values);
	}

	get(rideId: number): Value | undefined {
		return this.blocks.get(blockOf(rideId))?.get(rideId);
	}

	/**
	 * With these rides read again; untouched blocks and values stay the same objects.
	 *
	 * @param touched rides that were read again
	 * @param again what was found of them; rides that are not there have no value any more
	 */
	anew(touched: readonly number[], again: ReadonlyMap<number, Value>): RideBlocks<Value> {
		const blocks = new Map(this.blocks);
		const mine = new Map<number, Map<number, Value>>();
		const own = (rideId: number) => {
			const number = blockOf(rideId);
			let block = mine.get(number);
			if (!block) {
				mine.set(number, (block = new Map(blocks.get(number))));
				blocks.set(number, block);
			}
			return block;
		};
		for (const id of touched) own(id).delete(id);
		for (const [id, value] of again) own(id).set(id, value);
		for (const [number, { size }] of mine) if (size === 0) blocks.delete(number);
		return new RideBlocks(blocks);
	}
}

function blockOf(rideId: number): number {
	return Math.floor(rideId / BLOCK);
}
