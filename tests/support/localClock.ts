// Local time by the IANA rules that `Intl` carries: the outside check on the arithmetic of hours.

const formats = new Map<string, Intl.DateTimeFormat>();

/** The wall clock of a zone at an instant, as 'YYYY-MM-DDTHH:mm:ss'. */
export function wallClockAt(instantMs: number, zone: string): string {
  let format = formats.get(zone);
  if (format === undefined) {
    format = new Intl.DateTimeFormat('sv-SE', {
      timeZone: zone,
      dateStyle: 'short',
      timeStyle: 'medium',
    });
    formats.set(zone, format);
  }
  return format.format(instantMs).replace(' ', 'T');
}

/** Every instant at which a zone's clock shows the given 'YYYY-MM-DDTHH:mm': none, one or two. */
export function instantsShowing(localMinute: string, zone: string): number[] {
  const asIfUtc = Date.parse(`${localMinute}:00Z`);
  const quarterHourMs = 15 * 60 * 1000;
  const found: number[] = [];
  for (let quarters = -60; quarters <= 60; quarters += 1) {
    const candidate = asIfUtc + quarters * quarterHourMs;
    if (wallClockAt(candidate, zone).startsWith(localMinute)) found.push(candidate);
  }
  return found;
}

/** The instant at which a zone's clock shows the given minute, where there is exactly one. */
export function instantAt(localMinute: string, zone: string): number {
  const [only, ...others] = instantsShowing(localMinute, zone);
  if (only === undefined || others.length > 0) {
    throw new Error(`${localMinute} does not come exactly once in ${zone}.`);
  }
  return only;
}
