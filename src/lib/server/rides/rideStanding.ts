import type { BuildOfRide } from '$lib/hardware/buildOfRide';
import type { RideRow } from '../views';

/** What decides whether a ride counts. */
export interface StandingFacts {
	readonly withdrawnReason: string | null;
	readonly build: BuildOfRide;
	/** of a ride that a person split at a change of build, with its distances where they are known; else none */
	readonly parts: readonly { readonly build: BuildOfRide; readonly amount: object | null }[];
	readonly trainer: boolean;
	readonly motorAssisted: boolean;
	/** the earlier ride that looks like the same recording and still counts; null = none */
	readonly twin: {
		readonly fileName: string;
		readonly decision: 'same recording' | 'different ride' | null;
	} | null;
	/** the recording's clock looks wrong and nobody has said when it was */
	readonly clockOdd?: boolean;
	/** false while the current analysis version has no result for it */
	readonly analysed: boolean;
	/** why the current analysis version could not give one; null = it may still come */
	readonly analysisFailure: string | null;
}

export interface Standing {
	readonly state: RideRow['state'];
	readonly reason: string | null;
	readonly needs: string[];
}

/**
 * Whether a ride counts in rates, is left out, or waits for a person's answer. What is withdrawn, left
 * out or waiting counts nowhere: neither its slips nor its kilometres.
 */
export function rideStanding(facts: StandingFacts): Standing {
	if (facts.withdrawnReason !== null) return standing('withdrawn', facts.withdrawnReason);
	const twin = facts.twin?.decision === 'different ride' ? null : facts.twin;
	if (twin?.decision === 'same recording')
		return standing('left out', `the same recording as ${twin.fileName}`);
	if (facts.trainer) return standing('left out', 'ridden on an indoor trainer');
	if (facts.motorAssisted) return standing('left out', 'a motor helped');
	if (!facts.analysed)
		return standing(
			'left out',
			facts.analysisFailure === null
				? 'the present version of the analysis has no result for it yet'
				: `the present version of the analysis does not take it: ${facts.analysisFailure}`
		);
	if (facts.parts.some(({ amount }) => amount === null))
		return standing('left out', 'it is split, and its parts have not been measured by this analysis yet');
	const build = facts.parts.length > 0 ? partQuestions(facts.parts) : buildQuestions(facts.build);
	const clock = facts.clockOdd ? ["The recording's clock looks wrong: when did the ride begin?"] : [];
	const needs = [...clock, ...(twin ? [twinQuestion(twin.fileName)] : []), ...build];
	if (needs.length > 0) return { state: 'needs an answer', reason: null, needs };
	return { state: 'counted', reason: null, needs };
}

function standing(state: RideRow['state'], reason: string): Standing {
	return { state, reason, needs: [] };
}

function twinQuestion(fileName: string): string {
	return `It looks like the same recording as ${fileName}: is it the same ride or a different one?`;
}

/** A part that no build was fitted in counts nowhere; one across another change asks again. */
function partQuestions(parts: StandingFacts['parts']): string[] {
	return parts.some(({ build }) => build.kind === 'across a change')
		? [
				'The fitted periods were corrected since this ride was split: split it again or say which build it belongs to.'
			]
		: [];
}

function buildQuestions(build: BuildOfRide): string[] {
	switch (build.kind) {
		case 'build':
			return [];
		case 'no wheel':
			return ['Which wheel was ridden?'];
		case 'no build':
			return ['No build was fitted on this wheel at that time: which build was it?'];
		case 'across a change':
			return [
				'The build changed during this ride or came on or off: split it there, or say which build it belongs to.'
			];
	}
}
