import { partMark } from '$lib/hardware/bill';
import { toInstant } from '../ledger/instants';
import type { FactChanges } from '../ledger/factChanges';
import type { Ledger } from '../ledger/openLedger';
import type { BillLine, BuildContents, TorqueLine } from './buildContents';
import { findPart } from './partRecords';

/**
 * What a change of a build changed, as the trail keeps it: of bill and torques the lines that are not on both
 * sides, each in words that stay true when a part is gone; all lines when only their order changed.
 *
 * @returns an empty record when nothing changed
 */
export function buildTrail(ledger: Ledger, before: BuildContents, after: BuildContents): FactChanges {
	const [was, is] = [inWords(ledger, before), inWords(ledger, after)];
	const changes: Record<string, { before: unknown; after: unknown }> = {};
	for (const name of Object.keys(is)) {
		const [old, now] = [was[name], is[name]];
		if (JSON.stringify(old) === JSON.stringify(now)) continue;
		changes[name] =
			Array.isArray(old) && Array.isArray(now) ? changedLines(old, now) : { before: old, after: now };
	}
	return changes;
}

function changedLines(before: readonly string[], after: readonly string[]) {
	const gone = without(before, after);
	const come = without(after, before);
	return gone.length + come.length > 0 ? { before: gone, after: come } : { before, after };
}

/** Lines of the first list that have no partner in the second; the same line twice needs two. */
function without(lines: readonly string[], others: readonly string[]): string[] {
	const left = [...others];
	return lines.filter((line) => {
		const at = left.indexOf(line);
		if (at >= 0) left.splice(at, 1);
		return at < 0;
	});
}

function inWords(ledger: Ledger, contents: BuildContents): Record<string, unknown> {
	const { builtMs, builtBy, bill, torques, ...rest } = contents;
	return {
		...rest,
		personId: builtBy,
		builtOn: builtMs === null ? null : toInstant(builtMs),
		bill: bill.map((line) => billWords(ledger, line)),
		torques: torques.map(torqueWords)
	};
}

function billWords(ledger: Ledger, { partId, quantity, serial, note }: BillLine): string {
	const words = [`${quantity} x ${partMark(findPart(ledger, partId))}`, serial && `serial ${serial}`, note];
	return words.filter(Boolean).join(', ');
}

function torqueWords({ joint, wantedNm, recordedNm, tool }: TorqueLine): string {
	const nm = (what: string, figure: number | null) => figure !== null && `${what} ${figure} Nm`;
	return [joint, nm('wanted', wantedNm), nm('recorded', recordedNm), tool].filter(Boolean).join(', ');
}
