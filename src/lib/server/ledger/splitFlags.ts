import { LedgerRefusal } from '../refusal';

/**
 * Parts a command line into its flags ("--name value" or "--name=value") and the rest in order. After a
 * bare "--" everything is rest, so that a file may be called "--data".
 *
 * @param argv arguments after the command's name
 * @param names the flags that exist, all with a value
 * @throws LedgerRefusal wrong-setting for an unknown flag or one without a value
 */
export function splitFlags<Name extends string>(
	argv: readonly string[],
	names: readonly Name[]
): { flags: Partial<Record<Name, string>>; rest: string[] } {
	const flags: Partial<Record<Name, string>> = {};
	const rest: string[] = [];
	for (let at = 0; at < argv.length; at++) {
		const argument = argv[at];
		if (argument === '--') return { flags, rest: [...rest, ...argv.slice(at + 1)] };
		if (!argument.startsWith('--')) {
			rest.push(argument);
			continue;
		}
		const [flag, ...parts] = argument.slice(2).split('=');
		const name = names.find((known) => known === flag);
		if (!name)
			throw new LedgerRefusal(
				'wrong-setting',
				`"--${flag}" is no flag here; there are ${names.map((known) => `--${known}`).join(', ')}.`
			);
		const value = parts.length > 0 ? parts.join('=') : argv[++at];
		if (!value) throw new LedgerRefusal('wrong-setting', `--${name} needs a value after it.`);
		flags[name] = value;
	}
	return { flags, rest };
}
