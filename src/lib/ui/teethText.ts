/** Tooth counts as people write them, the way back into a field; '' where none are stated. */
export function teethText(counts: readonly number[] | null): string {
	return counts?.join(', ') ?? '';
}
