import { compareGears, type ComparedGear } from '$lib/drivetrain/compareGears';
import { gatherGears, type LearnedGear } from '$lib/drivetrain/gatherGears';
import { gearCorrection, type GearCorrection } from '$lib/drivetrain/gearCorrection';
import { tyreCircumferenceM } from '$lib/hardware/tyreCircumference';
import type { Ledger } from '../ledger/openLedger';
import { currentVersion } from '../queue/analysisVersions';
import type { RideFacts } from '../rides/rideFacts';
import type { BikeRecord } from './bikeRows';
import type { WheelRecord } from './wheels';

/** The gears of one bike with one wheel in it: as stated, and as the rides showed them. */
export interface BikeGearsView {
	wheel: { id: number; name: string } | null;
	rides: number;
	/** seconds of riding that the learned gears are made of */
	seconds: number;
	/** null while chainrings or cassette are not stated: nothing to compare with */
	stated: {
		chainrings: readonly number[];
		cassette: readonly number[];
		cassetteOf: 'wheel' | 'bike';
		circumferenceM: number;
		circumferenceOf: 'wheel' | 'bike' | 'tyre size' | 'assumed';
	} | null;
	learned: readonly LearnedGear[];
	/** the same beside the stated ones; empty while nothing is stated */
	compared: readonly ComparedGear[];
	/** share of the riding time that the stated gears explain; null while nothing is stated */
	explained: number | null;
	correction: GearCorrection | null;
}

/** A tyre of 40-622 under load; only to have something to compare with. */
const ASSUMED_CIRCUMFERENCE_M = 2.15;

/**
 * @param rides of this bike with this wheel
 * @param wheel null = the rides do not say which; its cassette and tyre win over the bike's
 */
export function bikeGears(
	ledger: Ledger,
	bike: BikeRecord,
	wheel: WheelRecord | null,
	rides: readonly RideFacts[]
): BikeGearsView {
	const learned = gatherGears(learnedGears(ledger, rides));
	const stated = statedGears(bike, wheel);
	const compared = stated && learned.length > 0 ? compareGears(stated, learned) : null;
	return {
		wheel: wheel && { id: wheel.id, name: wheel.name },
		rides: rides.length,
		seconds: learned.reduce((sum, { seconds }) => sum + seconds, 0),
		stated,
		learned,
		compared: compared?.gears ?? [],
		explained: compared?.explained ?? null,
		correction: stated && gearCorrection(stated, learned)
	};
}

function statedGears(bike: BikeRecord, wheel: WheelRecord | null): BikeGearsView['stated'] {
	const cassette = wheel?.cassette ?? bike.cassette;
	if (!bike.chainrings || !cassette) return null;
	const fromSize = wheel?.tyreEtrto ? tyreCircumferenceM(wheel.tyreEtrto) : NaN;
	const circumference = wheel?.circumferenceM
		? ({ circumferenceM: wheel.circumferenceM, circumferenceOf: 'wheel' } as const)
		: bike.circumferenceM
			? ({ circumferenceM: bike.circumferenceM, circumferenceOf: 'bike' } as const)
			: fromSize > 0
				? ({ circumferenceM: fromSize, circumferenceOf: 'tyre size' } as const)
				: ({ circumferenceM: ASSUMED_CIRCUMFERENCE_M, circumferenceOf: 'assumed' } as const);
	return {
		chainrings: bike.chainrings,
		cassette,
		cassetteOf: wheel?.cassette ? 'wheel' : 'bike',
		...circumference
	};
}

function learnedGears(ledger: Ledger, rides: readonly RideFacts[]): LearnedGear[] {
	const rows = ledger.database
		.prepare<[object], { gears: string | null }>(
			`SELECT json_extract(detail, '$.gears') AS gears FROM result_detail
			WHERE version = @version AND ride_id IN (SELECT value FROM json_each(@rideIds))`
		)
		.all({ version: currentVersion(ledger), rideIds: JSON.stringify(rides.map(({ id }) => id)) });
	return rows.flatMap(({ gears }) =>
		gears === null
			? []
			: (JSON.parse(gears) as LearnedGear[]).map(({ developmentM, seconds }) => ({ developmentM, seconds }))
	);
}
