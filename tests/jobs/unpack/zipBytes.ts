import { crc32, deflateRawSync } from 'node:zlib';

/** One file of an archive that a test builds by hand; what is not given is honest. */
export interface TestMember {
	name: string | Uint8Array;
	content: Uint8Array | string;
	stored?: boolean;
	/** general purpose bits; 0x800 = the name is UTF-8 */
	flags?: number;
	method?: number;
	/** unix file type and rights */
	mode?: number;
	/** what the list states instead of the truth */
	statedBytes?: number;
	statedCrc?: number;
	/** where the list says that it begins */
	statedOffset?: number;
	statedPackedBytes?: number;
	/** sizes and offset in the extra field of large archives (zip64) */
	large?: boolean;
	extra?: Uint8Array;
}

/** A zip archive, byte by byte as APPNOTE 6.3.10 (sections 4.3.7, 4.3.12, 4.3.16) lays it out. */
export function zipBytes(members: readonly TestMember[]): Buffer {
	const local: Buffer[] = [];
	const list: Buffer[] = [];
	let offset = 0;
	for (const member of members) {
		const name = Buffer.from(member.name as Uint8Array);
		const content = Buffer.from(member.content as Uint8Array);
		const packed = member.stored ? content : deflateRawSync(content);
		const facts = {
			flags: member.flags ?? 0,
			method: member.method ?? (member.stored ? 0 : 8),
			crc: member.statedCrc ?? crc32(content),
			packedBytes: member.statedPackedBytes ?? packed.length,
			bytes: member.statedBytes ?? content.length,
			offset: member.statedOffset ?? offset
		};
		const header = Buffer.alloc(30);
		header.writeUInt32LE(0x04034b50, 0);
		writeFacts(header, 4, facts);
		header.writeUInt16LE(name.length, 26);
		local.push(header, name, packed);
		list.push(listEntry(member, name, facts));
		offset += header.length + name.length + packed.length;
	}
	const directory = Buffer.concat(list);
	const end = Buffer.alloc(22);
	end.writeUInt32LE(0x06054b50, 0);
	end.writeUInt16LE(members.length, 8);
	end.writeUInt16LE(members.length, 10);
	end.writeUInt32LE(directory.length, 12);
	end.writeUInt32LE(offset, 16);
	return Buffer.concat([...local, directory, end]);
}

interface Facts {
	flags: number;
	method: number;
	crc: number;
	packedBytes: number;
	bytes: number;
	offset: number;
}

/** The part that both headers have: version, flags, method, time, date, checksum and sizes. */
function writeFacts(header: Buffer, at: number, facts: Facts, large = false): void {
	header.writeUInt16LE(20, at);
	header.writeUInt16LE(facts.flags, at + 2);
	header.writeUInt16LE(facts.method, at + 4);
	header.writeUInt32LE(facts.crc, at + 10);
	header.writeUInt32LE(large ? 0xffffffff : facts.packedBytes, at + 14);
	header.writeUInt32LE(large ? 0xffffffff : facts.bytes, at + 18);
}

function listEntry(member: TestMember, name: Buffer, facts: Facts): Buffer {
	const extra = member.large ? largeField(facts) : Buffer.from(member.extra ?? []);
	const header = Buffer.alloc(46);
	header.writeUInt32LE(0x02014b50, 0);
	header.writeUInt16LE(0x031e, 4);
	writeFacts(header, 6, facts, member.large);
	header.writeUInt16LE(name.length, 28);
	header.writeUInt16LE(extra.length, 30);
	header.writeUInt32LE(((member.mode ?? 0o100644) << 16) >>> 0, 38);
	header.writeUInt32LE(member.large ? 0xffffffff : facts.offset, 42);
	return Buffer.concat([header, name, extra]);
}

function largeField({ bytes, packedBytes, offset }: Facts): Buffer {
	const field = Buffer.alloc(28);
	field.writeUInt16LE(1, 0);
	field.writeUInt16LE(24, 2);
	[bytes, packedBytes, offset].forEach((value, i) => field.writeBigUInt64LE(BigInt(value), 4 + 8 * i));
	return field;
}
