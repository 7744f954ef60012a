import type { Channel, Ride } from '../../src/lib/ride/ride';
import { random } from './random';
import type { RideSpec } from './rideSpec';
import type { Motion } from './simulatedRide';

/**
 * Records a motion as a workshop's logger would: crank, wheel and instantaneous crank torque 50 times a
 * second, without smoothing, with the noise of its encoders.
 *
 * @param spec the ride that the motion belongs to
 * @param motion from `driveRide` or `simulateRide`
 * @param seed integer
 * @returns a ride with cadenceRpm, wheelRpm and crankTorqueNm on one clock; no instant, as loggers have none
 */
export function recordLogger(spec: RideSpec, motion: Motion, seed: number): Ride {
	const chance = random(seed).branch('logger');
	const n = motion.length - 1;
	const timeS = new Float64Array(n);
	const cadenceRpm = new Float64Array(n);
	const wheelRpm = new Float64Array(n);
	const crankTorqueNm = new Float64Array(n);
	for (let i = 0; i < n; i++) {
		const turned = motion.crankRad[i + 1] - motion.crankRad[i];
		const rolled = (motion.wheelM[i + 1] - motion.wheelM[i]) / spec.bike.circumferenceM;
		const work = motion.workJ[i + 1] - motion.workJ[i];
		timeS[i] = Math.round(i * motion.stepS * 1000) / 1000;
		cadenceRpm[i] = hundredths(
			Math.max(0, (turned / motion.stepS) * (30 / Math.PI) + chance.normal(0, 0.35))
		);
		wheelRpm[i] = hundredths(Math.max(0, (rolled / motion.stepS) * 60 + chance.normal(0, 0.3)));
		crankTorqueNm[i] = hundredths((turned > 1e-6 ? work / turned : 0) + chance.normal(0, 0.8));
	}
	const channel = (value: Float64Array): Channel => ({ timeS, value });
	return {
		format: 'logger-csv',
		startedAtMs: 0,
		localOffsetS: null,
		durationS: timeS[n - 1],
		channels: {
			cadenceRpm: channel(cadenceRpm),
			wheelRpm: channel(wheelRpm),
			crankTorqueNm: channel(crankTorqueNm)
		},
		gaps: [],
		pauses: [],
		irregular: false,
		marks: [],
		gearEvents: [],
		sensors: [],
		speedSource: 'wheel',
		trainer: null,
		motorAssisted: null,
		warnings: []
	};
}

const hundredths = (value: number) => Math.round(value * 100) / 100;
