import {
	AGE_CLOCKS,
	buildAgainstBuild,
	comparison,
	falseAlarms,
	getLedger,
	listBuilds,
	mayUse
} from '$lib/server';
import { askedPolicy } from './askedPolicy';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ url, locals }) => {
	const ledger = getLedger();
	const builds = listBuilds(ledger).map(({ id, name }) => ({ id, name }));
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
	return {
		builds,
		chosen: ordered,
		comparison: comparison(ledger, ordered),
		clocks: AGE_CLOCKS,
		told: buildAgainstBuild(ledger, named, askedPolicy(url.searchParams)),
		falseAlarms: falseAlarms(ledger),
		mayReport: mayUse('/report', 'GET', locals.actor?.role ?? null) === 'allowed'
	};
};
