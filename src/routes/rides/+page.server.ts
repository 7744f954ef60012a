import {
	bikesToChoose,
	buildsToChoose,
	countComputingAgain,
	exampleState,
	getLedger,
	importOverview,
	listPeople,
	listRides,
	removeBrokenUpload,
	retryImport,
	SURFACES,
	wheelsToChoose
} from '$lib/server';
import { actorOf, answered, neededId } from '../forms';
import type { Actions, PageServerLoad } from './$types';

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

export const actions: Actions = {
	retry: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => retryImport(getLedger(), actorOf(locals), neededId(form, 'import')));
	},
	remove: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => removeBrokenUpload(getLedger(), actorOf(locals), neededId(form, 'import')));
	}
};
