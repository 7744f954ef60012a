import type { GearEvent } from '$lib/ride/ride';

/**
 * The gear that a recorded shift names: teeth where it has both, else positions of the shifters, else what there
 * is. Teeth are as recorded, often not those of the bike.
 *
 * @example recordedGear({ timeS: 2, frontIndex: 2, frontTeeth: 46, rearIndex: 4, rearTeeth: 22 }) // "46/22"
 */
export function recordedGear({ frontIndex, rearIndex, frontTeeth, rearTeeth }: GearEvent): string {
	if (frontTeeth && rearTeeth) return `${frontTeeth}/${rearTeeth}`;
	if (frontIndex && rearIndex) return `no. ${frontIndex}/${rearIndex}`;
	if (rearTeeth) return `${rearTeeth} t`;
	return rearIndex ? `no. ${rearIndex}` : '';
}
