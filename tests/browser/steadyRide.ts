/**
 * A TCX file of steady riding, begun when its recorder's clock says.
 *
 * @param harderFromS from this second on with 200 W more
 */
export function steadyRide(startMs: number, seconds = 900, harderFromS = Infinity): Buffer {
	const at = (second: number) => new Date(startMs + second * 1000).toISOString();
	const points = Array.from({ length: seconds }, (_, second) => {
		const speed = 7 + 0.5 * Math.sin(second / 60);
		return (
			`<Trackpoint><Time>${at(second)}</Time><DistanceMeters>${7 * second}</DistanceMeters>` +
			`<Cadence>${Math.round(12 * speed)}</Cadence>` +
			`<Extensions><TPX><Speed>${speed.toFixed(2)}</Speed><Watts>${180 + (second % 9) + (second >= harderFromS ? 200 : 0)}</Watts></TPX></Extensions></Trackpoint>`
		);
	});
	return Buffer.from(
		'<?xml version="1.0"?><TrainingCenterDatabase><Activities><Activity Sport="Biking">' +
			`<Lap StartTime="${at(0)}"><Track>${points.join('')}</Track></Lap></Activity></Activities></TrainingCenterDatabase>`
	);
}
