// The one test command: set-up, then format, lint, types, build and every suite; closes with the line
// "N passed, N failed". A missing browser fails, it is never skipped.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { findChromium } from './browser/findChromium.mjs';

const project = fileURLToPath(new URL('..', import.meta.url));
const scratch = mkdtempSync(join(tmpdir(), 'slip-ledger-test-'));
let passed = 0;
let failed = 0;

const chromium = findChromium() ?? installChromium();
if (chromium) process.stdout.write(`Browser for the browser tests: ${chromium}\n`);
else failed++;

step('framework files', 'svelte-kit', ['sync']);
step('format', 'prettier', ['--check', '.']);
step('lint', 'eslint', ['.']);
step('types', 'svelte-check', ['--tsconfig', './tsconfig.json', '--fail-on-warnings']);
const built = step('build', process.execPath, ['src/cli/build.mjs']);
for (const suite of ['unit', 'faults', 'browser']) {
	if (suite !== 'unit' && !built) failed++;
	else runSuite(suite);
}
rmSync(scratch, { recursive: true, force: true });
process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;

/**
 * One check that passes or fails as a whole.
 *
 * @param {string} title
 * @param {string} command
 * @param {string[]} args
 */
function step(title, command, args) {
	process.stdout.write(`\n== ${title}\n`);
	const local = join(project, 'node_modules/.bin', command);
	const run = spawnSync(existsSync(local) ? local : command, args, { cwd: project, stdio: 'inherit' });
	if (run.status === 0) passed++;
	else failed++;
	return run.status === 0;
}

/**
 * One of vitest's projects; its tests are counted one by one.
 *
 * @param {string} suite
 */
function runSuite(suite) {
	process.stdout.write(`\n== ${suite} tests\n`);
	const report = join(scratch, `${suite}.json`);
	const run = spawnSync(
		join(project, 'node_modules/.bin/vitest'),
		['run', '--project', suite, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
		{
			cwd: project,
			stdio: 'inherit',
			env: { ...process.env, CHROMIUM_PATH: chromium ?? '', NO_COLOR: '1' }
		}
	);
	if (!existsSync(report)) {
		failed++;
		return;
	}
	const counts = JSON.parse(readFileSync(report, 'utf8'));
	passed += counts.numPassedTests;
	failed += counts.numFailedTests;
	// a suite that broke outside its tests, or ran none, is red too
	if (run.status !== 0 && counts.numFailedTests === 0) failed++;
	if (counts.numPassedTests === 0) failed++;
}

/** As root on Debian the browser is installed, with a word; elsewhere the command is named. */
function installChromium() {
	const debian = existsSync('/usr/bin/apt-get');
	if (!debian || process.getuid?.() !== 0) {
		process.stdout.write(
			`No Chromium was found. Install one (${debian ? 'sudo apt-get install chromium' : 'from your system'}) or name it in CHROMIUM_PATH.\n`
		);
		return null;
	}
	process.stdout.write('No Chromium was found: installing the one of Debian (apt-get install chromium).\n');
	spawnSync('apt-get', ['update'], { stdio: 'inherit' });
	spawnSync('apt-get', ['install', '-y', '--no-install-recommends', 'chromium'], {
		stdio: 'inherit',
		env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
	});
	return findChromium();
}
