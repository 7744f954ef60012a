import { exampleState, getLedger } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({ exampleInstalled: exampleState(getLedger()).installed });
