/** How a comparison was counted; the server's policy fits. */
export interface CountingPolicy {
	readonly unit: 'slips' | 'episodes';
	readonly shown: 'found' | 'confirmed';
	readonly age?: string;
	readonly detection?: 'as found' | 'corrected';
}

/** From when the age of hardware is counted, as choices name it; a part by its kind. */
export function ageChoiceWords(age: string): string {
	if (age === 'build') return 'since the build was fitted';
	if (age === 'service') return 'since the last service';
	return `of the ${age}, by its serial`;
}

/** The same on an axis of kilometres. */
export function ageAxisWords(age: string): string {
	if (age === 'build') return 'km since fitting';
	if (age === 'service') return 'km since the last service';
	return `km of the ${age}`;
}

/** The whole policy in one clause, to be printed with every figure that it made. */
export function policyWords({ unit, shown, age = 'build', detection = 'as found' }: CountingPolicy): string {
	return [
		unit === 'slips' ? 'each slip counts' : 'slips less than 10 s apart count as one',
		`charts count ${shown === 'found' ? 'all events that are not rejected' : 'confirmed slips only'}`,
		`age is the distance ${ageChoiceWords(age)}`,
		...(detection === 'corrected' ? ['rates and ratios are also given corrected for slips not found'] : [])
	].join('; ');
}
