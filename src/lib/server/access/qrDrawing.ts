import { encode } from 'uqr';

/** A text as a square of modules for a phone's camera (ISO/IEC 18004), as one SVG path. */
export interface QrDrawing {
	/** modules along a side, the quiet zone of four included */
	size: number;
	path: string;
}

/** @param text what the camera is to read; error correction M, since it is read from a clean screen or paper */
export function qrDrawing(text: string): QrDrawing {
	const { data, size } = encode(text, { ecc: 'M', border: 4 });
	let path = '';
	data.forEach((row, y) => {
		for (let x = 0; x < size; x++) {
			if (!row[x]) continue;
			let end = x;
			while (end + 1 < size && row[end + 1]) end++;
			path += `M${x} ${y}h${end - x + 1}v1H${x}z`;
			x = end;
		}
	});
	return { size, path };
}
