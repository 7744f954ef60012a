/**
 * A TCX file of steady riding, begun when its recorder's clock says.
 *
 * @param harderFromS from this second on with 200 W more
 * @param markS a lap was pressed then
 */
export function steadyRide(startMs: number, seconds = 900, harderFromS = Infinity, markS = Infinity): Buffer {
	const at = (second: number) => new Date(startMs + second * 1000).toISOString();
	const points = Array.from({ length: seconds }, (_, second) => {
		const speed = 7 + 0.5 * Math.sin(second / 60);
		return (
			`<Trackpoint><Time>${at(second)}</Time><DistanceMeters>${7 * second}</DistanceMeters>` +
			`<Cadence>${Math.round(12 * speed)}</Cadence>` +
			`<Extensions><TPX><Speed>${speed.toFixed(2)}</Speed><Watts>${180 + (second % 9) + (second >= harderFromS ? 200 : 0)}</Watts></TPX></Extensions></Trackpoint>`
		);
	});
	const lap = (fromS: number, trigger: string) =>
		`<Lap StartTime="${at(fromS)}">${trigger}<Track>${points.slice(fromS, markS > fromS ? markS : seconds).join('')}</Track></Lap>`;
	const laps =
		markS < seconds ? lap(0, '<TriggerMethod>Manual</TriggerMethod>') + lap(markS, '') : lap(0, '');
	return Buffer.from(
		`<?xml version="1.0"?><TrainingCenterDatabase><Activities><Activity Sport="Biking">${laps}</Activity></Activities></TrainingCenterDatabase>`
	);
}
