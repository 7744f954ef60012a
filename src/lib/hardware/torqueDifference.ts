import { sameText, type JointEntry } from './bill';

export interface TorqueDifference {
	readonly joint: string;
	readonly change: 'added' | 'removed' | 'changed' | 'same';
	readonly before: JointEntry | null;
	readonly after: JointEntry | null;
}

/**
 * How the assembly torques of a build differ from its predecessor's, joint by joint. A torque that was not
 * written down on either side is no change: nothing is known of it.
 *
 * @param before joints of the predecessor
 * @param after joints of the build, in order of assembly
 * @returns the joints of `after` in their order, then those that are gone
 * @example torqueDifference([{ joint: 'lockring', wantedNm: 40, recordedNm: 41 }],
 *   [{ joint: 'Lockring', wantedNm: 45, recordedNm: null }]) // [{ change: 'changed', ... }]
 * Source: common practice, no source.
 */
export function torqueDifference(
	before: readonly JointEntry[],
	after: readonly JointEntry[]
): TorqueDifference[] {
	const kept = after.map((is): TorqueDifference => {
		const was = before.find(({ joint }) => sameText(joint, is.joint)) ?? null;
		if (!was) return { joint: is.joint, change: 'added', before: null, after: is };
		const changed =
			was.wantedNm !== is.wantedNm ||
			(was.recordedNm !== null && is.recordedNm !== null && was.recordedNm !== is.recordedNm);
		return { joint: is.joint, change: changed ? 'changed' : 'same', before: was, after: is };
	});
	const gone = before.filter((was) => !after.some((is) => sameText(is.joint, was.joint)));
	return [
		...kept,
		...gone.map((was): TorqueDifference => ({
			joint: was.joint,
			change: 'removed',
			before: was,
			after: null
		}))
	];
}
