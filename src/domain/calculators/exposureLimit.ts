/** CONTROLLED: those who know of it and can leave. UNCONTROLLED: everybody else, neighbours too. */
export type ExposureSituation = 'CONTROLLED' | 'UNCONTROLLED';

export const lowestMegahertz = 0.3;
export const highestMegahertz = 100_000;

/**
 * Maximum permissible exposure in mW/cm² (plane-wave equivalent below 30 MHz).
 * @param megahertz from 0.3 to 100,000
 * Source: 47 CFR 1.1310, table 1; OET Bulletin 65, edition 97-01 (August 1997), appendix A.
 */
export function exposureLimit(megahertz: number, situation: ExposureSituation): number {
  if (situation === 'CONTROLLED') {
    if (megahertz < 3) return 100;
    if (megahertz < 30) return 900 / megahertz ** 2;
    if (megahertz < 300) return 1;
    return megahertz < 1500 ? megahertz / 300 : 5;
  }
  if (megahertz < 1.34) return 100;
  if (megahertz < 30) return 180 / megahertz ** 2;
  if (megahertz < 300) return 0.2;
  return megahertz < 1500 ? megahertz / 1500 : 1;
}
