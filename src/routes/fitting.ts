import {
	correctFittedPeriod,
	endFittedPeriod,
	fitBuild,
	getLedger,
	getSettings,
	LedgerRefusal,
	withdrawFittedPeriod,
	type Actor,
	type PeriodCorrection
} from '$lib/server';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { neededId, rowId, text } from './forms';

/** Fits a build on a wheel from the form that stands on both pages; times are the workshop's. */
export function fitFromForm(
	form: FormData,
	actor: Actor,
	known: { wheelId?: number; buildId?: number }
): void {
	fitBuild(getLedger(), actor, {
		wheelId: known.wheelId ?? neededId(form, 'wheel'),
		buildId: known.buildId ?? neededId(form, 'build'),
		from: workshopInstant(form, 'from'),
		until: text(form, 'until') === '' ? null : workshopInstant(form, 'until')
	});
}

/** Ends a fitted period at an instant in the workshop's zone. */
export function endFromForm(form: FormData, actor: Actor): void {
	endFittedPeriod(getLedger(), actor, neededId(form, 'period'), workshopInstant(form, 'until'));
}

/**
 * Corrects a fitted period. Only a changed field is a correction: the form shows minutes, the ledger keeps
 * more. An emptied end means still fitted.
 */
export function correctFromForm(form: FormData, actor: Actor): void {
	const changed = (name: string) => form.has(name) && text(form, name) !== text(form, `was-${name}`);
	const correction: PeriodCorrection = {};
	if (changed('from')) correction.from = workshopInstant(form, 'from');
	if (changed('until')) correction.until = text(form, 'until') === '' ? null : workshopInstant(form, 'until');
	correctFittedPeriod(getLedger(), actor, neededId(form, 'period'), correction, seenVersion(form));
}

/** Takes a fitted period back, with the reason. */
export function withdrawFromForm(form: FormData, actor: Actor): void {
	withdrawFittedPeriod(getLedger(), actor, neededId(form, 'period'), text(form, 'reason'), seenVersion(form));
}

/** The version of the row that the form was filled from. */
const seenVersion = (form: FormData) => rowId(form, 'version') ?? undefined;

/** Day and time of a form in the workshop's zone, as an instant. */
export function workshopInstant(form: FormData, name: string): string {
	const instant = zonedInstant(text(form, name), getSettings(getLedger()).timeZone);
	if (!instant)
		throw new LedgerRefusal('wrong-value', 'Give the day and the time of day, as in 2026-05-04 18:30.');
	return instant;
}
