import { listBikeRecords } from '../../hardware/bikeRows';
import type { Ledger } from '../../ledger/openLedger';
import { openMarks } from '../../marks/openMarks';
import { currentVersion } from '../../queue/analysisVersions';
import type { RideFacts } from '../rideFacts';
import { wheelsOnBikes } from './wheelOnBike';

export const QUESTION_NAMES = [
	'wheel',
	'build',
	'change',
	'twin',
	'laps',
	'bike',
	'rider',
	'lapsMeanSlips',
	'wet',
	'surface',
	'outdoors',
	'motor'
] as const;
export type QuestionName = (typeof QUESTION_NAMES)[number];

export interface Question {
	readonly name: QuestionName;
	/** a few words for a list */
	readonly title: string;
	readonly sentence: string;
	/** rides count nowhere until it is answered */
	readonly holdsBack: boolean;
}

export const QUESTIONS: readonly Question[] = [
	ask('wheel', 'Which wheel', 'Which wheel was ridden?', true),
	ask('build', 'Which build', 'No build was fitted on the wheel at that time. Which build was it?', true),
	ask('change', 'Build changed', 'The build changed during the ride. Where does it belong?', true),
	ask('twin', 'Same recording', 'It looks like another recording. Is it the same ride?', true),
	ask('laps', 'What a lap meant', 'The rider pressed a lap and nothing was found before it. What was it?'),
	ask('bike', 'Which bike', 'Which bike was it?'),
	ask('rider', 'Which rider', 'Who rode?'),
	ask('lapsMeanSlips', 'Laps mean slips', "The rider's word: was a lap pressed when a slip was felt?"),
	ask('wet', 'Dry or wet', 'Was it dry or wet?'),
	ask('surface', 'Surface', 'What was it mostly ridden on?'),
	ask('outdoors', 'Outdoors', 'Was it ridden outdoors or on a trainer?'),
	ask('motor', 'Motor', 'The bike has a motor. Did it help?')
];

function ask(name: QuestionName, title: string, sentence: string, holdsBack = false): Question {
	return { name, title, sentence, holdsBack };
}

export type Asks = (ride: RideFacts) => boolean;

/**
 * Whether each question is open for a ride. Withdrawn rides, copies and rides that are left out are asked
 * nothing: no answer would make them count.
 */
export function openQuestions(ledger: Ledger): Readonly<Record<QuestionName, Asks>> {
	const open = openMarks(ledger);
	const withLaps = ridesWithLaps(ledger);
	const onBikes = wheelsOnBikes(ledger);
	const bikeOf = (ride: RideFacts) => ride.bikeId ?? onBikes.bikeUnder(ride)?.id ?? null;
	const motorBikes = new Set<number | null>(
		listBikeRecords(ledger)
			.filter(({ motor }) => motor)
			.map(({ id }) => id)
	);
	const asks: Record<QuestionName, Asks> = {
		wheel: (ride) => ride.wheelId === null,
		build: (ride) => ride.build.kind === 'no build',
		change: (ride) => ride.build.kind === 'across a change' && ride.standing.state === 'needs an answer',
		twin: (ride) => ride.twinId !== null && ride.twinDecision === null,
		laps: (ride) => open.has(ride.id),
		bike: (ride) => bikeOf(ride) === null,
		rider: (ride) => ride.riderId === null,
		lapsMeanSlips: (ride) => ride.lapsMeanSlips === null && withLaps.has(ride.id),
		wet: (ride) => ride.wet === null,
		surface: (ride) => ride.surface === null,
		outdoors: (ride) => ride.trainer === null && ride.fileTrainer === null,
		motor: (ride) => ride.motorSaid === null && motorBikes.has(bikeOf(ride))
	};
	const isAsked = ({ standing }: RideFacts) => standing.needs.length > 0 || standing.state === 'counted';
	return Object.fromEntries(
		QUESTION_NAMES.map((name) => [name, (ride: RideFacts) => isAsked(ride) && asks[name](ride)])
	) as Record<QuestionName, Asks>;
}

function ridesWithLaps(ledger: Ledger): ReadonlySet<number> {
	const rows = ledger.database
		.prepare<[number], { id: number }>('SELECT DISTINCT ride_id AS id FROM rider_mark WHERE version = ?')
		.all(currentVersion(ledger));
	return new Set(rows.map(({ id }) => id));
}
