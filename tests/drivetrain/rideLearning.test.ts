import { describe, expect, it } from 'vitest';
import { random } from '../../sample-rides/generator/random';
import { distanceTellsMore } from '$lib/drivetrain/distanceTellsMore';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { learnedCircumference } from '$lib/drivetrain/learnedCircumference';
import { looksLikeMotor } from '$lib/drivetrain/looksLikeMotor';
import { looksLikeTrainer } from '$lib/drivetrain/looksLikeTrainer';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { speedTellsPosition } from '$lib/drivetrain/speedTellsPosition';
import { analyseRide } from '$lib/slip/analyseRide';
import { CIRCUMFERENCE_M, steadyRecords, toRide, type Records } from '../slip/steadyRide';

const gridOf = (records: Records) => secondGrid(toRide(records), CIRCUMFERENCE_M);

describe('learnedCircumference', () => {
	const gear = (chainring: number | null, sprocket: number | null, developmentM: number) => ({
		label: '',
		ratio: 1,
		developmentM,
		chainring,
		sprocket,
		seconds: 600
	});

	it('gives 2.1 m for 6.3 m in 48/16, 4.2 m in 48/24 and 5.25 m in 40/16, with limits around it', () => {
		const learned = learnedCircumference([gear(48, 16, 6.3), gear(48, 24, 4.2), gear(40, 16, 5.25)], null)!;
		expect(learned.circumferenceM).toBeCloseTo(2.1, 6);
		expect(learned.lowerM).toBeLessThan(2.1);
		expect(learned.upperM).toBeGreaterThan(2.1);
		expect(learned.upperM - learned.lowerM).toBeLessThan(0.03);
	});

	it('says nothing from two gears, or where no teeth are known', () => {
		expect(learnedCircumference([gear(48, 16, 6.3), gear(48, 24, 4.2)], null)).toBeNull();
		expect(
			learnedCircumference([gear(null, null, 6.3), gear(null, null, 4.2), gear(null, null, 5)], null)
		).toBeNull();
	});

	it('keeps the stated teeth where they explain the ride, and then says by how much the tyre differs', () => {
		const gears = [48 / 16, 48 / 24, 40 / 16].map((ratio) => gear(null, null, 2.1 * 1.012 * ratio));
		const stated = { chainrings: [40, 48], cassette: [16, 24], circumferenceM: 2.1 };
		expect(learnedCircumference(gears, stated)!.circumferenceM).toBeCloseTo(2.1 * 1.012, 6);
	});
});

describe('looksLikeTrainer', () => {
	/** Power wanders between 120 and 280 W; speed is what a roller gives for it, or what hills make of it. */
	function ridden(hills: number): Records {
		const records = steadyRecords();
		const chance = random(5);
		for (let t = 0; t < 1200; t++) {
			records.watts[t] = 200 + 80 * Math.sin(t / 90);
			const slope = hills * Math.sin(t / 130);
			records.mps[t] = 9 * (records.watts[t] / 200) ** 0.4 * (1 - slope) + chance.normal(0, 0.05);
		}
		return records;
	}

	it('asks where speed follows power alone', () => {
		expect(looksLikeTrainer(gridOf(ridden(0)))).toBe(true);
	});

	it('does not ask where hills change the speed at one power, or where power never changes', () => {
		expect(looksLikeTrainer(gridOf(ridden(0.3)))).toBe(false);
		expect(looksLikeTrainer(gridOf(steadyRecords()))).toBe(false);
	});
});

