/**
 * Raised by every change that alters results; named in the Changes list of DEVELOPERS.md. Results are
 * stored by (ride, version) and no statistic mixes versions.
 */
export const ANALYSIS_VERSION = 5;
