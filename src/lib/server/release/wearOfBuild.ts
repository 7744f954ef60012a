import type { TestEvidence } from '$lib/release/criteria';
import { wearOfWheel } from '../hardware/inspectionsWear';
import type { Ledger } from '../ledger/openLedger';

const FARTHER_THAN_ANY_LIFE_M = 1e9;

/** What was measured of a build's wear on each of its wheels, with the distance at which a limit may be reached. */
export function wearOfBuild(
	ledger: Ledger,
	buildId: number,
	wheels: readonly { readonly id: number; readonly name: string }[]
): TestEvidence['wear'] {
	return wheels.flatMap(({ id, name }) =>
		wearOfWheel(ledger, id)
			.filter(({ build, limit }) => build.id === buildId && limit !== null)
			.map((wear) => ({
				name: [wear.kind, wear.place, `on ${name}`].filter(Boolean).join(' '),
				reachesLimitAtLeastM: reachesAtLeast(wear)
			}))
	);
}

function reachesAtLeast({
	beyondLimit,
	limitReached
}: Pick<ReturnType<typeof wearOfWheel>[number], 'beyondLimit' | 'limitReached'>): number | null {
	if (beyondLimit) return 0;
	if (limitReached === null || limitReached.kind === 'unknown') return null;
	// the line heads away from the limit: not reached within any planned life
	if (limitReached.kind === 'away') return FARTHER_THAN_ANY_LIFE_M;
	// no lower limit: it may be reached any time
	return limitReached.lowerM === null ? 0 : Math.max(0, limitReached.lowerM);
}
