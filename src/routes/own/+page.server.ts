import { getLedger, ownImports, ownRides, ownWheels } from '$lib/server';
import { actorOf } from '../forms';
import type { PageServerLoad } from './$types';

const PAGE_SIZE = 10;

export const load: PageServerLoad = ({ locals, url }) => {
	const { personId } = actorOf(locals);
	const ledger = getLedger();
	const page = Math.max(1, Number(url.searchParams.get('page')) || 1);
	return {
		...ownRides(ledger, personId, { page, pageSize: PAGE_SIZE }),
		page,
		pageSize: PAGE_SIZE,
		imports: ownImports(ledger, personId, 20),
		wheels: ownWheels(ledger, personId)
	};
};
