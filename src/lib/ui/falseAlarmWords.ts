import type { Formats } from './formats';

/** The part of a false-alarm rate that its words need; the server's FalseAlarmRate fits. */
export interface FalseAlarmFigures {
	readonly events: number;
	readonly confirmed: number;
	readonly observedM: number;
	readonly ratePerThousandKm: number | null;
	readonly lowerPerThousandKm: number;
	readonly upperPerThousandKm: number | null;
	readonly confidence: number;
}

/**
 * How often the tool is wrong, in words that stand beside a rate: a rate of slips is known no better than
 * this.
 *
 * @example falseAlarmWords({ events: 0, observedM: 98000, ... upperPerThousandKm: 37.6 }, formats)
 * // "On wheels known to be good the tool reported none in 98 observed km: at most 37.6 per 1000 km ..."
 */
export function falseAlarmWords(rate: FalseAlarmFigures, formats: Formats): string {
	const { ratePerThousandKm, upperPerThousandKm } = rate;
	if (ratePerThousandKm === null || upperPerThousandKm === null)
		return 'How often the tool reports a slip where there is none is not known: no ride of a wheel known to be good yet.';
	const km = formats.km(rate.observedM).replace('\u00a0km', '\u00a0observed\u00a0km');
	const confidence = formats.share(rate.confidence);
	const upper = formats.figure(upperPerThousandKm);
	const where = `On wheels known to be good the tool reported`;
	// rates of builds are per 100 km: the same bound in their unit
	const same = `${formats.figure(upperPerThousandKm / 10)} per 100`;
	if (rate.events === 0)
		return `${where} none in ${km}: at most ${upper} per 1000 km (${same}), the upper end of its ${confidence} limits.`;
	const found = rate.events === 1 ? '1 slip' : `${formats.number(rate.events)} slips`;
	const limits = `${formats.figure(rate.lowerPerThousandKm)} to ${upper}`;
	const doubt =
		rate.confirmed === 0
			? ''
			: ` ${formats.number(rate.confirmed)} of them ${rate.confirmed === 1 ? 'was' : 'were'} confirmed: is that wheel really good?`;
	return `${where} ${found} in ${km}: ${formats.figure(ratePerThousandKm)} per 1000 km, ${confidence} limits ${limits} (at most ${same}).${doubt}`;
}
