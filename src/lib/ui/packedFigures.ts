import { toRows, type RowColumns } from '$lib/tables/rowColumns';
import { parse } from 'devalue';

/**
 * Many figures that a page's server hands to the page as one text: writing each of some ten thousand numbers into the
 * page took a quarter of the time of its answer. Read on either side when first asked for.
 */
export class PackedFigures<Figures> {
	#figures: Figures | undefined;

	constructor(
		readonly text: string,
		figures?: Figures
	) {
		this.#figures = figures;
	}

	get figures(): Figures {
		return (this.#figures ??= parse(this.text, {
			Rows: (columns: RowColumns) => toRows(columns)
		}) as Figures);
	}
}
