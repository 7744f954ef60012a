import {
	AGE_CLOCKS,
	buildAgainstBuild,
	buildsToChoose,
	comparison,
	comparisonToCome,
	falseAlarms,
	getLedger,
	mayUse
} from '$lib/server';
import { asksForNow, computingNow } from '../computingNow';
import { askedPolicy } from './askedPolicy';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url, locals }) => {
	const ledger = getLedger();
	const builds = buildsToChoose(ledger).map(({ id, name }) => ({ id, name }));
	const known = new Set(builds.map(({ id }) => id));
	const asked = url.searchParams
		.getAll('build')
		.map(Number)
		.filter((id) => known.has(id));
	const reference = Number(url.searchParams.get('reference'));
	const chosen = asked.length ? asked : [...known];
	// the reference leads: the others are set against the first
	const ordered = chosen.includes(reference)
		? [reference, ...chosen.filter((id) => id !== reference)]
		: chosen;
	const named = ordered.map((id) => builds.find((build) => build.id === id)!);
	const policy = askedPolicy(url.searchParams);
	const toCome = asksForNow(url) ? null : comparisonToCome(ledger, named, policy);
	if (toCome) return { builds, computing: { ...toCome, address: computingNow(url) }, shown: null };
	return {
		builds,
		computing: null,
		shown: {
			chosen: ordered,
			comparison: drawnLines(ledger, ordered),
			clocks: AGE_CLOCKS,
			told: buildAgainstBuild(ledger, named, policy),
			falseAlarms: falseAlarms(ledger),
			mayReport: mayUse('/report', 'GET', locals.actor?.role ?? null) === 'allowed'
		}
	};
};

/** What is drawn and no more: the windows of thousands of rides would be most of the page. */
function drawnLines(ledger: ReturnType<typeof getLedger>, builds: readonly number[]) {
	const { builds: rows, lines } = comparison(ledger, builds);
	return { builds: rows, lines: lines.map(({ rides: _, ...line }) => line) };
}
