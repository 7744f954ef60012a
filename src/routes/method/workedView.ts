import type { WorkedEvent } from '$lib/slip/workedEvent';
import { LEAST_LOG_ODDS } from '$lib/slip/reportLimits';
import type { StoredRide } from './workedRide';

/** The worked event as the page draws it: plain data, nothing left to compute. */
export type WorkedView = ReturnType<typeof workedView>;

/** The features that are shown: those which the trees ask for most often and can be said here. */
const SHOWN_FEATURES = 8;

/**
 * @param worked figures of the event
 * @param stored the ride that they come from
 * @param asked names of features, those that the trees ask for most often first
 */
export function workedView(worked: WorkedEvent, stored: StoredRide, asked: readonly string[]) {
	const { event, analysis } = worked;
	const counted = worked.seconds.filter(({ counted }) => counted);
	const peak = counted.reduce((most, second) => (second.gainedDeg > most.gainedDeg ? second : most));
	return {
		file: stored.file,
		truth: stored.truth,
		rideSeconds: stored.cadenceRpm.length,
		event: {
			startS: event.startS,
			kind: event.kind,
			crankDeg: event.overrunCrankDeg,
			hubDeg: event.overrunHubDeg,
			gear: event.gear && { label: event.gear.label, ratio: event.gear.ratio, seconds: event.gear.seconds },
			hubTorqueNm: event.hubTorqueNm,
			powerLost: event.powerLost,
			strength: event.strength,
			observed: event.observed,
			reasons: event.reasons
		},
		seconds: worked.seconds,
		peak,
		addedDeg: counted.map(({ gainedDeg }) => gainedDeg),
		gears: analysis.gears.map(({ label, developmentM, seconds }) => ({ label, developmentM, seconds })),
		circumference: analysis.learning.circumference,
		developmentM: worked.developmentM,
		lagS: worked.lagS,
		noise: worked.noise,
		ratioScatter: analysis.learning.ratioScatter,
		cadenceByTurn: analysis.learning.cadenceByTurn,
		candidates: worked.candidates,
		events: analysis.events.length,
		features: asked
			.map((name) => worked.features.find((feature) => feature.name === name))
			.filter((feature) => feature !== undefined)
			.filter(({ value }) => !Number.isNaN(value))
			.slice(0, SHOWN_FEATURES),
		logOdds: worked.logOdds,
		leastLogOdds: LEAST_LOG_ODDS,
		torquesNm: worked.torquesNm,
		detectionLimitDeg: worked.detectionLimitDeg,
		observedM: analysis.observedM,
		totalM: analysis.totalM,
		inRate: worked.inRate
	};
}
