import { partMark } from '$lib/hardware/bill';
import { buildDifference, type BillDifference } from '$lib/hardware/buildDifference';
import { torqueDifference, type TorqueDifference } from '$lib/hardware/torqueDifference';
import type { Ledger } from '../ledger/openLedger';
import { billEntries, billView, torqueView } from './billViews';
import { buildContents } from './buildContents';
import { findBuild } from './builds';

/** One part that is not what it was in the predecessor. */
export interface PartChangeView {
	change: 'added' | 'removed' | 'replaced' | 'changed';
	kind: string;
	name: string;
	mark: string;
	fields: { field: string; before: string; after: string }[];
}

export interface TorqueChangeView {
	joint: string;
	change: 'added' | 'removed' | 'changed';
	before: { wantedNm: number | null; recordedNm: number | null } | null;
	after: { wantedNm: number | null; recordedNm: number | null } | null;
}

export interface BuildDifferenceView {
	predecessor: { id: number; name: string };
	parts: PartChangeView[];
	/** lines that are the same on both */
	sameParts: number;
	torques: TorqueChangeView[];
	/** hub degrees of one step */
	step: { before: number | null; after: number | null } | null;
	/** one of the two bills is empty: then nothing can be compared */
	noBill: 'before' | 'after' | null;
}

/** What is different from the build that this one goes back to; null when it goes back to none. */
export function differenceView(ledger: Ledger, buildId: number): BuildDifferenceView | null {
	const { revisionOf, copiedFrom } = findBuild(ledger, buildId);
	const predecessorId = revisionOf ?? copiedFrom;
	return predecessorId === null ? null : differenceBetween(ledger, predecessorId, buildId);
}

/** What is different on one build and on another, whether the one goes back to the other or not. */
export function differenceBetween(ledger: Ledger, beforeId: number, afterId: number): BuildDifferenceView {
	const bills = [billView(ledger, beforeId), billView(ledger, afterId)] as const;
	const parts = buildDifference(billEntries(bills[0]), billEntries(bills[1]));
	const torques = torqueDifference(torqueView(ledger, beforeId), torqueView(ledger, afterId));
	const before = buildContents(ledger, beforeId)!.stepHubDeg;
	const after = buildContents(ledger, afterId)!.stepHubDeg;
	return {
		predecessor: { id: beforeId, name: findBuild(ledger, beforeId).name },
		parts: parts.flatMap(toPartChange),
		sameParts: parts.filter(({ change }) => change === 'same').length,
		torques: torques.flatMap(toTorqueChange),
		step: before === after ? null : { before, after },
		noBill: bills[0].length === 0 ? 'before' : bills[1].length === 0 ? 'after' : null
	};
}

function toPartChange({ change, before, after, fields }: BillDifference): PartChangeView[] {
	const entry = after ?? before;
	if (change === 'same' || !entry) return [];
	const { kind, name } = entry.part;
	return [{ change, kind, name, mark: partMark(entry.part), fields: fields.map((field) => ({ ...field })) }];
}

function toTorqueChange({ joint, change, before, after }: TorqueDifference): TorqueChangeView[] {
	if (change === 'same') return [];
	const figures = (entry: TorqueDifference['before']) =>
		entry && { wantedNm: entry.wantedNm, recordedNm: entry.recordedNm };
	return [{ joint, change, before: figures(before), after: figures(after) }];
}
