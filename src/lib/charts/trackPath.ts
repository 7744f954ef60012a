/** A track laid flat on a drawing. */
export interface Track {
	/** SVG path of the track; a missing position breaks it */
	readonly path: string;
	/** the place of a second on the drawing; null without a position there */
	readonly at: (second: number) => { readonly x: number; readonly y: number } | null;
	/** SVG path of a stretch, seconds */
	readonly pathOf: (fromS: number, toS: number) => string;
	readonly width: number;
	readonly height: number;
}

/** More points than this cannot be told apart on a drawing of this size. */
const MOST_POINTS = 2500;
/** a stretch is drawn anew with each move of the window */
const STRETCH_POINTS = 600;

/**
 * Lays positions flat: an equirectangular projection about the middle of the ride, true to shape over the
 * tens of kilometres of a ride. North is up.
 *
 * @param latitudeDeg one value a second, NaN = not known
 * @param longitudeDeg the same seconds
 * @param size [width, height] of the drawing in pixels
 * @returns null when the ride holds fewer than two positions or does not leave its place
 */
export function trackPath(
	latitudeDeg: Float32Array,
	longitudeDeg: Float32Array,
	size: readonly [number, number]
): Track | null {
	const known = (i: number) => !Number.isNaN(latitudeDeg[i]) && !Number.isNaN(longitudeDeg[i]);
	let [south, north, west, east] = [Infinity, -Infinity, Infinity, -Infinity];
	for (let i = 0; i < latitudeDeg.length; i++) {
		if (!known(i)) continue;
		south = Math.min(south, latitudeDeg[i]);
		north = Math.max(north, latitudeDeg[i]);
		west = Math.min(west, longitudeDeg[i]);
		east = Math.max(east, longitudeDeg[i]);
	}
	const shrink = Math.cos((((south + north) / 2) * Math.PI) / 180);
	const [across, up] = [(east - west) * shrink, north - south];
	// 1e-4 degrees are about ten metres
	if (!(Math.max(across, up) > 1e-4)) return null;
	const margin = 12;
	const scale = Math.min((size[0] - 2 * margin) / across, (size[1] - 2 * margin) / up);
	const [width, height] = [across * scale + 2 * margin, up * scale + 2 * margin];
	const place = (i: number) => ({
		x: margin + (longitudeDeg[i] - west) * shrink * scale,
		y: margin + (north - latitudeDeg[i]) * scale
	});
	// written once, since a stretch is drawn anew with each move of the window
	const written: string[] = [];
	const placeWords = (i: number) => {
		const { x, y } = place(i);
		return (written[i] = `${x.toFixed(1)},${y.toFixed(1)}`);
	};
	const pathOf = (fromS: number, toS: number, most = STRETCH_POINTS) => {
		const [first, last] = [Math.max(0, Math.floor(fromS)), Math.min(latitudeDeg.length - 1, Math.ceil(toS))];
		// the same points wherever the window begins: what is shown of the line keeps its shape while it moves
		const step = 2 ** Math.ceil(Math.log2(Math.max(1, (last - first + 1) / most)));
		let path = '';
		let pen = 'M';
		for (let i = first; i <= last; i = i === last ? i + 1 : Math.min(last, i - (i % step) + step)) {
			if (known(i)) path += pen + (written[i] ?? placeWords(i));
			pen = known(i) ? 'L' : 'M';
		}
		return path;
	};
	const at = (second: number) => {
		const i = Math.min(latitudeDeg.length - 1, Math.max(0, Math.round(second)));
		return known(i) ? place(i) : null;
	};
	return { path: pathOf(0, latitudeDeg.length - 1, MOST_POINTS), at, pathOf, width, height };
}
