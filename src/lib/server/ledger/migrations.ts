import type { Migration } from './migrate';

const ledgerFiles = import.meta.glob<string>('../migrations/ledger/*.sql', {
	query: '?raw',
	import: 'default',
	eager: true
});
const channelFiles = import.meta.glob<string>('../migrations/channels/*.sql', {
	query: '?raw',
	import: 'default',
	eager: true
});

export const LEDGER_MIGRATIONS = inOrder(ledgerFiles);
export const CHANNEL_MIGRATIONS = inOrder(channelFiles);

/** The file name begins with the step's number: 0001-first.sql. */
function inOrder(files: Record<string, string>): Migration[] {
	return Object.entries(files)
		.map(([path, sql]) => ({ number: Number(/(\d+)-[^/]+\.sql$/.exec(path)?.[1]), sql }))
		.sort((a, b) => a.number - b.number);
}
