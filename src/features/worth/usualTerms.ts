/** What is reckoned with until the owner says otherwise. Our own choice, no source. */
export const usualTerms = {
  hourRateMinorUnits: null as number | null,
  hourRateCurrency: null as string | null,
  saleCostPercent: 15,
  partEffortMinutes: 20,
  usablePartsPercent: 70,
  spareUsePercent: 30,
};
export type Terms = typeof usualTerms;
