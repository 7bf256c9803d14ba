const hourMs = 60 * 60 * 1000;

/**
 * The longest session that is taken at all, confirmed or not. It also bounds how far back to look
 * for a session that overlaps another. Our own choice, no source.
 */
export const longestSessionMs = 7 * 24 * hourMs;

/** A timer that has run longer than this was probably forgotten. Our own choice, no source. */
export const longestUnaskedTimerMs = 16 * hourMs;

/** True when a running timer's time must not be counted before a person has said when it ended. */
export const isForgottenTimer = (
  session: { readonly startedAtMs: number; readonly endedAtMs: number | null },
  nowMs: number,
): boolean => session.endedAtMs === null && nowMs - session.startedAtMs > longestUnaskedTimerMs;
