import type { Actor } from '../actor';
import { checkNumber } from '../ledger/checkNumber';
import { checkText } from '../ledger/checkText';
import { factChanges } from '../ledger/factChanges';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { refuseStale } from '../ledger/refuseStale';
import { LedgerRefusal } from '../refusal';
import { findBike, POWER_PLACES, SPEED_SENSORS, type PowerPlace, type SpeedSensorPlace } from './bikeRows';
import { checkTeeth } from './checkTeeth';
import { refuseTakenName } from './refuseTakenName';

/** What is not given is not said. */
export interface BikeInput {
	name: string;
	chainrings?: readonly number[] | null;
	cassette?: readonly number[] | null;
	/** rolled circumference of the driven tyre where its wheel states none, metres, 0.5 to 4 */
	circumferenceM?: number | null;
	speedSensor?: SpeedSensorPlace | null;
	powerFrom?: PowerPlace | null;
	motor?: boolean | null;
}

/**
 * @returns id of the new bike
 * @throws LedgerRefusal wrong-value; conflict when another bike has this name
 */
export function createBike(
	ledger: Ledger,
	actor: Actor,
	input: BikeInput,
	options: { example?: boolean } = {}
): number {
	const facts = bikeRow(input);
	return ledger.database
		.transaction((): number => {
			refuseTakenName(ledger, 'bike', facts.name);
			const { lastInsertRowid } = ledger.database
				.prepare(
					`INSERT INTO bike (name, chainrings, cassette, circumference_m, speed_sensor, power_from, motor,
						example, created_ms)
					VALUES (@name, @chainrings, @cassette, @circumferenceM, @speedSensor, @powerFrom, @motor,
						@example, @now)`
				)
				.run({ ...facts, example: options.example ? 1 : 0, now: ledger.now() });
			const bikeId = Number(lastInsertRowid);
			leaveTrail(ledger, actor, 'created', 'bike', bikeId, facts);
			return bikeId;
		})
		.immediate();
}

/**
 * Corrects what is stated of a bike. The whole form counts: what it leaves empty is not said.
 *
 * @param seenVersion row version that the form was filled from
 * @param why stands in the trail beside the values, e.g. that the gears were learned from rides
 * @throws LedgerRefusal not-found; wrong-value; conflict when somebody else changed it meanwhile
 */
export function updateBike(
	ledger: Ledger,
	actor: Actor,
	bikeId: number,
	input: BikeInput,
	seenVersion: number,
	why?: string
): void {
	const facts = bikeRow(input);
	ledger.database
		.transaction(() => {
			const before = findBike(ledger, bikeId);
			refuseStale(ledger, 'bike', bikeId, before.rowVersion, seenVersion);
			if (facts.name.toLowerCase() !== before.name.toLowerCase()) refuseTakenName(ledger, 'bike', facts.name);
			const changed = factChanges(bikeRow(before), facts);
			if (changed === null) return;
			ledger.database
				.prepare(
					`UPDATE bike SET name = @name, chainrings = @chainrings, cassette = @cassette,
						circumference_m = @circumferenceM, speed_sensor = @speedSensor, power_from = @powerFrom,
						motor = @motor, row_version = row_version + 1 WHERE id = @bikeId`
				)
				.run({ ...facts, bikeId });
			leaveTrail(ledger, actor, 'corrected', 'bike', bikeId, why ? { ...changed, why } : changed);
		})
		.immediate();
}

/** A bike as it is stored, checked. */
function bikeRow(input: BikeInput) {
	const chainrings = checkTeeth('chainrings', input.chainrings);
	const cassette = checkTeeth('cassette', input.cassette);
	const motor = input.motor ?? null;
	return {
		name: checkText("The bike's name", input.name, { min: 1, max: 120 }),
		chainrings: chainrings && JSON.stringify(chainrings),
		cassette: cassette && JSON.stringify(cassette),
		circumferenceM: checkNumber('The rolled circumference', input.circumferenceM, {
			min: 0.5,
			max: 4,
			unit: 'metres'
		}),
		speedSensor: oneOf('Where the speed is measured', SPEED_SENSORS, input.speedSensor),
		powerFrom: oneOf('Where the power is measured', POWER_PLACES, input.powerFrom),
		motor: motor === null ? null : Number(motor)
	};
}

function oneOf<Word extends string>(what: string, words: readonly Word[], word?: Word | null): Word | null {
	if (word === null || word === undefined) return null;
	if (!words.includes(word))
		throw new LedgerRefusal('wrong-value', `${what} is one of: ${words.join(', ')}.`);
	return word;
}
