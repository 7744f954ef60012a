import type { EvidenceRide } from '../evidence/buildEvidence';
import { countedSlips } from '../evidence/countedSlips';

/** Slips by the observed metres at which they came, all wheels together in order of time. */
export interface SlipPath {
	readonly observedM: number;
	/** unreviewed events among them; slips less than 10 s apart count once, since plans take events for single */
	readonly slipsAtM: readonly number[];
	/** those that are there by confirmed slips alone */
	readonly confirmedAtM: readonly number[];
}

/** Lays the rides of a test end to end by their start, observed distance only. */
export function slipPath(rides: readonly EvidenceRide[]): SlipPath {
	const inOrder = [...rides].sort((a, b) => a.startMs - b.startMs || a.rideId - b.rideId);
	const slipsAtM: number[] = [];
	const confirmedAtM: number[] = [];
	let reachedM = 0;
	for (const ride of inOrder) {
		const along = (unreviewed: 'slip' | 'none') =>
			countedSlips(ride.events, 'episodes', unreviewed).map(
				({ atM }) => reachedM + Math.min(ride.observedM, observedBefore(ride, atM))
			);
		slipsAtM.push(...along('slip'));
		confirmedAtM.push(...along('none'));
		reachedM += ride.observedM;
	}
	return { observedM: reachedM, slipsAtM, confirmedAtM };
}

function observedBefore({ observed }: EvidenceRide, atM: number): number {
	return observed.reduce((sum, { fromM, toM }) => sum + Math.max(0, Math.min(toM, atM) - fromM), 0);
}
