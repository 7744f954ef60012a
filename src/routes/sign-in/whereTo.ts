/** The page that somebody wanted before signing in; never one of another site. */
export function whereTo(asked: string | null): string {
	return asked !== null && /^\/(?![/\\])[\w\-./]*$/.test(asked) ? asked : '/';
}
