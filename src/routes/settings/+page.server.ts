import {
	backupState,
	choosePerson,
	exampleState,
	getLedger,
	installExample,
	removeExample,
	setSettings
} from '$lib/server';
import { actorOf, answered, decimal, text } from '../forms';
import { rememberPerson } from '../welcome/rememberPerson';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = () => ({
	example: exampleState(getLedger()),
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
	person: async ({ request, cookies }) => {
		const name = text(await request.formData(), 'name');
		return answered(() => rememberPerson(cookies, choosePerson(getLedger(), name)));
	},
	install: async ({ locals }) => answered(() => installExample(getLedger(), actorOf(locals))),
	remove: async ({ locals }) => answered(() => removeExample(getLedger(), actorOf(locals)))
};
