import { findImport, rideView, type Ledger } from '$lib/server';

/** What became of a file; null while it waits or is being read. */
export function outcomeLine(
	ledger: Ledger,
	file: string,
	importId: number
): { line: string; taken: boolean } | null {
	const known = findImport(ledger, importId);
	switch (known?.stage) {
		case 'done':
			return { line: `${file}: ${rideWords(ledger, known.rideId)}`, taken: true };
		case 'already in the ledger':
			// the same content is still being read for another import: its outcome is ours
			if (known.rideId === null) return null;
			return { line: `${file}: in the ledger already (ride ${known.rideId}), counted once`, taken: true };
		case 'unpacked':
			return { line: `${file}: ${known.sentence}`, taken: true };
		case 'left out':
			return { line: `${file}: left out: ${known.sentence}`, taken: true };
		case 'asks':
			return { line: `${file}: kept, and asks: ${known.sentence}`, taken: true };
		case 'refused':
		case 'failed': {
			const detail = known.detail ? ` [${known.detail.split('\n')[0]}]` : '';
			return { line: `${file}: ${known.stage}: ${known.sentence}${detail}`, taken: false };
		}
		case undefined:
			return { line: `${file}: taken out of the ledger meanwhile`, taken: false };
		default:
			return null;
	}
}

function rideWords(ledger: Ledger, rideId: number | null): string {
	const ride = rideId === null ? null : rideView(ledger, rideId);
	if (!ride) return 'done';
	const km = (ride.totalM / 1000).toFixed(1);
	const needs = ride.needs.length > 0 ? ` Needs an answer: ${ride.needs.join(' ')}` : '';
	return `ride ${ride.id}, ${km} km. ${ride.summary}${needs}`;
}
