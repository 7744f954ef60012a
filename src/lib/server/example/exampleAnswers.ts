import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { RideHints } from '../queue/rideHints';

type Said = Pick<RideHints, 'surface' | 'loadKg'>;

/**
 * What the riders of the example workshop said of their rides, by the name of the file. Of some rides nothing
 * is said. An example that came without the file has no answers.
 */
export function exampleAnswers(folder: string): ReadonlyMap<string, Said> {
	const path = join(folder, 'workshop', 'ride-answers.json');
	if (!existsSync(path)) return new Map();
	const { rides } = JSON.parse(readFileSync(path, 'utf8')) as { rides: (Said & { file: string })[] };
	return new Map(rides.map(({ file, ...said }) => [file, said]));
}
