import { DateTime } from 'luxon';

/** The calendar day of an instant in an IANA zone, `2026-07-28`; in UTC where the zone is unknown. */
export function dayInZone(atMs: number, zone: string): string {
  const local = DateTime.fromMillis(atMs, { zone });
  const shown = local.isValid ? local : DateTime.fromMillis(atMs, { zone: 'utc' });
  return shown.toFormat('yyyy-MM-dd');
}
