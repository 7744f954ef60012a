import pino, { type Logger } from 'pino';
import { LedgerRefusal } from '../refusal';
import { errorFacts } from './errorFacts';

/** What happened, in fixed words; a log is searched by them. */
export type LogEvent =
	| 'server open'
	| 'server stops'
	| 'request failed'
	| 'request broke off'
	| 'queue could not be read'
	| 'queue not started'
	| 'ledger not read'
	| 'uploads not cleared up'
	| 'lease taken'
	| 'lease given back'
	| 'work not handed back'
	| 'file taken up'
	| 'file done'
	| 'file refused'
	| 'file put back'
	| 'archive taken up'
	| 'archive left'
	| 'archive not unpacked'
	| 'file of an archive not written down'
	| 'child said something'
	| 'figures not computed'
	| 'result not stored'
	| 'upload not taken up'
	| 'logs not folded'
	| 'erasure finished'
	| 'pictures cleaned'
	| 'pictures not cleaned';

/**
 * Numbers and fixed words alone: ids of rows, counts, milliseconds, codes. No names, no file names, no
 * positions, no addresses, no tokens: whoever reads a log is not a person of the ledger.
 */
export type LogFacts = Readonly<Record<string, number | boolean | string | null>>;

const LEVELS = ['trace', 'debug', 'info', 'warn', 'error', 'silent'] as const;
export type LogLevel = (typeof LEVELS)[number];

/**
 * How much is written, by SLIP_LEDGER_LOG_LEVEL; warnings when it is not set.
 *
 * @throws LedgerRefusal wrong-setting
 */
export function logLevel(env: Readonly<Record<string, string | undefined>>): LogLevel {
	const asked = env.SLIP_LEDGER_LOG_LEVEL;
	if (!asked) return 'warn';
	if ((LEVELS as readonly string[]).includes(asked)) return asked as LogLevel;
	throw new LedgerRefusal(
		'wrong-setting',
		`SLIP_LEDGER_LOG_LEVEL takes ${LEVELS.join(', ')}, not "${asked.slice(0, 20)}".`
	);
}

/** lines that wait for room on a full disk; what is beyond them is left out */
const MOST_WAITING_BYTES = 64 * 1024;

let logger: Logger | null = null;

function theLogger(): Logger {
	if (logger) return logger;
	// written at once: the last line before a kill is the one that is wanted
	const lines = pino.destination({ fd: 2, sync: true, maxLength: MOST_WAITING_BYTES });
	// a log that cannot be written (a full disk, nobody who reads it) ends no work: the next line tries again
	lines.on('error', () => {});
	return (logger = pino(
		{
			level: logLevel(process.env),
			base: { pid: process.pid },
			timestamp: () => `,"time":"${new Date().toISOString()}"`,
			formatters: { level: (label) => ({ level: label }) }
		},
		lines
	));
}

/** what fixed words and the names of routes are made of; anything else was not meant for a log */
const PLAIN = /^[a-z0-9 _./[\]()-]{0,80}$/i;

function plain(facts: LogFacts): LogFacts {
	return Object.fromEntries(
		Object.entries(facts).map(([name, value]) => [
			name,
			typeof value === 'string' && !PLAIN.test(value) ? 'left out' : value
		])
	);
}

/** One line of JSON each on the error stream. */
export const log = {
	info: (event: LogEvent, facts: LogFacts = {}): void => theLogger().info({ event, ...plain(facts) }),
	warn: (event: LogEvent, facts: LogFacts = {}): void => theLogger().warn({ event, ...plain(facts) }),
	/** with what can be said of an error without quoting it */
	failure: (event: LogEvent, error: unknown, facts: LogFacts = {}): void =>
		theLogger().error({ event, ...plain(facts), ...errorFacts(error) })
};
