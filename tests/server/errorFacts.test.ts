import { describe, expect, it } from 'vitest';
import { LedgerRefusal, logLevel } from '$lib/server';
import { errorFacts } from '$lib/server/log/errorFacts';

const thrown = (work: () => unknown): unknown => {
	try {
		work();
	} catch (error) {
		return error;
	}
};

describe('errorFacts', () => {
	it('leaves out texts that quote a file, a path or what a person wrote', () => {
		const secret = 'anna-home-47.123';
		const errors = [
			thrown(() => JSON.parse(secret)),
			Object.assign(new Error(`ENOENT: no such file, open '/home/anna/${secret}'`), { code: 'ENOENT' }),
			new LedgerRefusal('wrong-value', `"${secret}" is no time zone`),
			new Error(secret),
			thrown(() => (({}) as Record<string, () => void>)[secret]()),
			Object.assign(new Error('x'), { code: secret.repeat(9) }),
			secret
		];
		for (const error of errors) {
			const facts = errorFacts(error);
			expect(JSON.stringify(facts)).not.toContain('anna');
			expect(facts.error).toMatch(/^\w+$/);
		}
		expect(errorFacts(errors[1])).toMatchObject({ code: 'ENOENT', message: null });
		expect(errorFacts(errors[2])).toMatchObject({
			error: 'LedgerRefusal',
			code: 'wrong-value',
			message: null
		});
	});

	it('says where in the program it came up, without the folder that it lies in', () => {
		const error = new TypeError('x is not a function');
		error.stack = `TypeError: x is not a function
    at work (file:///home/anna/slip-ledger/build/1/entries/cli/serve.js:12:3)
    at async Thing.run [as go] (/home/anna/a b/index.js:1:2)
    at /home/anna/other.js:7:8
    at node:internal/process/task_queues:95:5`;
		expect(errorFacts(error)).toEqual({
			error: 'TypeError',
			code: null,
			message: 'x is not a function',
			at: [
				'work serve.js:12:3',
				'Thing.run index.js:1:2',
				'other.js:7:8',
				'node:internal task_queues:95:5'
			].map((place) => place.replace('node:internal ', ''))
		});
	});
});

describe('logLevel', () => {
	it('is warnings unless it is set, and refuses a word it does not know', () => {
		expect(logLevel({})).toBe('warn');
		expect(logLevel({ SLIP_LEDGER_LOG_LEVEL: 'debug' })).toBe('debug');
		expect(() => logLevel({ SLIP_LEDGER_LOG_LEVEL: 'loud' })).toThrow('takes trace, debug');
	});
});
