import {
	getLedger,
	LedgerRefusal,
	putBackAttachment,
	putBackFittedPeriod,
	putBackRow,
	putBackStack,
	type Actor,
	type AttachmentSubject
} from '$lib/server';
import { neededId, text } from './forms';

const ROWS = ['service', 'odometer_reading', 'unlogged_distance', 'wheel_on_bike', 'inspection'] as const;

/** Puts back what the form `Withdrawn.svelte` names, if it belongs to the wheel or build whose page asks. */
export function putBackFromForm(
	form: FormData,
	actor: Actor,
	of: { wheelId?: number; buildId?: number }
): void {
	const table = text(form, 'table');
	const id = neededId(form, 'row');
	const row = ROWS.find((one) => one === table);
	if (row && of.wheelId !== undefined) putBackRow(getLedger(), actor, row, { id, wheelId: of.wheelId });
	else if (table === 'fitted_period') putBackFittedPeriod(getLedger(), actor, id, of);
	else if (table === 'hub_stack' && of.buildId !== undefined)
		putBackStack(getLedger(), actor, of.buildId, id);
	else throw new LedgerRefusal('wrong-value', 'It is not said what to put back.');
}

/** Puts an attachment of a thing back where it was. */
export function putBackAttachmentFromForm(
	form: FormData,
	actor: Actor,
	of: { subject: AttachmentSubject; subjectId: number }
): void {
	putBackAttachment(getLedger(), actor, of, neededId(form, 'attachment'));
}
