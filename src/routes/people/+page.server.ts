import { anonymisePerson, createPerson, getLedger, peopleFacts, updatePerson, type Role } from '$lib/server';
import { actorOf, answered, decimal, neededId, text } from '../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => {
	const actor = actorOf(locals);
	return { people: peopleFacts(getLedger(), actor), me: { id: actor.personId, role: actor.role } };
};

const personInput = (form: FormData) => ({
	name: text(form, 'name'),
	role: text(form, 'role') as Role,
	weightKg: decimal(form, 'weightKg')
});

export const actions: Actions = {
	add: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => ({ added: createPerson(getLedger(), actorOf(locals), personInput(form)) }));
	},
	change: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() =>
			updatePerson(
				getLedger(),
				actorOf(locals),
				neededId(form, 'person'),
				personInput(form),
				neededId(form, 'version')
			)
		);
	},
	anonymise: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => ({
			found: anonymisePerson(getLedger(), actorOf(locals), neededId(form, 'person'))
		}));
	}
};
