import type { Bike } from '$lib/drivetrain/bike';
import { driveSignals } from '$lib/drivetrain/driveSignals';
import { DEFAULT_CIRCUMFERENCE_M } from '$lib/drivetrain/nameGears';
import { secondGrid } from '$lib/drivetrain/secondGrid';
import type { Ride } from '$lib/ride/ride';
import { analyseRide } from './analyseRide';
import type { RideAnalysis, SlipEvent } from './analysis';
import { candidateFeatures, FEATURE_NAMES } from './candidateFeatures';
import { countsInRate } from './countsInRate';
import { onsetTorques } from './onsetTorques';
import { overrunSize } from './overrunSize';
import { rideContext } from './rideContext';
import { takeEvents } from './takeEvents';

/** One second of the recording around an event, with what was computed from it. */
export interface WorkedSecond {
	readonly second: number;
	readonly speedMps: number;
	readonly cadenceRpm: number;
	readonly powerW: number;
	/** cadence that the wheel needed in the proportion around the event */
	readonly engagedRpm: number;
	/** 6 (n - n_engaged), crank degrees gained in this second */
	readonly gainedDeg: number;
	/** belongs to the event: its gain is added up */
	readonly counted: boolean;
}

/** Every step from the recording to the event, in figures. */
export interface WorkedEvent {
	readonly event: SlipEvent;
	readonly analysis: RideAnalysis;
	readonly seconds: readonly WorkedSecond[];
	/** metres per crank turn of the proportion around the event */
	readonly developmentM: number;
	/** lag of speed behind cadence in this recording, s */
	readonly lagS: number;
	/** scatter of the proportion around the event, as a share */
	readonly noise: number;
	/** excesses of the whole ride that were looked at */
	readonly candidates: number;
	/** what the trees read of this one, by name; NaN = cannot be said */
	readonly features: readonly { readonly name: string; readonly value: number }[];
	readonly logOdds: number;
	/** mean hub torques of the last engaged seconds, the nearest first, Nm */
	readonly torquesNm: readonly number[];
	/** smallest overrun that this second promised to show, crank degrees, read just before the event */
	readonly detectionLimitDeg: number;
	readonly inRate: boolean;
}

/**
 * Works one event of a ride step by step with the functions that find it: for the page that explains the method.
 *
 * @param ride a decoded ride of one value a second
 * @param bike what is known of the bike
 * @param nearS second in which the event is expected to begin
 * @param aroundS seconds to show on either side
 * @returns null when no event within 3 s of that second is reported
 */
export function workedEvent(ride: Ride, bike: Bike, nearS: number, aroundS: number): WorkedEvent | null {
	const analysis = analyseRide(ride, bike);
	const event = analysis.events.find(({ startS }) => Math.abs(startS - nearS) <= 3);
	const context = rideContext(
		driveSignals(secondGrid(ride, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M)),
		bike
	);
	const taken = takeEvents(context).find(({ placed }) => event && placed.to + 1 === event.endS);
	if (!event || !taken) return null;
	const { signals } = context;
	const size = overrunSize(context, taken.placed, analysis.learning.cadenceByTurn);
	const seconds: WorkedSecond[] = [];
	const last = Math.min(signals.grid.seconds - 1, event.startS + aroundS);
	for (let second = Math.max(0, event.startS - aroundS); second <= last; second++) {
		const cadenceRpm = signals.grid.cadenceRpm[second];
		const engagedRpm = 60 * signals.speedMps[second] * Math.exp(size.reference);
		seconds.push({
			second,
			speedMps: signals.speedMps[second],
			cadenceRpm,
			powerW: signals.grid.powerW[second],
			engagedRpm,
			gainedDeg: 6 * (cadenceRpm - engagedRpm),
			counted: second >= size.from && second <= size.to
		});
	}
	const features = candidateFeatures(context, taken.placed);
	return {
		event,
		analysis,
		seconds,
		developmentM: Math.exp(-size.reference),
		lagS: signals.lagS,
		noise: context.noise[taken.placed.peak],
		candidates: context.candidates.length,
		features: FEATURE_NAMES.map((name, i) => ({ name, value: features[i] })),
		logOdds: taken.logOdds,
		torquesNm: onsetTorques(context, event.startS, bike.powerAt ?? 'crank'),
		detectionLimitDeg: analysis.traces.detectionLimitCrankDeg[event.startS - 1],
		inRate: countsInRate(event)
	};
}
