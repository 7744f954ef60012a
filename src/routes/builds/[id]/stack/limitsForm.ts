import { getLedger, setHardwareLimits, type Actor, type HardwareLimits } from '$lib/server';
import { decimal, text } from '../../../forms';

const NAMES = ['tooWideMm', 'rimOffsetMm', 'engagementDepthMm', 'endFloatMm', 'spacerToleranceMm'] as const;

/** Takes over limits that were changed on the form; what another person changed meanwhile is refused. */
export function limitsFromForm(form: FormData, actor: Actor): void {
	const wanted: Partial<Record<keyof HardwareLimits, number | null>> = {};
	const seen: Partial<Record<keyof HardwareLimits, number | null>> = {};
	const take = (field: string, name: keyof HardwareLimits, factor: number) => {
		if (!form.has(field) || text(form, field) === text(form, `was-${field}`)) return;
		const inUnits = (value: number | null) => (value === null ? null : value * factor);
		wanted[name] = inUnits(decimal(form, field));
		seen[name] = inUnits(decimal(form, `was-${field}`));
	};
	for (const name of NAMES) take(name, name, 1);
	take('runInKm', 'runInM', 1000);
	setHardwareLimits(getLedger(), actor, wanted as Partial<HardwareLimits>, seen as Partial<HardwareLimits>);
}
