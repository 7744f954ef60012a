export type HostAnswer = 'ours' | 'other loopback name' | 'foreign';

const LOOPBACK_NAMES = new Set(['127.0.0.1', 'localhost', '[::1]']);

/**
 * Whether a request means this server. A page of another site can make its own name point to 127.0.0.1 and
 * then read our answers as its own; it cannot change the Host header to one of ours.
 *
 * @param hostHeader as the browser sent it: name and port
 * @param origin what the server is known as, e.g. "http://127.0.0.1:4710"; null = development server,
 *   whose port is not known here
 */
export function hostAnswer(hostHeader: string | null, origin: string | null): HostAnswer {
	const parts = /^(\[[0-9a-f:.]+\]|[a-z0-9.-]+)(?::(\d{1,5}))?$/.exec((hostHeader ?? '').toLowerCase());
	if (!parts) return 'foreign';
	if (origin === null) return LOOPBACK_NAMES.has(parts[1]) ? 'ours' : 'foreign';
	const own = new URL(origin);
	// the address it was told to listen on may be another one of this machine, e.g. 127.0.0.2
	if (parts[1] !== own.hostname && !LOOPBACK_NAMES.has(parts[1])) return 'foreign';
	const usual = own.protocol === 'https:' ? '443' : '80';
	if ((parts[2] ?? usual) !== (own.port || usual)) return 'foreign';
	return parts[1] === own.hostname ? 'ours' : 'other loopback name';
}

/**
 * Whether a request that changes something comes from one of our own pages. Cookies do not tell ports
 * apart, so another program's page on this machine would carry ours.
 *
 * @param header the Origin header; null = not sent (terminal programs, old browsers' own forms)
 */
export function comesFromUs(header: string | null, origin: string): boolean {
	return header === null || header === origin;
}
