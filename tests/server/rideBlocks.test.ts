import { expect, it } from 'vitest';
import { randomNumbers } from '$lib/reliability/randomNumbers';
import { RideBlocks } from '$lib/server/rides/rideBlocks';

it('knows after each change what a map would know, and stays itself as it was', () => {
	const draw = randomNumbers(17);
	const map = new Map<number, object>();
	let blocks = RideBlocks.of(map);
	for (let change = 0; change < 300; change++) {
		const touched = Array.from({ length: draw.below(4) }, () => draw.below(400));
		const again = new Map(touched.filter(() => draw.next() < 0.6).map((id) => [id, { change, id }]));
		const before = blocks;
		const was = Array.from({ length: 400 }, (_, id) => before.get(id));
		blocks = before.anew(touched, again);
		for (const id of touched) map.delete(id);
		for (const [id, value] of again) map.set(id, value);
		for (let id = 0; id < 400; id++) {
			expect(before.get(id)).toBe(was[id]);
			expect(blocks.get(id)).toBe(map.get(id));
		}
	}
	expect(blocks).toEqual(RideBlocks.of(map));
});

it('copies nothing but the blocks of rides that were read again', () => {
	const blocks = RideBlocks.of(new Map(Array.from({ length: 1000 }, (_, id) => [id, { id }])));
	const after = blocks.anew([130], new Map([[130, { id: 130 }]]));
	const copied = [...blocks.blocks.keys()].filter((one) => after.blocks.get(one) !== blocks.blocks.get(one));
	expect(copied).toEqual([2]);
	expect(after.get(131)).toBe(blocks.get(131));
	expect(after.anew([130], new Map()).get(130)).toBeUndefined();
});
