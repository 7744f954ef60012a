import {
	backupState,
	exampleState,
	forgetColumns,
	getLedger,
	installExample,
	rememberedAnswers,
	removeExample,
	setSettings
} from '$lib/server';
import { actorOf, answered, decimal, text } from '../forms';
import { chooseName } from '../welcome/chooseName';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => ({
	guarded: locals.guarded,
	isOwner: locals.actor?.role === 'owner',
	example: exampleState(getLedger()),
	answers: rememberedAnswers(getLedger()),
	backupReminderDays: backupState(getLedger()).remindAfterDays,
	zones: Intl.supportedValuesOf('timeZone')
});

export const actions: Actions = {
	workshop: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() =>
			setSettings(getLedger(), actorOf(locals), {
				workshopName: text(form, 'workshopName'),
				timeZone: text(form, 'timeZone'),
				backupReminderDays: decimal(form, 'backupReminderDays') ?? undefined
			})
		);
	},
	person: async ({ request, cookies, locals }) => {
		const name = text(await request.formData(), 'name');
		return answered(() => chooseName(cookies, locals, name));
	},
	forget: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => forgetColumns(getLedger(), actorOf(locals), text(form, 'header')));
	},
	install: async ({ locals }) => answered(() => installExample(getLedger(), actorOf(locals))),
	remove: async ({ locals }) => answered(() => removeExample(getLedger(), actorOf(locals)))
};
