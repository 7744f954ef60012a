import type { WheelHistory } from '$lib/server';

/** One line of the table behind the distance axis. */
export interface Happening {
	key: string;
	what: string;
	href: string | null;
	atM: number;
	/** null = only the place on the axis is known */
	at: string | null;
	lengthM: number | null;
	/** of a ride: metres that could have shown a reference slip */
	observedM: number | null;
}

/** All that the distance axis draws, in order of distance and time. */
export function happenings(wheelId: number, history: WheelHistory): Happening[] {
	const plain = { href: null, lengthM: null, observedM: null };
	const rows: Happening[] = [
		...history.builds.map(({ id, build, fromM, toM, from }) => ({
			...plain,
			key: `build ${id}`,
			what: `${build.name} fitted`,
			href: `/builds/${build.id}`,
			atM: fromM,
			at: from,
			lengthM: toM - fromM
		})),
		...history.gaps.map(({ fromM, toM, from }) => ({
			...plain,
			key: `gap ${from}`,
			what: 'no build fitted',
			atM: fromM,
			at: from,
			lengthM: toM - fromM
		})),
		...history.services.map(({ id, at, atM, opened, cleaned }) => ({
			...plain,
			key: `service ${id}`,
			what: `service${opened ? ', opened' : ''}${cleaned ? ', cleaned' : ''}`,
			atM,
			at
		})),
		...history.rides.map(({ rideId, startedAt, fromM, toM, observedM, counted }, index) => ({
			...plain,
			key: `ride ${index}`,
			what: counted ? 'ride' : 'ride that counts in no rate',
			href: `/rides/${rideId}`,
			atM: fromM,
			at: startedAt,
			lengthM: toM - fromM,
			observedM
		})),
		...history.unlogged.map(({ id, at, fromM, toM }) => ({
			...plain,
			key: `unlogged ${id}`,
			what: 'ridden without a recording',
			atM: fromM,
			at,
			lengthM: toM - fromM
		})),
		...history.slips.map(({ eventId, rideId, atM, confirmed }) => ({
			...plain,
			key: `slip ${eventId}`,
			what: `slip, ${confirmed ? 'confirmed' : 'not reviewed'}`,
			href: `/rides/${rideId}?event=${eventId}`,
			atM,
			at: null
		})),
		...history.notices.map(({ kind, id, at, atM, words }) => ({
			...plain,
			key: `${kind} ${id}`,
			what: words ? `${kind}: ${words}` : kind,
			href: `/wheels/${wheelId}/${kind}s/${id}`,
			atM,
			at
		}))
	];
	return rows.sort((a, b) => a.atM - b.atM || (a.at ?? '').localeCompare(b.at ?? ''));
}
