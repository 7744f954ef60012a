import {
	LOADS,
	mappingFault,
	MOTIONS,
	TIME_UNITS,
	type ClockColumn,
	type ColumnMapping,
	type MotionColumn
} from '$lib/ride/columnMapping';
import { guessColumns } from '$lib/ride/guessColumns';
import { understoodRows } from '$lib/ride/mappedColumns';
import { tableHead } from '$lib/ride/tableHead';
import { flipBytes, spoilText } from './damage';
import { judgeRide } from './judgeRide';
import { oneOf, type Pick } from './seeded';

const COLUMNS = 8;
const INSERTS = [
	'=HYPERLINK("http://example.invalid","a")',
	'@SUM(1)',
	'"',
	';;;;',
	',',
	'\n\n',
	'\r',
	'\0',
	'1e999',
	'-1e308',
	'NaN',
	'-0',
	'0x10',
	'1,5',
	'1.2.3',
	'\uFEFF',
	'# started_at: 9999-99-99T00:00:00Z\n',
	'2026-13-45 99:99:99',
	'1970-01-01T00:00:00Z',
	'9'.repeat(400),
	'x'.repeat(20_000)
];

/** What a column may hold from row to row: clocks that run, stand, jump or go back; counters, angles, nonsense. */
const SERIES: readonly ((i: number, pick: Pick) => string)[] = [
	(i) => (i / 50).toFixed(3),
	(i) => String(i * 20),
	(i) => new Date(Date.UTC(2026, 4, 4, 8) + i * 20).toISOString().replace('T', ' '),
	(i) => String(i % 60),
	() => '7',
	(i) => String(-i / 50),
	(i) => (i < 60 ? String(i / 25) : ''),
	(i) => String(i < 50 ? i : i + 1e9),
	() => '80',
	(i) => String((i * 28) % 360),
	(i) => String(i * 28),
	(i) => String(Math.floor(i / 5)),
	(i) => String(Math.floor(i / 5) / 10),
	(i, pick) => (pick(4) === 0 ? '' : String(pick(500) - 20)),
	(_, pick) => oneOf(pick, ['1e30', '-1e30', 'Infinity', 'NaN', '', 'abc', '1e-320'])
];

function hostileTable(pick: Pick): Uint8Array {
	const delimiter = oneOf(pick, [',', ';', '\t']);
	const columns = Array.from({ length: COLUMNS }, () => oneOf(pick, SERIES));
	// a clock that runs and a crank that turns, where nearly all else may be wrong: else hardly any would be read
	if (pick(4) > 0) columns.splice(0, 2, SERIES[0], SERIES[8]);
	const names = columns.map((_, i) =>
		oneOf(pick, [`c${i}`, 'time_crank', 'wheel angle', '=1+1', '', 'x'.repeat(300)])
	);
	const rows = Array.from({ length: 4 + pick(150) }, (_, i) =>
		columns.map((series) => series(i, pick)).join(delimiter)
	);
	return new TextEncoder().encode(`${names.join(delimiter)}\n${rows.join('\n')}\n`);
}

/** An answer as a form would send it, right or wrong. */
function hostileMapping(pick: Pick): ColumnMapping {
	const column = () => (pick(12) === 0 ? oneOf(pick, [-1, 99, 0.5, NaN]) : pick(COLUMNS));
	const clock = (): ClockColumn => ({ column: column(), unit: oneOf(pick, TIME_UNITS) });
	const own = () => (pick(3) === 0 ? { clock: clock() } : {});
	const motion = (): Omit<MotionColumn, 'clock'> => ({
		column: column(),
		as: oneOf(pick, MOTIONS),
		...(pick(5) === 0 ? {} : { pulsesPerTurn: oneOf(pick, [1, 6, 1000, 0, NaN]) })
	});
	return {
		time: clock(),
		crank: motion(),
		wheel: { ...motion(), ...own() },
		load: pick(3) === 0 ? null : { column: column(), as: oneOf(pick, LOADS), ...own() }
	};
}

/** Columns of their own for each quantity: such an answer fits, so that the reading itself is tried. */
function fittingMapping(pick: Pick): ColumnMapping {
	const sound = pick(4) > 0;
	const free = Array.from({ length: COLUMNS }, (_, i) => i);
	const take = () => free.splice(pick(free.length), 1)[0];
	const { crank, wheel, load, ...said } = hostileMapping(pick);
	const time = sound ? { column: free.shift()!, unit: 's' as const } : { ...said.time, column: take() };
	const units = time.unit === 'instant' ? (['instant'] as const) : (['s', 'ms', 'us'] as const);
	const own = (clock: ClockColumn | undefined) =>
		clock ? { clock: { column: take(), unit: oneOf(pick, units) } } : {};
	return {
		time,
		crank: sound ? { column: free.shift()!, as: 'rpm' } : { column: take(), as: crank.as, pulsesPerTurn: 6 },
		wheel: { column: take(), as: wheel.as, pulsesPerTurn: 6, ...own(wheel.clock) },
		load: load && { column: take(), as: load.as, ...own(load.clock) }
	};
}

/**
 * Reads a hostile table by a hostile answer: it is a ride within its bounds or refused, an answer that does not fit
 * reads nothing, and the rows that a person would be shown can be made of it.
 *
 * @returns whether it became a ride
 */
export async function judgeTable(pick: Pick): Promise<boolean> {
	const sound = hostileTable(pick);
	const bytes = oneOf(pick, [
		() => sound,
		() => sound,
		() => spoilText(sound, INSERTS, pick),
		() => flipBytes(sound, pick)
	])();
	const mapping = pick(4) === 0 ? hostileMapping(pick) : fittingMapping(pick);
	const head = tableHead(bytes);
	const fault = head && mappingFault(mapping, head.names.length);
	const ride = await judgeRide(bytes, 'rig.csv', mapping);
	if (ride && fault) throw new Error(`read by an answer that does not fit: ${fault}`);
	if (!head) return false;
	guessColumns(head, null);
	guessColumns(head, mapping);
	if (fault) return false;
	const { crankRpm, wheelRpm, crankTorqueNm } = understoodRows(head, mapping);
	for (const { timeS, value } of [crankRpm, wheelRpm, crankTorqueNm])
		if (timeS.length !== value.length) throw new Error('a shown row without its time');
	return ride !== null;
}