describe('looksLikeMotor', () => {
	/** Ten starts from standing to 7 m/s within 8 s with the given power. */
	function starts(watts: number): Records {
		const records = steadyRecords();
		for (let n = 0; n < 10; n++) {
			for (let k = 0; k < 20; k++) {
				const t = 60 + n * 100 + k;
				records.mps[t] = k < 6 ? 0 : Math.min(7, (7 * (k - 5)) / 8);
				records.watts[t] = k < 6 ? 0 : watts;
				records.rpm[t] = k < 6 ? 0 : 60;
			}
		}
		return records;
	}

	it('asks where 60 kg gain 1470 J of speed with a third of the work, start after start', () => {
		expect(looksLikeMotor(gridOf(starts(50)), null)).toBe(true);
	});

	it('does not ask where the rider gives that power', () => {
		expect(looksLikeMotor(gridOf(starts(230)), null)).toBe(false);
	});

	it('asks where height is gained with less work than mass needs, and not where it is not', () => {
		const climbing = steadyRecords();
		// 0.3 m/s of height are 177 W for 60 kg alone
		const heightM = climbing.mps.map((_, t) => 0.3 * t);
		climbing.watts.fill(80);
		expect(looksLikeMotor(gridOf(climbing), heightM)).toBe(true);
		climbing.watts.fill(250);
		expect(looksLikeMotor(gridOf(climbing), heightM)).toBe(false);
	});
});

describe('speedTellsPosition', () => {
	/** North along a meridian: one degree is 111,195 m on a sphere of 6371 km. */
	const northOf = (distanceM: Float64Array, scale: number) =>
		distanceM.map((metres) => -48 + (scale * metres) / 111_194.93);

	const long = () => steadyRecords(1, 2400);

	it('is true where the distance is that of the track', () => {
		const grid = gridOf(long());
		const longitude = new Float64Array(2400).fill(-123);
		expect(speedTellsPosition(grid, northOf(grid.distanceM, 1), longitude)).toBe(true);
	});

	it('is false where a wheel counted with a circumference that is 0.4 % off', () => {
		const grid = gridOf(long());
		const longitude = new Float64Array(2400).fill(-123);
		expect(speedTellsPosition(grid, northOf(grid.distanceM, 1.004), longitude)).toBe(false);
		expect(speedTellsPosition(grid, new Float64Array(2400).fill(NaN), longitude)).toBe(false);
	});
});

describe('distanceTellsMore', () => {
	it('is true where the device holds its speed and counts distance by the wheel', () => {
		const records = steadyRecords();
		let sum = 0;
		const distanceM = records.mps.map((mps) => (sum += mps));
		const held = { ...records, mps: records.mps.map((mps, t) => mps * (1 + 0.02 * ((t % 3) - 1))) };
		expect(distanceTellsMore(driveSignals(gridOf(held)), distanceM).more).toBe(true);
		expect(distanceTellsMore(driveSignals(gridOf(records)), distanceM).more).toBe(false);
	});

	it('is false where distance comes in whole metres', () => {
		const records = steadyRecords();
		let sum = 0;
		const distanceM = records.mps.map((mps) => Math.floor((sum += mps)));
		expect(distanceTellsMore(driveSignals(gridOf(records)), distanceM).more).toBe(false);
	});
});

describe('analyseRide tells what it learned', () => {
	it('offers the circumference that fits when the stated one is 3 % off, in data and in words', () => {
		const bike = { chainrings: [46], cassette: [13, 15, 17, 19, 21], circumferenceM: CIRCUMFERENCE_M * 1.03 };
		const records = steadyRecords(2, 2400);
		const { learning, warnings } = analyseRide(toRide(records), bike);
		expect(learning.statedCircumferenceM).toBe(bike.circumferenceM);
		expect(learning.correction!.change.kind).toBe('circumference');
		expect(learning.circumference!.lowerM).toBeLessThan(CIRCUMFERENCE_M);
		expect(learning.circumference!.upperM).toBeGreaterThan(CIRCUMFERENCE_M);
		expect(warnings.map(({ code }) => code)).toContain('circumference');
	});

	it('offers nothing where the stated bike fits', () => {
		const bike = { chainrings: [46], cassette: [13, 15, 17, 19, 21], circumferenceM: CIRCUMFERENCE_M };
		const { learning, warnings } = analyseRide(toRide(steadyRecords(2, 2400)), bike);
		expect(learning.correction).toBeNull();
		expect(warnings).toEqual([]);
	});
});
