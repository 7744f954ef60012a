import { engagementMismatch } from '$lib/hardware/engagementMismatch';
import { refusedState, type BenchEvidence } from '$lib/hardware/refusedState';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { listAttachments, type AttachmentView } from './attachments';
import { benchEvidence, listBenchChecks, type BenchCheckRow } from './benchChecks';
import { billView, peopleCodes, torqueView, type BillLineView, type TorqueLineView } from './billViews';
import { buildContents } from './buildContents';
import { buildLock } from './buildLock';
import { listBuildRecords, type BuildRecord } from './builds';
import { differenceView, type BuildDifferenceView } from './differenceView';
import { listPeriods } from './periodRows';
import { listWheelRecords } from './wheels';

interface Named {
	id: number;
	name: string;
}

/** What a build is made of and how far it has come; rides and rates stand in `buildView`. */
export interface BuildHardwareView {
	id: number;
	name: string;
	description: string;
	state: BuildRecord['state'];
	example: boolean;
	revision: number;
	rowVersion: number;
	stepHubDeg: number | null;
	/** the build that this one goes back to, and those that go back to it */
	predecessor: Named | null;
	/** of the predecessor; else it began as its copy */
	isRevision: boolean;
	successors: Named[];
	/** why it can only be completed; null while it can be changed */
	lock: string | null;
	builtBy: string | null;
	builtAt: string | null;
	preload: string;
	endFloatMm: number | null;
	notes: string;
	bill: BillLineView[];
	torques: TorqueLineView[];
	/** sentences about parts whose points of engagement do not go with the build's step */
	engagementWarnings: string[];
	benchChecks: BenchCheckRow[];
	bench: BenchEvidence;
	/** why it cannot be put in test now; null when it can */
	testRefused: string | null;
	fittedNow: Named[];
	difference: BuildDifferenceView | null;
	attachments: AttachmentView[];
}

/** null when there is no such build */
export function buildHardware(ledger: Ledger, buildId: number): BuildHardwareView | null {
	const builds = listBuildRecords(ledger);
	const build = builds.find(({ id }) => id === buildId);
	const contents = buildContents(ledger, buildId);
	if (!build || !contents) return null;
	const predecessorId = build.revisionOf ?? build.copiedFrom;
	const bench = benchEvidence(ledger, buildId);
	const bill = billView(ledger, buildId);
	return {
		...named(build),
		description: build.description,
		state: build.state,
		example: build.example === 1,
		revision: build.revision,
		rowVersion: build.rowVersion,
		stepHubDeg: build.stepHubDeg,
		predecessor: builds.filter(({ id }) => id === predecessorId).map(named)[0] ?? null,
		isRevision: build.revisionOf !== null,
		successors: builds
			.filter(({ revisionOf, copiedFrom }) => revisionOf === buildId || copiedFrom === buildId)
			.map(named),
		lock: buildLock(ledger, buildId),
		builtBy: contents.builtBy === null ? null : (peopleCodes(ledger).get(contents.builtBy) ?? null),
		builtAt: contents.builtMs === null ? null : toInstant(contents.builtMs),
		preload: contents.preload,
		endFloatMm: contents.endFloatMm,
		notes: contents.notes,
		bill,
		torques: torqueView(ledger, buildId),
		engagementWarnings: bill.flatMap(({ part }) => {
			const sentence = engagementMismatch(part.name, part.pointsOfEngagement, build.stepHubDeg);
			return sentence ? [sentence] : [];
		}),
		benchChecks: listBenchChecks(ledger, buildId),
		bench,
		testRefused: refusedState(build.state, 'in test', bench, false),
		fittedNow: fittedNow(ledger, buildId),
		difference: differenceView(ledger, buildId),
		attachments: listAttachments(ledger, 'build', buildId)
	};
}

function named({ id, name }: BuildRecord): Named {
	return { id, name };
}

function fittedNow(ledger: Ledger, buildId: number): Named[] {
	const now = ledger.now();
	const wheelIds = new Set(
		listPeriods(ledger)
			.filter(
				(period) =>
					period.buildId === buildId &&
					period.fromMs <= now &&
					(period.untilMs === null || now < period.untilMs)
			)
			.map(({ wheelId }) => wheelId)
	);
	return listWheelRecords(ledger)
		.filter(({ id }) => wheelIds.has(id))
		.map(({ id, name }) => ({ id, name }));
}
