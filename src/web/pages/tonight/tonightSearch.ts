/** What Tonight is asked for, as kept in the address; without a band all bands are meant. */
export interface TonightSearch {
  /** Wavelength name: 40m. */
  band?: string;
  mode?: string;
  /** At least so many watts of output. */
  watts?: number;
}

/** Kinds of emission that sets of this age make; an address may name another. */
export const modes = ['CW', 'AM', 'SSB', 'FM', 'RTTY'] as const;

/** What an address asks for; what it should not say is left out. */
export function readTonightSearch(search: Record<string, unknown>): TonightSearch {
  const { band, mode, watts } = search;
  if (typeof band !== 'string' || !/^\d{1,4}(\.\d{1,2})?(m|cm|mm)$/.test(band)) return {};
  return {
    band,
    mode: typeof mode === 'string' && /^[\w-]{1,12}$/.test(mode) ? mode : modes[0],
    ...(typeof watts === 'number' && watts > 0 && watts <= mostWatts ? { watts } : {}),
  };
}

export const mostWatts = 10_000;
