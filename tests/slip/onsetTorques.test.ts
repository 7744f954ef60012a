import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import { decodeRide } from '$lib/ride/decodeRide';
import { onsetTorque, onsetTorques } from '$lib/slip/onsetTorques';
import { rideContext } from '$lib/slip/rideContext';

const project = new URL('../../', import.meta.url).pathname;

describe('onsetTorque', () => {
	it('gives the same bits as the mean of onsetTorques at every second of two rides of the example workshop', async () => {
		for (const file of ['2026-05-02-w1-r1.fit', '2026-06-02-w3-r2.fit']) {
			const ride = await decodeRide(new Uint8Array(readFileSync(`${project}sample-rides/${file}`)), file);
			const context = rideContext(driveSignals(secondGrid(ride, 2.19)), { circumferenceM: 2.19 });
			let known = 0;
			let different = 0;
			for (let second = 0; second < context.signals.grid.seconds; second++) {
				const values = onsetTorques(context, second, 'crank');
				const mean = values.reduce((sum, torque) => sum + torque, 0) / values.length;
				if (!Number.isNaN(mean)) known++;
				if (!Object.is(onsetTorque(context, second, 'crank'), mean)) different++;
			}
			expect(known).toBeGreaterThan(1000);
			expect(different).toBe(0);
		}
	});
});
