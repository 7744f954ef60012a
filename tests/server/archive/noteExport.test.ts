import { describe, expect, it } from 'vitest';
import { ledgerSchema, noteExport } from '$lib/server';
import { LEFT_OUT } from '$lib/server/archive/archiveTables';
import { actorOf, addPerson } from '$lib/server/people/people';
import { freshLedger, rowsOf, withHardware } from '../testLedger';

describe('noteExport', () => {
	it('writes down who took what along', () => {
		const { ledger, actor } = freshLedger();
		noteExport(ledger, actor, 'archive', { sources: true, names: true });
		noteExport(ledger, actor, 'tables', {});
		expect(rowsOf(ledger, "SELECT subject_id, detail FROM trail WHERE action = 'exported'")).toEqual([
			{ subject_id: 'archive', detail: '{"names":true,"sources":true,"attachments":false}' },
			{ subject_id: 'tables', detail: '{"names":false}' }
		]);
	});

	it('lets only the owner take names along', () => {
		const { ledger } = freshLedger();
		const engineer = actorOf(addPerson(ledger, { name: 'E', role: 'engineer', example: false }));
		expect(() => noteExport(ledger, engineer, 'tables', { names: true })).toThrow('owner');
		expect(() => noteExport(ledger, engineer, 'tables', {})).not.toThrow();
	});
});

describe('ledgerSchema', () => {
	it('counts rows, says what tables mean, and names what stays at home', () => {
		const test = freshLedger();
		withHardware(test);
		const { tables, leftOut, files } = ledgerSchema(test.ledger);
		expect(tables.find(({ name }) => name === 'wheel')).toMatchObject({ rows: 1 });
		expect(tables.find(({ name }) => name === 'trail')!.about).toContain('Who did what to which row');
		expect(leftOut.map(({ name }) => name)).toEqual(Object.keys(LEFT_OUT));
		expect(files).toBe(0);
	});

	it('has words for every table of the layout', () => {
		const { tables } = ledgerSchema(freshLedger().ledger);
		const silent = tables.filter(({ about }) => about === '').map(({ name }) => name);
		// a new table brings its words as a comment before CREATE TABLE
		expect(silent).toEqual([]);
	});
});
