import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Actor } from '../actor';
import { closeIncident } from '../hardware/incidentsClose';
import { reportIncident, type IncidentInput } from '../hardware/incidentsReport';
import type { InspectionInput } from '../hardware/inspectionsInput';
import { recordInspection } from '../hardware/inspectionsSave';
import { listPartRecords } from '../hardware/partRecords';
import { listSpacers, stockSpacers, type SpacerInput } from '../hardware/spacersStock';
import type { StackElementInput, StackInput } from '../hardware/stackInput';
import { addStack } from '../hardware/stackSave';
import type { Ledger } from '../ledger/openLedger';

/** What of workshop/stack-and-inspections.json the ledger takes over; wheels, builds and riders by their ids. */
interface Measurements {
	readonly spacers: readonly SpacerInput[];
	readonly stacks: readonly (Omit<StackInput, 'elements'> & {
		readonly build: string;
		readonly dishedOn?: string;
		readonly elements: readonly (StackElementInput & { readonly partNumber?: string })[];
	})[];
	readonly inspections: readonly (Omit<InspectionInput, 'inspectedBy'> & { readonly wheel: string })[];
	readonly incidents: readonly (Omit<IncidentInput, 'reportedBy' | 'injured'> & {
		readonly wheel: string;
		readonly rider?: string;
		readonly closing?: { readonly outcome: string; readonly reason: string };
	})[];
}

/**
 * Puts stacks, spacers, inspections and incidents of the example workshop into the ledger. Belongs in the
 * caller's transaction, after wheels, builds, fitted periods and riders. An example that came without the
 * file has none.
 */
export function installInspections(
	ledger: Ledger,
	actor: Actor,
	folder: string,
	ids: {
		readonly wheels: ReadonlyMap<string, number>;
		readonly builds: ReadonlyMap<string, number>;
		readonly riders: ReadonlyMap<string, number>;
	}
): void {
	const file = join(folder, 'workshop', 'stack-and-inspections.json');
	if (!existsSync(file)) return;
	const { spacers, stacks, inspections, incidents } = JSON.parse(readFileSync(file, 'utf8')) as Measurements;
	const example = { example: true };
	const wheelOf = (name: string) => ids.wheels.get(name) ?? NaN;
	// a workshop's own drawer stays as it is
	const own = new Set(listSpacers(ledger).map(({ thicknessMm }) => thicknessMm));
	for (const spacer of spacers)
		if (!own.has(spacer.thicknessMm)) stockSpacers(ledger, actor, spacer, null, example);
	const stackIds = new Map<string, number>();
	const partOf = partsByNumber(ledger);
	for (const { build, dishedOn, elements: drawn, ...stack } of stacks) {
		const elements = drawn.map(({ partNumber, ...element }) => ({
			...element,
			partId: partOf.get(partNumber ?? '') ?? null
		}));
		const dishedOnId = dishedOn === undefined ? null : (stackIds.get(dishedOn) ?? null);
		const added = addStack(ledger, actor, ids.builds.get(build) ?? NaN, { ...stack, elements, dishedOnId });
		stackIds.set(stack.variant, added);
	}
	for (const { wheel, ...inspection } of inspections)
		recordInspection(ledger, actor, wheelOf(wheel), { ...inspection, inspectedBy: actor.personId }, example);
	for (const { wheel, rider, closing, ...incident } of incidents) {
		const reportedBy = rider === undefined ? null : (ids.riders.get(rider) ?? null);
		const report = { ...incident, reportedBy, injured: false };
		const incidentId = reportIncident(ledger, actor, wheelOf(wheel), report, example);
		if (closing) closeIncident(ledger, actor, incidentId, closing, 1);
	}
}

/** The example's parts; of two revisions of a number the later one. */
function partsByNumber(ledger: Ledger): ReadonlyMap<string, number> {
	const parts = listPartRecords(ledger).filter(({ example }) => example === 1);
	return new Map(parts.map(({ number, id }) => [number, id]));
}
