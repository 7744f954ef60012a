import { error } from '@sveltejs/kit';
import {
	answerRiderMark,
	assignRide,
	bikesToChoose,
	correctRideClock,
	decideTwin,
	disputes,
	getLedger,
	historyOf,
	joinRide,
	buildsToChoose,
	listPeople,
	recordVerdict,
	REJECT_REASONS,
	restoreRide,
	rideAnswersView,
	rideColumns,
	rideStages,
	rideView,
	splitRide,
	SURFACES,
	takeBackFeltSlip,
	undoVerdict,
	withdrawRide,
	wheelsToChoose
} from '$lib/server';
import { actorOf, answered, neededId, pathId, text } from '../../forms';
import { workshopInstant } from '../../fitting';
import { answersOf, reasonOf, seenVerdict, twinDecisionOf } from './answersOf';
import { lapAnswerOf, lapMeaningOf } from './lapAnswers';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

const named = ({ id, name }: { id: number; name: string }) => ({ id, name });

export const load: PageServerLoad = ({ params }) => {
	const ledger = getLedger();
	const rideId = pathId(params.id);
	const [ride, said] = [rideView(ledger, rideId), rideAnswersView(ledger, rideId)];
	if (!ride || !said) error(404, 'This ride is not in the ledger.');
	return {
		ride,
		stages: rideStages(ledger, ride.id)!,
		said,
		surfaces: [...SURFACES],
		bikes: bikesToChoose(ledger).map(named),
		history: historyOf(ledger, 'ride', rideId),
		wheels: wheelsToChoose(ledger).map(named),
		builds: buildsToChoose(ledger).map(named),
		riders: listPeople(ledger).map(({ id, code }) => ({ id, code })),
		disputes: disputes(ledger, rideId),
		columns: rideColumns(ledger, rideId),
		rejectReasons: [...REJECT_REASONS]
	};
};

/** Reads the form, does one thing to the ledger in the name of whoever asks, answers with its refusal. */
function write(
	action: (
		ledger: ReturnType<typeof getLedger>,
		actor: ReturnType<typeof actorOf>,
		form: FormData,
		rideId: number
	) => void
) {
	return async ({ request, locals, params }: RequestEvent) => {
		const form = await request.formData();
		return answered(() => action(getLedger(), actorOf(locals), form, pathId(params.id)));
	};
}

export const actions: Actions = {
	confirm: write((ledger, actor, form, rideId) =>
		recordVerdict(
			ledger,
			actor,
			neededId(form, 'event'),
			{ verdict: 'confirmed', note: text(form, 'note') },
			{ rideId, ...seenVerdict(form) }
		)
	),
	reject: write((ledger, actor, form, rideId) =>
		recordVerdict(
			ledger,
			actor,
			neededId(form, 'event'),
			{ verdict: 'rejected', reason: reasonOf(form), note: text(form, 'note') },
			{ rideId, ...seenVerdict(form) }
		)
	),
	undo: write((ledger, actor, form, rideId) =>
		undoVerdict(ledger, actor, neededId(form, 'event'), { rideId, ...seenVerdict(form) })
	),
	correct: write((ledger, actor, form, rideId) => {
		const { answers, seen } = answersOf(form);
		assignRide(ledger, actor, rideId, answers, seen);
	}),
	clock: write((ledger, actor, form, rideId) =>
		correctRideClock(ledger, actor, rideId, text(form, 'right') ? null : workshopInstant(form, 'start'))
	),
	split: write((ledger, actor, _form, rideId) => splitRide(ledger, actor, rideId)),
	join: write((ledger, actor, _form, rideId) => joinRide(ledger, actor, rideId)),
	laps: write((ledger, actor, form, rideId) =>
		assignRide(ledger, actor, rideId, { lapsMeanSlips: lapMeaningOf(form) })
	),
	lap: write((ledger, actor, form, rideId) => {
		const { timeS, answer } = lapAnswerOf(form);
		answerRiderMark(ledger, actor, rideId, timeS, answer);
	}),
	feltBack: write((ledger, actor, form, rideId) =>
		takeBackFeltSlip(ledger, actor, rideId, neededId(form, 'felt'))
	),
	withdraw: write((ledger, actor, form, rideId) => withdrawRide(ledger, actor, rideId, text(form, 'reason'))),
	restore: write((ledger, actor, _form, rideId) => restoreRide(ledger, actor, rideId)),
	twin: write((ledger, actor, form, rideId) => decideTwin(ledger, actor, rideId, twinDecisionOf(form)))
};
