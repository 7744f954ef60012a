import { error } from '@sveltejs/kit';
import {
	checkedOdometer,
	getLedger,
	historyOf,
	listBikes,
	listBuilds,
	setKnownGood,
	startCircumference,
	wheelHistory,
	wheelsBikes,
	wheelView,
	withdrawnRows
} from '$lib/server';
import { correctFromForm, endFromForm, fitFromForm, withdrawFromForm } from '../../fitting';
import { actorOf, answered, pathId, text } from '../../forms';
import { putBackFromForm } from '../../puttingBack';
import type { Actions, PageServerLoad, RequestEvent } from './$types';
import { lookedAt } from './lookedAt';
import {
	factsFromForm,
	odometerFromForm,
	putOnFromForm,
	serviceFromForm,
	takeOffFromForm,
	unloggedFromForm,
	withdrawRowFromForm
} from './wheelForms';

export const load: PageServerLoad = ({ params, url }) => {
	const ledger = getLedger();
	const wheel = wheelView(ledger, pathId(params.id));
	if (!wheel) error(404, 'This wheel is not in the ledger.');
	return {
		wheel,
		history: wheelHistory(ledger, wheel.id),
		state: lookedAt(ledger, wheel.id, url.searchParams),
		odometer: checkedOdometer(ledger, wheel.id),
		onBikes: wheelsBikes(ledger, wheel.id),
		withdrawn: {
			periods: withdrawnRows(ledger, 'fitted_period', wheel.id),
			services: withdrawnRows(ledger, 'service', wheel.id),
			unlogged: withdrawnRows(ledger, 'unlogged_distance', wheel.id),
			odometer: withdrawnRows(ledger, 'odometer_reading', wheel.id),
			onBikes: withdrawnRows(ledger, 'wheel_on_bike', wheel.id)
		},
		fromTyreM: startCircumference(wheel.facts),
		trail: historyOf(ledger, 'wheel', wheel.id),
		builds: listBuilds(ledger).map(({ id, name }) => ({ id, name })),
		bikes: listBikes(ledger).map(({ id, name }) => ({ id, name }))
	};
};

const withForm =
	(run: (form: FormData, actor: ReturnType<typeof actorOf>, wheelId: number) => void) =>
	async ({ request, locals, params }: RequestEvent) => {
		const form = await request.formData();
		return answered(() => run(form, actorOf(locals), pathId(params.id)));
	};

export const actions: Actions = {
	fit: withForm((form, actor, wheelId) => fitFromForm(form, actor, { wheelId })),
	good: withForm((form, actor, wheelId) =>
		setKnownGood(getLedger(), actor, wheelId, text(form, 'good') === 'yes')
	),
	end: withForm(endFromForm),
	correct: withForm(correctFromForm),
	withdraw: withForm(withdrawFromForm),
	service: withForm(serviceFromForm),
	unlogged: withForm(unloggedFromForm),
	odometer: withForm(odometerFromForm),
	putOn: withForm(putOnFromForm),
	takeOff: withForm(takeOffFromForm),
	facts: withForm(factsFromForm),
	withdrawRow: withForm(withdrawRowFromForm),
	putBack: withForm((form, actor, wheelId) => putBackFromForm(form, actor, { wheelId }))
};
