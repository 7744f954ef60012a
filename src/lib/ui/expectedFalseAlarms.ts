import type { FalseAlarmFigures } from './falseAlarmWords';
import type { Formats } from './formats';

/**
 * How many of the events that are set against each other would be false alarms at the rate of the known-good wheels,
 * had nobody reviewed them: it stands beside every ratio, because it pulls the ratio towards 1.
 *
 * @param builds names and observed metres, the reference first
 */
export function expectedFalseAlarms(
	rate: FalseAlarmFigures,
	builds: readonly { readonly name: string; readonly observedM: number }[],
	formats: Formats
): string {
	const { ratePerThousandKm, upperPerThousandKm } = rate;
	const pull = 'False alarms pull any ratio towards 1';
	if (ratePerThousandKm === null || upperPerThousandKm === null)
		return `${pull}; how many there are is not known: no ride of a wheel known to be good yet.`;
	const each = builds.map(({ name, observedM }) => {
		const most = `at most ${formats.figure((upperPerThousandKm * observedM) / 1_000_000)}`;
		const about = formats.figure((ratePerThousandKm * observedM) / 1_000_000);
		return rate.events === 0 ? `${most} on ${name}` : `about ${about} (${most}) on ${name}`;
	});
	return `${pull}: at the rate of the known-good wheels they would come to ${each.join(' and ')} before any review. Reviewed and rejected ones are in no figure.`;
}
