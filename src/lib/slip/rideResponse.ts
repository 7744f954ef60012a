import type { DriveSignals } from '$lib/drivetrain/driveSignals';

/**
 * How slowly power and cadence of this recording follow what happens: the correlation of one second's change with
 * the next. Independent scatter gives -0.5; a mean over three seconds gives 0.67 for what the rider does, because
 * each value shares two thirds with the one before.
 *
 * @returns -1 to 1 each; NaN where too little was pressed
 */
export function rideResponse(signals: DriveSignals): { power: number; cadence: number } {
	return {
		power: changeCorrelation(signals.grid.powerW, signals.pressing),
		cadence: changeCorrelation(signals.grid.cadenceRpm, signals.pressing)
	};
}

function changeCorrelation(values: Float64Array, pressing: Uint8Array): number {
	let products = 0;
	let squares = 0;
	let count = 0;
	for (let t = 2; t < values.length; t++) {
		if (!pressing[t] || !pressing[t - 1] || !pressing[t - 2]) continue;
		const change = values[t] - values[t - 1];
		const earlier = values[t - 1] - values[t - 2];
		const product = change * earlier;
		if (Number.isNaN(product)) continue;
		products += product;
		squares += 0.5 * (change * change + earlier * earlier);
		count++;
	}
	return count > 200 ? products / squares : NaN;
}
