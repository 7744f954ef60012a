import { describe, expect, it } from 'vitest';
import { falseAlarmWords, type FalseAlarmFigures } from '$lib/ui/falseAlarmWords';
import { createFormats } from '$lib/ui/formats';

const formats = createFormats('en-GB', 'UTC');
const words = (more: Partial<FalseAlarmFigures>) =>
	falseAlarmWords(
		{
			events: 0,
			confirmed: 0,
			observedM: 98_000,
			ratePerThousandKm: 0,
			lowerPerThousandKm: 0,
			upperPerThousandKm: 37.64,
			confidence: 0.95,
			...more
		},
		formats
	).replaceAll('\u00a0', ' ');

describe('falseAlarmWords', () => {
	it('says that it is not known, not that there are none, before a good wheel was ridden', () => {
		const nothing = words({ observedM: 0, ratePerThousandKm: null, upperPerThousandKm: null });
		expect(nothing).toContain('is not known: no ride of a wheel known to be good yet');
	});

	it('bounds what was not seen, in the unit of the rates beside it as well', () => {
		expect(words({})).toBe(
			'On wheels known to be good the tool reported none in 98.0 observed km: at most 37.6 per 1000 km (3.8 per 100), the upper end of its 95 % limits.'
		);
	});

	it('gives the rate with both limits, and doubts a wheel on which a slip was confirmed', () => {
		const found = { events: 2, ratePerThousandKm: 20.4, lowerPerThousandKm: 2.47, upperPerThousandKm: 73.7 };
		expect(words(found)).toBe(
			'On wheels known to be good the tool reported 2 slips in 98.0 observed km: 20.4 per 1000 km, 95 % limits 2.5 to 73.7 (at most 7.4 per 100).'
		);
		expect(words({ ...found, confirmed: 1 })).toContain(
			'1 of them was confirmed: is that wheel really good?'
		);
	});
});
