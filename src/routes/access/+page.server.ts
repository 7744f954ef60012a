import { PREFIX } from '$lib/address/prefix';
import {
	accessView,
	endAccess,
	endSession,
	getLedger,
	LedgerRefusal,
	makeLink,
	qrDrawing,
	sessionsOf,
	setAccessSettings,
	withdrawLink,
	type LinkPurpose
} from '$lib/server';
import { actorOf, answered, decimal, neededId, text } from '../forms';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => ({
	...accessView(getLedger()),
	me: actorOf(locals).personId,
	here: locals.sessionId
});

export const actions: Actions = {
	/** the link is shown with this answer and never again: the ledger keeps its hash */
	link: async ({ request, locals, url }) => {
		const form = await request.formData();
		return answered(() => {
			if (!locals.guarded)
				throw new LedgerRefusal('conflict', 'As it was started, only this machine reaches this server.');
			const personId = neededId(form, 'person');
			const purpose: LinkPurpose = text(form, 'purpose') === 'password' ? 'password' : 'rides';
			const { token } = makeLink(getLedger(), actorOf(locals), personId, purpose);
			const href = `${url.origin}${PREFIX}/${purpose === 'password' ? 'set-password' : 'come'}#${token}`;
			return { made: { personId, purpose, href, qr: qrDrawing(href) } };
		});
	},
	withdraw: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => withdrawLink(getLedger(), actorOf(locals), neededId(form, 'person'), 'rides'));
	},
	end: async ({ request }) => {
		const form = await request.formData();
		return answered(() => {
			const [person, session] = [neededId(form, 'person'), neededId(form, 'session')];
			if (!sessionsOf(getLedger(), person).some(({ id }) => id === session))
				throw new LedgerRefusal('not-found', 'This browser is not in any more.');
			endSession(getLedger(), session);
		});
	},
	endAll: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => endAccess(getLedger(), actorOf(locals), neededId(form, 'person')));
	},
	limits: async ({ request, locals }) => {
		const form = await request.formData();
		const whole = (name: string) => decimal(form, name) ?? NaN;
		return answered(() =>
			setAccessSettings(getLedger(), actorOf(locals), {
				attemptsPerAccount: whole('attemptsPerAccount'),
				attemptsPerAddress: whole('attemptsPerAddress'),
				attemptMinutes: whole('attemptMinutes'),
				sessionDays: whole('sessionDays')
			})
		);
	}
};
