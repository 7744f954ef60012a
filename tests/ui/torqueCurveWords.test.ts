import { describe, expect, it } from 'vitest';
import { coverageWords } from '$lib/ui/coverageWords';
import { createFormats } from '$lib/ui/formats';
import { torqueCurveWords, type TorqueCurveFigures } from '$lib/ui/torqueCurveWords';

const formats = createFormats('en-GB', 'UTC');
const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const words = (more: Partial<TorqueCurveFigures>) =>
	plain(
		torqueCurveWords(
			{
				kind: 'fit',
				points: [{ fromNm: 20, slips: 9 }],
				withoutTorque: 0,
				confidence: 0.95,
				perTenNm: null,
				...more
			},
			formats
		)
	);

describe('torqueCurveWords', () => {
	it('says that the chance grows only where the lower limit says so', () => {
		expect(words({ perTenNm: { value: 2.3, lower: 1.5, upper: 3.4 } })).toBe(
			'The chance of a slip in one power stroke grows 2.3-fold with each 10 Nm (95 % limits 1.5 to 3.4).'
		);
		expect(words({ perTenNm: { value: 1.4, lower: 0.8, upper: 2.6 } })).toContain('do not show whether');
		expect(words({ perTenNm: { value: 0.5, lower: 0.3, upper: 0.8 } })).toContain('falls with torque');
	});

	it('makes a rise of events that nobody has reviewed a condition, not a finding', () => {
		const curve: TorqueCurveFigures = {
			kind: 'fit',
			points: [{ fromNm: 20, slips: 9 }],
			withoutTorque: 0,
			confidence: 0.95,
			perTenNm: { value: 2.3, lower: 1.5, upper: 3.4 }
		};
		expect(torqueCurveWords(curve, formats, 9)).toMatch(
			/, if the 9 events that are not reviewed are slips\.$/
		);
		expect(torqueCurveWords({ ...curve, kind: 'separated' }, formats, 1)).toContain(
			'everything else below, if the event that is not reviewed is a slip: no smooth'
		);
	});

	it('says why there is no smooth curve', () => {
		expect(words({ kind: 'too few', points: [{ fromNm: 20, slips: 1 }] })).toBe(
			'Only 1 slip with a known torque: too few for a smooth curve.'
		);
		expect(words({ kind: 'too few', points: [] })).toContain('No slip with a known torque');
		expect(words({ kind: 'separated' })).toContain('from 20 Nm on');
		expect(words({ kind: 'one torque' })).toContain('one torque');
	});

	it('names the slips that it leaves out', () => {
		expect(words({ kind: 'one torque', withoutTorque: 2 })).toMatch(
			/ 2 slips without a known torque are left out\.$/
		);
	});
});

describe('coverageWords', () => {
	const names = { build: 'New', reference: 'Old' };
	it('says how much was ridden where the reference slipped, and at the hardest', () => {
		const told = { fromNm: 20, highestNm: 40, aboveM: 31_000, aboveHighestM: 4_000 };
		expect(plain(coverageWords(told, names, formats))).toBe(
			'Old slipped from 20 Nm on: New was observed 31.0 km there, 4.0 km of it from 40 Nm on, where those at the highest torque lie.'
		);
	});

	it('does not say that the reference slipped where nobody has reviewed what counts', () => {
		const told = { fromNm: 4, highestNm: 4, aboveM: 310_000, aboveHighestM: 310_000 };
		expect(plain(coverageWords(told, names, formats, 27))).toBe(
			'Old has events that count from 4 Nm on: New was observed 310 km there.'
		);
	});

	it('claims nothing where no slip of the reference has a torque', () => {
		const none = { fromNm: null, highestNm: null, aboveM: 0, aboveHighestM: 0 };
		expect(coverageWords(none, names, formats)).toContain('nobody can say');
	});
});
