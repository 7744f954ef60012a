/** One step of the guided start: what to see there, and what to try. */
export interface Step {
	readonly title: string;
	readonly see: string;
	readonly did?: string;
}

/** In the order in which a workshop would ask; the places are found in the ledger (`firstLook`). */
export const STEPS: readonly Step[] = [
	{
		title: 'See one slip',
		see: 'The top strip is the angle that the crank gained on the wheel: flat while it drives, falling while the rider coasts. Where it steps up while the rider presses, the hub let go. In the strips below cadence jumps above the engaged cadence and power collapses in the same second.'
	},
	{
		title: 'Decide what it was',
		see: 'Read the reasons for and against, then confirm the event or reject it with a reason. The figures of the build follow at once, and the verdict can be taken back.',
		did: 'You have given a verdict.'
	},
	{
		title: 'See what the rides lack',
		see: 'Rides that lack a wheel, a build or an answer stay out of every rate. Many can be answered at once, and answers can be taken back.'
	},
	{
		title: 'See what is in the hub',
		see: 'Parts with revision and batch, torques, bench check, and what differs from the build before. Every ride knows the build that was on its wheel.'
	},
	{
		title: 'Set old against new',
		see: 'The rate of each build with its limits, whether it gets worse with distance, and how many slips the old build would have had on the new one’s kilometres at the same torque and age. Look for what could not be compared.'
	},
	{
		title: 'Ask whether it may go into production',
		see: 'Criteria that were set before the test, each with its number and what it still takes. While one does not hold, the answer is "not yet".'
	},
	{
		title: 'Print it for somebody who has to be convinced',
		see: 'One page with the answer and its limits, then charts, hardware, method, data and what was not shown. Print it or save it from the browser.'
	}
];

/** The step that an address asks for with `?look=2`, 1 to the number of steps; null for anything else. */
export function askedStep(asked: URLSearchParams): number | null {
	const number = Number(asked.get('look'));
	return Number.isInteger(number) && number >= 1 && number <= STEPS.length ? number : null;
}
