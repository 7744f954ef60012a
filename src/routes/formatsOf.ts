import { getLedger, getSettings } from '$lib/server';
import { createFormats, type Formats } from '$lib/ui/formats';
import { preferredLocale } from '$lib/ui/preferredLocale';

/** How figures are written for whoever asks: the browser's language, the workshop's zone. */
export function formatsOf(request: Request): Formats {
	return createFormats(
		preferredLocale(request.headers.get('accept-language')),
		getSettings(getLedger()).timeZone
	);
}
