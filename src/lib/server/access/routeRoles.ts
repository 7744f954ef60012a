import type { Role } from '../actor';

/**
 * Who may use a route: everybody; anyone at this machine (from elsewhere: who signed in); or a person of at
 * least this role.
 */
export type NeededRole = 'everybody' | 'anyone here' | Role;

export interface RouteAccess {
	/** GET and HEAD */
	readonly read: NeededRole;
	/** every other method */
	readonly write: NeededRole;
}

/**
 * Every route of the app by its folder in src/routes. What is not here is refused; a test walks the
 * folders and fails on a route without a row.
 */
export const ROUTE_ROLES: Readonly<Record<string, RouteAccess>> = {
	'/': { read: 'engineer', write: 'engineer' },
	'/welcome': { read: 'anyone here', write: 'anyone here' },
	'/sign-in': { read: 'everybody', write: 'everybody' },
	'/sign-out': { read: 'everybody', write: 'everybody' },
	'/set-password': { read: 'everybody', write: 'everybody' },
	'/come': { read: 'everybody', write: 'everybody' },
	'/access': { read: 'owner', write: 'owner' },
	// riders: hand in, mark, see their own (mayTouch holds whose it is)
	'/own': { read: 'rider', write: 'rider' },
	'/own/[id]': { read: 'rider', write: 'rider' },
	'/password': { read: 'rider', write: 'rider' },
	'/method': { read: 'anyone here', write: 'engineer' },
	'/help': { read: 'anyone here', write: 'engineer' },
	'/words': { read: 'anyone here', write: 'engineer' },
	'/recording': { read: 'anyone here', write: 'engineer' },
	// shown by the development server alone
	'/design': { read: 'anyone here', write: 'owner' },
	'/first-look': { read: 'engineer', write: 'engineer' },
	'/first-look/[step]': { read: 'engineer', write: 'engineer' },
	'/rides': { read: 'engineer', write: 'engineer' },
	'/rides/[id]': { read: 'engineer', write: 'engineer' },
	'/review': { read: 'engineer', write: 'engineer' },
	'/answers': { read: 'engineer', write: 'engineer' },
	'/ledger': { read: 'engineer', write: 'owner' },
	'/ledger/archive.zip': { read: 'engineer', write: 'engineer' },
	'/ledger/tables.zip': { read: 'engineer', write: 'engineer' },
	'/ledger/trail': { read: 'engineer', write: 'engineer' },
	'/rides/[id]/channels': { read: 'rider', write: 'engineer' },
	'/rides/[id]/events.csv': { read: 'rider', write: 'engineer' },
	'/wheels': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]': { read: 'engineer', write: 'engineer' },
	'/builds': { read: 'engineer', write: 'engineer' },
	'/builds/[id]': { read: 'engineer', write: 'engineer' },
	'/builds/[id]/edit': { read: 'engineer', write: 'engineer' },
	'/builds/[id]/sheet': { read: 'engineer', write: 'engineer' },
	'/parts': { read: 'engineer', write: 'engineer' },
	'/parts/new': { read: 'engineer', write: 'engineer' },
	'/parts/[id]': { read: 'engineer', write: 'engineer' },
	'/parts/[id]/edit': { read: 'engineer', write: 'engineer' },
	// riders: photos of what they felt themselves (mayTouch)
	'/attachments/[id]': { read: 'rider', write: 'engineer' },
	'/builds/[id]/stack': { read: 'engineer', write: 'engineer' },
	'/builds/[id]/stack/edit': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/inspections': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/inspections/write': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/inspections/[inspection]': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/incidents': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/incidents/[incident]': { read: 'engineer', write: 'engineer' },
	'/bikes': { read: 'engineer', write: 'engineer' },
	'/bikes/[id]': { read: 'engineer', write: 'engineer' },
	'/people': { read: 'engineer', write: 'engineer' },
	'/people/[id]/erasure': { read: 'owner', write: 'owner' },
	'/builds/[id]/release': { read: 'engineer', write: 'engineer' },
	'/builds/[id]/release/record.json': { read: 'engineer', write: 'owner' },
	'/compare': { read: 'engineer', write: 'engineer' },
	'/report': { read: 'engineer', write: 'engineer' },
	'/report/figures.json': { read: 'engineer', write: 'engineer' },
	'/report/charts/[name].svg': { read: 'engineer', write: 'engineer' },
	'/report/charts/[name].csv': { read: 'engineer', write: 'engineer' },
	'/versions': { read: 'engineer', write: 'engineer' },
	'/settings': { read: 'engineer', write: 'engineer' },
	'/uploads': { read: 'rider', write: 'rider' },
	'/rides/[id]/columns': { read: 'engineer', write: 'engineer' },
	'/rides/files': { read: 'engineer', write: 'engineer' },
	'/rides/files.csv': { read: 'engineer', write: 'engineer' },
	'/rides/columns/[id]': { read: 'engineer', write: 'engineer' },
	'/uploads/known': { read: 'rider', write: 'rider' },
	'/uploads/resume': { read: 'rider', write: 'rider' },
	'/uploads/[id]': { read: 'rider', write: 'rider' },
	'/uploads/[id]/finish': { read: 'rider', write: 'rider' },
	'/imports.json': { read: 'engineer', write: 'engineer' },
	'/ready.json': { read: 'everybody', write: 'owner' },
	'/health.json': { read: 'everybody', write: 'owner' }
};

/** The first steps in a ledger choose a name freely; from elsewhere only the owner may take them. */
const FROM_ELSEWHERE: Readonly<Record<string, NeededRole>> = { '/welcome': 'owner' };

const RANK: Readonly<Record<Role, number>> = { rider: 1, engineer: 2, owner: 3 };

export type AccessAnswer = 'allowed' | 'choose a name' | 'not allowed' | 'no such route';

/**
 * Whether a request may go on.
 *
 * @param routeId the route's folder as the framework names it; null = nothing matched
 * @param role of the one who asks; null = nobody was chosen on this browser yet, or nobody signed in
 * @param guarded people have to sign in, because the server can be reached from elsewhere
 */
export function mayUse(
	routeId: string | null,
	method: string,
	role: Role | null,
	guarded: boolean
): AccessAnswer {
	if (routeId === null) return 'no such route';
	const needed = neededRole(routeId, method, guarded);
	if (needed === null) return 'not allowed';
	if (needed === 'everybody' || (needed === 'anyone here' && !guarded)) return 'allowed';
	if (role === null) return 'choose a name';
	return needed === 'anyone here' || RANK[role] >= RANK[needed] ? 'allowed' : 'not allowed';
}

/** What a route asks for; null = it is in no table. */
export function neededRole(routeId: string, method: string, guarded: boolean): NeededRole | null {
	if (!Object.hasOwn(ROUTE_ROLES, routeId)) return null;
	if (guarded && Object.hasOwn(FROM_ELSEWHERE, routeId)) return FROM_ELSEWHERE[routeId];
	const access = ROUTE_ROLES[routeId];
	return method === 'GET' || method === 'HEAD' ? access.read : access.write;
}
