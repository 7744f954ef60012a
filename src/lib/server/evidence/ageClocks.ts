import { distanceReached } from '$lib/hardware/distanceReached';
import { axesOfWheels, axisOfWheel, type WheelPiece } from '../hardware/distances';
import { listServices } from '../hardware/services';
import type { Ledger } from '../ledger/openLedger';

/** From when the age of hardware is counted. Parts are those that take up the drive. */
export const AGE_CLOCKS = ['build', 'service', 'ratchet ring', 'toothed ring', 'pawl set', 'spring'] as const;
export type AgeClock = (typeof AGE_CLOCKS)[number];

/** How far a clock is from the age of the build on a wheel, at an instant. */
export interface ClockReading {
	/** metres to be added to the age of the build */
	readonly shiftM: number;
	/** stretches of a wheel that begin anew have numbers of their own: 0, 1, 2 ... */
	readonly life: number;
}

/** Reads a clock for rides of one build on one wheel. */
export type ReadClock = (startMs: number) => ClockReading;

const AT_FITTING: ReadClock = () => ({ shiftM: 0, life: 0 });

/**
 * The clock that ages of a build on a wheel are read from. A service starts a life of its own; a part with a
 * serial brings along what it was ridden before, in other builds and on other wheels. Where a build has no such
 * part with a serial, or was never serviced, its age counts from its fitting.
 */
export function ageClock(ledger: Ledger, clock: AgeClock, buildId: number, wheelId: number): ReadClock {
	if (clock === 'build') return AT_FITTING;
	const onBuild = piecesOf(ledger, wheelId).filter((piece) => piece.buildId === buildId);
	return clock === 'service'
		? sinceService(ledger, wheelId, onBuild)
		: ofPart(ledger, clock, buildId, onBuild);
}

function sinceService(ledger: Ledger, wheelId: number, onBuild: readonly WheelPiece[]): ReadClock {
	const services = listServices(ledger, wheelId).map(({ atMs }) => ({
		atMs,
		reachedM: distanceReached(onBuild, atMs)
	}));
	return (startMs) => {
		const last = services.findLastIndex(({ atMs }) => atMs <= startMs);
		return last < 0 ? { shiftM: 0, life: 0 } : { shiftM: -services[last].reachedM, life: last + 1 };
	};
}

function ofPart(ledger: Ledger, kind: string, buildId: number, onBuild: readonly WheelPiece[]): ReadClock {
	const elsewhere = piecesWithPart(ledger, kind, buildId);
	if (elsewhere === null) return AT_FITTING;
	const known = new Map<number, number>();
	return (startMs) => {
		const shiftM =
			known.get(startMs) ?? distanceReached(elsewhere, startMs) - distanceReached(onBuild, startMs);
		known.set(startMs, shiftM);
		return { shiftM, life: 0 };
	};
}

/** Everything that the piece of this kind was ridden in, whatever build and wheel; null = it bears no serial. */
function piecesWithPart(ledger: Ledger, kind: string, buildId: number): WheelPiece[] | null {
	const builds = ledger.database
		.prepare<[string, number], { buildId: number }>(
			`SELECT DISTINCT other.build_id AS buildId FROM build_part mine JOIN part p ON p.id = mine.part_id
			JOIN build_part other ON other.part_id = mine.part_id AND lower(other.serial) = lower(mine.serial)
			WHERE p.kind = ? AND mine.build_id = ? AND mine.serial <> ''`
		)
		.all(kind, buildId)
		.map((row) => row.buildId);
	if (builds.length === 0) return null;
	return [...axesOfWheels(ledger).values()].flatMap((axis) =>
		axis.filter((piece) => piece.buildId !== null && builds.includes(piece.buildId))
	);
}

function piecesOf(ledger: Ledger, wheelId: number): readonly WheelPiece[] {
	return axisOfWheel(ledger, wheelId);
}

/** Builds of these that have a part of this kind with a serial: only theirs is followed from build to build. */
export function hasClock(ledger: Ledger, clock: AgeClock, buildId: number): boolean {
	if (clock === 'build') return true;
	if (clock === 'service') return servicedBuild(ledger, buildId);
	return piecesWithPart(ledger, clock, buildId) !== null;
}

function servicedBuild(ledger: Ledger, buildId: number): boolean {
	return [...axesOfWheels(ledger)].some(([wheelId, axis]) => {
		const onBuild = axis.filter((piece) => piece.buildId === buildId);
		return (
			onBuild.length > 0 && listServices(ledger, wheelId).some(({ atMs }) => atMs < onBuild.at(-1)!.endMs)
		);
	});
}
