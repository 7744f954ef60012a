import { LedgerRefusal, type CriteriaInput, type ReleaseCriteria } from '$lib/server';
import { decimal, rowId, text } from '../../../forms';

const KM = 1000;

/**
 * The criteria as they were typed: kilometres, percent, Nm.
 *
 * @throws LedgerRefusal wrong-value for a field that is empty or no number
 */
export function criteriaFromForm(form: FormData, buildId: number): CriteriaInput {
	const number = (name: string, what: string) => {
		const value = decimal(form, name);
		if (value === null || Number.isNaN(value))
			throw new LedgerRefusal('wrong-value', `${what} is missing or no number.`);
		return value;
	};
	const km = (name: string, what: string) => number(name, what) * KM;
	const optional = (name: string, what: string) => (decimal(form, name) === null ? null : number(name, what));
	const life = optional('plannedLifeKm', 'The planned life');
	const criteria: ReleaseCriteria = {
		rateAtMostPerThousandKm: number('rate', 'The rate'),
		confidence: number('confidence', 'The confidence') / 100,
		plan:
			text(form, 'plan') === 'sequential'
				? {
						kind: 'sequential',
						goodPerThousandKm: number('good', 'The good rate'),
						riskOfFailingGood: number('risk', 'The risk of failing a good build') / 100,
						longestObservedM: km('longestKm', 'The longest distance')
					}
				: {
						kind: 'fixed',
						observedMPerWheel: km('perWheelKm', 'The distance of each wheel'),
						slipsAllowed: number('allowed', 'The number of slips allowed')
					},
		wheels: number('wheels', 'The number of wheels'),
		riders: number('riders', 'The number of riders'),
		expectedRatioAtMost: optional('expected', 'Counted against expected'),
		hardTorqueNm: number('hardTorque', 'The torque at which the old build slipped'),
		observedMAboveHardTorque: km('hardKm', 'The distance above that torque'),
		observedMWet: km('wetKm', 'The wet distance'),
		observedMDry: km('dryKm', 'The dry distance'),
		plannedLifeM: life === null ? null : life * KM,
		stopAtCrankDeg: number('stopAt', 'The size that ends the test')
	};
	return {
		buildId,
		referenceBuildId: rowId(form, 'reference'),
		criteria,
		reason: text(form, 'reason'),
		seenVersion: rowId(form, 'seenVersion')
	};
}
