/** Whether a name or address of a host means this machine alone: "127.0.0.1", "localhost", "::1" or "[::1]". */
export function isLoopbackName(host: string): boolean {
	return /^(127(\.\d{1,3}){3}|localhost|::1|\[::1\])$/i.test(host);
}

/** Whether the other end of a connection is on this machine, also where IPv4 is written as IPv6. */
export function isLoopbackAddress(address: string | undefined): boolean {
	return isLoopbackName((address ?? '').replace(/^::ffff:/i, ''));
}
