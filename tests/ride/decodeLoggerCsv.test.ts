import { describe, expect, it } from 'vitest';
import { codes, decode, refusalOf, values } from './rides';

const HEAD = 'time_s,crank_rpm,wheel_rpm,crank_torque_nm\n';
const bytesOf = (text: string) => new TextEncoder().encode(text);
const logger = (text: string) => decode(bytesOf(text), 'logger.csv');
const row = (i: number) => `${(i * 0.02).toFixed(3)},${80 + i},${240 + i},${30 + i}.5\n`;
const rows = (count: number, from = 0) => Array.from({ length: count }, (_, i) => row(from + i)).join('');

describe('decodeLoggerCsv', () => {
	it('reads crank, wheel and torque on their own clock and makes up neither speed nor power', async () => {
		const read = await logger(HEAD + rows(5));
		expect(read.format).toBe('logger-csv');
		expect(Object.keys(read.channels).sort()).toEqual(['cadenceRpm', 'crankTorqueNm', 'wheelRpm']);
		expect(Array.from(read.channels.wheelRpm!.timeS)).toEqual([0, 0.02, 0.04, 0.06, 0.08]);
		expect(values(read, 'cadenceRpm')).toEqual([80, 81, 82, 83, 84]);
		expect(values(read, 'wheelRpm')).toEqual([240, 241, 242, 243, 244]);
		expect(values(read, 'crankTorqueNm')).toEqual([30.5, 31.5, 32.5, 33.5, 34.5]);
	});

	it('begins at instant 0 with a warning, since a logger has no calendar', async () => {
		const read = await logger(HEAD + rows(5, 100));
		expect(read.startedAtMs).toBe(0);
		expect(codes(read)).toEqual(['no-clock-in-logger']);
		expect(Array.from(read.channels.wheelRpm!.timeS).map((s) => s.toFixed(9))).toEqual([
			'0.000000000',
			'0.020000000',
			'0.040000000',
			'0.060000000',
			'0.080000000'
		]);
	});

	it('takes the instant of time 0 from a comment line', async () => {
		const read = await logger(`# rig 2\r\n# started_at: 2026-05-04T10:00:00+02:00\r\n${HEAD}${rows(5, 100)}`);
		expect(read.startedAtMs).toBe(Date.UTC(2026, 4, 4, 8, 0, 2));
		expect(codes(read)).toEqual([]);
	});

	it('reads other orders, further columns, quotes, semicolons with decimal commas, and a byte order mark', async () => {
		const text =
			'\uFEFF"Wheel_rpm";note;"time_s";crank_rpm\r\n240,5;a;0,00;80,25\r\n241,5;"b;c";0,02;81,25\r\n';
		const read = await logger(text);
		expect(values(read, 'wheelRpm')).toEqual([240.5, 241.5]);
		expect(values(read, 'cadenceRpm')).toEqual([80.25, 81.25]);
		expect(read.durationS).toBeCloseTo(0.02, 12);
	});

	it('leaves an empty cell missing, and counts cells that hold no number', async () => {
		const read = await logger(`${HEAD}0.00,80,240,\n0.02,,241,x\n0.04,82,nan,7\n`);
		expect(values(read, 'cadenceRpm')).toEqual([80, NaN, 82]);
		expect(values(read, 'wheelRpm')).toEqual([240, 241, NaN]);
		expect(values(read, 'crankTorqueNm')).toEqual([NaN, NaN, 7]);
		expect(read.warnings.find(({ code }) => code === 'cells-left-out')?.detail).toBe('2 cells');
	});

	it('leaves out lines with missing or surplus columns and names the first', async () => {
		const read = await logger(`${HEAD}${row(0)}${row(1)}0.04,80\n${row(3)}1,2,3,4,5\n${row(4)}`);
		expect(values(read, 'wheelRpm')).toEqual([240, 241, 243, 244]);
		expect(read.warnings.find(({ code }) => code === 'rows-left-out')?.detail).toBe(
			'2 lines, the first is line 4'
		);
	});

	it('leaves out a last line without its line break: its last figure may be cut off', async () => {
		const read = await logger(HEAD + rows(5) + '0.100,85,245,3');
		expect(values(read, 'crankTorqueNm')).toHaveLength(5);
	});

	it('calls missing samples a gap, against the beat of the logger', async () => {
		const read = await logger(HEAD + rows(50) + rows(50, 100));
		expect(read.gaps).toHaveLength(1);
		expect(read.gaps[0][0]).toBeCloseTo(0.98, 9);
		expect(read.gaps[0][1]).toBeCloseTo(2, 9);
		expect(read.irregular).toBe(false);
	});

	it('keeps torque and turns that only an instant can have: negative ones', async () => {
		const read = await logger(`${HEAD}0.00,80,240,-12\n0.02,80,-3,250\n0.04,80,240,5000\n`);
		expect(values(read, 'crankTorqueNm')).toEqual([-12, 250, NaN]);
		expect(values(read, 'wheelRpm')).toEqual([240, -3, 240]);
		expect(codes(read)).toContain('implausible-values');
	});

	it('reads a file of several megabytes without losing or doubling a line', async () => {
		const count = 120_000;
		const lines = Array.from({ length: count }, (_, i) => `${(i * 0.002).toFixed(3)},80,${i % 1000},1\n`);
		const read = await logger(HEAD + lines.join(''));
		const wheelRpm = read.channels.wheelRpm!.value;
		expect(wheelRpm).toHaveLength(count);
		expect(wheelRpm.findIndex((value, i) => value !== i % 1000)).toBe(-1);
	});

	it.each([
		['no wheel', 'time_s,crank_rpm\n0,80\n0.02,80\n', 'no-speed'],
		['no crank', 'time_s,wheel_rpm\n0,240\n0.02,240\n', 'no-cadence'],
		['no rows', HEAD, 'no-records'],
		['no time in any row', `${HEAD},80,240,1\n,80,240,1\n`, 'no-clock'],
		['quotes that do not close', `${HEAD}0,"80,240,1\n0.02,80,240,1\n`, 'damaged'],
		['another table', 'name,colour\na,b\n', 'not-a-ride-file'],
		['plain text', 'time_s is not a table\n', 'not-a-ride-file']
	])('refuses %s', async (_, text, code) => {
		expect((await refusalOf(bytesOf(text), 'logger.csv')).code).toBe(code);
	});
});
