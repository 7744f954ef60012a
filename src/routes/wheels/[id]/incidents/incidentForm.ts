import { getLedger, getSettings, LedgerRefusal, type IncidentInput } from '$lib/server';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { decimal, rowId, text } from '../../../forms';

/** A report as it was typed; times are the workshop's. */
export function incidentOfForm(form: FormData): IncidentInput {
	const at = zonedInstant(text(form, 'at'), getSettings(getLedger()).timeZone);
	if (!at) throw new LedgerRefusal('wrong-value', 'Give the day and the time of day, if only about.');
	return { ...factsOf(form), at };
}

/** A report for the form after a refusal. */
export interface TypedIncident extends IncidentInput {
	/** the odometer as it was typed, which may be no number */
	odometerTyped?: string;
}

/** The same as it stands in the fields, the time by the workshop's clock. */
export function typedIncident(form: FormData): TypedIncident {
	return { ...factsOf(form), at: text(form, 'at'), odometerTyped: text(form, 'odometerKm') };
}

function factsOf(form: FormData): Omit<IncidentInput, 'at'> {
	const odometerKm = decimal(form, 'odometerKm');
	return {
		reportedBy: rowId(form, 'reportedBy'),
		odometerM: odometerKm === null ? null : odometerKm * 1000,
		what: text(form, 'what'),
		felt: text(form, 'felt'),
		severity: text(form, 'severity'),
		injured: text(form, 'injured') === 'yes'
	};
}
