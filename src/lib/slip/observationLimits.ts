/** Slower turns are mostly positioning the cranks. */
export const TURNING_LEAST_RPM = 30;
