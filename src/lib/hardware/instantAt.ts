import type { AxisPiece } from './wheelAxis';

/**
 * When a wheel had been ridden so far: the way back from its distance axis to the time.
 *
 * @param axis from `wheelAxis`
 * @param atM metres on the axis; before its start and past its end the nearest end is taken
 * @returns milliseconds since 1970 UTC, within a ride by the share of its distance; null when the wheel was
 *   never ridden
 * @example instantAt(wheelAxis([{ kind: 'ride', id: 1, startMs: 0, endMs: 10, distanceM: 40, buildId: 7 }]), 20) // 5
 */
export function instantAt(axis: readonly AxisPiece[], atM: number): number | null {
	if (axis.length === 0 || Number.isNaN(atM)) return null;
	const piece = axis.find(({ toM }) => atM <= toM) ?? axis[axis.length - 1];
	const length = piece.toM - piece.fromM;
	const share = length > 0 ? Math.min(1, Math.max(0, (atM - piece.fromM) / length)) : 0;
	return piece.startMs + share * (piece.endMs - piece.startMs);
}
