interface Capability {
  band: string;
  mode: string;
}

/** "80 m, 40 m: CW, LSB": bands that share their modes together, in the order given. */
export function bandsOf(capabilities: readonly Capability[]): string {
  const modesByBand = new Map<string, string[]>();
  for (const { band, mode } of capabilities) {
    modesByBand.set(band, [...(modesByBand.get(band) ?? []), mode]);
  }
  const bandsByModes = new Map<string, string[]>();
  for (const [band, modes] of modesByBand) {
    const key = [...modes].sort().join('/');
    bandsByModes.set(key, [...(bandsByModes.get(key) ?? []), band]);
  }
  return [...bandsByModes]
    .map(([modes, bands]) => `${bands.map(spaced).join(', ')}: ${modes.replaceAll('/', ', ')}`)
    .join(' · ');
}

/** 40m as one writes it: 40 m. */
export const spaced = (band: string): string => band.replace(/^([\d.]+)([cm]?m)$/, '$1\u00a0$2');
