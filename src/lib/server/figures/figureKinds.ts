import type { NumberWords } from '$lib/release/criteria';
import {
	buildAgainstBuild,
	type BuildAgainstBuild,
	type ComparisonPolicy
} from '../evidence/buildAgainstBuild';
import { buildView } from '../hardware/buildView';
import { findBuild } from '../hardware/builds';
import type { Ledger } from '../ledger/openLedger';
import { comparison } from '../rates/comparison';
import { falseAlarms } from '../rates/falseAlarms';
import { programmeRows } from '../rates/programmeRows';
import { programmeStories } from '../rates/programmeStories';
import { fieldWatches } from '../release/fieldWatches';
import { releaseView } from '../release/releaseView';
import { reportView } from '../report/reportView';
import type { DrawnLine } from '../views';
import { shownComparison } from './shownComparison';

/**
 * What pages show of many rides, by the page. Plain data that can be sent from process to process; what is asked is
 * plain data as well.
 */
export const FIGURES = {
	programme: (ledger: Ledger, _asked: null, words: NumberWords) => ({
		builds: programmeRows(ledger),
		stories: programmeStories(ledger, words),
		watches: fieldWatches(ledger, words),
		falseAlarms: falseAlarms(ledger)
	}),
	build: (ledger: Ledger, { buildId }: { buildId: number }, words: NumberWords) => ({
		build: buildView(ledger, buildId),
		watches: fieldWatches(ledger, words, buildId),
		falseAlarms: falseAlarms(ledger)
	}),
	comparison: (ledger: Ledger, asked: AskedComparison) => ({
		...shownComparison(comparison(ledger, asked.buildIds), told(ledger, asked)),
		falseAlarms: falseAlarms(ledger)
	}),
	/** drawings and tables of the comparison to take away: every step and slip as it was computed */
	charts: (ledger: Ledger, asked: AskedComparison) => ({
		lines: comparison(ledger, asked.buildIds).lines.map(({ rides: _, ...line }): DrawnLine => line),
		told: told(ledger, asked)
	}),
	release: (ledger: Ledger, { buildId }: { buildId: number }, words: NumberWords) => ({
		view: releaseView(ledger, buildId, words),
		watches: fieldWatches(ledger, words, buildId),
		falseAlarms: falseAlarms(ledger)
	}),
	report: (
		ledger: Ledger,
		{ beforeId, afterId, policy }: { beforeId: number; afterId: number; policy: ComparisonPolicy },
		words: NumberWords
	) => reportView(ledger, beforeId, afterId, policy, words)
};

export type FigureKind = keyof typeof FIGURES;
export type Asked<Kind extends FigureKind> = Parameters<(typeof FIGURES)[Kind]>[1];
export type Figures<Kind extends FigureKind> = ReturnType<(typeof FIGURES)[Kind]>;

/** Computes figures here and now. */
export function computeFigures<Kind extends FigureKind>(
	ledger: Ledger,
	kind: Kind,
	asked: Asked<Kind>,
	words: NumberWords
): Figures<Kind> {
	const compute = FIGURES[kind] as (ledger: Ledger, asked: Asked<Kind>, words: NumberWords) => Figures<Kind>;
	return compute(ledger, asked, words);
}

interface AskedComparison {
	/** the reference first */
	readonly buildIds: readonly number[];
	readonly policy: ComparisonPolicy;
}

function told(ledger: Ledger, { buildIds, policy }: AskedComparison): BuildAgainstBuild {
	const builds = buildIds.map((id) => ({ id, name: findBuild(ledger, id).name }));
	return buildAgainstBuild(ledger, builds, policy);
}
