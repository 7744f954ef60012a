import { attachFile, getLedger, withdrawAttachment, type Actor, type AttachmentSubject } from '$lib/server';
import { neededId, text } from './forms';

/** Attaches the file of the form `Attachments.svelte` to a thing. */
export async function attachFromForm(
	form: FormData,
	actor: Actor,
	of: { subject: AttachmentSubject; subjectId: number }
): Promise<void> {
	await attachFile(getLedger(), actor, {
		...of,
		...(await chosenFile(form)),
		caption: text(form, 'caption')
	});
}

/** The file that the form's field "file" holds; an empty one when none was chosen. */
export async function chosenFile(form: FormData): Promise<{ name: string; bytes: Uint8Array }> {
	const file = form.get('file');
	const chosen = file instanceof File ? file : new File([], '');
	return { name: chosen.name, bytes: new Uint8Array(await chosen.arrayBuffer()) };
}

/** Takes an attachment of a thing out of sight, with the reason of the form. */
export function withdrawAttachmentFromForm(
	form: FormData,
	actor: Actor,
	of: { subject: AttachmentSubject; subjectId: number }
): void {
	withdrawAttachment(getLedger(), actor, of, neededId(form, 'attachment'), text(form, 'reason'));
}
