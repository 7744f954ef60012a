import type { Database, Statement } from 'better-sqlite3';

/** as many as pages and the queue use again and again; each takes some ten kilobytes */
const MOST_KEPT = 160;

/**
 * Has a database keep what it prepared: the same SQL is read once and not at every call, which took a tenth of the
 * server's time while files come in. What was used longest ago is let go.
 */
export function keepStatements(database: Database): void {
	const prepare = database.prepare.bind(database) as (sql: string) => Statement;
	const kept = new Map<string, Statement>();
	const find = (sql: string): Statement => {
		const known = kept.get(sql);
		const statement = known ?? prepare(sql);
		if (known) kept.delete(sql);
		kept.set(sql, statement);
		if (kept.size > MOST_KEPT) kept.delete(kept.keys().next().value!);
		return statement;
	};
	database.prepare = ((sql: string) => new KeptStatement(find(sql), () => prepare(sql))) as never;
}

/** One caller's view of a statement that others use as well: what it asks for (one column alone) is its own. */
class KeptStatement {
	#plucked = false;

	constructor(
		private readonly statement: Statement,
		private readonly fresh: () => Statement
	) {}

	pluck(on = true): this {
		this.#plucked = on;
		return this;
	}

	run(...values: unknown[]): unknown {
		return this.statement.run(...values);
	}

	get(...values: unknown[]): unknown {
		return this.#as(this.statement).get(...values);
	}

	all(...values: unknown[]): unknown {
		return this.#as(this.statement).all(...values);
	}

	/** what is read row by row is busy meanwhile: it must be nobody else's */
	iterate(...values: unknown[]): unknown {
		return this.#as(this.fresh()).iterate(...values);
	}

	#as(statement: Statement): Statement {
		// what returns no rows has no columns to choose from
		return statement.reader ? statement.pluck(this.#plucked) : statement;
	}
}
