/** How the rows of a table differ in the archive from those in the ledger. */
export interface RowRule {
	/** only rows for which this holds; SQL */
	readonly where?: string;
	/** column -> SQL of the value that goes into the archive instead */
	readonly columns?: Readonly<Record<string, string>>;
}

/** state of the machine that stands in rows which are kept */
const ALWAYS: Readonly<Record<string, RowRule>> = {
	// half of a file is no file; who analyses a file just now is nobody's business later
	import: {
		where: "stage <> 'receiving'",
		columns: { owner: 'NULL', stage: "CASE stage WHEN 'analysing' THEN 'waiting' ELSE stage END" }
	},
	// tells the cookies of one ledger from those of another
	setting: { where: "name <> 'ledgerMark'" }
};

const WITHOUT_NAMES: Readonly<Record<string, RowRule>> = {
	person: { columns: { name: 'code', weight_kg: 'NULL' } },
	trail: {
		columns: {
			detail: `CASE subject WHEN 'person' THEN json_remove(detail, '$.name', '$.weightKg') ELSE detail END`
		}
	}
};

/**
 * The rule for a table's rows.
 *
 * @param names whether people's names and weights go along; else codes stand in for names
 */
export function rowRule(table: string, names: boolean): RowRule {
	const rules = [ALWAYS[table], names ? undefined : WITHOUT_NAMES[table]];
	return {
		where: rules.find((rule) => rule?.where)?.where,
		columns: Object.assign({}, ...rules.map((rule) => rule?.columns ?? {})) as Record<string, string>
	};
}
