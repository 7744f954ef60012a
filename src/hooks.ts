import { PackedFigures } from '$lib/ui/packedFigures';
import type { Transport } from '@sveltejs/kit';

/** How what is no plain data comes from a page's server to the page. */
export const transport: Transport = {
	PackedFigures: {
		encode: (value) => value instanceof PackedFigures && value.text,
		decode: (text: string) => new PackedFigures(text)
	}
};
