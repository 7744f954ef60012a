import { error, fail } from '@sveltejs/kit';
import { LedgerRefusal, type Actor } from '$lib/server';

/** Who is asking; the hooks send pages without one to /welcome, an action without one is refused. */
export function actorOf(locals: App.Locals): Actor {
	if (!locals.actor) error(401, locals.guarded ? 'Sign in first.' : 'Choose your name first: open /welcome.');
	return locals.actor;
}

/**
 * Runs what an action does and hands a refusal of the ledger back to its form as one sentence.
 *
 * @returns what the action returns (or { done: true }), else a failed form with `sentence`
 */
export async function answered<T>(action: () => T | Promise<T>) {
	try {
		return (await action()) ?? { done: true as const };
	} catch (refused) {
		if (!(refused instanceof LedgerRefusal)) throw refused;
		return fail(refused.code === 'not-found' ? 404 : 400, { sentence: refused.sentence });
	}
}

/** A text field, trimmed; "" when it is missing. */
export function text(form: FormData, name: string): string {
	const value = form.get(name);
	return typeof value === 'string' ? value.trim() : '';
}

/** A whole number that names a row; null when it is missing or no such number. */
export function rowId(form: FormData, name: string): number | null {
	const value = text(form, name);
	return /^\d{1,15}$/.test(value) ? Number(value) : null;
}

/** The row that the form must name; a form of ours always does. */
export function neededId(form: FormData, name: string): number {
	const id = rowId(form, name);
	if (id === null) throw new LedgerRefusal('wrong-value', `Nothing was chosen for "${name}".`);
	return id;
}

/** A number typed with a decimal point or comma; null when the field is empty, NaN when it is no number. */
export function decimal(form: FormData, name: string): number | null {
	const value = text(form, name);
	return value === '' ? null : Number(value.replace(',', '.'));
}

/** The number of a page's address; 404 when it is none. */
export function pathId(id: string): number {
	if (!/^\d{1,15}$/.test(id)) error(404, 'There is no such page.');
	return Number(id);
}
