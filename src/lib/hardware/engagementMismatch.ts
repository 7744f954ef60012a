const TOLERANCE = 0.01;

/**
 * Whether a part's points of engagement go with the step that a build states. With pawls that do not take
 * up drive together the hub has a whole multiple of the ring's points, so its step may be the ring's step
 * divided by a whole number; it cannot be larger, nor lie in between.
 *
 * @param name of the part, for the sentence
 * @param points positions per hub turn at which the part can take up drive; null = it has none
 * @param stepHubDeg hub degrees of one step of the build; null = not said
 * @returns one plain sentence; null when they agree or one of them is not known
 * @example engagementMismatch('ring', 36, 15)
 *   // 'ring has 36 points of engagement, which is a step of 10 hub degrees; the build says 15.'
 * Source: geometry (a step is 360 / points); the multiple by offset pawls is common practice, no source.
 */
export function engagementMismatch(
	name: string,
	points: number | null,
	stepHubDeg: number | null
): string | null {
	if (points === null || stepHubDeg === null) return null;
	const stepOfPart = 360 / points;
	const multiple = stepOfPart / stepHubDeg;
	const nearest = Math.max(1, Math.round(multiple));
	if (Math.abs(multiple - nearest) <= TOLERANCE * nearest) return null;
	const round = (degrees: number) => String(Math.round(degrees * 100) / 100);
	return `${name} has ${points} points of engagement, which is a step of ${round(stepOfPart)} hub degrees; the build says ${round(stepHubDeg)}.`;
}
