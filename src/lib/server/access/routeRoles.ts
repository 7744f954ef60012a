import type { Role } from '../actor';

/** Who may use a route: anyone at this machine, or a chosen person of at least this role. */
export type NeededRole = 'anyone' | Role;

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
	'/': { read: 'rider', write: 'engineer' },
	'/welcome': { read: 'anyone', write: 'anyone' },
	'/method': { read: 'anyone', write: 'engineer' },
	'/help': { read: 'anyone', write: 'engineer' },
	'/words': { read: 'anyone', write: 'engineer' },
	'/recording': { read: 'anyone', write: 'engineer' },
	// shown by the development server alone
	'/design': { read: 'anyone', write: 'owner' },
	'/first-look': { read: 'rider', write: 'engineer' },
	'/first-look/[step]': { read: 'rider', write: 'engineer' },
	'/rides': { read: 'rider', write: 'rider' },
	'/rides/[id]': { read: 'rider', write: 'rider' },
	'/review': { read: 'engineer', write: 'engineer' },
	'/answers': { read: 'rider', write: 'rider' },
	'/ledger': { read: 'engineer', write: 'owner' },
	'/ledger/archive.zip': { read: 'engineer', write: 'engineer' },
	'/ledger/tables.zip': { read: 'engineer', write: 'engineer' },
	'/ledger/trail': { read: 'rider', write: 'engineer' },
	'/rides/[id]/channels': { read: 'rider', write: 'engineer' },
	'/rides/[id]/events.csv': { read: 'rider', write: 'engineer' },
	'/wheels': { read: 'rider', write: 'engineer' },
	'/wheels/[id]': { read: 'rider', write: 'engineer' },
	'/builds': { read: 'rider', write: 'engineer' },
	'/builds/[id]': { read: 'rider', write: 'engineer' },
	'/builds/[id]/edit': { read: 'engineer', write: 'engineer' },
	'/builds/[id]/sheet': { read: 'rider', write: 'engineer' },
	'/parts': { read: 'rider', write: 'engineer' },
	'/parts/new': { read: 'engineer', write: 'engineer' },
	'/parts/[id]': { read: 'rider', write: 'engineer' },
	'/parts/[id]/edit': { read: 'engineer', write: 'engineer' },
	'/attachments/[id]': { read: 'rider', write: 'engineer' },
	'/builds/[id]/stack': { read: 'rider', write: 'engineer' },
	'/builds/[id]/stack/edit': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/inspections': { read: 'rider', write: 'engineer' },
	'/wheels/[id]/inspections/write': { read: 'engineer', write: 'engineer' },
	'/wheels/[id]/inspections/[inspection]': { read: 'rider', write: 'engineer' },
	'/wheels/[id]/incidents': { read: 'rider', write: 'rider' },
	'/wheels/[id]/incidents/[incident]': { read: 'rider', write: 'engineer' },
	'/bikes': { read: 'rider', write: 'engineer' },
	'/bikes/[id]': { read: 'rider', write: 'engineer' },
	// functions of the people decide: riders see and change themselves alone
	'/people': { read: 'rider', write: 'rider' },
	'/people/[id]/erasure': { read: 'owner', write: 'owner' },
	'/builds/[id]/release': { read: 'rider', write: 'engineer' },
	'/builds/[id]/release/record.json': { read: 'engineer', write: 'owner' },
	'/compare': { read: 'rider', write: 'engineer' },
	'/report': { read: 'engineer', write: 'engineer' },
	'/report/figures.json': { read: 'engineer', write: 'engineer' },
	'/report/charts/[name].svg': { read: 'engineer', write: 'engineer' },
	'/report/charts/[name].csv': { read: 'engineer', write: 'engineer' },
	'/versions': { read: 'rider', write: 'engineer' },
	'/settings': { read: 'rider', write: 'engineer' },
	'/uploads': { read: 'rider', write: 'rider' },
	'/uploads/known': { read: 'rider', write: 'rider' },
	'/uploads/resume': { read: 'rider', write: 'rider' },
	'/uploads/[id]': { read: 'rider', write: 'rider' },
	'/uploads/[id]/finish': { read: 'rider', write: 'rider' },
	'/imports.json': { read: 'rider', write: 'engineer' },
	'/ready.json': { read: 'anyone', write: 'owner' },
	'/health.json': { read: 'anyone', write: 'owner' }
};

const RANK: Readonly<Record<NeededRole, number>> = { anyone: 0, rider: 1, engineer: 2, owner: 3 };

export type AccessAnswer = 'allowed' | 'choose a name' | 'not allowed' | 'no such route';

/**
 * Whether a request may go on.
 *
 * @param routeId the route's folder as the framework names it; null = nothing matched
 * @param role of the one who asks; null = nobody was chosen on this browser yet
 */
export function mayUse(routeId: string | null, method: string, role: Role | null): AccessAnswer {
	if (routeId === null) return 'no such route';
	const access = Object.hasOwn(ROUTE_ROLES, routeId) ? ROUTE_ROLES[routeId] : null;
	if (!access) return 'not allowed';
	const needed = method === 'GET' || method === 'HEAD' ? access.read : access.write;
	if (needed === 'anyone') return 'allowed';
	if (role === null) return 'choose a name';
	return RANK[role] >= RANK[needed] ? 'allowed' : 'not allowed';
}
