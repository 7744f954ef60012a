import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROUTE_ROLES } from '$lib/server';
import { documentedSettings } from './documentedSettings';

const FOLDER = 'src/deploy';
const UNITS = readdirSync(FOLDER).filter((name) => /\.(service|timer)$/.test(name));

/** What systemd (252) knows of what is used here; a mistyped name is ignored by it in silence. */
const KNOWN: Record<string, string> = {
	Unit: 'Description After RequiresMountsFor',
	Install: 'WantedBy',
	Timer: 'OnCalendar RandomizedDelaySec Persistent',
	Service: `Type User Group WorkingDirectory ExecStart ExecStartPost Environment StateDirectory StateDirectoryMode
		UMask KillSignal KillMode TimeoutStopSec Restart RestartSec Nice NoNewPrivileges ProtectSystem ProtectHome
		PrivateTmp PrivateDevices ProtectKernelTunables ProtectKernelModules ProtectKernelLogs ProtectControlGroups
		ProtectClock ProtectHostname RestrictNamespaces RestrictRealtime RestrictSUIDSGID RestrictAddressFamilies
		LockPersonality SystemCallArchitectures CapabilityBoundingSet ReadWritePaths`
};

/** [section, name, value] of each line of a unit */
function readUnit(name: string): [string, string, string][] {
	let section = '';
	return readFileSync(`${FOLDER}/${name}`, 'utf8')
		.split('\n')
		.flatMap((line): [string, string, string][] => {
			if (line === '' || line.startsWith('#')) return [];
			const heading = /^\[(\w+)\]$/.exec(line);
			if (heading) {
				section = heading[1];
				return [];
			}
			const setting = /^(\w+)=(.*)$/.exec(line);
			if (!setting) throw new Error(`${name}: not understood: ${line}`);
			return [[section, setting[1], setting[2]]];
		});
}

const valuesOf = (unit: string, name: string) =>
	readUnit(unit)
		.filter((line) => line[1] === name)
		.map((line) => line[2]);

/** the command that a line starts must be one of ours */
function commandOf(line: string): string {
	const found = /node (?:--[\w-]+=\d+ )*src\/cli\/run\.mjs ([a-z-]+)/.exec(line);
	if (!found) throw new Error(`starts something else: ${line}`);
	return found[1];
}

describe.each(UNITS)('src/deploy/%s', (unit) => {
	it('uses settings that systemd knows, in the section they belong to', () => {
		for (const [section, name] of readUnit(unit))
			expect(KNOWN[section]?.split(/\s+/), `${section}: ${name}`).toContain(name);
	});

	it('sets variables that the program documents, and starts commands that exist', () => {
		for (const value of valuesOf(unit, 'Environment'))
			expect(documentedSettings().map(({ name }) => name)).toContain(value.split('=')[0]);
		for (const line of [...valuesOf(unit, 'ExecStart'), ...valuesOf(unit, 'ExecStartPost')])
			expect(existsSync(`src/cli/${commandOf(line)}.ts`), line).toBe(true);
	});
});

describe('the services', () => {
	it('run with few rights, as a user of their own, and write nowhere but in their folders', () => {
		expect(UNITS).toEqual(['slip-ledger-backup.service', 'slip-ledger-backup.timer', 'slip-ledger.service']);
		for (const unit of UNITS.filter((name) => name.endsWith('.service'))) {
			expect(valuesOf(unit, 'User')).toEqual(['slip-ledger']);
			expect(valuesOf(unit, 'NoNewPrivileges')).toEqual(['yes']);
			expect(valuesOf(unit, 'ProtectSystem')).toEqual(['strict']);
			expect(valuesOf(unit, 'ProtectHome')).toEqual(['yes']);
		}
		expect(valuesOf('slip-ledger.service', 'StateDirectory')).toEqual(['slip-ledger']);
		expect(valuesOf('slip-ledger.service', 'Environment')).toContain('SLIP_LEDGER_DATA=/var/lib/slip-ledger');
		expect(valuesOf('slip-ledger.service', 'Restart')).toEqual(['on-failure']);
	});

	it('are stopped by a signal that the server hears, with more time than it takes', () => {
		const serve = readFileSync('src/cli/serve.ts', 'utf8');
		const [signal] = valuesOf('slip-ledger.service', 'KillSignal');
		expect(serve).toContain(`'${signal}'`);
		const within = Number(/STOP_WITHIN_MS = ([\d_]+)/.exec(serve)![1].replaceAll('_', ''));
		expect(1000 * Number(valuesOf('slip-ledger.service', 'TimeoutStopSec')[0])).toBeGreaterThan(within);
	});
});

describe('src/deploy/Containerfile', () => {
	const text = readFileSync(`${FOLDER}/Containerfile`, 'utf8').replaceAll('\\\n', ' ');
	const lines = text.split('\n').filter((line) => line !== '' && !line.startsWith('#'));
	const after = (word: string) =>
		lines.filter((line) => line.startsWith(`${word} `)).map((line) => line.slice(word.length + 1).trim());

	it('sets variables that the program documents', () => {
		const names = after('ENV').flatMap((line) => line.split(/\s+/).map((pair) => pair.split('=')[0]));
		expect(names.length).toBeGreaterThan(3);
		for (const name of names) expect(documentedSettings().map((setting) => setting.name)).toContain(name);
	});

	it('runs as an ordinary user, keeps its data in a volume and starts the server', () => {
		expect(after('USER')).toEqual(['node']);
		expect(after('VOLUME')).toEqual(['/data']);
		expect(after('CMD').at(-1)).toBe('["node", "--max-semi-space-size=8", "src/cli/run.mjs", "serve"]');
		expect(after('STOPSIGNAL')).toEqual(['SIGTERM']);
	});

	it('asks a page for its health that answers without a name, and builds with scripts that exist', () => {
		const path = /127\.0\.0\.1:\$\{process\.env\.PORT\}\$\{process\.env\.SLIP_LEDGER_PREFIX\}(\/[\w.]+)/.exec(
			text
		)![1];
		expect(ROUTE_ROLES[path].read).toBe('everybody');
		const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { scripts: object };
		for (const [, script] of text.matchAll(/npm run (\w+)/g)) expect(scripts).toHaveProperty(script);
		expect(readFileSync('.dockerignore', 'utf8').split('\n')).toEqual(
			expect.arrayContaining(['node_modules', 'build', 'data'])
		);
	});
});
