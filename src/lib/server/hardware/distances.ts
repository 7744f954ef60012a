import { buildAtInstant } from '$lib/hardware/buildAtInstant';
import type { FittedPeriod } from '$lib/hardware/buildOfRide';
import { distanceReached } from '$lib/hardware/distanceReached';
import { wheelAxis, type AxisPiece, type DistancePiece } from '$lib/hardware/wheelAxis';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { agesHardware } from '../rides/agesBuild';
import { evidenceParts, type EvidencePart } from '../rides/evidenceParts';
import { listPeriods } from './periodRows';
import { listUnloggedDistance, type UnloggedRecord } from './unloggedDistance';

/** What a wheel was ridden, with the ride behind it; `part` is null for unlogged distance. */
export interface WheelPiece extends DistancePiece {
	readonly part: EvidencePart | null;
}

/**
 * Everything that a wheel was ridden, recorded or not, laid on its distance axis: the one list that all
 * distances of hardware are made from. Rides that count in no rate are there too, since the hub turned.
 */
export function axisOfWheel(ledger: Ledger, wheelId: number): AxisPiece<WheelPiece>[] {
	return remember(ledger, `axis of wheel ${wheelId}`, () => {
		const rides = partsByWheel(ledger).get(wheelId) ?? [];
		const unlogged = listUnloggedDistance(ledger, wheelId);
		const periods = listPeriods(ledger);
		return wheelAxis([...rides.map(ridePiece), ...unlogged.map((one) => unloggedPiece(one, periods))]);
	});
}

/** Rides and parts of rides that aged the hardware of each wheel. */
function partsByWheel(ledger: Ledger): ReadonlyMap<number, readonly EvidencePart[]> {
	return remember(ledger, 'parts by wheel', () => {
		const byWheel = new Map<number, EvidencePart[]>();
		for (const part of evidenceParts(ledger)) {
			if (part.wheelId === null || !agesHardware(part)) continue;
			const ofWheel = byWheel.get(part.wheelId);
			if (ofWheel) ofWheel.push(part);
			else byWheel.set(part.wheelId, [part]);
		}
		return byWheel;
	});
}

/** The axis of every wheel that was ridden, by the wheel's id. */
export function axesOfWheels(ledger: Ledger): ReadonlyMap<number, AxisPiece<WheelPiece>[]> {
	return remember(ledger, 'wheel axes', () => {
		const wheelIds = new Set(partsByWheel(ledger).keys());
		for (const { wheelId } of listUnloggedDistance(ledger)) wheelIds.add(wheelId);
		return new Map([...wheelIds].map((wheelId) => [wheelId, axisOfWheel(ledger, wheelId)]));
	});
}

function ridePiece(part: EvidencePart): WheelPiece {
	const { id, startMs, endMs, totalM, buildId } = part;
	return { kind: 'ride', id, startMs, endMs, distanceM: totalM, buildId, part };
}

function unloggedPiece(unlogged: UnloggedRecord, periods: readonly FittedPeriod[]): WheelPiece {
	const { id, wheelId, atMs, distanceM } = unlogged;
	const buildId = buildAtInstant(wheelId, atMs, periods);
	return { kind: 'unlogged', id, startMs: atMs, endMs: atMs, distanceM, buildId, part: null };
}

/** Metres by where they come from. */
export interface DistanceSum {
	recordedM: number;
	unloggedM: number;
	totalM: number;
}

/** Sums pieces in the order in which they come. */
export function sumOf(pieces: readonly DistancePiece[]): DistanceSum {
	const recordedM = distanceReached(
		pieces.filter(({ kind }) => kind === 'ride'),
		Infinity
	);
	const totalM = distanceReached(pieces, Infinity);
	return { recordedM, unloggedM: totalM - recordedM, totalM };
}

/** What each build was ridden on each wheel, since it was first fitted there. */
export function buildDistances(ledger: Ledger): (DistanceSum & { buildId: number; wheelId: number })[] {
	return [...axesOfWheels(ledger)].flatMap(([wheelId, axis]) => {
		const ids = [...new Set(axis.flatMap(({ buildId }) => buildId ?? []))];
		return ids.map((buildId) => ({
			buildId,
			wheelId,
			...sumOf(axis.filter((piece) => piece.buildId === buildId))
		}));
	});
}
