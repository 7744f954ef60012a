/**
 * The scale of the gained angle: from a little below zero (coasting falls out of the strip) to the largest
 * gain that is shown, in two steps a doubling, so that it does not jump while the window moves.
 *
 * @param shown values in the window, hub degrees; NaN = not known
 * @param stepHubDeg one engagement step, or null; at least four steps are shown
 */
export function gainedDomain(shown: ArrayLike<number>, stepHubDeg: number | null): [number, number] {
	let highest = 0;
	for (let i = 0; i < shown.length; i++) if (shown[i] > highest) highest = shown[i];
	let top = Math.max(60, 4 * (stepHubDeg ?? 0));
	for (let step = 0; top < highest * 1.08; step++) top *= step % 2 === 0 ? 1.5 : 4 / 3;
	return [-top / 4, top];
}
