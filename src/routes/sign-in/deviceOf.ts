import type { Device } from '$lib/server';

/** What kind of device asks, as far as it says so: enough to tell one's own browsers apart in a list. */
export function deviceOf(request: Request): Device {
	return /mobi|android|iphone|ipad/i.test(request.headers.get('user-agent') ?? '') ? 'phone' : 'computer';
}
