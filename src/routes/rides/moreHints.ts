/** As the fields of the upload hold it; '' = said later. */
export interface MoreAnswers {
	bike: string;
	surface: string;
	load: string;
}

/**
 * What goes along with a file of it: only what was said. A load that is no number goes along as it is, so
 * that the ledger refuses it with its own words.
 */
export function moreHints({ bike, surface, load }: MoreAnswers): Record<string, unknown> {
	const typed = load.trim().replace(',', '.');
	const kilograms = Number(typed);
	return {
		...(bike && { bikeId: Number(bike) }),
		...(surface && { surface }),
		...(typed && { loadKg: Number.isNaN(kilograms) ? typed : kilograms })
	};
}
