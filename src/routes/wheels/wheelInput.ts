import type { WheelInput } from '$lib/server';
import { workshopInstant } from '../fitting';
import { decimal, text } from '../forms';
import { teeth } from '../teeth';

/** What the fields of a wheel say; an empty one says nothing. */
export function wheelInput(form: FormData): WheelInput {
	return {
		name: text(form, 'name'),
		hub: text(form, 'hub'),
		serial: text(form, 'serial'),
		overLocknutMm: decimal(form, 'overLocknutMm'),
		axle: text(form, 'axle'),
		rimOffsetWantedMm: decimal(form, 'rimOffsetWantedMm'),
		tyreEtrto: text(form, 'tyreEtrto'),
		cassette: teeth(form, 'cassette'),
		circumferenceM: decimal(form, 'circumferenceM'),
		existsFrom: text(form, 'existsFrom') === '' ? null : workshopInstant(form, 'existsFrom')
	};
}
