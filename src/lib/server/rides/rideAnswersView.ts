import { changesDuringRide } from '$lib/hardware/changesDuringRide';
import { findBike } from '../hardware/bikeRows';
import { listBuildRecords } from '../hardware/builds';
import { listPeriods } from '../hardware/periodRows';
import { findWheel } from '../hardware/wheels';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { Instant } from '../views';
import type { AnswerName } from './rideAnswers';
import { rideFacts, type RideFacts, type RidePart } from './rideFacts';
import { wheelsOnBikes } from './questions/wheelOnBike';
import type { Surface } from './surfaces';
import { whoSaid, type WhoSaid } from './whoSaid';

/** A part of a split ride. */
export interface RidePartView {
	from: Instant;
	until: Instant;
	/** null = nothing was fitted then: it counts nowhere */
	build: { id: number; name: string } | null;
	/** another change of build falls into it since the periods were corrected */
	asks: boolean;
	/** null = not measured by this version of the analysis yet */
	totalM: number | null;
	observedM: number | null;
	drivenM: number | null;
}

/** What people said of a ride, beside what its file says; null = not said. */
export interface RideAnswersView {
	wheel: { id: number; name: string; knownGood: boolean } | null;
	/** only when a person chose it */
	chosenBuildId: number | null;
	bike: { id: number; name: string } | null;
	/** the bike that the wheel was on at that time: it counts while no other is said */
	bikeUnder: string | null;
	riderId: number | null;
	surface: Surface | null;
	loadKg: number | null;
	trainer: boolean | null;
	fileTrainer: boolean | null;
	motor: boolean | null;
	fileMotor: boolean | null;
	wet: boolean | null;
	who: Partial<Record<AnswerName, WhoSaid>>;
	/** when a build came on or off during the ride */
	changes: Instant[];
	/** two or more when it is split */
	parts: RidePartView[];
}

/** Null when there is no such ride. */
export function rideAnswersView(ledger: Ledger, rideId: number): RideAnswersView | null {
	const ride = rideFacts(ledger, rideId);
	if (!ride) return null;
	const builds = new Map(listBuildRecords(ledger).map(({ id, name }) => [id, name]));
	const wheel = ride.wheelId === null ? null : findWheel(ledger, ride.wheelId);
	const bike = ride.bikeId === null ? null : findBike(ledger, ride.bikeId);
	return {
		wheel: wheel && { id: wheel.id, name: wheel.name, knownGood: wheel.knownGood === 1 },
		chosenBuildId: ride.chosenBuildId,
		bike: bike && { id: bike.id, name: bike.name },
		bikeUnder: wheelsOnBikes(ledger).bikeUnder(ride)?.name ?? null,
		riderId: ride.riderId,
		surface: ride.surface,
		loadKg: ride.loadKg,
		trainer: truth(ride.trainer),
		fileTrainer: truth(ride.fileTrainer),
		motor: truth(ride.motorSaid),
		fileMotor: truth(ride.motorAssisted),
		wet: truth(ride.wet),
		who: whoSaid(ledger, rideId),
		changes: changesOf(ledger, ride),
		parts: ride.parts.map((part) => partView(part, builds))
	};
}

function changesOf(ledger: Ledger, ride: RideFacts): Instant[] {
	return ride.build.kind === 'across a change'
		? changesDuringRide(ride, listPeriods(ledger)).map(toInstant)
		: [];
}

function partView(
	{ fromMs, untilMs, build, amount }: RidePart,
	builds: ReadonlyMap<number, string>
): RidePartView {
	return {
		from: toInstant(fromMs),
		until: toInstant(untilMs),
		build: build.kind === 'build' ? { id: build.buildId, name: builds.get(build.buildId) ?? '' } : null,
		asks: build.kind === 'across a change',
		totalM: amount?.totalM ?? null,
		observedM: amount?.observedM ?? null,
		drivenM: amount?.drivenM ?? null
	};
}

function truth(value: number | null): boolean | null {
	return value === null ? null : value === 1;
}
