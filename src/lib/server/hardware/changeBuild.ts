import { changedFacts, type Fact } from '$lib/hardware/changedFacts';
import type { Actor } from '../actor';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { refuseStale } from '../ledger/refuseStale';
import { LedgerRefusal } from '../refusal';
import { buildContents, type BuildContents, type TorqueLine } from './buildContents';
import { buildLock } from './buildLock';
import { buildTrail } from './buildTrail';
import { findBuild } from './builds';
import { checkBuildContents, type BuildContentsInput } from './checkBuildContents';
import { refuseSerialClash } from './refuseSerialClash';
import { refuseTakenName } from './refuseTakenName';
import { voidBenchChecks } from './voidBenchChecks';
import { writeBuildContents } from './writeBuildContents';

/** Words and dates about a build; the rest is its hardware. */
const ABOUT_IT = ['name', 'description', 'notes', 'builtBy', 'builtMs'] as const;

/**
 * Changes a build as a whole: words, bill of parts, torques. A build that rides or a release refer to can
 * only be completed. A change of the hardware (not its completion) ends what a bench check said of it.
 *
 * @param rowVersion that stood in the form
 * @param options.example the invented programme keeps its dates, whatever this machine's clock says
 * @throws LedgerRefusal not-found; wrong-value; conflict when somebody else changed it meanwhile, when it
 *   can only be completed, when another build has the name, or when a piece is in another hub at that time
 */
export function changeBuild(
	ledger: Ledger,
	actor: Actor,
	buildId: number,
	rowVersion: number,
	input: BuildContentsInput,
	options: { example?: boolean } = {}
): void {
	ledger.database
		.transaction(() => {
			const { rowVersion: stored, name } = findBuild(ledger, buildId);
			refuseStale(ledger, 'build', buildId, stored, rowVersion);
			const before = buildContents(ledger, buildId)!;
			const checked = checkBuildContents(ledger, input, options);
			const atMs = (options.example ? checked.builtMs : null) ?? ledger.now();
			const torques = checked.torques.map((line) => tightenedBy(line, before.torques, actor, atMs));
			const after: BuildContents = { ...checked, torques };
			if (name.toLowerCase() !== after.name.toLowerCase()) refuseTakenName(ledger, 'build', after.name);
			refuseChangeOfLocked(ledger, buildId, before, after);
			const trail = buildTrail(ledger, before, after);
			if (Object.keys(trail).length === 0) return;
			writeBuildContents(ledger, buildId, after);
			leaveTrail(ledger, actor, 'changed', 'build', buildId, trail);
			if (changedFacts(hardwareOf(before), hardwareOf(after)).length > 0)
				voidBenchChecks(ledger, actor, buildId, 'the hardware was changed');
			refuseSerialClash(ledger, buildId);
		})
		.immediate();
}

function refuseChangeOfLocked(
	ledger: Ledger,
	buildId: number,
	before: BuildContents,
	after: BuildContents
): void {
	const lock = buildLock(ledger, buildId);
	const [changed] = lock ? changedFacts(factsOf(before), factsOf(after)) : [];
	if (changed === undefined) return;
	throw new LedgerRefusal(
		'conflict',
		`This build cannot be changed any more (${WORDS[changed.split(' ')[0]] ?? changed}), because ${lock}; what was left empty can still be filled in. Make a new revision of it instead: this one then stays readable as it was.`
	);
}

const WORDS: Readonly<Record<string, string>> = {
	stepHubDeg: 'engagement step',
	builtBy: 'who built it',
	builtMs: 'when it was built',
	endFloatMm: 'end float',
	bill: 'bill of parts'
};

/** A torque that is written down now was tightened by whoever writes it down, unless it stood there before. */
function tightenedBy(
	line: TorqueLine,
	before: readonly TorqueLine[],
	actor: Actor,
	nowMs: number
): TorqueLine {
	if (line.recordedNm === null) return line;
	const known = before.find(({ joint }) => joint.toLowerCase() === line.joint.toLowerCase());
	return known?.recordedNm === line.recordedNm
		? { ...line, personId: known.personId, atMs: known.atMs }
		: { ...line, personId: actor.personId, atMs: nowMs };
}

function hardwareOf(contents: BuildContents): Fact {
	return Object.fromEntries(
		Object.entries(factsOf(contents) as Record<string, Fact>).filter(
			([name]) => !(ABOUT_IT as readonly string[]).includes(name)
		)
	);
}

function factsOf(contents: BuildContents): Fact {
	return contents as unknown as Fact;
}
