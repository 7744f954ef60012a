import { expect } from 'vitest';
import type { Visit } from './workshop';

/**
 * Opens each page as the visitor stands and asks of it what every page has to keep: nothing on the console,
 * nothing that the content security policy stops, nothing that axe finds, no wider than the window.
 */
export async function expectEveryPageIsSound(visit: Visit, paths: readonly string[]): Promise<void> {
	const found: string[] = [];
	for (const path of paths) {
		await visit.page.goto(path, { waitUntil: 'networkidle' });
		const drawing = visit.page.locator('[data-stage]');
		if ((await drawing.count()) > 0) await visit.page.locator('[data-stage="shown"]').waitFor();
		for (const violation of await visit.accessibility()) found.push(`${path} ${violation}`);
		const overhang = await visit.overhang();
		if (overhang > 0) found.push(`${path} is ${overhang} px wider than the window`);
	}
	expect(found).toEqual([]);
	expect(visit.complaints).toEqual([]);
}
