import { describe, expect, it } from 'vitest';
import { refusedState, type BenchEvidence, type BuildState } from '$lib/hardware/refusedState';

const STATES: BuildState[] = ['draft', 'bench-checked', 'in test', 'released', 'withdrawn'];
const BENCH: BenchEvidence[] = ['passed', 'failed', 'override', null];

describe('refusedState', () => {
	it('lets a build into test after a passed bench check or with a written override only', () => {
		for (const from of ['draft', 'bench-checked'] as const) {
			expect(refusedState(from, 'in test', 'passed', false)).toBeNull();
			expect(refusedState(from, 'in test', 'override', false)).toBeNull();
			expect(refusedState(from, 'in test', 'failed', false)).toContain('was not passed');
			expect(refusedState(from, 'in test', null, false)).toContain('only after a bench check');
		}
	});

	it('calls a build bench-checked when the check was passed; an override is no check', () => {
		expect(refusedState('draft', 'bench-checked', 'passed', false)).toBeNull();
		for (const bench of ['failed', 'override', null] as const)
			expect(refusedState('draft', 'bench-checked', bench, false)).not.toBeNull();
	});

	it('releases by the release record only, and only out of test', () => {
		for (const from of STATES)
			for (const bench of BENCH) expect(refusedState(from, 'released', bench, false)).not.toBeNull();
		expect(refusedState('in test', 'released', 'passed', true)).toBeNull();
		expect(refusedState('bench-checked', 'released', 'passed', true)).not.toBeNull();
	});

	it('withdraws whatever is not withdrawn yet, and takes it back in as a draft', () => {
		for (const from of STATES)
			expect(refusedState(from, 'withdrawn', null, false) === null).toBe(from !== 'withdrawn');
		expect(refusedState('withdrawn', 'draft', null, false)).toBeNull();
		expect(refusedState('withdrawn', 'in test', 'passed', false)).not.toBeNull();
		expect(refusedState('released', 'draft', 'passed', false)).not.toBeNull();
	});
});
