import { instantOf, type FitMessage, type FitMessages } from './fitMessages';
import { MAX_HANDFUL } from './limits';

export interface FitSport {
	/** 'bicycle' or 'other' as the file says, 'not stated' when it does not say */
	readonly kind: 'bicycle' | 'other' | 'not stated';
	/** stretches of the file that belong to another sport, milliseconds since 1970 UTC */
	readonly otherSpansMs: readonly (readonly [number, number])[];
	readonly trainer: boolean | null;
	readonly motorAssisted: boolean | null;
	/** as the file words it */
	readonly stated: string;
}

const BICYCLE: readonly unknown[] = ['cycling', 'e_biking'];
/** sports that say nothing: the device was started without choosing one */
const OPEN: readonly unknown[] = ['generic', 'all', 'training', 'multisport', 'transition', undefined];
const INDOOR: readonly unknown[] = ['indoor_cycling', 'spin', 'virtual_activity'];
const MOTOR: readonly unknown[] = ['e_bike_fitness', 'e_bike_mountain', 'e_bike_enduro'];

/**
 * What was done in this recording, from its sessions or, where a recording was not closed, from its
 * sport messages.
 * @param messages of one part
 * @returns whether it is a bicycle ride, and which stretches are not
 */
export function fitSport(messages: FitMessages): FitSport {
	const sessions = messages.sessions.slice(0, MAX_HANDFUL);
	const said = sessions.length > 0 ? sessions : messages.sports.slice(0, MAX_HANDFUL);
	const kinds = said.map(kindOf);
	const kind = kinds.includes('bicycle')
		? 'bicycle'
		: kinds.includes('not stated') || kinds.length === 0
			? 'not stated'
			: 'other';
	const ridden = said.filter((_, i) => kinds[i] !== 'other');
	const subSports = ridden.map((message) => message.sub_sport);
	return {
		kind,
		otherSpansMs: sessions
			.filter((session) => kindOf(session) === 'other')
			.map((session) => [instantOf(session, 'start_time'), instantOf(session, 'timestamp')] as const),
		trainer: trainerSaid(subSports),
		motorAssisted:
			ridden.some((message) => message.sport === 'e_biking') || subSports.some((sub) => MOTOR.includes(sub))
				? true
				: null,
		stated: said.map((message) => `${message.sport ?? '?'}/${message.sub_sport ?? '?'}`).join(', ')
	};
}

function kindOf(message: FitMessage): FitSport['kind'] {
	if (BICYCLE.includes(message.sport)) return 'bicycle';
	if (message.sport === 'fitness_equipment' && INDOOR.includes(message.sub_sport)) return 'bicycle';
	// the profile grows: a number that the parser has no name for is not known, not wrong
	if (OPEN.includes(message.sport) || typeof message.sport === 'number') return 'not stated';
	return 'other';
}

function trainerSaid(subSports: readonly unknown[]): boolean | null {
	if (subSports.some((sub) => INDOOR.includes(sub))) return true;
	const outdoors = subSports.some((sub) => typeof sub === 'string' && sub !== 'generic' && sub !== 'all');
	return outdoors ? false : null;
}
