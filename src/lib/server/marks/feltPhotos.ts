import type { Actor } from '../actor';
import { attachFile, withdrawAttachment } from '../hardware/attachments';
import { mediaType } from '../hardware/mediaType';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { Instant } from '../views';

/** as many photos as one felt slip takes */
export const FELT_PHOTOS = 4;

/** A photo that a rider took of what slipped: hub, chain, the place of the drivetrain. */
export interface FeltPhoto {
	/** of the attachment */
	id: number;
	at: Instant;
	by: string;
	byId: number;
}

/** The photos of a felt slip that stand, the oldest first. */
export function photosOfFelt(ledger: Ledger, feltId: number): FeltPhoto[] {
	return ledger.database
		.prepare<[number], Omit<FeltPhoto, 'at'> & { atMs: number }>(
			`SELECT a.id, a.at_ms AS atMs, p.code AS by, p.id AS byId FROM attachment a
			JOIN person p ON p.id = a.by
			WHERE a.subject = 'felt slip' AND a.subject_id = ? AND a.withdrawn_ms IS NULL
				AND NOT EXISTS (SELECT 1 FROM erased_source e WHERE e.sha256 = a.sha256) ORDER BY a.id`
		)
		.all(feltId)
		.map(({ atMs, ...row }) => ({ ...row, at: toInstant(atMs) }));
}

/**
 * Keeps a photo with a felt slip, for the workshop to see beside the ride.
 *
 * @param of.rideId the ride whose page asks
 * @returns id of the attachment
 * @throws LedgerRefusal not-found; not-allowed for what somebody else felt; wrong-value for what is no picture;
 *   conflict when there are as many as it takes; and all that `attachFile` refuses
 */
export async function attachFeltPhoto(
	ledger: Ledger,
	actor: Actor,
	of: { rideId: number; feltId: number },
	file: { name: string; bytes: Uint8Array }
): Promise<number> {
	refuseUnlessOwn(ledger, actor, of);
	const type = file.bytes.byteLength > 0 ? mediaType(file.bytes) : null;
	if (file.bytes.byteLength > 0 && !type?.startsWith('image/'))
		throw new LedgerRefusal('wrong-value', 'Only photos are taken here: JPEG, PNG or WebP.');
	const input = { ...file, subject: 'felt slip', subjectId: of.feltId } as const;
	return attachFile(ledger, actor, input, { most: FELT_PHOTOS });
}

/**
 * Takes a photo out of sight. Who wants its bytes gone asks for an erasure.
 *
 * @throws LedgerRefusal not-found; not-allowed for what somebody else attached; conflict
 */
export function takeBackFeltPhoto(
	ledger: Ledger,
	actor: Actor,
	of: { rideId: number; feltId: number },
	attachmentId: number
): void {
	refuseUnlessOwn(ledger, actor, of);
	const photo = photosOfFelt(ledger, of.feltId).find(({ id }) => id === attachmentId);
	if (!photo) throw new LedgerRefusal('not-found', 'There is no such photo (any more).');
	if (actor.role === 'rider' && photo.byId !== actor.personId)
		throw new LedgerRefusal('not-allowed', 'Riders take back what they attached themselves.');
	const subject = { subject: 'felt slip', subjectId: of.feltId } as const;
	withdrawAttachment(ledger, actor, subject, attachmentId, 'taken away on the page of the ride');
}

/** Whether a photo is of a felt slip and was attached by this person. */
export function ownsFeltPhoto(ledger: Ledger, personId: number, attachmentId: number): boolean {
	const row = ledger.database
		.prepare<[number, number]>(`SELECT 1 FROM attachment WHERE id = ? AND by = ? AND subject = 'felt slip'`)
		.get(attachmentId, personId);
	return row !== undefined;
}

function refuseUnlessOwn(ledger: Ledger, actor: Actor, of: { rideId: number; feltId: number }): void {
	const felt = ledger.database
		.prepare<[number, number], { actorId: number }>(
			`SELECT actor_id AS actorId FROM felt_slip WHERE id = ? AND ride_id = ? AND taken_back_ms IS NULL`
		)
		.get(of.feltId, of.rideId);
	if (!felt) throw new LedgerRefusal('not-found', 'This slip is not written down (any more).');
	if (actor.role === 'rider' && felt.actorId !== actor.personId)
		throw new LedgerRefusal('not-allowed', 'Riders show what they felt themselves.');
}
