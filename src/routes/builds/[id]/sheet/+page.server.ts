import { buildHardware, getLedger, stackPage, toInstant } from '$lib/server';
import { error } from '@sveltejs/kit';
import { pathId } from '../../../forms';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const build = buildHardware(ledger, pathId(params.id));
	if (!build) error(404, 'This build is not in the ledger.');
	return { build, stacks: stackPage(ledger, build.id).stacks, printedAt: toInstant(ledger.now()) };
};
