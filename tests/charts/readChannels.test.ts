import { describe, expect, it } from 'vitest';
import { readChannels } from '$lib/charts/readChannels';

function answer(header: object, values: number[]): ArrayBuffer {
	const text = JSON.stringify(header);
	const padded = new TextEncoder().encode(text.padEnd(Math.ceil(text.length / 4) * 4, ' '));
	const bytes = new Uint8Array(4 + padded.length + 4 * values.length);
	new DataView(bytes.buffer).setUint32(0, padded.length, true);
	bytes.set(padded, 4);
	bytes.set(new Uint8Array(Float32Array.from(values).buffer), 4 + padded.length);
	return bytes.buffer;
}

describe('readChannels', () => {
	it('gives each trace under its name, missing values as NaN', () => {
		const read = readChannels(answer({ length: 3, names: ['speedMps', 'powerW'] }, [1, 2, 3, 250, NaN, 251]));
		expect(read.length).toBe(3);
		expect([...read.traces.speedMps]).toEqual([1, 2, 3]);
		expect([...read.traces.powerW]).toEqual([250, NaN, 251]);
	});

	it('refuses an answer that was cut short', () => {
		const whole = answer({ length: 3, names: ['speedMps'] }, [1, 2, 3]);
		expect(() => readChannels(whole.slice(0, -4))).toThrow(/announces/);
		expect(() => readChannels(whole.slice(0, 2))).toThrow(RangeError);
		expect(() => readChannels(whole.slice(0, 8))).toThrow(/header of/);
	});
});
