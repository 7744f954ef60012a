import { getLedger, listParts } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({ parts: listParts(getLedger()) });
