import type { Checklist } from '../../db/checklist.js';
import type { ModelCapabilityInput } from './modelDetail.inputs.js';

/** Bands as ADIF names them, by wavelength; modes in capitals; each pair once. */
export function checkCapabilities(
  check: Checklist,
  capabilities: readonly ModelCapabilityInput[],
): { band: string; mode: string; outputMilliwatts: number | null }[] {
  const seen = new Set<string>();
  return capabilities.map(({ band, mode, outputMilliwatts }, index) => {
    const path = ['capabilities', String(index)];
    check.that(
      /^\d{1,4}(\.\d{1,2})?(m|cm|mm)$/.test(band),
      'Write the band as its wavelength: 40m, 70cm.',
      [...path, 'band'],
    );
    check.that(
      /^[A-Z0-9]{1,20}$/.test(mode),
      'Write the mode in capitals: CW, SSB, AM, FM, RTTY.',
      [...path, 'mode'],
    );
    check.that((outputMilliwatts ?? 1) > 0, 'Output is more than 0 milliwatts, or left out.', [
      ...path,
      'outputMilliwatts',
    ]);
    const pair = `${band} ${mode}`;
    check.that(!seen.has(pair), `${pair} is there twice.`, path);
    seen.add(pair);
    return { band, mode, outputMilliwatts: outputMilliwatts ?? null };
  });
}
