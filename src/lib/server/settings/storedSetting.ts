import type { Ledger } from '../ledger/openLedger';

/** One stored setting by name; null when it was never set. */
export function readSetting(ledger: Ledger, name: string): string | null {
	const row = ledger.database
		.prepare<[string], { value: string }>('SELECT value FROM setting WHERE name = ?')
		.get(name);
	return row?.value ?? null;
}

export function writeSetting(ledger: Ledger, name: string, value: string): void {
	ledger.database
		.prepare(
			'INSERT INTO setting (name, value) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = excluded.value'
		)
		.run(name, value);
}
