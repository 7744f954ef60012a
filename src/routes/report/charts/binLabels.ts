import type { BuildAgainstBuild } from '$lib/server';
import type { Formats } from '$lib/ui/formats';
import { ageAxisWords } from '$lib/ui/policyWords';

export type BinKind = 'overAge' | 'overTorque' | 'overHours';

/** What a chart of bins is called, what its axis says and what stands under its bins. */
export interface BinLabels {
	readonly id: string;
	readonly title: string;
	readonly axis: string;
	/** of the longest series; where another ends earlier it has none */
	readonly bins: readonly string[];
}

export function binLabels(told: BuildAgainstBuild, kind: BinKind, formats: Formats): BinLabels {
	const longest = told.builds
		.map((build) => build[kind])
		.reduce((most, bins) => (bins.length > most.length ? bins : most), []);
	const edge = EDGES[kind];
	return {
		...NAMES[kind](formats.kmSet(told.binM), ageAxisWords(told.policy.age ?? 'build')),
		bins: longest.map(({ from, to }) =>
			from === null ? '?' : `${formats.number(edge(from))}${to === null ? '+' : ''}`
		)
	};
}

const EDGES: Readonly<Record<BinKind, (value: number) => number>> = {
	overAge: (metres) => metres / 1000,
	overTorque: (newtonMetres) => newtonMetres,
	overHours: (hour) => hour + 1
};

const NAMES: Readonly<Record<BinKind, (bin: string, age: string) => Omit<BinLabels, 'bins'>>> = {
	overAge: (bin, age) => ({
		id: 'over-age',
		title: `Over ${age}`,
		axis: `${age}, bins of ${bin}`
	}),
	overTorque: () => ({
		id: 'over-torque',
		title: 'By hub torque when the slip began',
		axis: 'mean hub torque from, Nm (?: not known)'
	}),
	overHours: () => ({
		id: 'over-hours',
		title: 'By hour of the ride',
		axis: 'hour of the ride, by the clock'
	})
};
