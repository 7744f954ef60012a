import { REFERENCE_SLIP_CRANK_DEG } from '$lib/slip/analysis';
import { detectionChance } from '$lib/slip/detectionChance';
import { putSlip, type RecordsToChange } from '$lib/slip/putSlip';
import { seededChance } from '$lib/slip/seededChance';

/** Slips of several sizes put into the same steady riding, as a recording of one value a second shows them. */
export interface SlipSizes {
	readonly engagedRpm: number;
	readonly sizes: readonly {
		readonly crankDeg: number;
		/** cadence as recorded, rpm, one value a second */
		readonly cadenceRpm: readonly number[];
	}[];
	/** chance to be found, 0 to 1, where a ride states a detection limit */
	readonly chances: readonly { readonly limitDeg: number; readonly found: readonly number[] }[];
	/** chance of a slip that is as large as the limit, 0 to 1; the same at every limit */
	readonly atTheLimit: number;
}

const SIZES_DEG = [15, 45, 90, 180];
const LIMITS_DEG = [60, 90, 110];
const SECONDS = 13;
const SLIP_AT_S = 6;
const RPM = 84;
/** robust scatter of the proportion in steady pedalling, 0.7 to 1.6 % on the labelled real rides */
const SCATTER = 0.012;

/**
 * Steady riding at 84 rpm and 200 W with 1.2 % scatter, whole rpm; each slip lasts 0.4 s and loses four fifths of
 * the power. Made by the function that puts slips into riders' own rides.
 *
 * @example slipSizes().sizes[2].crankDeg // 90
 */
export function slipSizes(): SlipSizes {
	return {
		engagedRpm: RPM,
		sizes: SIZES_DEG.map((crankDeg) => ({ crankDeg, cadenceRpm: cadenceWith(crankDeg) })),
		chances: LIMITS_DEG.map((limitDeg) => ({
			limitDeg,
			found: SIZES_DEG.map((sizeDeg) => detectionChance(limitDeg, sizeDeg))
		})),
		atTheLimit: detectionChance(REFERENCE_SLIP_CRANK_DEG, REFERENCE_SLIP_CRANK_DEG)
	};
}

function cadenceWith(crankDeg: number): number[] {
	const chance = seededChance(11);
	const timeS = Float64Array.from({ length: SECONDS + 8 }, (_, t) => t);
	const scattered = () => RPM * (1 + SCATTER * (chance.next() + chance.next() + chance.next() - 1.5) * 2);
	const records: RecordsToChange = {
		cadence: { timeS, value: Float64Array.from(timeS, () => Math.round(scattered())) },
		power: { timeS, value: new Float64Array(timeS.length).fill(200) },
		speed: null
	};
	putSlip(
		records,
		{
			startS: SLIP_AT_S + 0.2,
			crankDeg,
			lastsS: 0.4,
			powerLost: 0.8,
			recovery: 1,
			recoversInS: 1,
			cadenceOverS: 1,
			powerOverS: 1,
			cadenceLagS: 0,
			powerLagS: 0
		},
		() => 0.5
	);
	return Array.from(records.cadence.value.subarray(0, SECONDS));
}
