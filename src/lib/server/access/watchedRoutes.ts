/**
 * What whatever watches this server asks. They answer whatever is the matter with the ledger, so who asks is not looked up
 * in it.
 */
export const WATCHED_ROUTES: ReadonlySet<string> = new Set(['/health.json', '/ready.json']);
