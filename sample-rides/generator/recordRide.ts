import type {
	Channel,
	ChannelName,
	GearEvent,
	Ride,
	Sensor,
	Span,
	SpeedSource
} from '../../src/lib/ride/ride';
import type { Road } from './layRoad';
import { random, type Random } from './random';
import type { RideSpec } from './rideSpec';
import { senseCadence, sensePower, senseSpeed, totalAt } from './sensors';
import { addDips, addSpikes, hold, lose, quantise, thin } from './sensorFaults';
import type { Motion } from './simulatedRide';

/** South Pacific, far from any land: the track is invented and must not look like anyone's roads. */
const START_LATITUDE_DEG = -48.9;
const START_LONGITUDE_DEG = -123.4;
const EARTH_RADIUS_M = 6371000;

/**
 * Records a motion as a ride computer would: one look a second at sensors that come late, round, hold,
 * freeze and fail.
 *
 * @returns the ride in the shape that a decoder gives, and how many artefacts were put in
 */
export function recordRide(
	spec: RideSpec,
	motion: Motion & { road: Road },
	seed: number
): { ride: Ride; artefacts: number } {
	const chance = random(seed).branch('recorder');
	const { recorder } = spec;
	const ticks = Math.floor((motion.length - 1) * motion.stepS) + 1;
	const speed = senseSpeed(recorder.speed, motion, spec.bike.circumferenceM, ticks, chance.branch('speed'));
	const cadence = senseCadence(recorder.cadence, motion, ticks, chance.branch('cadence'));
	const power = sensePower(recorder.power, motion, ticks, chance.branch('power'));
	const distance = accumulate(speed);
	let artefacts = addDips(speed, recorder.speed.dipsPerHour, chance);
	artefacts += addSpikes(cadence, recorder.cadence.spikesPerHour, chance);
	hold(speed, recorder.speed.updateS);
	hold(cadence, recorder.cadence.updateS);
	hold(power, recorder.power.updateS);
	quantise(speed, recorder.speed.resolutionMps);
	quantise(cadence, recorder.cadence.resolutionRpm);
	quantise(power, 1);
	quantise(distance, 0.01);
	for (const channel of [speed, cadence, power]) lose(channel, recorder.sensorLossPerHour, chance);

	const pauses = recorder.autoPause ? findPauses(motion, ticks) : [];
	const gaps = drawGaps(recorder.gapsPerHour, recorder.gapS, ticks, chance);
	const away = [...pauses, ...gaps];
	let kept: number[] = [];
	for (let t = 0; t < ticks; t++) if (!away.some(([from, to]) => t > from && t < to)) kept.push(t);
	if (recorder.smart) kept = thin(kept, speed, cadence, power);

	const timeS = Float64Array.from(kept);
	const channels: { [name in ChannelName]?: Channel } = {};
	const add = (name: ChannelName, all: Float64Array) => {
		const value = Float64Array.from(kept, (t) => all[t]);
		if (value.some((v) => !Number.isNaN(v))) channels[name] = { timeS, value };
	};
	add('speedMps', speed);
	add('distanceM', distance);
	add('cadenceRpm', cadence);
	add('powerW', power);
	addSurroundings(spec, motion, ticks, chance, add);
	const ride: Ride = {
		format: 'fit',
		startedAtMs: spec.startedAtMs,
		localOffsetS: spec.localOffsetS,
		durationS: kept[kept.length - 1],
		channels,
		gaps,
		pauses,
		irregular: recorder.smart,
		marks: motion.marksS.filter((t) => t < ticks).map((mark) => ({ timeS: mark })),
		gearEvents: recordShifts(spec, motion, chance),
		sensors: nameSensors(spec),
		speedSource: speedSource(spec),
		trainer: spec.road.trainer ? true : null,
		motorAssisted: null,
		warnings: []
	};
	return { ride, artefacts };
}

function accumulate(speed: Float64Array): Float64Array {
	let sum = 0;
	return speed.map((v, i) => (i === 0 ? sum : (sum += v)));
}

