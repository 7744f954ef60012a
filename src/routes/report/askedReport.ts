import { error } from '@sveltejs/kit';
import type { ComparisonPolicy } from '$lib/server';
import { askedPolicy } from '../compare/askedPolicy';

interface Named {
	readonly id: number;
	readonly name: string;
}

/** What an address asks for: the build that is replaced, those set against it, and how is counted. */
export interface AskedReport {
	readonly before: Named;
	/** at least one for a report, which is about the first; charts show all, or the one before by itself */
	readonly afters: readonly Named[];
	readonly policy: ComparisonPolicy;
}

/**
 * Reads `?before=1&after=3` (after may be repeated), `unit`, `shown`, `age` and `detection` as on the page "Build against build".
 *
 * @param builds of the ledger
 * @param alone one build will do: for its charts
 * @returns null when no build is named: then the page asks which
 * @throws 404 for a build that does not exist, 400 for a build against itself or only one of the two
 */
export function askedReport(
	asked: URLSearchParams,
	builds: readonly Named[],
	alone = false
): AskedReport | null {
	const named = (name: string) =>
		asked
			.getAll(name)
			.filter((value) => value !== '')
			.map((value) => {
				const build = /^\d{1,15}$/.test(value) ? builds.find(({ id }) => id === Number(value)) : undefined;
				if (!build) error(404, 'One of the builds of this report is not in the ledger.');
				return { id: build.id, name: build.name };
			});
	const [before] = named('before');
	const afters = named('after');
	if (!before && afters.length === 0) return null;
	if (!before || (afters.length === 0 && !alone))
		error(400, 'A report needs two builds: the one before and the one after.');
	const ids = [before, ...afters].map(({ id }) => id);
	if (new Set(ids).size < ids.length) error(400, 'A build cannot be set against itself.');
	return {
		before,
		afters,
		policy: askedPolicy(asked)
	};
}
