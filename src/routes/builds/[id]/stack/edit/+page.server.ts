import { redirectTo } from '$lib/address/redirectTo';
import { addStack, buildView, changeStack, getLedger, partChoices, stackPage } from '$lib/server';
import { error, fail } from '@sveltejs/kit';
import { actorOf, pathId, rowId } from '../../../../forms';
import { refusalOf } from '../../../../refusalOf';
import { stackOfForm, typedStack } from './stackForm';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ params, url }) => {
	const ledger = getLedger();
	const build = buildView(ledger, pathId(params.id));
	if (!build) error(404, 'This build is not in the ledger.');
	const page = stackPage(ledger, build.id);
	const named = (name: string) => {
		const id = url.searchParams.get(name);
		if (id === null) return null;
		const stack = page.stacks.find((one) => String(one.id) === id);
		if (!stack) error(404, 'This stack is not in the ledger, or it was withdrawn.');
		return stack;
	};
	const changed = named('stack');
	return {
		build: { id: build.id, name: build.name },
		changed,
		filled: changed ?? named('like'),
		others: page.stacks
			.filter((stack) => stack.id !== changed?.id)
			.map(({ id, variant }) => ({ id, variant })),
		wheels: page.wheels,
		lock: page.lock,
		sides: page.sides,
		parts: partChoices(ledger, build.id)
	};
};

export const actions: Actions = {
	default: async ({ request, locals, params }) => {
		const form = await request.formData();
		const buildId = pathId(params.id);
		const stackId = rowId(form, 'stack');
		const sentence = refusalOf(() => {
			const actor = actorOf(locals);
			const stack = stackOfForm(form);
			if (stackId === null) addStack(getLedger(), actor, buildId, stack);
			else changeStack(getLedger(), actor, stackId, stack, rowId(form, 'version') ?? 0);
		});
		if (sentence === null) redirectTo(303, `/builds/${buildId}/stack`);
		// what was typed stands in the form again, with the version that was seen: not passed off as the newest
		return fail(400, { sentence, typed: { ...typedStack(form), seenVersion: rowId(form, 'version') } });
	}
};
