import { describe, expect, it } from 'vitest';
import { channelBytes, eventsCsv, recordVerdict, rideView } from '$lib/server';
import { csvCell } from '$lib/tables/csvCell';
import { addRide, freshLedger, slipAt, withHardware } from './testLedger';

describe('channelBytes', () => {
	it('lays out a header of padded JSON and then the values of each name', () => {
		const bytes = channelBytes(
			{
				length: 2,
				channels: [
					{ name: 'speedMps', values: Float32Array.of(1.5, NaN) },
					{ name: 'powerW', values: Float32Array.of(200, -1) }
				]
			},
			{ note: 'ü' }
		);
		const headerBytes = new DataView(bytes.buffer).getUint32(0, true);
		expect(headerBytes % 4).toBe(0);
		const header: unknown = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + headerBytes)));
		expect(header).toEqual({ note: 'ü', length: 2, names: ['speedMps', 'powerW'] });
		expect([...new Float32Array(bytes.buffer, 4 + headerBytes)]).toEqual([1.5, NaN, 200, -1]);
	});
});

describe('csvCell', () => {
	it.each([
		['=1+1', "'=1+1"],
		['+49', "'+49"],
		['-x', "'-x"],
		['@sum', "'@sum"],
		[' \t=1', "' \t=1"],
		['a,b', '"a,b"'],
		['say "so"', '"say ""so"""'],
		['=a,"b"', '"\'=a,""b"""'],
		['plain', 'plain']
	])('writes %j as %j', (text, cell) => {
		expect(csvCell(text)).toBe(cell);
	});

	it('writes numbers as numbers, also negative ones, and nothing for what is not known', () => {
		expect([-1.5, 0.1 + 0.2, NaN, null, undefined].map(csvCell)).toEqual(['-1.5', '0.3', '', '', '']);
	});
});

describe('eventsCsv', () => {
	it('has one line an event, with the verdict, and neutralises what people typed', async () => {
		const test = freshLedger();
		withHardware(test);
		const rideId = await addRide(test, { events: [slipAt(100), slipAt(200)] });
		const [event] = rideView(test.ledger, rideId)!.eventList;
		recordVerdict(test.ledger, test.actor, event.id, { verdict: 'confirmed', note: '=HYPERLINK("x")' });
		const lines = eventsCsv(rideView(test.ledger, rideId)!).split('\r\n');
		expect(lines).toHaveLength(4);
		expect(lines[0].split(',')).toHaveLength(23);
		expect(lines[1]).toContain('"\'=HYPERLINK(""x"")"');
		expect(lines[1]).toContain(',120,100,140,240,');
		expect(lines[2]).toContain('not reviewed');
	});
});
