import { redirectTo } from '$lib/address/redirectTo';
import { error } from '@sveltejs/kit';
import {
	buildHardware,
	copyBuild,
	getLedger,
	historyOf,
	incidentsOfBuild,
	listRides,
	makeRevision,
	putInTest,
	stackPage,
	takeBuildBackIn,
	withdrawBuild,
	withdrawnPeriodsOfBuild,
	wheelsToChoose
} from '$lib/server';
import { askFigures } from '../../askFigures';
import { attachFromForm, withdrawAttachmentFromForm } from '../../attaching';
import { correctFromForm, endFromForm, fitFromForm, withdrawFromForm } from '../../fitting';
import { actorOf, answered, pathId, text } from '../../forms';
import { putBackAttachmentFromForm, putBackFromForm } from '../../puttingBack';
import { rideKey } from '../../rides/rideKey';
import { benchCheckFromForm, overrideFromForm } from './benchChecking';
import type { Actions, PageServerLoad } from './$types';

/** the page tells much else of the build; all of its rides are at hand by "older" and on the page of rides */
const RIDES_A_PAGE = 25;

export const load: PageServerLoad = async ({ params, request, url }) => {
	const ledger = getLedger();
	const buildId = pathId(params.id);
	const hardware = buildHardware(ledger, buildId);
	if (!hardware) error(404, 'This build is not in the ledger.');
	const list = { buildId, pageSize: RIDES_A_PAGE };
	const olderThan = rideKey(url.searchParams.get('older'));
	return {
		...(await askFigures({ request, url }, 'build', { buildId }, true)),
		hardware,
		rides: listRides(ledger, { ...list, olderThan }),
		firstRides: olderThan === null,
		unreviewed: listRides(ledger, { ...list, onlyUnreviewed: true }),
		history: historyOf(ledger, 'build', buildId),
		stacks: stackPage(ledger, buildId).stacks,
		incidents: incidentsOfBuild(ledger, buildId),
		withdrawnPeriods: withdrawnPeriodsOfBuild(ledger, buildId),
		wheels: wheelsToChoose(ledger).map(({ id, name }) => ({ id, name }))
	};
};

export const actions: Actions = {
	fit: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => fitFromForm(form, actorOf(locals), { buildId: pathId(params.id) }));
	},
	end: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => endFromForm(form, actorOf(locals)));
	},
	correct: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => correctFromForm(form, actorOf(locals)));
	},
	withdraw: async ({ request, locals }) => {
		const form = await request.formData();
		return answered(() => withdrawFromForm(form, actorOf(locals)));
	},
	putBack: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => putBackFromForm(form, actorOf(locals), { buildId: pathId(params.id) }));
	},
	check: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => benchCheckFromForm(form, actorOf(locals), pathId(params.id)));
	},
	override: async ({ request, locals, params }) => {
		const form = await request.formData();
		return answered(() => overrideFromForm(form, actorOf(locals), pathId(params.id)));
	},
	test: async ({ request, locals, params }) => {
		const form = await request.formData();
		const told = text(form, 'told') === 'yes';
		return answered(() => putInTest(getLedger(), actorOf(locals), pathId(params.id), told));
	},
	withdrawBuild: async ({ request, locals, params }) => {
		const form = await request.formData();
		const reason = text(form, 'reason');
		return answered(() => withdrawBuild(getLedger(), actorOf(locals), pathId(params.id), reason));
	},
	takeBackIn: async ({ request, locals, params }) => {
		const form = await request.formData();
		const reason = text(form, 'reason');
		return answered(() => takeBuildBackIn(getLedger(), actorOf(locals), pathId(params.id), reason));
	},
	revise: async ({ locals, params }) => {
		const made = await answered(() => ({
			id: makeRevision(getLedger(), actorOf(locals), pathId(params.id))
		}));
		return 'id' in made ? redirectTo(303, `/builds/${made.id}/edit`) : made;
	},
	copy: async ({ request, locals, params }) => {
		const form = await request.formData();
		const name = text(form, 'name');
		const made = await answered(() => ({
			id: copyBuild(getLedger(), actorOf(locals), pathId(params.id), name)
		}));
		return 'id' in made ? redirectTo(303, `/builds/${made.id}/edit`) : made;
	},
	attach: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'build', subjectId: pathId(params.id) } as const;
		return answered(() => attachFromForm(form, actorOf(locals), of));
	},
	putBackAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'build', subjectId: pathId(params.id) } as const;
		return answered(() => putBackAttachmentFromForm(form, actorOf(locals), of));
	},
	withdrawAttachment: async ({ request, locals, params }) => {
		const form = await request.formData();
		const of = { subject: 'build', subjectId: pathId(params.id) } as const;
		return answered(() => withdrawAttachmentFromForm(form, actorOf(locals), of));
	}
};
