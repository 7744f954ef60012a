import { describe, expect, it } from 'vitest';
import { mappingFault, type ColumnMapping } from '$lib/ride/columnMapping';
import { guessColumns } from '$lib/ride/guessColumns';
import { understoodRows } from '$lib/ride/mappedColumns';
import { tableHead } from '$lib/ride/tableHead';
import { bytesOf, middle, read, RPM, table } from './loggerTables';
import { codes, refusalOf, values } from './rides';

describe('tableHead', () => {
	it('finds names, rows and a key in any delimiter, below words and above units', () => {
		const head = tableHead(
			bytesOf('Rig 7; built in spring\n\nZeit;Kurbel;Rad\ns;rpm;rpm\n0,00;80,5;240\n0,02;81;241\n')
		)!;
		expect(head.names).toEqual(['Zeit s', 'Kurbel rpm', 'Rad rpm']);
		expect(head).toMatchObject({
			delimiter: ';',
			lines: 4,
			rows: [
				['0,00', '80,5', '240'],
				['0,02', '81', '241']
			]
		});
		expect(bytesOf('Rig 7; built in spring\n\nZeit;Kurbel;Rad\ns;rpm;rpm\n').length).toBe(head.bodyAt);
		expect(tableHead(bytesOf('a,b\n1,2\n3,4\n'))!.key).toBe(tableHead(bytesOf('A,B\n5,6\n7,8\n'))!.key);
		expect(tableHead(bytesOf('a,b\n1,2\n3,4\n'))!.key).not.toBe(tableHead(bytesOf('a;b\n1;2\n3;4\n'))!.key);
		expect(tableHead(bytesOf('1,2\n3,4\n5,6\n'))!.names).toEqual(['column 1', 'column 2']);
	});

	it.each([
		'',
		'only words\nand more words\n',
		'a,b\n1,2\n',
		'<a>1,2\n3,4\n5,6</a>\n',
		'a,b\n1,\0\n3,4\n5,6\n',
		'a,b\n1,x\n2,y\n3,z\n'
	])('sees no table in %j', (text) => expect(tableHead(bytesOf(text))).toBeNull());
});

describe('a table whose columns nobody has named', () => {
	it('is refused with a question of its own, not as a stranger', async () => {
		const refused = await refusalOf(bytesOf(table('t,a,b', 20, 50, (t) => [t, 80, 240])));
		expect(refused.code).toBe('columns-not-known');
		expect(refused.detail).toContain('t, a, b');
	});

	it('keeps to its header where that is ours: nothing has to be named', async () => {
		const text = table('time_s,crank_rpm,wheel_rpm', 20, 50, (t) => [t, 80, 240]);
		expect(values(await read(text, null), 'wheelRpm')).toHaveLength(20);
	});
});

