import scorer from '$lib/slip/model/scorer.json';
import type { PageServerLoad } from './$types';

/** The page says for which wheel the strength of signs is calibrated; the model itself stays here. */
export const load: PageServerLoad = () => ({ slipsPerThousandKm: scorer.strength.slipsPerThousandKm });
