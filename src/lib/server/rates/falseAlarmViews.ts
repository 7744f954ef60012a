import type { RecordingKind } from '$lib/ride/recordingKind';
import type { SpeedSource } from '$lib/ride/ride';

/** What the tool reported on wheels that are known to be good, per 1000 observed km, with exact limits. */
export interface FalseAlarmRate {
	/** events that the rate of a build would be about, whatever a person decided about them */
	events: number;
	/** those of them that a person confirmed: then the wheel is not known to be good */
	confirmed: number;
	rides: number;
	observedM: number;
	ratePerThousandKm: number | null;
	lowerPerThousandKm: number;
	/** null while nothing was observed: no bound can be given */
	upperPerThousandKm: number | null;
	confidence: number;
}

export interface FalseAlarmsView {
	wheels: { id: number; name: string }[];
	pooled: FalseAlarmRate;
	/** by what the files tell of the device: source of the speed and rhythm of the records */
	kinds: (FalseAlarmRate & { speedFrom: SpeedSource; rhythm: RecordingKind['rhythm'] })[];
}
