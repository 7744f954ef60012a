import { LEFT_OUT } from './archiveTables';
import type { TableDescription } from './describeTables';
import { schemaText } from './schemaText';

/** The file in an archive that tells a person what the others are. */
export function archiveReadme(tables: readonly TableDescription[], options: { names: boolean }): string {
	return `A whole ledger of Slip Ledger as one archive.

manifest.json   what is in it: layout, rows and SHA-256 of every table, SHA-256 of every source
tables/         one file a table, canonical JSON (the rules of RFC 8785), one row a line, in the order of its
                key; bytes in base64
sources/        uploaded ride files and attachments as they came, named by their SHA-256, where they were
                asked for

People: ${options.names ? 'names and weights are in it.' : 'codes stand in for names; weights are left out.'}
File names, notes and descriptions are in it as they were written.

To make a ledger of it: an empty data folder and the terminal command "restore" (see the README of Slip
Ledger). Traces of rides are not in it; they are made again from the sources.

Not in it: ${Object.entries(LEFT_OUT)
		.map(([table, why]) => `${table} (${why})`)
		.join('; ')}.

A distance is in metres, a time in seconds, a torque in newton metres, an angle in degrees unless the name of
the column says otherwise; yes is 1 and no is 0; null means not known or not said.

${schemaText(tables)}
`;
}
