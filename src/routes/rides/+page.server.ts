import {
	bikesToChoose,
	buildsToChoose,
	countComputingAgain,
	exampleState,
	getLedger,
	importOverview,
	listPeople,
	listRides,
	SURFACES,
	wheelsToChoose
} from '$lib/server';
import { importActions } from './importActions';
import type { PageServerLoad } from './$types';

const PAGE_SIZE = 50;

export const load: PageServerLoad = ({ url }) => {
	const ledger = getLedger();
	const page = Math.max(1, Number(url.searchParams.get('page')) || 1);
	const buildId = Number(url.searchParams.get('build')) || undefined;
	const onlyNeeds = url.searchParams.get('needs') === '1';
	return {
		...listRides(ledger, { page, pageSize: PAGE_SIZE, buildId, onlyNeeds }),
		page,
		pageSize: PAGE_SIZE,
		buildId: buildId ?? null,
		onlyNeeds,
		builds: buildsToChoose(ledger).map(({ id, name }) => ({ id, name })),
		wheels: wheelsToChoose(ledger).map(({ id, name }) => ({ id, name })),
		riders: listPeople(ledger).map(({ id, code }) => ({ id, code })),
		bikes: bikesToChoose(ledger).map(({ id, name }) => ({ id, name })),
		surfaces: [...SURFACES],
		imports: importOverview(ledger),
		computingAgain: countComputingAgain(ledger),
		example: exampleState(ledger)
	};
};

export const actions = importActions;
