import { describe, expect, it } from 'vitest';
import { splitSwitches } from '../../src/cli/archive/splitSwitches';

describe('splitSwitches', () => {
	it('takes switches out wherever they stand and keeps the rest in order', () => {
		const { on, argv } = splitSwitches(['a.zip', '--sources', '--data', 'x'], ['sources', 'names']);
		expect([...on]).toEqual(['sources']);
		expect(argv).toEqual(['a.zip', '--data', 'x']);
	});

	it('leaves what follows a bare "--" alone, so that a file may be called "--names"', () => {
		const { on, argv } = splitSwitches(['--sources', '--', '--names'], ['sources', 'names']);
		expect([...on]).toEqual(['sources']);
		expect(argv).toEqual(['--', '--names']);
	});
});
