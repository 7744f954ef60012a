import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import type { MemberOutcome, UnpackLimits } from '../../src/jobs/unpack/messages';
import { unpackZip } from '../../src/jobs/unpack/unpackZip';
import { zipBytes, type TestMember } from '../jobs/unpack/zipBytes';
import { cutOff, flipBytes, splice } from './damage';
import { hostileName } from './judgeName';
import { oneOf, type Pick } from './seeded';
import { CSV_RIDE, FIT_RIDE, GPX_RIDE } from './soundRides';

const LIMITS: UnpackLimits = { members: 12, totalBytes: 1e6, memberBytes: 5e5, ratio: 200, depth: 6 };
const CONTENTS = [FIT_RIDE, CSV_RIDE, GPX_RIDE, Buffer.from('no ride'), Buffer.alloc(400_000)];
const folder = mkdtempSync(join(tmpdir(), 'slip-ledger-fuzz-'));
process.once('exit', () => rmSync(folder, { recursive: true, force: true }));

/**
 * Unpacks a hostile archive: nothing may be written but whole files that were put into it, within the limits, in
 * the place that was named.
 */
export async function judgeArchive(pick: Pick): Promise<void> {
	const members = Array.from({ length: pick(LIMITS.members + 2) }, () => hostileMember(pick));
	const sound = zipBytes(members);
	const damages = [
		(bytes: Uint8Array) => bytes,
		flipBytes,
		cutOff,
		(b: Uint8Array, p: Pick) => splice(b, b, p)
	];
	const path = join(folder, 'archive');
	const out = join(folder, 'out');
	writeFileSync(path, oneOf(pick, damages)(sound, pick));
	const known = new Set(CONTENTS.map((content) => createHash('sha256').update(content).digest('hex')));
	let written = 0;
	const refusal = await unpackZip(
		{ kind: 'unpack', path, into: out, limits: LIMITS, recorded: [] },
		{
			begun: () => {},
			member: async (facts, outcome) => {
				check(outcome, `${out}${facts.member}`, known);
				if (outcome.kind === 'written') written += outcome.bytes;
			}
		}
	);
	if (refusal && (refusal.sentence === '' || refusal.detail === ''))
		throw new Error('a refusal without a word');
	if (written > LIMITS.totalBytes) throw new Error(`${written} bytes written`);
	const stray = readdirSync(folder).filter((name) => !/^(archive|out\d+)$/.test(name));
	if (stray.length > 0) throw new Error(`written elsewhere: ${stray.join(', ')}`);
	for (const name of readdirSync(folder)) rmSync(join(folder, name));
}

function check(outcome: MemberOutcome, path: string, known: ReadonlySet<string>): void {
	if (outcome.kind !== 'written') return;
	const content = readFileSync(path);
	const sha256 = createHash('sha256').update(content).digest('hex');
	if (outcome.path !== path || outcome.sha256 !== sha256 || outcome.bytes !== statSync(path).size)
		throw new Error(`${basename(path)} is not what was said`);
	if (!known.has(sha256)) throw new Error(`${content.length} bytes came out that nobody put in`);
}

function hostileMember(pick: Pick): TestMember {
	const content = oneOf(pick, CONTENTS);
	const member: TestMember = {
		name: hostileName(pick),
		content,
		stored: pick(4) === 0,
		flags: pick(3) === 0 ? 0x800 : 0
	};
	switch (pick(14)) {
		case 0:
			return { ...member, mode: oneOf(pick, [0o120777, 0o060644, 0o010644, 0o040755]) };
		case 1:
			return { ...member, flags: pick(2) === 0 ? 1 : 0x41 };
		case 2:
			return { ...member, method: pick(100) };
		case 3:
			return { ...member, statedBytes: pick(800_000) };
		case 4:
			return { ...member, statedOffset: pick(5000) };
		case 5:
			return { ...member, statedPackedBytes: pick(100_000) };
		case 6:
			return { ...member, large: true };
		case 7:
			return { ...member, name: 'inner.zip', content: zipBytes([{ name: 'a.fit', content: FIT_RIDE }]) };
		default:
			return member;
	}
}
