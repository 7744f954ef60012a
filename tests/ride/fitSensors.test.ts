import { describe, expect, it } from 'vitest';
import { FIT, FitBytes, PEDALLING } from './fitBytes';
import { ride } from './rides';

describe('sensors, trainer and motor', () => {
	const device = (bytes: FitBytes, index: number, type: number, name = '') =>
		bytes.message(5, 23, [
			[0, FIT.uint8, index],
			[1, FIT.uint8, type],
			[3, FIT.uint32, 123456789],
			[25, FIT.enum, 1],
			[27, FIT.string, name]
		]);

	it('lists paired sensors by kind, each once, and without serial numbers', async () => {
		const read = await ride({
			also: (bytes) => {
				device(bytes, 0, 11);
				device(bytes, 1, 123, 'rear hub\u0007 A1B2C3D4 9876543');
				device(bytes, 2, 11);
				device(bytes, 2, 11);
				device(bytes, 3, 120);
				device(bytes, 4, 34);
			}
		});
		expect(read.sensors).toEqual([
			{ kind: 'speed', description: 'rear hub' },
			{ kind: 'power', description: 'power' },
			{ kind: 'other', description: 'heart rate' },
			{ kind: 'shifting', description: 'shifting' }
		]);
		expect(JSON.stringify(read)).not.toContain('123456789');
		expect(read.speedSource).toBe('wheel');
	});

	it('says that speed comes from position where sensors are listed and none gives speed', async () => {
		const at = { latitudeDeg: -47.6, longitudeDeg: -24.2 };
		const power = (bytes: FitBytes) => void device(bytes, 1, 11);
		expect((await ride({ values: () => ({ ...PEDALLING, ...at }), also: power })).speedSource).toBe(
			'position'
		);
		expect((await ride({ also: power })).speedSource).toBe('not known');
		expect((await ride({ values: () => ({ ...PEDALLING, ...at }) })).speedSource).toBe('not known');
	});

	it('knows a trainer ride by its sub-sport or by a paired trainer without position', async () => {
		expect((await ride({ sport: [2, 6] })).trainer).toBe(true);
		expect((await ride({ sport: [2, 58] })).trainer).toBe(true);
		expect((await ride({ sport: [4, 6] })).trainer).toBe(true);
		expect((await ride({ sport: [2, 46] })).trainer).toBe(false);
		expect((await ride({ sport: [2, 0] })).trainer).toBeNull();
		expect((await ride({ sport: [2, 0], also: (bytes) => void device(bytes, 1, 17) })).trainer).toBe(true);
	});

	it('knows a motor-assisted ride by sport, sub-sport or a paired drive', async () => {
		expect((await ride({ sport: [21, 0] })).motorAssisted).toBe(true);
		expect((await ride({ sport: [2, 47] })).motorAssisted).toBe(true);
		expect((await ride({ also: (bytes) => void device(bytes, 1, 20) })).motorAssisted).toBe(true);
		expect((await ride()).motorAssisted).toBeNull();
	});
});
