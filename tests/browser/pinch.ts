import type { Page } from 'playwright-core';

interface Finger {
	readonly x: number;
	readonly y: number;
}

/**
 * Two fingers on the screen, moved from one pair of places to another in small steps, as the browser hands them on
 * to the page.
 */
export async function pinch(
	page: Page,
	from: readonly [Finger, Finger],
	to: readonly [Finger, Finger]
): Promise<void> {
	const STEPS = 8;
	const session = await page.context().newCDPSession(page);
	const at = (share: number) =>
		from.map(({ x, y }, id) => ({
			x: x + share * (to[id].x - x),
			y: y + share * (to[id].y - y),
			id
		}));
	try {
		await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 2 });
		// one finger comes down before the other
		await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0).slice(0, 1) });
		await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
		for (let step = 1; step <= STEPS; step++)
			await session.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: at(step / STEPS) });
		await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
		await session.send('Emulation.setTouchEmulationEnabled', { enabled: false });
	} finally {
		await session.detach();
	}
}