describe('decodeMappedTable', () => {
	it('reads what the columns were said to be, at 10 to 500 Hz', async () => {
		for (const hz of [10, 500]) {
			const ride = await read(
				table('a,b,c,d', 100, hz, (t) => [t.toFixed(4), 80, 240, 31.5]),
				RPM
			);
			expect(ride.format).toBe('logger-csv');
			expect(ride.durationS).toBeCloseTo(99 / hz, 9);
			expect(new Set(values(ride, 'cadenceRpm'))).toEqual(new Set([80]));
			expect(new Set(values(ride, 'crankTorqueNm'))).toEqual(new Set([31.5]));
			expect(codes(ride)).toEqual(['no-clock-in-logger']);
			expect(ride.channels.cadenceRpm!.timeS).toBe(ride.channels.wheelRpm!.timeS);
		}
	});

	it.each<[string, ColumnMapping['time']['unit'], (t: number) => string]>([
		['milliseconds', 'ms', (t) => (t * 1e3).toFixed(1)],
		['microseconds', 'us', (t) => (t * 1e6).toFixed(0)]
	])('reads a clock in %s', async (_, unit, written) => {
		const mapping = { ...RPM, time: { column: 0, unit } };
		const ride = await read(
			table('a,b,c,d', 50, 100, (t) => [written(t), 80, 240, 30]),
			mapping
		);
		expect(ride.durationS).toBeCloseTo(0.49, 6);
	});

	it('takes the start from a clock of instants', async () => {
		const mapping = { ...RPM, time: { column: 0, unit: 'instant' as const } };
		const at = (t: number) => new Date(Date.UTC(2026, 4, 4, 8) + Math.round(t * 1000)).toISOString();
		const ride = await read(
			table('a,b,c,d', 50, 100, (t) => [at(t).replace('T', ' '), 80, 240, 30]),
			mapping
		);
		expect(ride.startedAtMs).toBe(Date.UTC(2026, 4, 4, 8));
		expect(ride.durationS).toBeCloseTo(0.49, 6);
		expect(codes(ride)).toEqual([]);
	});

	it.each<[string, ColumnMapping['wheel']['as'], (t: number) => number]>([
		['radians a second', 'rad/s', () => (240 * 2 * Math.PI) / 60],
		['degrees that run on', 'degrees', (t) => 240 * 6 * t],
		['degrees that begin again', 'degrees', (t) => (240 * 6 * t) % 360],
		['whole degrees', 'degrees', (t) => Math.floor(240 * 6 * t) % 360],
		['radians', 'radians', (t) => (240 / 60) * 2 * Math.PI * t],
		['turns', 'turns', (t) => 4 * t]
	])('reads a wheel in %s', async (_, as, wheel) => {
		const mapping: ColumnMapping = { ...RPM, wheel: { column: 2, as } };
		const ride = await read(
			table('a,b,c,d', 400, 200, (t) => [t, 80, wheel(t), 30]),
			mapping
		);
		// a whole degree over 0.04 s is 4 rpm
		for (const rpm of middle(values(ride, 'wheelRpm'))) expect(Math.abs(rpm - 240)).toBeLessThan(4.2);
	});

	it.each<[string, ColumnMapping['wheel'], (t: number) => number | string]>([
		[
			'instants of pulses',
			{ column: 2, as: 'pulse times', pulsesPerTurn: 6 },
			(t) => Math.floor(t * 24) / 24
		],
		[
			'instants, empty between them',
			{ column: 2, as: 'pulse times', pulsesPerTurn: 6 },
			(t) => (Math.floor(t * 24) > Math.floor((t - 1 / 200) * 24) ? Math.floor(t * 24) / 24 : '')
		],
		['a count of pulses', { column: 2, as: 'pulse count', pulsesPerTurn: 6 }, (t) => Math.floor(t * 24)]
	])('reads a wheel from %s', async (_, wheel, cell) => {
		const ride = await read(
			table('a,b,c,d', 400, 200, (t) => [t, 80, cell(t), 30]),
			{ ...RPM, wheel }
		);
		// 24 pulses a second of 6 a turn are 240 rpm; a count is known to the row, 5 ms of 42
		const near = wheel.as === 'pulse count' ? 35 : 0.001;
		for (const rpm of middle(values(ride, 'wheelRpm'))) expect(Math.abs(rpm - 240)).toBeLessThan(near);
	});

	it('does not go on turning when the pulses end', async () => {
		const wheel: ColumnMapping['wheel'] = { column: 2, as: 'pulse times', pulsesPerTurn: 1 };
		const stops = table('a,b,c,d', 400, 100, (t) => [t, 80, Math.min(1, Math.floor(t * 4) / 4), 30]);
		const rpm = values(await read(stops, { ...RPM, wheel }), 'wheelRpm');
		expect(rpm[100]).toBeCloseTo(240, 6);
		expect(rpm[399]).toBeNaN();
	});

	it('makes torque of power where the crank turns, and knows none below 30 rpm', async () => {
		const mapping: ColumnMapping = { ...RPM, load: { column: 3, as: 'W' } };
		const ride = await read(
			table('a,b,c,d', 50, 100, (t, i) => [t, i < 25 ? 90 : 20, 240, 200]),
			mapping
		);
		const torque = values(ride, 'crankTorqueNm');
		// T = 60 P / (2 pi n)
		expect(torque[0]).toBeCloseTo(21.22, 2);
		expect(torque[40]).toBeNaN();
	});

	it('reads without torque, keeps what a slower column leaves empty, and says what was left out', async () => {
		const text =
			table('a,b,c,d', 50, 100, (t, i) => [t, 80, i === 7 ? 'x' : 240, i % 10 === 0 ? 30 : '']) + '1,2\n';
		const ride = await read(text, RPM);
		expect(values(ride, 'crankTorqueNm').filter((value) => !Number.isNaN(value))).toHaveLength(5);
		expect(codes(ride)).toEqual(expect.arrayContaining(['rows-left-out', 'cells-left-out']));
		expect((await read(text, { ...RPM, load: null })).channels.crankTorqueNm).toBeUndefined();
	});

	it('is refused where the mapping does not fit the table', async () => {
		const text = table('a,b,c', 20, 50, (t) => [t, 80, 240]);
		await expect(read(text, RPM)).rejects.toMatchObject({ code: 'columns-not-known' });
	});
});

