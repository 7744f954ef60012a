import { getLedger, getSettings, LedgerRefusal, type IncidentInput } from '$lib/server';
import { zonedInstant } from '$lib/ui/zonedInstant';
import { decimal, rowId, text } from '../../../forms';

/** A report as it was typed; times are the workshop's. */
export function incidentOfForm(form: FormData): IncidentInput {
	const at = zonedInstant(text(form, 'at'), getSettings(getLedger()).timeZone);
	if (!at) throw new LedgerRefusal('wrong-value', 'Give the day and the time of day, if only about.');
	const odometerKm = decimal(form, 'odometerKm');
	return {
		at,
		reportedBy: rowId(form, 'reportedBy'),
		odometerM: odometerKm === null ? null : odometerKm * 1000,
		what: text(form, 'what'),
		felt: text(form, 'felt'),
		severity: text(form, 'severity'),
		injured: text(form, 'injured') === 'yes'
	};
}
