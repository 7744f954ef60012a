import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Actor } from '../actor';
import { attachFile } from '../hardware/attachments';
import { overrideBenchCheck, recordBenchCheck } from '../hardware/benchChecks';
import { findBuild } from '../hardware/builds';
import { changeBuild } from '../hardware/changeBuild';
import type { BuildContentsInput } from '../hardware/checkBuildContents';
import type { PartInput } from '../hardware/checkPart';
import { createPart } from '../hardware/parts';
import type { Ledger } from '../ledger/openLedger';
import { ringDrawing } from './ringDrawing';

/** What of workshop/builds.json the ledger takes over; builds by their ids in the programme. */
interface ExampleBuilds {
	readonly parts: readonly (PartInput & { readonly id: string })[];
	readonly builds: readonly {
		readonly build: string;
		readonly copiedFrom?: string;
		readonly contents: Omit<BuildContentsInput, 'name' | 'description' | 'bill'> & {
			readonly bill: readonly { readonly part: string; readonly quantity: number; readonly note?: string }[];
		};
		readonly override?: { readonly at: string; readonly reason: string };
		readonly check?: { readonly at: string; readonly staticTorqueNm: number; readonly note?: string };
		/** caption of a drawing that is attached */
		readonly drawing?: string;
	}[];
}

const EXAMPLE = { example: true };

/**
 * Puts the bills of parts, torques and bench checks of the example workshop into the ledger. Belongs in the
 * caller's transaction, after the builds and before any ride. An example that came without the file has none.
 */
export function installBuilds(
	ledger: Ledger,
	actor: Actor,
	folder: string,
	builds: ReadonlyMap<string, number>
): void {
	const example = readBuilds(folder);
	if (!example) return;
	const parts = new Map(
		example.parts.map(({ id, ...part }) => [id, createPart(ledger, actor, freeMark(ledger, part), EXAMPLE)])
	);
	for (const { build, copiedFrom, contents, override, check } of example.builds) {
		const buildId = builds.get(build) ?? NaN;
		const { name, description, stepHubDeg, rowVersion } = findBuild(ledger, buildId);
		const bill = contents.bill.map(({ part, ...line }) => ({ ...line, partId: parts.get(part) ?? NaN }));
		const builtBy = contents.builtAt ? actor.personId : null;
		const whole = { name, description, stepHubDeg, builtBy, ...contents, bill };
		changeBuild(ledger, actor, buildId, rowVersion, whole, EXAMPLE);
		if (copiedFrom)
			ledger.database
				.prepare('UPDATE build SET copied_from = ? WHERE id = ?')
				.run(builds.get(copiedFrom), buildId);
		if (override)
			overrideBenchCheck(ledger, actor, buildId, override.reason, { ...EXAMPLE, at: override.at });
		const passed = { torqueHeld: true, coastsFreely: true, noCreep: true };
		if (check) recordBenchCheck(ledger, actor, buildId, { ...check, ...passed }, EXAMPLE);
	}
}

/** Attaches the drawings of the example; outside of a transaction, since files are written. */
export async function attachDrawings(
	ledger: Ledger,
	actor: Actor,
	folder: string,
	builds: ReadonlyMap<string, number>
): Promise<void> {
	for (const { build, drawing, contents } of readBuilds(folder)?.builds ?? []) {
		if (!drawing) continue;
		const part = readBuilds(folder)!.parts.find(
			({ id, kind }) => kind === 'ratchet ring' && contents.bill.some((line) => line.part === id)
		);
		const of = { subject: 'build', subjectId: builds.get(build) ?? NaN } as const;
		const bytes = ringDrawing(part?.pointsOfEngagement ?? 36);
		await attachFile(ledger, actor, { ...of, name: 'ring.png', bytes, caption: drawing }, EXAMPLE);
	}
}

function readBuilds(folder: string): ExampleBuilds | null {
	const file = join(folder, 'workshop', 'builds.json');
	return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as ExampleBuilds) : null;
}

/** The workshop may have a part of this number itself. */
function freeMark(ledger: Ledger, part: PartInput): PartInput {
	const taken = ledger.database.prepare('SELECT 1 FROM part WHERE number = ? AND revision = ? AND batch = ?');
	const batch = part.batch ?? '';
	if (!taken.get(part.number, part.revision ?? '', batch)) return part;
	return { ...part, batch: `${batch} (example)`.trim() };
}
