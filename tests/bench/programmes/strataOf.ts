import type { ExpectedStratum } from '$lib/reliability/countedAgainstExpected';
import type { Side } from './programme';

/** Strata of a programme by load band, and the true ratio of counted to expected on them. */
export function strataOf(reference: Side, fresh: Side): { strata: ExpectedStratum[]; truth: number } {
	const sums = (side: Side, band: number) =>
		side.outings.reduce(
			(sum, { bands }) => ({
				count: sum.count + bands[band].count,
				exposure: sum.exposure + bands[band].exposure
			}),
			{ count: 0, exposure: 0 }
		);
	let [counted, expected] = [0, 0];
	const strata = fresh.bandRates.map((rate, band) => {
		const old = sums(reference, band);
		const now = sums(fresh, band);
		counted += rate * now.exposure;
		expected += reference.bandRates[band] * now.exposure;
		return {
			referenceCount: old.count,
			referenceExposure: old.exposure,
			count: now.count,
			exposure: now.exposure
		};
	});
	return { strata, truth: counted / expected };
}
