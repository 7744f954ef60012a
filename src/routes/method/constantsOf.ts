/** One fixed number of the program, as its own source states it. */
export interface Constant {
	/** "longest start within" for LONGEST_START_WITHIN_S */
	readonly name: string;
	readonly value: string;
	readonly unit: string;
	/** what the source says of it: what it does and where it comes from; empty where a neighbour says it */
	readonly meaning: string;
}

/** Last part of a name and the unit that it stands for: the house's rule of names. */
const UNITS: Readonly<Record<string, string>> = {
	S: 's',
	DEG: '°',
	RPM: 'rpm',
	MPS: 'm/s',
	W: 'W',
	NM: 'Nm',
	M: 'm',
	KG: 'kg',
	SD: 'standard deviations',
	HZ: 'Hz'
};

/** An optional doc block, then a constant with a number, a sign and all, or a list of numbers. */
const CONSTANT =
	/(?:\/\*\*\s*((?:(?!\*\/)[\s\S])*?)\s*\*\/\s*)?(?:export )?const ([A-Z][A-Z0-9_]*) = (-?[\d._]+(?:e-?\d+)?|\[[-\d., ]+\])(?: as const)?;/g;

/**
 * The fixed numbers of one source file, in its order. The method page shows what the program computes with, read
 * from the program itself, so that neither a number nor its reason can be out of date.
 *
 * @param source text of a TypeScript file
 * @example constantsOf('/** How long. *\/\nconst REACH_S = 3;') // [{ name: 'reach', value: '3', unit: 's', ... }]
 */
export function constantsOf(source: string): Constant[] {
	return [...source.matchAll(CONSTANT)].map(([, comment, name, value]) => {
		const parts = name.split('_');
		const unit = parts.length > 1 ? UNITS[parts[parts.length - 1]] : undefined;
		const words = unit ? parts.slice(0, -1) : parts;
		return {
			name: words.join(' ').toLowerCase(),
			value: value.replaceAll('_', '').replaceAll(',', ', ').replace(/\s+/g, ' '),
			unit: unit ?? '',
			meaning: (comment ?? '').replace(/\s*\n\s*\*?\s*/g, ' ').trim()
		};
	});
}
