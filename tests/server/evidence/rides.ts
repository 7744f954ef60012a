import type { EvidenceRide } from '$lib/server/evidence/buildEvidence';
import type { EvidenceCell, EvidenceEvent } from '$lib/server/evidence/evidenceRides';
import type { ExposureCell } from '$lib/slip/exposure';

let nextId = 1;

/** A slip of 120 crank degrees at 22 Nm (bin 5), not reviewed. */
export function slip(change: Partial<EvidenceEvent>): EvidenceEvent {
	const startS = change.startS ?? 100;
	return {
		eventId: nextId++,
		startS,
		endS: startS + 1,
		atM: 10_000,
		overrunCrankDeg: 120,
		torqueBin: 5,
		gear: '40/21',
		standing: 'unreviewed',
		...change
	};
}

export function cell(torqueBin: number, observedM: number): EvidenceCell {
	return {
		torqueBin,
		gear: '40/21',
		ratio: 40 / 21,
		drivenM: observedM,
		observedM,
		observedTurns: 0,
		observedPickUps: 0
	};
}

/** 50 km, the first 40 of them observed at 22 Nm, within two hours. */
export function ride(change: Partial<EvidenceRide>): EvidenceRide {
	return {
		rideId: nextId++,
		wheelId: 1,
		riderId: 1,
		riderCode: 'R1',
		wet: false,
		startMs: 0,
		ageFromM: 0,
		life: 0,
		fromS: 0,
		toS: Infinity,
		totalM: 50_000,
		observedM: 40_000,
		cells: [cell(5, 40_000)],
		hours: [
			{ hour: 0, observedM: 25_000 },
			{ hour: 1, observedM: 15_000 }
		],
		observed: [{ fromM: 0, toM: 40_000 }],
		events: [],
		failedPickUps: [],
		temperatureC: null,
		...change
	};
}

/** Observed distance at one torque, as the analysis hands it to the ledger. */
export function exposed(torqueFromNm: number, observedM: number): ExposureCell {
	return {
		torqueFromNm,
		torqueToNm: torqueFromNm + 10,
		gear: null,
		ratio: null,
		drivenM: observedM,
		drivenS: 0,
		observedM,
		observedS: 0,
		drivenTurns: 0,
		observedTurns: 0,
		pickUps: 0,
		observedPickUps: 0
	};
}
