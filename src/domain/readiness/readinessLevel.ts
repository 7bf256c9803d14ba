/**
 * DO_NOT_CONNECT: a hazard is open or not cleared; do not connect it to mains, supply or antenna.
 * NOT_READY: something else stands in the way.
 * CHECKS_DUE: all else is met, but a final check is missing or has lapsed.
 * ON_AIR_READY: nothing recorded stands in the way; the operator still decides.
 */
export type ReadinessLevel = (typeof WORST_FIRST)[number];

const WORST_FIRST = ['DO_NOT_CONNECT', 'NOT_READY', 'CHECKS_DUE', 'ON_AIR_READY'] as const;

/** The worst of several levels; ON_AIR_READY when there is none. */
export function worstLevel(levels: readonly ReadinessLevel[]): ReadinessLevel {
  return WORST_FIRST.find((level) => levels.includes(level)) ?? 'ON_AIR_READY';
}

/** The best of several levels; DO_NOT_CONNECT when there is none. */
export function bestLevel(levels: readonly ReadinessLevel[]): ReadinessLevel {
  return WORST_FIRST.findLast((level) => levels.includes(level)) ?? 'DO_NOT_CONNECT';
}
