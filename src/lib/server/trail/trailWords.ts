/** Words for the names under which the trail holds values; what is missing here is taken apart at its capitals. */
const WORDS: Readonly<Record<string, string>> = {
	wheelId: 'wheel',
	buildId: 'build',
	riderId: 'rider',
	bikeId: 'bike',
	twinOf: 'same recording as ride',
	twinDecision: 'same recording or not',
	lapsMeanSlips: 'laps mean slips',
	trainer: 'on a trainer',
	motor: 'a motor helped',
	wet: 'wet',
	cuts: 'split at',
	loadKg: 'load in kg',
	surface: 'surface',
	knownGood: 'known to be good',
	fileName: 'file',
	why: 'why',
	from: 'from',
	until: 'until',
	batch: 'with answers number'
};

/**
 * A stored name as a person reads it.
 *
 * @example trailWord('overLocknutMm') // 'over locknut mm'
 */
export function trailWord(name: string): string {
	if (Object.hasOwn(WORDS, name)) return WORDS[name];
	return name
		.replace(/(Id|Ms)$/, '')
		.replace(/([a-z0-9])([A-Z])/g, '$1 $2')
		.replaceAll('_', ' ')
		.toLowerCase();
}

/** yes-or-no answers are stored as 1 and 0 */
const TRUTHS: ReadonlySet<string> = new Set(['lapsMeanSlips', 'trainer', 'motor', 'wet', 'knownGood']);

export function isTruth(name: string): boolean {
	return TRUTHS.has(name);
}
