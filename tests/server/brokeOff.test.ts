import { expect, it } from 'vitest';
import { brokeOff } from '$lib/server/log/brokeOff';

const reset = Object.assign(new Error('aborted'), { code: 'ECONNRESET' });

it('brokeOff tells a sender who went away from whatever else breaks while he does', () => {
	expect(brokeOff(reset, true)).toBe(true);
	expect(brokeOff(new TypeError('Failed to parse body as FormData.', { cause: reset }), true)).toBe(true);
	// another connection of ours, while this one stands
	expect(brokeOff(reset, false)).toBe(false);
	for (const error of [
		new Error('aborted'),
		new TypeError('x is not a function'),
		Object.assign(new Error('full'), { code: 'ENOSPC' }),
		'ECONNRESET',
		null
	])
		expect(brokeOff(error, true)).toBe(false);
});
