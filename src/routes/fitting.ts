import { LedgerRefusal, endFittedPeriod, fitBuild, getLedger, getSettings, type Actor } from '$lib/server';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { neededId, text } from './forms';

/** Fits a build on a wheel from the form that stands on both pages; times are the workshop's. */
export function fitFromForm(
	form: FormData,
	actor: Actor,
	known: { wheelId?: number; buildId?: number }
): void {
	fitBuild(getLedger(), actor, {
		wheelId: known.wheelId ?? neededId(form, 'wheel'),
		buildId: known.buildId ?? neededId(form, 'build'),
		from: workshopInstant(form, 'from')
	});
}

/** Ends a fitted period at an instant in the workshop's zone. */
export function endFromForm(form: FormData, actor: Actor): void {
	endFittedPeriod(getLedger(), actor, neededId(form, 'period'), workshopInstant(form, 'until'));
}

function workshopInstant(form: FormData, name: string): string {
	const instant = zonedInstant(text(form, name), getSettings(getLedger()).timeZone);
	if (!instant)
		throw new LedgerRefusal('wrong-value', 'Give the day and the time of day, as in 2026-05-04 18:30.');
	return instant;
}
