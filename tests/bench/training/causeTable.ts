import { keepStrongest } from './keepStrongest';
import { CAUSES, missCause, surroundings, type Cause } from './missCause';
import { addRide, emptyScore } from './scoreEvents';
import type { TrainingPart } from './trainingRides';

/** Smaller slips are not asked for at 1 Hz. */
const LEAST_DEG = 60;

interface Counted {
	readonly slips: number;
	readonly missed: Map<Cause, number>;
	readonly falseAlarms: Map<Cause, number>;
}

/** Lines of a table: the slips of 60 degrees and more that were missed, and the false alarms, by cause. */
export function causeTable(
	rides: readonly { part: TrainingPart; logOdds: readonly number[] }[],
	least: number
): string[] {
	const counted = ['simulated', 'real'].map((origin) =>
		count(
			rides.filter(({ part }) => part.asRecorded && part.origin === origin),
			least
		)
	);
	const all = counted.map(({ slips }) => `of ${slips}`);
	const rows = CAUSES.map((cause) => {
		const cells = counted.flatMap(({ missed, falseAlarms }) => [
			missed.get(cause) ?? 0,
			falseAlarms.get(cause) ?? 0
		]);
		return `| ${cause} | ${cells.join(' | ')} |`;
	});
	return [
		`| cause | simulated: missed ${all[0]} | false | real: missed ${all[1]} | false |`,
		'|---|---|---|---|---|',
		...rows
	];
}

function count(rides: readonly { part: TrainingPart; logOdds: readonly number[] }[], least: number): Counted {
	const missed = new Map<Cause, number>();
	const falseAlarms = new Map<Cause, number>();
	const add = (to: Map<Cause, number>, cause: Cause) => to.set(cause, (to.get(cause) ?? 0) + 1);
	let slips = 0;
	for (const { part, logOdds } of rides) {
		const found = keepStrongest(part, logOdds, least);
		const result = addRide(emptyScore(), part.events, part.km, found, [], 0, 0);
		slips += part.events.filter((e) => e.kind !== 'chain skip' && e.crankDeg >= LEAST_DEG).length;
		for (const slip of result.missed) {
			if (slip.crankDeg >= LEAST_DEG) add(missed, missCause(slip, part, logOdds, least));
		}
		if (part.events.some((e) => e.kind !== 'chain skip')) continue;
		for (const { startS } of result.wrong)
			add(falseAlarms, surroundings(part.rows[part.startS.indexOf(startS)]));
	}
	return { slips, missed, falseAlarms };
}