describe('mappingFault', () => {
	it.each<[string, Partial<ColumnMapping>, string]>([
		['a column that is not there', { crank: { column: 9, as: 'rpm' } }, 'in which column'],
		['one column twice', { crank: { column: 0, as: 'rpm' } }, 'one thing only'],
		['a unit that is none', { time: { column: 0, unit: 'h' as never } }, 'unit'],
		['a motion that is none', { wheel: { column: 2, as: 'mph' as never } }, 'crank and wheel'],
		['pulses without a number', { wheel: { column: 2, as: 'pulse count' } }, 'pulses a turn'],
		['no pulse a turn', { wheel: { column: 2, as: 'pulse times', pulsesPerTurn: 0 } }, 'pulses a turn'],
		[
			'a clock that is the column itself',
			{ wheel: { column: 2, as: 'rpm', clock: { column: 2, unit: 's' } } },
			'one thing only'
		],
		[
			'a clock of dates beside one of seconds',
			{ load: { column: 3, as: 'Nm', clock: { column: 4, unit: 'instant' } } },
			'begin together'
		],
		['a load that is none', { load: { column: 3, as: 'kg' as never } }, 'torque or power']
	])('names %s', (_, change, said) => {
		expect(mappingFault({ ...RPM, ...change }, 5)).toContain(said);
	});

	it('has nothing against a mapping that fits', () => {
		expect(mappingFault(RPM, 4)).toBeNull();
		// two quantities may share a clock of their own
		const clock = { column: 4, unit: 'ms' as const };
		const shared = { ...RPM, wheel: { ...RPM.wheel, clock }, load: { ...RPM.load!, clock } };
		expect(mappingFault(shared, 5)).toBeNull();
	});
});

describe('guessColumns', () => {
	it('goes by names, and what was said before wins', () => {
		const head = tableHead(
			bytesOf('Timestamp ms,Cadence rpm,Wheel angle deg,Power W\n0,80,1,200\n10,80,2,200\n')
		)!;
		expect(guessColumns(head, null)).toEqual({
			time: { column: 0, unit: 'ms' },
			crank: { column: 1, as: 'rpm' },
			wheel: { column: 2, as: 'degrees' },
			load: { column: 3, as: 'W' }
		});
		expect(guessColumns(head, RPM)).toEqual(RPM);
	});
});

describe('understoodRows', () => {
	it('shows what decoding makes of the same rows', async () => {
		const text = table('a,b,c,d', 100, 100, (t) => [t, 80, (1440 * t) % 360, 30]);
		const mapping: ColumnMapping = { ...RPM, wheel: { column: 2, as: 'degrees' } };
		const shown = understoodRows(tableHead(bytesOf(text))!, mapping);
		expect(Array.from(shown.wheelRpm.value)).toEqual(values(await read(text, mapping), 'wheelRpm'));
	});
});
