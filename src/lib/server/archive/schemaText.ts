import type { TableDescription } from './describeTables';

/** Tables and columns as plain text, for the file that lies beside them. */
export function schemaText(tables: readonly TableDescription[], nameOf = (column: string) => column): string {
	return tables
		.map(({ name, about, columns }) => {
			const lines = columns.map((column) => {
				const told = [column.type.toLowerCase(), column.unit, column.about].filter((word) => word !== '');
				return `  ${nameOf(column.name)}: ${told.join('; ')}`;
			});
			return [name, ...(about ? [`  ${about}`] : []), ...lines].join('\n');
		})
		.join('\n\n');
}
