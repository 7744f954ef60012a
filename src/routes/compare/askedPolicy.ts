import { AGE_CLOCKS, type ComparisonPolicy } from '$lib/server';

/** How an address asks to count; anything that is not known is taken as not asked. */
export function askedPolicy(asked: URLSearchParams): Required<ComparisonPolicy> {
	return {
		unit: asked.get('unit') === 'episodes' ? 'episodes' : 'slips',
		shown: asked.get('shown') === 'confirmed' ? 'confirmed' : 'found',
		age: AGE_CLOCKS.find((clock) => clock === asked.get('age')) ?? 'build',
		detection: asked.get('detection') === 'corrected' ? 'corrected' : 'as found'
	};
}
