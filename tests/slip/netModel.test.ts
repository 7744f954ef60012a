import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { placeCandidate } from '$lib/slip/candidateFeatures';
import { netLayout } from '$lib/slip/model/convNet';
import { joinedLogOdds, leastOfTrees, MOST_OF_NETS } from '$lib/slip/model/joinedLogOdds';
import { netReader, packNets, SLIP_NET, unpackNets } from '$lib/slip/model/netModel';
import { reportSizeDeg } from '$lib/slip/reportSizeDeg';
import { rideContext } from '$lib/slip/rideContext';
import { FACT, READ_S, slipWindow, WINDOW_BEFORE_S } from '$lib/slip/slipWindow';
import { CHANNELS, WINDOW_CHANNELS, WINDOW_EXTRAS, windowInputs } from '$lib/slip/windowInputs';
import { random } from '../../sample-rides/generator/random';
import { generatedRide } from '../bench/training/trainingRides';

/** Some windows of a generated ride. */
function windows() {
	const { ride, bike } = generatedRide(70_001, false)!;
	const context = rideContext(driveSignals(secondGrid(ride, 2.1)), bike);
	const placed = context.candidates.slice(0, 30).map((candidate) => placeCandidate(context, candidate));
	return {
		context,
		placed,
		windows: placed.map((one) => slipWindow(context, one, reportSizeDeg(context, one)))
	};
}

describe('slipWindow', () => {
	it('holds the seconds around the peak as they were recorded', () => {
		const { context, placed, windows: taken } = windows();
		const { grid } = context.signals;
		expect(taken.length).toBeGreaterThan(20);
		taken.forEach((window, i) => {
			const { peak, high } = placed[i];
			expect(window.facts[FACT['engaged ratio']]).toBeCloseTo(high, 5);
			const first = peak - WINDOW_BEFORE_S - 1;
			const recorded = Array.from({ length: READ_S }, (_, k) =>
				Math.fround(grid.cadenceRpm[first + k] ?? NaN)
			);
			expect([...window.cadenceRpm]).toEqual(recorded);
		});
	});
});

describe('windowInputs', () => {
	it('are numbers of moderate size, whatever is missing', () => {
		const inputs = new Float64Array(CHANNELS * READ_S);
		const extras = new Float64Array(WINDOW_EXTRAS);
		for (const window of windows().windows) {
			for (const kind of ['as recorded', 'without power', 'without anything']) {
				if (kind !== 'as recorded') window.powerW.fill(NaN);
				if (kind === 'without anything') {
					for (const row of [window.cadenceRpm, window.speedMps, window.nearest]) row.fill(NaN);
				}
				windowInputs(window, inputs, READ_S, 0, extras);
				const largest = [...inputs, ...extras].reduce((most, value) => Math.max(most, Math.abs(value)), 0);
				expect(largest).toBeLessThan(40);
				expect(largest).toBeGreaterThan(0.5);
			}
		}
	});

	it('tell the excess of the peak over the engaged ratio', () => {
		const { context, placed, windows: taken } = windows();
		const inputs = new Float64Array(CHANNELS * READ_S);
		const row = WINDOW_CHANNELS.indexOf('ratio against engaged') * READ_S;
		let told = 0;
		taken.forEach((window, i) => {
			windowInputs(window, inputs, READ_S, 0, new Float64Array(WINDOW_EXTRAS));
			const excess = context.signals.logRatio[placed[i].peak] - placed[i].high;
			if (!(Math.abs(excess) < 1.2)) return;
			expect(inputs[row + WINDOW_BEFORE_S]).toBeCloseTo(6 * excess, 3);
			told++;
		});
		expect(told).toBeGreaterThan(10);
	});
});

describe('packNets', () => {
	it('keeps parameters to 16 bits of the largest', () => {
		const chance = random(3);
		const parameters = Float32Array.from({ length: netLayout(SLIP_NET).length }, () => chance.normal(0, 0.5));
		const [back] = unpackNets(JSON.parse(JSON.stringify(packNets([parameters]))));
		const largest = Math.max(...parameters.map(Math.abs));
		expect(back.length).toBe(parameters.length);
		const off = parameters.reduce((most, value, i) => Math.max(most, Math.abs(back[i] - value)), 0);
		expect(off).toBeLessThan(largest / 60_000);
		expect(off).toBeGreaterThan(0);
	});
});

describe('netReader', () => {
	it('gives the mean of its nets', () => {
		const chance = random(4);
		const nets = [0, 1].map(() =>
			Float32Array.from({ length: netLayout(SLIP_NET).length }, () => chance.normal(0, 0.1))
		);
		const [window] = windows().windows;
		const [one, other] = nets.map((net) => netReader([net])(window));
		expect(one).not.toBeCloseTo(other, 3);
		expect(netReader(nets)(window)).toBeCloseTo((one + other) / 2, 6);
	});
});

describe('joinedLogOdds', () => {
	it('reaches a limit only with as much of the trees as leastOfTrees says', () => {
		expect(joinedLogOdds(leastOfTrees(2))).toBeCloseTo(2, 12);
		expect(joinedLogOdds(leastOfTrees(2) - 0.01, 1000)).toBeLessThan(2);
		expect(joinedLogOdds(3, 2)).toBeCloseTo(2.8, 12);
		expect(joinedLogOdds(3, MOST_OF_NETS + 5)).toBe(joinedLogOdds(3));
	});
});
