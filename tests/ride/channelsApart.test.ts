import { describe, expect, it } from 'vitest';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import { guessColumns } from '$lib/ride/guessColumns';
import { understoodRows } from '$lib/ride/mappedColumns';
import { tableHead } from '$lib/ride/tableHead';
import { bytesOf, middle, read, table } from './loggerTables';
import { values } from './rides';

describe('a table with clocks of their own', () => {
	/** crank at 100 Hz beside a wheel at 40 Hz, each with its time; the shorter list ends in empty cells */
	const sideBySide = (rows = 400) =>
		table('time_crank,crank,torque,time_wheel_ms,wheel', rows, 100, (t, i) => [
			t,
			80 + 10 * Math.sin(t),
			30,
			...(i / 40 <= rows / 100 ? [(1000 * i) / 40, 240 + 20 * Math.cos(i / 40)] : ['', ''])
		]);
	const APART: ColumnMapping = {
		time: { column: 0, unit: 's' },
		crank: { column: 1, as: 'rpm' },
		wheel: { column: 4, as: 'rpm', clock: { column: 3, unit: 'ms' } },
		load: { column: 2, as: 'Nm' }
	};

	it('keeps each channel on its own clock', async () => {
		const { channels, durationS } = await read(sideBySide(), APART);
		const { cadenceRpm, wheelRpm, crankTorqueNm } = channels;
		expect(durationS).toBeCloseTo(3.99, 9);
		expect(crankTorqueNm!.timeS).toBe(cadenceRpm!.timeS);
		expect(wheelRpm!.timeS).not.toBe(cadenceRpm!.timeS);
		expect(Array.from(wheelRpm!.timeS.slice(0, 3))).toEqual([0, 0.025, 0.05]);
		// what lies behind the crank's last record cannot be set against it
		expect(wheelRpm!.timeS.at(-1)).toBeLessThanOrEqual(durationS);
		wheelRpm!.timeS.forEach((t, i) => expect(wheelRpm!.value[i]).toBeCloseTo(240 + 20 * Math.cos(t), 9));
	});

	it('reads an angle and a power over their own clocks', async () => {
		const text = table('a,b,c,d,e,f', 400, 100, (t, i) => [
			t,
			60,
			(i / 50) * 1000,
			(i / 50) * 4 * 360,
			i / 80,
			100 * 2 * Math.PI
		]);
		const ride = await read(text, {
			time: { column: 0, unit: 's' },
			crank: { column: 1, as: 'rpm' },
			wheel: { column: 3, as: 'degrees', clock: { column: 2, unit: 'ms' } },
			load: { column: 5, as: 'W', clock: { column: 4, unit: 's' } }
		});
		for (const rpm of middle(values(ride, 'wheelRpm'))) expect(rpm).toBeCloseTo(240, 6);
		// 2 pi 100 W at one turn a second are 100 Nm
		for (const nm of middle(values(ride, 'crankTorqueNm'))) expect(nm).toBeCloseTo(100, 6);
		expect(ride.channels.crankTorqueNm!.timeS[1]).toBeCloseTo(1 / 80, 9);
	});

	it('loses no more than a row to one wrong instant, and is refused where the clocks do not meet', async () => {
		const rows = sideBySide().split('\n');
		rows[11] = rows[11].replace(/(.*),[\d.]+,([\d.]+)$/, '$1,999999999,$2');
		const { wheelRpm } = (await read(rows.join('\n'), APART)).channels;
		const whole = (await read(sideBySide(), APART)).channels.wheelRpm!;
		expect(wheelRpm!.timeS.length).toBe(whole.timeS.length - 1);
		const later = sideBySide().replace(
			/,(\d[\d.]*),(\d[\d.]*)$/gm,
			(_, t, rpm) => `,${Number(t) + 1e6},${rpm}`
		);
		await expect(read(later, APART)).rejects.toMatchObject({ code: 'no-speed' });
	});

	it('guesses them by their names', () => {
		const head = tableHead(bytesOf(sideBySide()))!;
		expect(guessColumns(head, null)).toEqual({ ...APART, load: { column: 2, as: 'Nm' } });
		expect(guessColumns(head, APART)).toEqual(APART);
		const pulses = tableHead(bytesOf('time s,crank rpm,wheel pulse time\n0,80,0\n1,80,0.5\n2,80,1.5\n'))!;
		expect(guessColumns(pulses, null).wheel).toEqual({ column: 2, as: 'pulse times' });
	});

	it('shows the same first rows as decoding makes', async () => {
		const text = sideBySide(300);
		const shown = understoodRows(tableHead(bytesOf(text))!, APART);
		const { wheelRpm } = (await read(text, APART)).channels;
		expect(Array.from(shown.wheelRpm.value.slice(0, wheelRpm!.value.length))).toEqual(
			Array.from(wheelRpm!.value)
		);
	});
});
