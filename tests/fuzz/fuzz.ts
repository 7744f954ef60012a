/**
 * The long run: `npm run fuzz -- [CASES] [FIRST]`. Prints what broke with the number of the case, by which it can be
 * run again; ends with 1 when anything did.
 */
import { cpus } from 'node:os';
import { runFuzz } from './runFuzz';

const [cases = '500000', first = '1000000'] = process.argv.slice(2);
const from = Number(first);
const startedMs = performance.now();
const outcome = await runFuzz(from, from + Number(cases), cpus().length, (done) => {
	if (done % 20_000 < 400) process.stdout.write(`${done} cases\n`);
});
for (const { number, family, detail } of outcome.findings)
	process.stdout.write(`case ${number} (${family}): ${detail}\n`);
process.stdout.write(
	`${outcome.cases} cases from ${from}, ${outcome.findings.length} broken, ` +
		`${Math.round((performance.now() - startedMs) / 1000)} s\n`
);
process.exitCode = outcome.findings.length > 0 ? 1 : 0;
