import type { ComparisonPolicy } from '$lib/server';

/** What a report or its charts are asked for by: the part of their address after the question mark. */
export function reportQuery(
	before: { readonly id: number },
	afters: readonly { readonly id: number }[],
	policy: ComparisonPolicy
): string {
	return [
		`before=${before.id}`,
		...afters.map(({ id }) => `after=${id}`),
		...(policy.unit === 'episodes' ? ['unit=episodes'] : []),
		...(policy.shown === 'confirmed' ? ['shown=confirmed'] : []),
		...((policy.age ?? 'build') === 'build' ? [] : [`age=${encodeURIComponent(policy.age!)}`]),
		...(policy.detection === 'corrected' ? ['detection=corrected'] : [])
	].join('&');
}
