import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../fuzz/families';
import { runFuzz } from '../fuzz/runFuzz';

describe('hostile input', { timeout: 400_000 }, () => {
	it('in 20,000 seeded cases ends as a ride within its bounds or a refusal: no crash, no hang, nothing silent', async () => {
		const { cases, byFamily, findings } = await runFuzz(0, 20_000, 2);
		expect(findings.slice(0, 5)).toEqual([]);
		expect(cases).toBe(20_000);
		for (const { name, share } of FAMILIES) expect(byFamily[name], name).toBe(share * 200);
	});
});
