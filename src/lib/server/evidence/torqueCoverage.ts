import type { BuildTold } from './buildAgainstBuild';

/** How much the new build was ridden at the hub torque at which the old one slipped. */
export interface TorqueCoverage {
	/** lower edge of the lowest torque bin with a counted slip of the old build, Nm; null = no such slip */
	readonly fromNm: number | null;
	/** lower edge of the highest of them */
	readonly highestNm: number | null;
	/** observed metres of the new build at or above the lowest, and in or above the highest of these bins */
	readonly aboveM: number;
	readonly aboveHighestM: number;
	/** counted slips of the old build whose torque is not known */
	readonly slipsWithoutTorque: number;
}

/**
 * A new build that was ridden gently says little about the torque at which the old one let go. Torque not
 * known is in no distance here.
 *
 * @param before and after as they were told, both in the fixed bins of torque
 * @example torqueCoverage(slippedFrom20Nm, ridden).aboveM // observed metres of the new build from 20 Nm on
 */
export function torqueCoverage(
	before: Pick<BuildTold, 'overTorque'>,
	after: Pick<BuildTold, 'overTorque'>
): TorqueCoverage {
	const slipped = before.overTorque.filter(({ from, rate }) => from !== null && rate.count > 0);
	const fromNm = slipped[0]?.from ?? null;
	const highestNm = slipped.at(-1)?.from ?? null;
	const above = (edge: number | null) =>
		edge === null
			? 0
			: after.overTorque
					.filter(({ from }) => from !== null && from >= edge)
					.reduce((sum, { rate }) => sum + rate.observedM, 0);
	return {
		fromNm,
		highestNm,
		aboveM: above(fromNm),
		aboveHighestM: above(highestNm),
		slipsWithoutTorque: before.overTorque
			.filter(({ from }) => from === null)
			.reduce((sum, { rate }) => sum + rate.count, 0)
	};
}
