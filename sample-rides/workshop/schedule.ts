import type { ProgrammeRide } from '../programme';

/** What is unusual about a file. */
export type Peculiarity =
	/** the speed sensor was left at home */
	| 'no speed'
	/** stretches without records */
	| 'gaps'
	/** the file ends in the middle of a record */
	| 'cut off'
	/** uploaded a second time under another name */
	| 'twice'
	/** speed from satellites only */
	| 'satellites';

export interface PlannedRide {
	/** date and hour of the start, UTC */
	readonly start: string;
	readonly wheel: string;
	readonly build: string;
	readonly rider: string;
	readonly surface: ProgrammeRide['surface'];
	readonly km: number;
	readonly wet?: boolean;
	readonly peculiarity?: Peculiarity;
}

/** When a build was on a wheel. */
export const FITTED_PERIODS = [
	{ wheel: 'W1', build: 'original', from: '2026-04-20T08:00:00Z', until: '2026-05-13T15:00:00Z' },
	{ wheel: 'W2', build: 'original', from: '2026-04-23T08:00:00Z', until: '2026-05-18T14:00:00Z' },
	{ wheel: 'W3', build: 'original', from: '2026-05-02T08:00:00Z', until: '2026-05-25T16:00:00Z' },
	{ wheel: 'W1', build: 'prototype-1', from: '2026-05-15T09:00:00Z', until: '2026-06-10T12:00:00Z' },
	{ wheel: 'W2', build: 'prototype-1', from: '2026-05-21T09:00:00Z', until: '2026-06-15T12:00:00Z' },
	{ wheel: 'W3', build: 'prototype-1', from: '2026-05-27T09:00:00Z', until: '2026-06-18T12:00:00Z' },
	{ wheel: 'W1', build: 'retrofit', from: '2026-06-19T13:00:00Z', until: null },
	{ wheel: 'W2', build: 'retrofit', from: '2026-06-22T10:00:00Z', until: null },
	{ wheel: 'W3', build: 'retrofit', from: '2026-06-25T10:00:00Z', until: null }
] as const;

const row = (
	start: string,
	wheel: string,
	build: string,
	rider: string,
	surface: PlannedRide['surface'],
	km: number,
	more: Pick<PlannedRide, 'wet' | 'peculiarity'> = {}
): PlannedRide => ({ start: `2026-${start}:00:00Z`, wheel, build, rider, surface, km, ...more });

/** The test rides in order of time. */
export const SCHEDULE: readonly PlannedRide[] = [
	row('04-22T07', 'W1', 'original', 'R1', 'road and gravel', 44),
	row('04-25T08', 'W2', 'original', 'R3', 'road', 47),
	row('04-26T07', 'W1', 'original', 'R2', 'gravel', 36),
	row('05-01T08', 'W2', 'original', 'R2', 'road and gravel', 41),
	row('05-02T07', 'W1', 'original', 'R1', 'road', 52),
	row('05-05T16', 'W3', 'original', 'R1', 'road and gravel', 43),
	row('05-06T15', 'W1', 'original', 'R3', 'road and gravel', 40, { wet: true }),
	row('05-07T16', 'W2', 'original', 'R3', 'gravel', 38),
	row('05-10T07', 'W1', 'original', 'R2', 'road', 45),
	row('05-12T15', 'W3', 'original', 'R3', 'road', 48, { peculiarity: 'gaps' }),
	row('05-16T07', 'W2', 'original', 'R1', 'road and gravel', 50),
	row('05-17T07', 'W1', 'prototype-1', 'R1', 'road and gravel', 45),
	row('05-19T16', 'W3', 'original', 'R2', 'gravel', 37),
	row('05-20T16', 'W1', 'prototype-1', 'R3', 'road', 31, { peculiarity: 'no speed' }),
	row('05-23T07', 'W2', 'prototype-1', 'R2', 'road and gravel', 42),
	row('05-24T07', 'W1', 'prototype-1', 'R2', 'gravel', 39),
	row('05-28T16', 'W2', 'prototype-1', 'R3', 'road', 46),
	row('05-29T16', 'W3', 'prototype-1', 'R3', 'road and gravel', 44),
	row('05-30T07', 'W1', 'prototype-1', 'R1', 'road', 54),
	row('06-02T16', 'W3', 'prototype-1', 'R2', 'road and gravel', 38, { wet: true }),
	row('06-03T17', 'W2', 'prototype-1', 'R1', 'indoors', 30),
	row('06-06T07', 'W3', 'prototype-1', 'R1', 'road', 51),
	row('06-07T07', 'W2', 'prototype-1', 'R2', 'gravel', 36),
	row('06-08T16', 'W1', 'prototype-1', 'R3', 'road and gravel', 43),
	row('06-11T16', 'W3', 'prototype-1', 'R3', 'gravel', 39),
	row('06-13T07', 'W2', 'prototype-1', 'R1', 'road and gravel', 47),
	row('06-22T16', 'W1', 'retrofit', 'R3', 'road', 46),
	row('06-24T16', 'W2', 'retrofit', 'R2', 'road and gravel', 41),
	row('06-27T07', 'W1', 'retrofit', 'R1', 'road and gravel', 52),
	row('06-28T07', 'W3', 'retrofit', 'R1', 'road', 49),
	row('06-30T16', 'W2', 'retrofit', 'R3', 'road and gravel', 44, { wet: true }),
	row('07-03T16', 'W3', 'retrofit', 'R3', 'road and gravel', 43, { peculiarity: 'satellites' }),
	row('07-04T07', 'W1', 'retrofit', 'R2', 'gravel', 38, { peculiarity: 'cut off' }),
	row('07-05T07', 'W2', 'retrofit', 'R1', 'road', 55, { peculiarity: 'twice' }),
	row('07-09T16', 'W3', 'retrofit', 'R2', 'gravel', 37),
	row('07-11T07', 'W2', 'retrofit', 'R3', 'gravel', 42),
	row('07-12T07', 'W1', 'retrofit', 'R1', 'gravel', 44),
	row('07-16T16', 'W3', 'retrofit', 'R1', 'road and gravel', 46),
	row('07-18T07', 'W1', 'retrofit', 'R3', 'road and gravel', 50),
	row('07-19T07', 'W2', 'retrofit', 'R2', 'road', 48),
	row('07-21T16', 'W3', 'retrofit', 'R2', 'road', 45)
];
