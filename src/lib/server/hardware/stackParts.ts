import { partMark } from '$lib/hardware/bill';
import type { Ledger } from '../ledger/openLedger';
import { billOf } from './buildContents';
import { listPartRecords } from './partRecords';

/** A part that an axial element may be, with the mark that stands on it. */
export interface PartChoice {
	id: number;
	mark: string;
	name: string;
}

/** Parts to name for an axial element: those of the build first, then all others. */
export function partChoices(
	ledger: Ledger,
	buildId: number
): { ofBuild: PartChoice[]; others: PartChoice[] } {
	const inBuild = new Set(billOf(ledger, buildId).map(({ partId }) => partId));
	const choices = listPartRecords(ledger).map((part) => ({
		id: part.id,
		mark: partMark(part),
		name: part.name
	}));
	return {
		ofBuild: choices.filter(({ id }) => inBuild.has(id)),
		others: choices.filter(({ id }) => !inBuild.has(id))
	};
}
