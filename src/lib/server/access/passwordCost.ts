/**
 * Cost of a password's hash: scrypt with N = 2^15, r = 8, p = 3, which takes 32 MB and some tenths of a second.
 * One of the equally strong settings of the OWASP Password Storage Cheat Sheet (2024); the one with 32 MB, so
 * that a small machine can do it beside its other work.
 */
export const PASSWORD_COST = { N: 2 ** 15, r: 8, p: 3 } as const;
