/**
 * Prints what each feature still tells of slips beyond the log odds of a detector that had not seen the ride:
 *
 *   npx tsx tests/bench/training/train.ts --judge --scores FILE     once; takes long
 *   npx tsx tests/bench/training/showSignalLeft.ts FILE             as often as wanted
 *
 * For a new feature: add it last, gather once with it (--rows), and look here before any training is compared.
 */
import { readFileSync } from 'node:fs';
import { LEAST_REPORTED_DEG } from '../../../src/lib/slip/reportLimits';
import type { KeptRide } from './keepScores';
import { signalLeft } from './signalLeft';

/** Candidates that a feature could carry over the limit, either way. */
const FROM_LOG_ODDS = -1;
const TO_LOG_ODDS = 3.5;
const LEAST_DEG = 60;

const { features, rides }: { features: string[]; rides: KeptRide[] } = JSON.parse(
	readFileSync(process.argv[2], 'utf8')
);
const near = rides.flatMap(({ group, events, candidates }) =>
	candidates
		.filter(({ logOdds, sizeDeg }) => sizeDeg >= LEAST_REPORTED_DEG && logOdds > FROM_LOG_ODDS)
		.filter(({ logOdds }) => logOdds < TO_LOG_ODDS)
		// small slips are counted neither way
		.filter(({ event }) => event === -1 || (event >= 0 && events[event].crankDeg >= LEAST_DEG))
		.map((candidate) => ({ origin: group.split('/')[0], candidate }))
);
const lines = features.map((name, f) => {
	const left = ['simulated', 'real'].map((origin) =>
		signalLeft(
			near
				.filter((one) => one.origin === origin)
				.map(({ candidate: { logOdds, event, features: values } }) => ({
					logOdds,
					value: values[f] ?? NaN,
					slip: event >= 0
				}))
		)
	);
	const [simulated, real] = left;
	const agree = simulated && real && simulated.slope * real.slope > 0;
	const both = agree ? Math.min(simulated.gain, real.gain) : 0;
	const cells = left.map((one) => (one ? `${one.gain.toFixed(1)} (${one.slope.toFixed(1)})` : ''));
	return { both, line: `| ${name} | ${cells.join(' | ')} | ${both.toFixed(1)} |` };
});
lines.sort((a, b) => b.both - a.both);
console.log(
	'Fall of deviance (and slope) by feature; the last column is what both kinds of ride agree on.\n'
);
console.log('| feature | simulated | real | both |\n|---|---|---|---|');
console.log(lines.map(({ line }) => line).join('\n'));
