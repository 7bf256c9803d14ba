interface Running {
  startedAt: string;
  breaks: readonly { startedAt: string; endedAt: string | null }[];
}

/** Seconds worked so far, net of breaks; a break that goes on stands still. */
export function netSeconds({ startedAt, breaks }: Running, nowMs: number): number {
  const inBreaks = breaks.reduce(
    (sum, pause) => sum + (ms(pause.endedAt) ?? nowMs) - Date.parse(pause.startedAt),
    0,
  );
  return Math.max(0, Math.floor((nowMs - Date.parse(startedAt) - inBreaks) / 1000));
}

/** 1:05:09 */
export function shownClock(seconds: number): string {
  const two = (value: number) => String(value).padStart(2, '0');
  const hours = Math.floor(seconds / 3600);
  return `${hours}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
}

const ms = (instant: string | null): number | null =>
  instant === null ? null : Date.parse(instant);
