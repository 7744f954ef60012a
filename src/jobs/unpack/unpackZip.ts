import type { FileRefusal } from '../analysis/messages';
import { judgeMember } from './judgeMember';
import { listMembers, openZip, type Member } from './listMembers';
import type { MemberFacts, MemberOutcome, UnpackRequest } from './messages';
import { UnpackRefused } from './unpackRefusal';
import { writeMember } from './writeMember';

export interface UnpackListener {
	begun(facts: MemberFacts): void;
	/** resolves when the next one may follow */
	member(facts: MemberFacts, outcome: MemberOutcome): Promise<void>;
}

/**
 * Unpacks the files of an archive that are not recorded yet, one after the other, in the order of its list.
 *
 * @returns null, or why the archive as a whole is not taken
 * @throws what the machine throws, a full disk for instance
 */
export async function unpackZip(
	request: UnpackRequest,
	listener: UnpackListener
): Promise<FileRefusal | null> {
	const recorded = new Set(request.recorded);
	let zip;
	try {
		zip = await openZip(request.path);
		for (const member of await listMembers(zip, request.limits)) {
			if (recorded.has(member.facts.member)) continue;
			listener.begun(member.facts);
			const outcome = await outcomeOf(() => unpackMember(zip!, member, request));
			await listener.member(member.facts, outcome);
		}
		return null;
	} catch (error) {
		if (error instanceof UnpackRefused) return error.refusal;
		throw error;
	} finally {
		zip?.close();
	}
}

async function unpackMember(
	zip: Parameters<typeof writeMember>[0],
	member: Member,
	{ limits, into }: UnpackRequest
): Promise<MemberOutcome> {
	const { facts, entry } = member;
	return judgeMember(facts.name, entry, limits) ?? (await writeMember(zip, member, `${into}${facts.member}`));
}

async function outcomeOf(unpack: () => Promise<MemberOutcome>): Promise<MemberOutcome> {
	try {
		return await unpack();
	} catch (error) {
		if (error instanceof UnpackRefused) return { kind: 'refused', refusal: error.refusal };
		throw error;
	}
}
