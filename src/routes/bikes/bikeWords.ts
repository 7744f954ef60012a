/** Stored words of a bike in the words of the page, in the order of the lists. */
export const SPEED_SENSOR_WORDS = [
	['rear hub', 'at the rear hub or wheel'],
	['front hub', 'at the front hub or wheel'],
	['GPS', 'from satellite positions']
] as const;

export const POWER_WORDS = [
	['crank', 'at the crank, both sides'],
	['pedals', 'in both pedals'],
	['one side doubled', 'on one side, doubled'],
	['hub', 'in the rear hub'],
	['none', 'not measured']
] as const;

/** What stands for a stored word; "not said" for none. */
export function wordsFor(words: readonly (readonly [string, string])[], stored: string | null): string {
	return words.find(([word]) => word === stored)?.[1] ?? 'not said';
}
