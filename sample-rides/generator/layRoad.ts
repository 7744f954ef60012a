import type { Random } from './random';
import type { RoadSpec } from './rideSpec';

/** A place on the road that makes the rider slow down. */
export interface Obstacle {
	readonly atM: number;
	readonly lengthM: number;
	readonly kind: 'corner' | 'stop' | 'slow';
	readonly limitMps: number;
	/** seconds to wait at a stop */
	readonly waitS: number;
}

/** The road in pieces; piece i reaches from fromM[i] to fromM[i + 1]. */
export interface Road {
	readonly fromM: Float64Array;
	readonly slope: Float64Array;
	/** factor on the rolling resistance */
	readonly rolling: Float64Array;
	/** radians, 0 = north, clockwise */
	readonly heading: Float64Array;
	/** metres above the start at the beginning of each piece */
	readonly heightM: Float64Array;
	readonly obstacles: readonly Obstacle[];
}

/**
 * Lays a road of at least the length: slopes that follow each other loosely and come back to the height
 * of the start, headings that wander, obstacles scattered at random.
 *
 * @param spec what kind of road
 * @param lengthM metres
 * @param chance the stream to draw from
 */
export function layRoad(spec: RoadSpec, lengthM: number, chance: Random): Road {
	const fromM: number[] = [0];
	const slope: number[] = [];
	const rolling: number[] = [];
	const heading: number[] = [];
	const heightM: number[] = [0];
	let grade = 0;
	let direction = chance.between(0, 2 * Math.PI);
	for (let i = 0; fromM[i] < lengthM + 500; i++) {
		const piece = Math.max(30, chance.exponential(spec.slopeM));
		// pulled back to the starting height so that a ride is a round trip in energy
		const pull = Math.max(-0.02, Math.min(0.02, -heightM[i] * 0.00008));
		grade = 0.55 * grade + chance.normal(0, 0.84 * spec.hilliness) + (spec.hilliness > 0 ? pull : 0);
		slope.push(Math.max(-0.14, Math.min(0.14, grade)));
		rolling.push(Math.exp(chance.normal(0, spec.roughness)));
		direction += chance.normal(0, 0.35);
		heading.push(direction);
		heightM.push(heightM[i] + slope[i] * piece);
		fromM.push(fromM[i] + piece);
	}
	return {
		fromM: Float64Array.from(fromM),
		slope: Float64Array.from(slope),
		rolling: Float64Array.from(rolling),
		heading: Float64Array.from(heading),
		heightM: Float64Array.from(heightM),
		obstacles: spec.trainer ? [] : scatterObstacles(spec, lengthM, chance)
	};
}

function scatterObstacles(spec: RoadSpec, lengthM: number, chance: Random): Obstacle[] {
	const perM = (spec.cornersPerKm + spec.stopsPerKm + spec.slowdownsPerKm) / 1000;
	const obstacles: Obstacle[] = [];
	if (perM <= 0) return obstacles;
	let atM = 80 + chance.exponential(1 / perM);
	while (atM < lengthM) {
		const draw = chance.between(0, perM * 1000);
		if (draw < spec.cornersPerKm)
			obstacles.push({
				atM,
				lengthM: chance.between(4, 25),
				kind: 'corner',
				limitMps: chance.between(3.5, 9.5),
				waitS: 0
			});
		else if (draw < spec.cornersPerKm + spec.stopsPerKm)
			obstacles.push({ atM, lengthM: 0, kind: 'stop', limitMps: 0, waitS: 2 + chance.exponential(18) });
		else
			obstacles.push({
				atM,
				lengthM: chance.between(40, 400),
				kind: 'slow',
				limitMps: chance.between(3.5, 7),
				waitS: 0
			});
		atM += (obstacles[obstacles.length - 1].lengthM ?? 0) + 15 + chance.exponential(1 / perM);
	}
	return obstacles;
}
