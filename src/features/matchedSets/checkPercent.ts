import type { Checklist } from '../../db/checklist.js';

export function checkPercent(check: Checklist, percent: string, path: string[]): void {
  const value = Number(percent);
  check.that(
    value > 0 && value <= 100,
    `Give a percentage above 0, up to 100; not ${percent}.`,
    path,
  );
}
