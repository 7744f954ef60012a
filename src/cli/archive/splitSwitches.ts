/**
 * Takes switches (flags without a value) out of a command line; after a bare "--" nothing is one.
 *
 * @param names the switches that exist, e.g. "sources" for "--sources"
 * @returns which of them were there, and the command line without them
 */
export function splitSwitches<Name extends string>(
	argv: readonly string[],
	names: readonly Name[]
): { on: ReadonlySet<Name>; argv: string[] } {
	const end = argv.includes('--') ? argv.indexOf('--') : argv.length;
	const switchOf = (argument: string) => names.find((name) => argument === `--${name}`);
	const on = new Set<Name>();
	const kept = argv.filter((argument, index) => {
		const name = index < end ? switchOf(argument) : undefined;
		if (name) on.add(name);
		return !name;
	});
	return { on, argv: kept };
}
