import { describe, expect, it } from 'vitest';
import { readConfig } from '$lib/server';
import { PROGRAM_LIMITS, programLimits } from '$lib/server/ledger/programLimits';
import { documentedSettings } from '../cli/documentedSettings';

const LIMITS = Object.entries(PROGRAM_LIMITS);

describe('programLimits', () => {
	it('are their standards unless set, and an empty variable is none', () => {
		const env = Object.fromEntries(LIMITS.map(([, { variable }]) => [variable, '']));
		for (const limits of [programLimits({}), programLimits(env)])
			expect(limits).toEqual(Object.fromEntries(LIMITS.map(([name, { standard }]) => [name, standard])));
	});

	it('have the standards that DEVELOPERS.md names', () => {
		const rows = documentedSettings();
		for (const [, { variable, standard }] of LIMITS)
			expect(rows.find(({ name }) => name === variable)?.value).toBe(`\`${standard}\``);
	});

	it.each(LIMITS)('%s is read from its variable and refused outside its bounds', (name, limit) => {
		const { variable, least, most } = limit;
		const read = (text: string) => programLimits({ [variable]: text })[name as keyof typeof PROGRAM_LIMITS];
		expect([read(String(least)), read(` ${most} `)]).toEqual([least, most]);
		for (const wrong of [String(least - 1), String(most + 1), '1.5', 'much', '0x10', '1e3'])
			expect(() => read(wrong), wrong).toThrow(variable);
	});

	it('are looked at when a program starts', () => {
		expect(() => readConfig({ SLIP_LEDGER_ARCHIVE_MB: 'all' }, [])).toThrow('SLIP_LEDGER_ARCHIVE_MB');
	});
});
