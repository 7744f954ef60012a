const TABLE = Uint16Array.from({ length: 256 }, (_, byte) => {
	let remainder = byte;
	for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? (remainder >> 1) ^ 0xa001 : remainder >> 1;
	return remainder;
});

/**
 * The checksum of a FIT file (FIT protocol, CRC: 16 bits, reflected polynomial A001 hex, start value 0).
 * @param bytes the upload
 * @param from first byte
 * @param to one past the last byte
 * @returns 0 to 65535
 * @example fitChecksum(new TextEncoder().encode('123456789'), 0, 9) // bb3d hex, the usual check value
 */
export function fitChecksum(bytes: Uint8Array, from: number, to: number): number {
	let remainder = 0;
	for (let i = from; i < to; i++) remainder = (remainder >> 8) ^ TABLE[(remainder ^ bytes[i]) & 255];
	return remainder;
}
