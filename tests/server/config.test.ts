import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readConfig, serverAddress, splitFlags } from '$lib/server';

describe('readConfig', () => {
	it('has defaults that listen on this machine only', () => {
		expect(readConfig({}, [])).toEqual({
			dataFolder: resolve('data'),
			host: '127.0.0.1',
			port: 4710,
			address: null,
			proxies: []
		});
	});

	it('takes the environment over the defaults and flags over the environment', () => {
		const env = { SLIP_LEDGER_DATA: '/tmp/a', PORT: '4000' };
		expect(readConfig(env, [])).toMatchObject({ dataFolder: '/tmp/a', port: 4000 });
		expect(readConfig(env, ['--port', '4001', '--data=/tmp/b'])).toMatchObject({
			dataFolder: '/tmp/b',
			port: 4001
		});
	});

	it('takes an empty variable for one that is not set', () => {
		expect(readConfig({ PORT: '', HOST: '', SLIP_LEDGER_DATA: '' }, [])).toEqual(readConfig({}, []));
	});

	it.each(['a b', 'x/y', 'http://x', ''])('refuses the address "%s" to listen on', (host) => {
		expect(() => readConfig({}, [`--host=${host}`])).toThrow(
			expect.objectContaining({ code: 'wrong-setting' })
		);
	});

	it('takes the address of browsers without a path other than the prefix that is built in', () => {
		const address = (text: string) => readConfig({ SLIP_LEDGER_ADDRESS: text }, []).address;
		expect(address('')).toBeNull();
		expect(address('https://Ledger.example.org/')).toBe('https://ledger.example.org');
		expect(address('http://192.168.1.5:4710')).toBe('http://192.168.1.5:4710');
		for (const part of ['SLIP_LEDGER_PREFIX', 'a name of its own', 'not under "/ledger"'])
			expect(() => address('https://example.org/ledger'), part).toThrow(part);
		for (const wrong of ['ledger.example.org', 'ftp://x.example', 'https://a:b@x.example', 'https://x/?a'])
			expect(() => address(wrong)).toThrow(expect.objectContaining({ code: 'wrong-setting' }));
	});

	it('takes proxies as addresses and networks', () => {
		const proxies = (text: string) => readConfig({}, ['--proxy', text]).proxies;
		expect(proxies('127.0.0.1, 10.0.0.0/8,::1')).toEqual(['127.0.0.1', '10.0.0.0/8', '::1']);
		for (const wrong of ['proxy.example', '10.0.0.0/33', '10.0.0.0/0', '1.2.3', '10.0.0.0/8/8'])
			expect(() => proxies(wrong)).toThrow(expect.objectContaining({ code: 'wrong-setting' }));
	});

	it.each(['x', '-1', '65536', '80.5', ''])('refuses the port "%s"', (port) => {
		expect(() => readConfig({}, [`--port=${port}`])).toThrow(
			expect.objectContaining({ code: 'wrong-setting' })
		);
	});
});

describe('serverAddress', () => {
	const of = (...argv: string[]) => serverAddress(readConfig({}, argv), 4710);

	it('asks nobody to sign in on loopback addresses, and writes the origin as a browser does', () => {
		expect(of()).toEqual({ origin: 'http://127.0.0.1:4710', guarded: false });
		expect(of('--host', '::1')).toEqual({ origin: 'http://[::1]:4710', guarded: false });
		expect(of('--host', '[::1]').origin).toBe('http://[::1]:4710');
		expect(of('--host', '127.0.0.2').guarded).toBe(false);
		expect(of('--host', 'localhost').guarded).toBe(false);
	});

	it.each([
		['--host', '192.168.1.4'],
		['--host', 'workshop.example'],
		['--host', '127.0.0.1.example'],
		['--host', '::2'],
		// listens here, but is known elsewhere or stands behind a proxy
		['--address', 'https://ledger.example.org'],
		['--proxy', '127.0.0.1']
	])('has everybody sign in with %s %s', (...argv) => {
		expect(of(...argv).guarded).toBe(true);
	});

	it('wants to be told its name when it listens everywhere', () => {
		for (const host of ['0.0.0.0', '::'])
			expect(() => of('--host', host)).toThrow(expect.objectContaining({ code: 'address-not-allowed' }));
		expect(of('--host', '0.0.0.0', '--address', 'http://192.168.1.5:4710')).toEqual({
			origin: 'http://192.168.1.5:4710',
			guarded: true
		});
		expect(of('--host', '0.0.0.0', '--address', 'http://127.0.0.1:4710').guarded).toBe(true);
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
