import { AGE_CLOCKS, buildsToChoose, figuresText, getLedger, mayUse } from '$lib/server';
import { PackedFigures } from '$lib/ui/packedFigures';
import { askFigures } from '../askFigures';
import { askedPolicy } from './askedPolicy';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = async ({ url, locals, request }) => {
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
	const { figures, since, computing } = await askFigures(
		{ request, url },
		'comparison',
		{ buildIds: ordered, policy: askedPolicy(url.searchParams) },
		true
	);
	return {
		builds,
		since,
		computing,
		shown: figures && {
			packed: new PackedFigures(figuresText(figures), figures),
			chosen: ordered,
			clocks: AGE_CLOCKS,
			mayReport: mayUse('/report', 'GET', locals.actor?.role ?? null, locals.guarded) === 'allowed'
		}
	};
};
