import { getLedger, overrideBenchCheck, recordBenchCheck, type Actor } from '$lib/server';
import { workshopInstant } from '../../fitting';
import { decimal, text } from '../../forms';

/** Writes a bench check down from its form; an empty time means now. */
export function benchCheckFromForm(form: FormData, actor: Actor, buildId: number): void {
	recordBenchCheck(getLedger(), actor, buildId, {
		staticTorqueNm: decimal(form, 'staticTorqueNm'),
		torqueHeld: text(form, 'torqueHeld') === 'yes',
		coastsFreely: text(form, 'coastsFreely') === 'yes',
		noCreep: text(form, 'noCreep') === 'yes',
		note: text(form, 'note'),
		at: text(form, 'at') === '' ? null : workshopInstant(form, 'at')
	});
}

/** Writes down why a build is ridden without a bench check. */
export function overrideFromForm(form: FormData, actor: Actor, buildId: number): void {
	overrideBenchCheck(getLedger(), actor, buildId, text(form, 'reason'));
}
