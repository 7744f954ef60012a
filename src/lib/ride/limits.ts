/**
 * Bounds on what a ride file may ask of this program. Uploaded bytes are not trusted: whatever is past
 * a bound is refused as 'too-large' before memory is spent on it. The figures are ours, no source:
 * generous against real rides (a day of riding at one record a second has 86,400 records).
 */

/** bytes of a ride computer's file */
export const MAX_FIT_BYTES = 64 * 1024 * 1024;
/** messages of all kinds in one FIT file */
export const MAX_FIT_MESSAGES = 1_500_000;
/** FIT files chained in one */
export const MAX_FIT_PARTS = 32;
/** bytes of a track file in XML: about ten times those of the same ride as FIT */
export const MAX_XML_BYTES = 128 * 1024 * 1024;
/** nesting of elements in a track file; the schemas need fewer than ten */
export const MAX_XML_DEPTH = 32;
/** characters of text inside one element */
export const MAX_XML_TEXT = 10_000;
/** bytes of a logger's file: four hours at 500 Hz are about 200 MB */
export const MAX_LOGGER_BYTES = 512 * 1024 * 1024;
/** samples of a logger's file: four hours at 500 Hz */
export const MAX_LOGGER_SAMPLES = 7_200_000;
/** records of a ride computer: seven days at one a second are 604,800; 560,000 took 0.12 GB to read, measured */
export const MAX_RECORDS = 700_000;
/** sessions, sensors and other things of which a ride has a handful */
export const MAX_HANDFUL = 64;
/** laps, pauses and shifts, of each */
export const MAX_MARKS = 20_000;
/** from the first to the last record, seconds */
export const MAX_DURATION_S = 7 * 86_400;

/** Bounds that whoever runs the program may set otherwise; the others are fixed. */
export interface ReadLimits {
	/** records of a ride computer's or a track file */
	readonly records: number;
	/** samples of a logger's file */
	readonly samples: number;
	/** bytes that come out of a file packed with gzip */
	readonly unpackedBytes: number;
}

/** Unpacked: twice a logger's four hours at 200 Hz as text; a child's memory is bounded besides. */
export const READ_LIMITS: ReadLimits = {
	records: MAX_RECORDS,
	samples: MAX_LOGGER_SAMPLES,
	unpackedBytes: 200 * 1024 * 1024
};
