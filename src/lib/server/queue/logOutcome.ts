import { log } from '../log/log';
import type { Analysed, ChildOutcome } from './analysisChild';

/** What became of a file, as a line of the log: numbers and codes alone. */
export function logOutcome(id: number, begunMs: number, outcome: ChildOutcome<Analysed>): void {
	const facts = { import: id, ms: Math.round(performance.now() - begunMs) };
	if (outcome.kind === 'refused') log.info('file refused', { ...facts, code: outcome.refusal.code });
	else if (outcome.kind === 'broke') log.warn('file put back', facts);
	else log.info('file done', { ...facts, events: outcome.file.events.length });
}
