import { firstLook, getLedger } from '$lib/server';
import { placeOf } from './placeOf';
import { STEPS } from './steps';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = () => {
	const look = firstLook(getLedger());
	return {
		installed: look.before !== null,
		filesLeft: look.filesLeft,
		steps: STEPS.map((step, i) => ({
			...step,
			number: i + 1,
			ready: placeOf(i + 1, look) !== null,
			done: step.did !== undefined && look.verdicts > 0
		}))
	};
};
