import { listWheelRecords } from '../hardware/wheels';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { countsFor } from '../rates/programmeRows';
import { evidenceParts, type EvidencePart } from '../rides/evidenceParts';
import type { Instant } from '../views';

/** A ride, or the part of a split one, that a report rests on. No rider and no file name: both may name people. */
export interface ReportRide {
	readonly startedAt: Instant;
	/** null = it is not known which */
	readonly build: string | null;
	readonly wheel: string | null;
	readonly totalM: number;
	readonly observedM: number;
	/** null = nobody said */
	readonly wet: boolean | null;
	/** of the file as it was uploaded */
	readonly sha256: string;
	/** only a part of the file: the build changed during the ride */
	readonly isPart: boolean;
}

/** A ride of these builds, or of their wheels without a build, that counts nowhere, and why. */
export interface LeftOutRide extends ReportRide {
	readonly why: string;
}

export interface ReportRides {
	/** by build, then by start */
	readonly counted: readonly ReportRide[];
	readonly leftOut: readonly LeftOutRide[];
	/** different riders named on the counted rides, and counted rides without one; by build and together */
	readonly riders: readonly { readonly build: string; readonly named: number; readonly without: number }[];
	readonly ridersTogether: number;
}

/**
 * The rides behind a report: those that count, and those of the same builds that do not.
 *
 * @param builds in the order of the report, each once
 */
export function reportRides(
	ledger: Ledger,
	builds: readonly { readonly id: number; readonly name: string }[]
): ReportRides {
	const all = evidenceParts(ledger);
	const counted = builds.map((build) => ({ build, rides: all.filter((ride) => countsFor(ride, build.id)) }));
	const names = new Map(listWheelRecords(ledger).map(({ id, name }) => [id, name]));
	const wheels = new Set(counted.flatMap(({ rides }) => rides.map(({ wheelId }) => wheelId)));
	const buildOf = (ride: EvidencePart) => builds.find(({ id }) => id === ride.buildId);
	const ofThese = (ride: EvidencePart) =>
		buildOf(ride) !== undefined || (ride.buildId === null && wheels.has(ride.wheelId));
	const toRow = (ride: EvidencePart): ReportRide => ({
		startedAt: toInstant(ride.startMs),
		build: buildOf(ride)?.name ?? null,
		wheel: ride.wheelId === null ? null : (names.get(ride.wheelId) ?? null),
		totalM: ride.totalM,
		observedM: ride.observedM,
		wet: ride.wet === null ? null : ride.wet === 1,
		sha256: ride.sha256,
		isPart: ride.part !== null
	});
	return {
		counted: counted.flatMap(({ rides }) => rides.map(toRow)),
		leftOut: all
			.filter((ride) => ofThese(ride) && !(ride.buildId !== null && countsFor(ride, ride.buildId)))
			.map((ride) => ({ ...toRow(ride), why: whyNot(ride) })),
		riders: counted.map(({ build, rides }) => ({
			build: build.name,
			named: ridersOf(rides),
			without: rides.filter(({ riderId }) => riderId === null).length
		})),
		ridersTogether: ridersOf(counted.flatMap(({ rides }) => rides))
	};
}

function ridersOf(rides: readonly EvidencePart[]): number {
	return new Set(rides.map(({ riderId }) => riderId).filter((id) => id !== null)).size;
}

/** The ledger's own sentences may hold a file name, and a file name may hold a rider's. */
function whyNot({ standing, twinId, twinDecision }: EvidencePart): string {
	if (standing.state === 'needs an answer') return 'waits for an answer';
	if (standing.state === 'withdrawn') return `withdrawn: ${standing.reason}`;
	if (twinId !== null && twinDecision === 'same recording') return 'the same recording as another ride';
	return standing.reason ?? 'belongs to no build';
}
