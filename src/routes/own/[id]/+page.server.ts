import { error } from '@sveltejs/kit';
import {
	answerRiderMark,
	attachFeltPhoto,
	assignRide,
	getLedger,
	LARGEST_ATTACHMENT_BYTES,
	ownRide,
	ownsRide,
	recordFeltSlip,
	takeBackFeltPhoto,
	takeBackFeltSlip,
	type Actor
} from '$lib/server';
import { chosenFile } from '../../attaching';
import { actorOf, answered, neededId, pathId, text } from '../../forms';
import { lapAnswerOf, lapMeaningOf } from '../../rides/[id]/lapAnswers';
import type { Actions, PageServerLoad, RequestEvent } from './$types';

export const load: PageServerLoad = ({ locals, params }) => {
	const { personId } = actorOf(locals);
	const ride = ownRide(getLedger(), personId, pathId(params.id));
	if (!ride) error(404, 'There is no such page.');
	return { ride, me: personId, largestPhotoBytes: LARGEST_ATTACHMENT_BYTES };
};

/** Does one thing to an own ride; also engineers and owners mark their own alone here. */
function write(
	action: (actor: Actor, rideId: number, form: FormData) => object | void | Promise<object | void>
) {
	return async ({ request, locals, params }: RequestEvent) => {
		const actor = actorOf(locals);
		const rideId = pathId(params.id);
		if (!ownsRide(getLedger(), actor.personId, rideId)) error(404, 'There is no such page.');
		const form = await request.formData();
		return answered(async () => (await action(actor, rideId, form)) ?? undefined);
	};
}

export const actions: Actions = {
	felt: write((actor, rideId, form) => {
		recordFeltSlip(getLedger(), actor, rideId, { clock: text(form, 'clock'), note: text(form, 'note') });
		return { felt: true as const };
	}),
	takeBack: write((actor, rideId, form) =>
		takeBackFeltSlip(getLedger(), actor, rideId, neededId(form, 'felt'))
	),
	photo: write(async (actor, rideId, form) => {
		const of = { rideId, feltId: neededId(form, 'felt') };
		await attachFeltPhoto(getLedger(), actor, of, await chosenFile(form));
	}),
	photoBack: write((actor, rideId, form) => {
		const of = { rideId, feltId: neededId(form, 'felt') };
		takeBackFeltPhoto(getLedger(), actor, of, neededId(form, 'photo'));
	}),
	laps: write((actor, rideId, form) =>
		assignRide(getLedger(), actor, rideId, { lapsMeanSlips: lapMeaningOf(form) })
	),
	lap: write((actor, rideId, form) => {
		const { timeS, answer } = lapAnswerOf(form);
		answerRiderMark(getLedger(), actor, rideId, timeS, answer);
	})
};
