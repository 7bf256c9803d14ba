export type ReformingRuleName =
  'BENCH_MAKER' | 'MAKER_NOTE_1993' | 'ONE_KILOHM_HALF_HOUR' | 'EIA_815' | 'STEP_BY_STEP';

/** What a published rule says, as it says it. */
export interface ReformingRule {
  readonly name: ReformingRuleName;
  readonly saying: string;
  readonly seriesOhms: (ratedVolts: number) => number;
  /** The most current that the rule lets flow; null where it leaves that to the resistor. */
  readonly mostMilliamperes: number | null;
  /** Minutes at the full voltage; the months in store matter to one rule alone. */
  readonly holdMinutes: (monthsStored: number) => number;
  readonly isRaisedInSteps: boolean;
  readonly acceptedWhen: string;
  /** The wattage that the rule itself names; null where it names none. */
  readonly namedWatts: number | null;
  readonly source: string;
  readonly isConfirmed: boolean;
}

/** The published rules. They disagree by a factor of a hundred in current: say which was applied. */
export const reformingRules: readonly ReformingRule[] = [
  {
    name: 'MAKER_NOTE_1993',
    saying:
      '10 kilohm up to 75 V, 100 kilohm above; raised slowly with at most 1 mA, then 4 hours or more at full voltage.',
    seriesOhms: (ratedVolts) => (ratedVolts <= 75 ? 10_000 : 100_000),
    mostMilliamperes: 1,
    holdMinutes: () => 240,
    isRaisedInSteps: true,
    acceptedWhen: 'the leakage current, measured again, is within what its maker states',
    namedWatts: null,
    source: 'Note of a capacitor maker of October 1993, in a published reprint',
    isConfirmed: true,
  },
  {
    name: 'BENCH_MAKER',
    saying: '30 kilohm, 5 W, for 5 minutes and one more for each month in store.',
    seriesOhms: () => 30_000,
    mostMilliamperes: null,
    holdMinutes: (monthsStored) => 5 + monthsStored,
    isRaisedInSteps: false,
    acceptedWhen:
      'within an hour the voltage across the resistor falls below 10 percent of what is applied; otherwise reject it',
    namedWatts: 5,
    source:
      "Makers' practice as told on two published pages on re-forming (30 kilohm, 5 W, 5 minutes and a minute a month)",
    isConfirmed: true,
  },
  {
    name: 'ONE_KILOHM_HALF_HOUR',
    saying: 'Rated voltage through 1 kilohm for 30 minutes.',
    seriesOhms: () => 1000,
    mostMilliamperes: null,
    holdMinutes: () => 30,
    isRaisedInSteps: false,
    acceptedWhen: 'the leakage current is within what its maker states',
    namedWatts: null,
    source: 'Two published pages on shelf life of electrolytic capacitors',
    isConfirmed: true,
  },
  {
    name: 'EIA_815',
    saying:
      '100 ohm up to 100 V, 1 kilohm above, for an hour; then discharge through 1 ohm for each volt and rest 12 to 48 hours.',
    seriesOhms: (ratedVolts) => (ratedVolts <= 100 ? 100 : 1000),
    mostMilliamperes: null,
    holdMinutes: () => 60,
    isRaisedInSteps: false,
    acceptedWhen: 'the leakage current is within what its maker states, after the rest',
    namedWatts: null,
    source:
      'EIA-815 (August 1999), preconditioning, and in the same words the general information of a maker of power capacitors (after IEC 60384-4)',
    isConfirmed: true,
  },
  {
    name: 'STEP_BY_STEP',
    saying:
      'In steps, each held while the leakage falls, at most 10 mA; stop at the rated voltage.',
    seriesOhms: (ratedVolts) => ratedVolts / 0.01,
    mostMilliamperes: 10,
    holdMinutes: () => 60,
    isRaisedInSteps: true,
    acceptedWhen: 'the leakage at the rated voltage has stopped falling at a low figure',
    namedWatts: null,
    source:
      'Restoration mailing-list archive, October 2017; an hour at the last step: common practice, no source',
    isConfirmed: true,
  },
];
