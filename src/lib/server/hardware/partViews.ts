import { partMark } from '$lib/hardware/bill';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import type { BuildRow } from '../views';
import { listAttachments, type AttachmentView } from './attachments';
import { listBuildRecords, type BuildRecord } from './builds';
import { findPart, listPartRecords, partLengths, type PartLength, type PartRecord } from './partRecords';
import { partLock } from './parts';
import { listPeriods } from './periodRows';
import { listWheelRecords } from './wheels';

/** Where a part is in a bill. */
export interface PartUse {
	build: { id: number; name: string; state: BuildRow['state'] };
	quantity: number;
	serial: string;
	/** when that build was on which wheel */
	periods: { wheel: { id: number; name: string }; from: string; until: string | null }[];
}

export interface PartRow extends Omit<PartRecord, 'example'> {
	mark: string;
	example: boolean;
	/** builds that hold it, each once */
	builds: { id: number; name: string }[];
}

export interface PartView extends PartRow {
	lengths: PartLength[];
	/** why it can only be completed; null while it can be changed */
	lock: string | null;
	uses: PartUse[];
	/** the same number in other revisions and batches */
	others: { id: number; mark: string }[];
	attachments: AttachmentView[];
}

interface Line {
	partId: number;
	buildId: number;
	quantity: number;
	serial: string;
}

/** All parts with the builds that hold them, in order of number, revision and batch. */
export function listParts(ledger: Ledger): PartRow[] {
	const lines = allLines(ledger);
	const names = new Map(listBuildRecords(ledger).map(({ id, name }) => [id, name]));
	return listPartRecords(ledger).map((part) => toRow(part, lines, names));
}

/** One part with where it was used; null when there is no such part. */
export function partView(ledger: Ledger, partId: number): PartView | null {
	const parts = listPartRecords(ledger);
	if (!parts.some(({ id }) => id === partId)) return null;
	const part = findPart(ledger, partId);
	const lines = allLines(ledger).filter((line) => line.partId === partId);
	const builds = listBuildRecords(ledger);
	return {
		...toRow(part, lines, new Map(builds.map(({ id, name }) => [id, name]))),
		lengths: partLengths(ledger, partId),
		lock: partLock(ledger, partId),
		uses: usesOf(ledger, lines, builds),
		others: parts
			.filter(({ id, number }) => id !== partId && number.toLowerCase() === part.number.toLowerCase())
			.map((other) => ({ id: other.id, mark: partMark(other) })),
		attachments: listAttachments(ledger, 'part', partId)
	};
}

function allLines(ledger: Ledger): Line[] {
	return ledger.database
		.prepare<[], Line>(
			`SELECT part_id AS partId, build_id AS buildId, quantity, serial FROM build_part
			ORDER BY build_id, position`
		)
		.all();
}

function toRow(part: PartRecord, lines: readonly Line[], names: ReadonlyMap<number, string>): PartRow {
	const buildIds = new Set(lines.filter(({ partId }) => partId === part.id).map(({ buildId }) => buildId));
	return {
		...part,
		mark: partMark(part),
		example: part.example === 1,
		builds: [...buildIds].map((id) => ({ id, name: names.get(id) ?? '' }))
	};
}

function usesOf(ledger: Ledger, lines: readonly Line[], builds: readonly BuildRecord[]): PartUse[] {
	const wheels = new Map(listWheelRecords(ledger).map(({ id, name }) => [id, name]));
	const periods = listPeriods(ledger).sort((a, b) => a.fromMs - b.fromMs || a.id - b.id);
	return lines.map(({ buildId, quantity, serial }) => {
		const { id, name, state } = builds.find((build) => build.id === buildId)!;
		return {
			build: { id, name, state },
			quantity,
			serial,
			periods: periods
				.filter((period) => period.buildId === buildId)
				.map(({ wheelId, fromMs, untilMs }) => ({
					wheel: { id: wheelId, name: wheels.get(wheelId) ?? '' },
					from: toInstant(fromMs),
					until: untilMs === null ? null : toInstant(untilMs)
				}))
		};
	});
}
