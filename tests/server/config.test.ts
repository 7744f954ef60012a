import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readConfig, splitFlags } from '$lib/server';

describe('readConfig', () => {
	it('has defaults that listen on this machine only', () => {
		expect(readConfig({}, [])).toEqual({
			dataFolder: resolve('data'),
			host: '127.0.0.1',
			port: 4710,
			origin: 'http://127.0.0.1:4710'
		});
	});

	it('takes the environment over the defaults and flags over the environment', () => {
		const env = { SLIP_LEDGER_DATA: '/tmp/a', PORT: '4000' };
		expect(readConfig(env, [])).toMatchObject({ dataFolder: '/tmp/a', port: 4000 });
		expect(readConfig(env, ['--port', '4001', '--data=/tmp/b'])).toMatchObject({
			dataFolder: '/tmp/b',
			port: 4001,
			origin: 'http://127.0.0.1:4001'
		});
	});

	it('takes an empty variable for one that is not set', () => {
		expect(readConfig({ PORT: '', HOST: '', SLIP_LEDGER_DATA: '' }, [])).toEqual(readConfig({}, []));
	});

	it.each(['0.0.0.0', '192.168.1.4', '::', 'workshop.example', '127.0.0.1.example'])(
		'refuses the address %s: whoever reaches the server may write',
		(host) => {
			expect(() => readConfig({}, ['--host', host])).toThrow(
				expect.objectContaining({ code: 'address-not-allowed' })
			);
			expect(() => readConfig({ HOST: host }, [])).toThrow();
		}
	);

	it('takes every loopback address and writes its origin as a browser does', () => {
		expect(readConfig({}, ['--host', '::1']).origin).toBe('http://[::1]:4710');
		expect(readConfig({}, ['--host', '127.0.0.2']).origin).toBe('http://127.0.0.2:4710');
	});

	it.each(['x', '-1', '65536', '80.5', ''])('refuses the port "%s"', (port) => {
		expect(() => readConfig({}, [`--port=${port}`])).toThrow(
			expect.objectContaining({ code: 'wrong-setting' })
		);
	});
});

describe('splitFlags', () => {
	it('parts flags from the rest in either spelling', () => {
		expect(splitFlags(['a', '--as', 'Kim', 'b', '--data=x=y'], ['as', 'data'])).toEqual({
			flags: { as: 'Kim', data: 'x=y' },
			rest: ['a', 'b']
		});
	});

	it('takes everything after a bare -- for files', () => {
		expect(splitFlags(['--', '--as'], ['as'])).toEqual({ flags: {}, rest: ['--as'] });
	});

	it('refuses unknown flags and flags without a value', () => {
		expect(() => splitFlags(['--what'], ['as'])).toThrow('--as');
		expect(() => splitFlags(['--as'], ['as'])).toThrow('needs a value');
	});
});
