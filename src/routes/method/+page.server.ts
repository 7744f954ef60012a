import { ANALYSIS_VERSION } from '$lib/slip/analysisVersion';
import { DRIVE_STATES, EVENT_KINDS } from '$lib/slip/analysis';
import { netLayout } from '$lib/slip/model/convNet';
import { NET_SHARE } from '$lib/slip/model/joinedLogOdds';
import net from '$lib/slip/model/net.json';
import { SLIP_NET } from '$lib/slip/model/netModel';
import observed from '$lib/slip/model/observed.json';
import scorer from '$lib/slip/model/scorer.json';
import { WINDOW_S } from '$lib/slip/slipWindow';
import { treeFacts } from '$lib/slip/model/treeFacts';
import { HUB_TORQUE_EDGES_NM } from '$lib/slip/hubTorqueBins';
import { workedEvent } from '$lib/slip/workedEvent';
import { benchFigures } from './benchFigures';
import { allConstants, writtenFigures } from './sourceFiles';
import { slipSizes } from './slipSizes';
import { workedView } from './workedView';
import { rideOf, workedRide } from './workedRide';
import type { PageServerLoad } from './$types';

const AROUND_S = 7;

/** The figures are the code's own; they are made once, with the first visit, by the functions that judge rides. */
let made: ReturnType<typeof make> | null = null;

function make() {
	const scorerFacts = treeFacts(scorer);
	const worked = workedEvent(rideOf(workedRide), workedRide.bike, workedRide.truth.t0, AROUND_S);
	return {
		version: ANALYSIS_VERSION,
		kinds: EVENT_KINDS,
		states: DRIVE_STATES,
		torqueEdgesNm: HUB_TORQUE_EDGES_NM,
		slipsPerThousandKm: scorer.strength.slipsPerThousandKm,
		strength: { intercept: scorer.strength.intercept, slope: scorer.strength.slope },
		scorer: { ...scorerFacts, asked: scorerFacts.asked.slice(0, 15) },
		nets: {
			count: net.nets.length,
			numbers: netLayout(SLIP_NET).length,
			seconds: WINDOW_S,
			share: NET_SHARE
		},
		observedModel: treeFacts(observed),
		constants: allConstants(),
		figures: benchFigures(writtenFigures()),
		slipSizes: slipSizes(),
		worked:
			worked &&
			workedView(
				worked,
				workedRide,
				scorerFacts.asked.map(({ name }) => name)
			)
	};
}

export const load: PageServerLoad = () => (made ??= make());
