/** Smaller overruns are not reported from a 1 Hz recording: roads and sensors make them without a slip. */
export const LEAST_REPORTED_DEG = 46;

/** Two excesses that begin within this time are one slip. */
export const SAME_SLIP_S = 3;

/** Log odds of trees and nets together from which on a candidate is reported; one limit for every ride that is compared. */
export const LEAST_LOG_ODDS = 2;
