import { glyphSize } from './glyphSize';

/** A sign on a drawing that has a number beside it. */
export interface NumberedSign {
	readonly id: number;
	readonly number: number;
	readonly x: number;
	readonly y: number;
	readonly overrunCrankDeg?: number;
}

/** where the number of a sign begins and the line that it stands on, pixels */
export interface NumberPlace {
	readonly x: number;
	readonly y: number;
}

/** room of a digit and of a line, pixels */
const DIGIT = 8;
const LINE = 13;
/** between a sign and its number */
const GAP = 4;
/** radius of the ring around the chosen sign and half its line */
export const RING = 14;

interface Box {
	readonly left: number;
	readonly right: number;
	readonly top: number;
	readonly bottom: number;
}

/**
 * Places for the numbers of signs that may lie close to each other: to the right of the sign or, where another sign or
 * number stands there, to its left, above or below; to the right where nothing is free. The chosen sign chooses first.
 *
 * @param signs in the order of their numbers, pixels
 * @returns a place for each, in their order
 */
export function numberPlaces(signs: readonly NumberedSign[], selectedId: number | null): NumberPlace[] {
	const half = (sign: NumberedSign) => (sign.id === selectedId ? RING : glyphSize(sign.overrunCrankDeg));
	const taken = signs.map((sign) => around(sign, half(sign)));
	const places = new Map<number, NumberPlace>();
	const chosenFirst = [...signs].sort((a, b) => Number(b.id === selectedId) - Number(a.id === selectedId));
	for (const sign of chosenFirst) {
		const width = DIGIT * String(sign.number).length;
		const away = half(sign) + GAP;
		const choices = [
			{ x: sign.x + away, y: sign.y + 4 },
			{ x: sign.x - away - width, y: sign.y + 4 },
			{ x: sign.x - width / 2, y: sign.y - away },
			{ x: sign.x - width / 2, y: sign.y + away + LINE - GAP }
		];
		const boxOf = ({ x, y }: NumberPlace) => ({ left: x, right: x + width, top: y - LINE + GAP, bottom: y });
		const isFree = (place: NumberPlace) => !taken.some((box) => overlap(box, boxOf(place)));
		const place = choices.find(isFree) ?? choices[0];
		places.set(sign.id, place);
		taken.push(boxOf(place));
	}
	return signs.map(({ id }) => places.get(id)!);
}

const around = ({ x, y }: NumberedSign, half: number): Box => ({
	left: x - half,
	right: x + half,
	top: y - half,
	bottom: y + half
});

const overlap = (a: Box, b: Box) =>
	a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
