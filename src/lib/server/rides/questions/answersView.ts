import { listBikeRecords } from '../../hardware/bikeRows';
import { listBuildRecords } from '../../hardware/builds';
import { listWheelRecords } from '../../hardware/wheels';
import type { Ledger } from '../../ledger/openLedger';
import { listPeople } from '../../people/people';
import { MARK_ANSWERS, type RideRow } from '../../views';
import { allRideFacts, type RideFacts } from '../rideFacts';
import { rideRows } from '../rideRow';
import { SURFACES } from '../surfaces';
import { listAnswerBatches, type AnswerBatchView } from './answerBatches';
import { offersFor } from './offers';
import { openLaps } from './openLaps';
import { openQuestions, QUESTIONS, type Question, type QuestionName } from './questionList';

export interface AnswerOption {
	value: string;
	label: string;
}

/** One thing to answer: a ride, or a lap of one. */
export interface AnswerRow {
	/** names the row in the form: ride, and the lap's second where laps are asked about */
	key: string;
	ride: RideRow;
	/** the lap, seconds from the first record */
	lapS: number | null;
	/** only these can be chosen; null = those of the question */
	options: AnswerOption[] | null;
	/** the most likely answer; null = nothing speaks for one */
	offered: string | null;
	/** ticked beforehand: the recording or the ledger itself speaks for it, not only what was so before */
	sure: boolean;
	/** why it is the most likely */
	reason: string | null;
}

export interface AnswersView {
	questions: (Question & { rides: number })[];
	/** what is asked on this page; null when nothing is open */
	chosen: (Question & { rides: number }) | null;
	options: AnswerOption[];
	rows: AnswerRow[];
	/** rides left out of this page */
	further: number;
	batches: AnswerBatchView[];
}

/** as many as a person answers at once */
const RIDES_A_PAGE = 50;

/**
 * What the rides still need, question by question, with the most likely answer and its reason.
 *
 * @param wanted the question to show; the first open one when it is not named or not open
 */
export function answersView(ledger: Ledger, wanted: string | null): AnswersView {
	const asks = openQuestions(ledger);
	const rides = allRideFacts(ledger);
	const questions = QUESTIONS.map((question) => ({
		...question,
		rides: rides.filter(asks[question.name]).length
	}));
	const open = questions.filter((question) => question.rides > 0);
	const chosen = open.find(({ name }) => name === wanted) ?? open[0] ?? null;
	const asked = chosen ? rides.filter(asks[chosen.name]).reverse() : [];
	const shown = asked.slice(0, RIDES_A_PAGE);
	return {
		questions,
		chosen,
		options: chosen ? optionsOf(ledger, chosen.name) : [],
		rows: chosen ? rowsOf(ledger, chosen.name, shown) : [],
		further: asked.length - shown.length,
		batches: listAnswerBatches(ledger, 5)
	};
}

function rowsOf(ledger: Ledger, question: QuestionName, rides: readonly RideFacts[]): AnswerRow[] {
	const offer = offersFor(ledger, question);
	const views = rideRows(ledger, rides);
	const builds = new Map(listBuildRecords(ledger).map(({ id, name }) => [id, name]));
	return rides.flatMap((ride, index): AnswerRow[] => {
		const offered = offer(ride);
		const row = {
			ride: views[index],
			options: question === 'change' ? changeOptions(ride, builds) : null,
			offered: offered?.value ?? null,
			sure: offered?.sure ?? false,
			reason: offered?.reason ?? null
		};
		if (question !== 'laps') return [{ ...row, key: String(ride.id), lapS: null }];
		return openLaps(ledger, ride).map((lapS) => ({ ...row, key: `${ride.id}@${lapS}`, lapS }));
	});
}

function changeOptions(ride: RideFacts, builds: ReadonlyMap<number, string>): AnswerOption[] {
	const touched = ride.build.kind === 'across a change' ? [...new Set(ride.build.buildIds)] : [];
	return [
		{ value: 'split', label: 'split it there' },
		...touched.map((id) => ({ value: String(id), label: `all of it: ${builds.get(id) ?? ''}` }))
	];
}

function optionsOf(ledger: Ledger, question: QuestionName): AnswerOption[] {
	const named = (rows: readonly { id: number; name: string }[]) =>
		rows.map(({ id, name }) => ({ value: String(id), label: name }));
	const words = (values: readonly string[]) => values.map((value) => ({ value, label: value }));
	const truths = (yes: string, no: string) => [
		{ value: 'no', label: no },
		{ value: 'yes', label: yes }
	];
	switch (question) {
		case 'wheel':
			return named(listWheelRecords(ledger));
		case 'build':
			return named(listBuildRecords(ledger));
		case 'change':
			return [];
		case 'twin':
			return words(['same recording', 'different ride']);
		case 'laps':
			return words(MARK_ANSWERS);
		case 'bike':
			return named(listBikeRecords(ledger));
		case 'rider':
			return listPeople(ledger).map(({ id, code }) => ({ value: String(id), label: code }));
		case 'surface':
			return words(SURFACES);
		case 'wet':
			return truths('wet', 'dry');
		case 'outdoors':
			return truths('indoors on a trainer', 'outdoors');
		case 'lapsMeanSlips':
		case 'motor':
			return truths('yes', 'no');
	}
}
