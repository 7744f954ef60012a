import type { Actor } from '../actor';
import type { Ledger } from '../ledger/openLedger';
import { ownsFeltPhoto } from '../marks/feltPhotos';
import { ownsRide } from '../rides/ownRides';
import { ownsUpload } from '../store/ownUploads';

/** Whose data an address names: a ride, an upload under way, a photo of a felt slip. */
const OWNED: Readonly<Record<string, 'ride' | 'upload' | 'photo'>> = {
	'/attachments/[id]': 'photo',
	'/own/[id]': 'ride',
	'/rides/[id]/events.csv': 'ride',
	'/rides/[id]/channels': 'ride',
	'/uploads/[id]': 'upload',
	'/uploads/[id]/finish': 'upload'
};

/**
 * Whether what an address names may be touched by whoever asks. Riders touch their own alone; an address with a
 * number in it that is not named here is refused to them, so that a new one cannot be forgotten.
 *
 * @param params of the route, as the framework found them
 */
export function mayTouch(
	ledger: () => Ledger,
	actor: Actor | null,
	routeId: string | null,
	params: Readonly<Partial<Record<string, string>>>
): boolean {
	if (actor?.role !== 'rider' || routeId === null || Object.keys(params).length === 0) return true;
	const kind = Object.hasOwn(OWNED, routeId) ? OWNED[routeId] : null;
	const id = params.id ?? '';
	if (kind === 'upload') return ownsUpload(ledger(), actor.personId, id);
	if (!/^\d{1,15}$/.test(id)) return false;
	if (kind === 'photo') return ownsFeltPhoto(ledger(), actor.personId, Number(id));
	return kind === 'ride' && ownsRide(ledger(), actor.personId, Number(id));
}
