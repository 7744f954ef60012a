import { showFigures, type AskedFigures, type FigureKind } from '$lib/server';
import { asksForNow, computingNow } from './computingNow';
import { formatsOf } from './formatsOf';

/**
 * Figures for a page, or what it says until they are computed. The layout prints `since`, so that no page shows figures
 * that miss some rides without saying so.
 *
 * @param mayBeOlder never true for what a person signs or sends on
 */
export async function askFigures<Kind extends FigureKind>(
	{ request, url }: { request: Request; url: URL },
	kind: Kind,
	asked: AskedFigures<Kind>,
	mayBeOlder: boolean
) {
	const options = { mayBeOlder, wait: asksForNow(url) };
	const { figures, since, computing } = await showFigures(kind, asked, formatsOf(request), options);
	return { figures, since, computing: computing && { ...computing, address: computingNow(url) } };
}