function addSurroundings(
	spec: RideSpec,
	motion: Motion & { road: Road },
	ticks: number,
	chance: Random,
	add: (name: ChannelName, all: Float64Array) => void
): void {
	const altitude = new Float64Array(ticks);
	const latitude = new Float64Array(ticks);
	const longitude = new Float64Array(ticks);
	const temperature = new Float64Array(ticks);
	const { road } = motion;
	let piece = 0;
	let northM = 0;
	let eastM = 0;
	let before = 0;
	const drift = chance.normal(0, 1.5);
	const perDeg = (Math.PI / 180) * EARTH_RADIUS_M;
	for (let t = 0; t < ticks; t++) {
		const ground = totalAt(motion.groundM, motion, t);
		while (piece < road.slope.length - 1 && road.fromM[piece + 1] <= ground) piece++;
		northM += (ground - before) * Math.cos(road.heading[piece]);
		eastM += (ground - before) * Math.sin(road.heading[piece]);
		before = ground;
		altitude[t] =
			Math.round((120 + road.heightM[piece] + road.slope[piece] * (ground - road.fromM[piece])) * 5) / 5;
		latitude[t] = START_LATITUDE_DEG + northM / perDeg;
		longitude[t] = START_LONGITUDE_DEG + eastM / (perDeg * Math.cos((START_LATITUDE_DEG * Math.PI) / 180));
		temperature[t] = Math.round(spec.road.temperatureC + (drift * t) / 3600);
	}
	if (!spec.road.trainer) add('altitudeM', altitude);
	add('temperatureC', temperature);
	if (spec.recorder.position && !spec.road.trainer) {
		add('latitudeDeg', latitude);
		add('longitudeDeg', longitude);
	}
}

/** The device pauses while the bicycle stands for more than three seconds. */
function findPauses(motion: Motion, ticks: number): Span[] {
	const pauses: Span[] = [];
	let since = -1;
	for (let t = 1; t < ticks; t++) {
		const moving = totalAt(motion.groundM, motion, t) - totalAt(motion.groundM, motion, t - 1) > 0.15;
		if (!moving && since < 0) since = t;
		if (moving && since >= 0) {
			if (t - since > 5) pauses.push([since + 3, t]);
			since = -1;
		}
	}
	return pauses;
}

function drawGaps(perHour: number, meanS: number, ticks: number, chance: Random): Span[] {
	const gaps: Span[] = [];
	if (perHour <= 0) return gaps;
	for (
		let t = chance.exponential(3600 / perHour);
		t < ticks - 30;
		t += 10 + chance.exponential(3600 / perHour)
	) {
		const from = Math.ceil(t);
		t = Math.min(ticks - 2, from + 4 + Math.round(chance.exponential(meanS)));
		gaps.push([from, t]);
	}
	return gaps;
}

function recordShifts(spec: RideSpec, motion: Motion, chance: Random): GearEvent[] {
	const { shifting, chainrings, cassette } = spec.bike;
	if (!shifting.recorded) return [];
	let last = 0;
	return motion.shifts.map((shift) => {
		const heard = Math.round(shift.timeS - shifting.recordedLeadS + chance.normal(0, 0.25));
		last = Math.max(last, heard);
		return {
			timeS: last,
			// devices count from the smallest ring and from the largest sprocket
			frontIndex: chainrings.length - shift.front,
			rearIndex: cassette.length - shift.rear,
			frontTeeth: shifting.recordedChainrings[shift.front] ?? null,
			rearTeeth: shifting.recordedCassette[shift.rear] ?? null
		};
	});
}

function speedSource(spec: RideSpec): SpeedSource {
	const { kind } = spec.recorder.speed;
	if (kind === 'gps') return 'position';
	return kind === 'virtual' || kind === 'none' ? 'not known' : 'wheel';
}

function nameSensors(spec: RideSpec): Sensor[] {
	const { recorder, bike } = spec;
	const sensors: Sensor[] = [];
	if (/rear|front/.test(recorder.speed.kind)) sensors.push({ kind: 'speed', description: 'speed' });
	if (recorder.cadence.kind !== 'none') sensors.push({ kind: 'cadence', description: 'cadence' });
	if (recorder.power.kind !== 'none') sensors.push({ kind: 'power', description: 'power' });
	if (bike.shifting.recorded) sensors.push({ kind: 'shifting', description: 'shifting' });
	return sensors;
}
