import type { Actor } from '../actor';
import { toInstant } from '../ledger/instants';
import type { Ledger } from '../ledger/openLedger';
import { LedgerRefusal } from '../refusal';
import type { BikeGearsView } from './bikeGears';
import { findBike } from './bikeRows';
import { bikeView } from './bikeViews';
import { updateBike } from './bikes';
import { updateWheel } from './updateWheel';
import { findWheel } from './wheels';

/**
 * Takes over what the rides show in place of what was stated: into the wheel where the wheel states it, else
 * into the bike. The trail says from how many rides it was learned.
 *
 * @param seen the change that stood on the page, as JSON; another one by now is not taken unseen
 * @throws LedgerRefusal not-found; conflict when this is not what the rides show any more
 */
export function takeGearCorrection(
	ledger: Ledger,
	actor: Actor,
	bikeId: number,
	wheelId: number | null,
	seen: string
): void {
	ledger.database
		.transaction(() => {
			const gears = bikeView(ledger, bikeId)?.gears.find(({ wheel }) => (wheel?.id ?? null) === wheelId);
			if (!gears) throw new LedgerRefusal('not-found', 'There are no rides of this bike with that wheel.');
			if (!gears.correction || JSON.stringify(gears.correction.change) !== seen)
				throw new LedgerRefusal('conflict', 'The rides do not show that any more: look at the page again.');
			apply(ledger, actor, bikeId, gears);
		})
		.immediate();
}

function apply(ledger: Ledger, actor: Actor, bikeId: number, gears: BikeGearsView): void {
	const { change, stated } = gears.correction!;
	const why = `learned from ${gears.rides} ${gears.rides === 1 ? 'ride' : 'rides'}`;
	const wheelIsMeant =
		(change.kind === 'sprocket' && gears.stated!.cassetteOf === 'wheel') ||
		(change.kind === 'circumference' && gears.stated!.circumferenceOf !== 'bike');
	if (wheelIsMeant && gears.wheel) {
		const wheel = findWheel(ledger, gears.wheel.id);
		const existsFrom = wheel.existsFromMs === null ? null : toInstant(wheel.existsFromMs);
		const changed =
			change.kind === 'circumference'
				? { circumferenceM: stated.circumferenceM }
				: { cassette: stated.cassette };
		updateWheel(ledger, actor, wheel.id, { ...wheel, existsFrom, ...changed }, wheel.rowVersion, { why });
		return;
	}
	const bike = findBike(ledger, bikeId);
	const { chainrings, cassette, circumferenceM } = stated;
	const changed = {
		sprocket: { cassette },
		chainring: { chainrings },
		circumference: { circumferenceM }
	}[change.kind];
	updateBike(ledger, actor, bikeId, { ...bike, ...changed }, bike.rowVersion, why);
}
