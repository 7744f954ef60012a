import { getLedger, getSettings, LedgerRefusal, type IncidentInput } from '$lib/server';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { decimal, rowId, text } from '../../../forms';

/** A report as it was typed; times are the workshop's. */
export function incidentOfForm(form: FormData): IncidentInput {
	const at = zonedInstant(text(form, 'at'), getSettings(getLedger()).timeZone);
	if (!at) throw new LedgerRefusal('wrong-value', 'Give the day and the time of day, if only about.');
	return { ...typedIncident(form), at };
}

/** The same as it stands in the fields, the time by the workshop's clock: for the form after a refusal. */
export function typedIncident(form: FormData): IncidentInput {
	const odometerKm = decimal(form, 'odometerKm');
	return {
		at: text(form, 'at'),
		reportedBy: rowId(form, 'reportedBy'),
		odometerM: odometerKm === null ? null : odometerKm * 1000,
		what: text(form, 'what'),
		felt: text(form, 'felt'),
		severity: text(form, 'severity'),
		injured: text(form, 'injured') === 'yes'
	};
}
