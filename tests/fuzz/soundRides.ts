import { event, FIT, fitRide, lap, PEDALLING, recordFields, seconds, timestamp } from '../ride/fitBytes';

const bytesOf = (content: string) => new TextEncoder().encode(content);

/** A ride with a pause, a shift, a lap, sensors, developer fields and a compressed timestamp. */
export const FIT_RIDE = fitRide({
	seconds: [...seconds(60), ...seconds(60, 90)],
	values: (second) => ({
		...PEDALLING,
		distanceM: 8 * second,
		altitudeM: 100,
		latitudeDeg: -47,
		longitudeDeg: -24
	}),
	also: (bytes) => {
		event(bytes, 60, 0, 4);
		event(bytes, 89, 0, 0);
		event(bytes, 95, 43, 3, 5 + 21 * 256 + 2 * 65536 + 34 * 16777216);
		lap(bytes, 70, 0);
		bytes.message(5, 23, [
			[0, FIT.uint8, 1],
			[1, FIT.uint8, 123],
			[27, FIT.string, 'hub']
		]);
		bytes.message(6, 206, [
			[0, FIT.uint8, 0],
			[1, FIT.uint8, 0],
			[2, FIT.uint8, 2],
			[3, FIT.string, 'power']
		]);
		bytes.message(7, 20, [timestamp(160), ...recordFields(PEDALLING)], [[0, [7], 0]]);
		bytes.compressed(
			1,
			161,
			recordFields({ ...PEDALLING, distanceM: 1, altitudeM: 1, latitudeDeg: 1, longitudeDeg: 1 })
		);
	}
}).close();

/** Another one, to be spliced with the first: other fields in another order. */
export const OTHER_FIT_RIDE = fitRide({
	seconds: seconds(80),
	values: (second) => ({ ...PEDALLING, distanceM: 7 * second, temperatureC: 12 })
}).close();

export const TCX_RIDE = bytesOf(
	'<?xml version="1.0"?><TrainingCenterDatabase><Activities><Activity Sport="Biking"><Lap StartTime="2026-05-04T08:00:00Z">' +
		`<TriggerMethod>Manual</TriggerMethod><Track>${seconds(50)
			.map(
				(second) =>
					`<Trackpoint><Time>2026-05-04T08:00:${String(second).padStart(2, '0')}Z</Time><DistanceMeters>${8 * second}` +
					'</DistanceMeters><Cadence>85</Cadence><Extensions><TPX><Speed>8</Speed><Watts>190</Watts></TPX></Extensions></Trackpoint>'
			)
			.join('')}</Track></Lap></Activity></Activities></TrainingCenterDatabase>`
);

export const GPX_RIDE = bytesOf(
	`<?xml version="1.0"?><gpx><trk><type>cycling</type><trkseg>${seconds(50)
		.map(
			(second) =>
				`<trkpt lat="${-47 + second / 9000}" lon="-24"><time>2026-05-04T08:00:${String(second).padStart(2, '0')}Z</time>` +
				'<extensions><cad>85</cad><power>190</power></extensions></trkpt>'
		)
		.join('')}</trkseg></trk></gpx>`
);

export const CSV_RIDE = bytesOf(
	`time_s,crank_rpm,wheel_rpm,crank_torque_nm\n${seconds(100)
		.map((i) => `${i / 50},80,240,${20 + (i % 7)}\n`)
		.join('')}`
);
