import { checkedInputs, type GivenInput } from './checkedInputs.js';
import { localCodesFirst, type Working } from './working.js';

/** What a published limit holds a measurement against. */
export type LeakageMeasure = 'EARTH_BOND' | 'INSULATION' | 'TOUCH_CURRENT';

/** KEPT and BROKEN say where the reading lies; neither says that nothing can happen. */
export type LimitOutcome = 'KEPT' | 'BROKEN' | 'NOT_MEASURED';

export interface LeakageLimit {
  readonly measure: LeakageMeasure;
  readonly rule: string;
  readonly limit: number;
  readonly unit: 'Ohm' | 'MOhm' | 'mA';
  readonly isUpper: boolean;
  readonly outcome: LimitOutcome;
  readonly source: string;
  readonly isConfirmed: boolean;
}

export interface LeakageAsked {
  readonly mainsVolts: number;
  /** From the earth pin to the chassis. */
  readonly earthBondOhms: number | null;
  /** From both line conductors joined to the chassis, at 500 V DC. */
  readonly insulationMegohms: number | null;
  /** From the chassis to earth, root mean square. */
  readonly touchMilliamperes: number | null;
}

export interface Leakage {
  readonly limits: readonly LeakageLimit[];
  /** What would flow through the insulation at the mains voltage, in mA; null if not measured. */
  readonly throughInsulationMilliamperes: number | null;
  readonly working: Working;
}

type Row = Omit<LeakageLimit, 'outcome'>;

const ul = 'UL 8750, section 8.7.1, as quoted; scope of UL 101 (2019)';
const rows: readonly Row[] = [
  row(
    'EARTH_BOND',
    'UL 507, continuity of the earth conductor',
    0.1,
    'Ohm',
    'UL 507, as printed in a test report',
    true,
  ),
  row(
    'INSULATION',
    'IEC 60065, older editions: basic insulation',
    2,
    'MOhm',
    'IEC 60065, older editions, from memory',
    false,
  ),
  row(
    'INSULATION',
    'IEC 60065, older editions: reinforced insulation',
    4,
    'MOhm',
    'IEC 60065, older editions, from memory',
    false,
  ),
  row(
    'INSULATION',
    'Common lower end for basic insulation at 500 V DC',
    1,
    'MOhm',
    'From memory',
    false,
  ),
  row('TOUCH_CURRENT', 'UL, two-wire cord', 0.5, 'mA', ul, true),
  row('TOUCH_CURRENT', 'UL, three-wire cord, portable', 0.5, 'mA', ul, true),
  row('TOUCH_CURRENT', 'UL, three-wire cord, fixed place', 0.75, 'mA', ul, true),
  row(
    'TOUCH_CURRENT',
    'IEC 60065, 0.7 mA peak',
    0.7 / Math.SQRT2,
    'mA',
    'IEC 60065, touch current, as printed with the test clause in a television service manual',
    true,
  ),
  row(
    'TOUCH_CURRENT',
    'IEC 62368-1 (2018), class 1 source',
    0.5,
    'mA',
    'IEC 62368-1 (2018), from memory',
    false,
  ),
];

function row(
  measure: LeakageMeasure,
  rule: string,
  limit: number,
  unit: Row['unit'],
  source: string,
  isConfirmed: boolean,
): Row {
  return { measure, rule, limit, unit, isUpper: measure !== 'INSULATION', source, isConfirmed };
}

/**
 * Holds earth bond, insulation and touch current of a set against the published limits.
 * @throws BadInputs, also when nothing was measured
 */
export function leakage(asked: LeakageAsked): Leakage {
  const { mainsVolts, earthBondOhms, insulationMegohms, touchMilliamperes } = asked;
  const measured: Record<LeakageMeasure, number | null> = {
    EARTH_BOND: earthBondOhms,
    INSULATION: insulationMegohms,
    TOUCH_CURRENT: touchMilliamperes,
  };
  const given: GivenInput[] = [
    { name: 'mainsVolts', value: mainsVolts, unit: 'V', from: 20, upTo: 500 },
    ...optional('earthBondOhms', earthBondOhms, 'Ohm', 1e9),
    ...optional('insulationMegohms', insulationMegohms, 'MOhm', 1e9),
    ...optional('touchMilliamperes', touchMilliamperes, 'mA', 1000),
  ];
  const inputs = checkedInputs(given, [
    given.length === 1 &&
      'Give at least one measurement: earthBondOhms, insulationMegohms or touchMilliamperes.',
  ]);
  return {
    limits: rows.map((limit) => ({ ...limit, outcome: outcomeOf(limit, measured[limit.measure]) })),
    throughInsulationMilliamperes:
      insulationMegohms === null || insulationMegohms === 0
        ? null
        : mainsVolts / insulationMegohms / 1000,
    working: {
      formula: 'I = V₁/R; each reading held against each limit',
      inputs,
      assumptions: [
        'The touch current is a root mean square of a sine; a peak limit is divided by √2.',
        'Insulation is measured at 500 V DC with the switch on and both line conductors joined.',
      ],
      sources: [...new Set(rows.map(({ source }) => source))],
      cautions: [
        'A chassis joined to one side of the mains breaks every one of these limits by design: use an isolating transformer.',
        'A line capacitor to the chassis passes current that an insulation test with DC does not show.',
        'The limits differ: keep to the strictest that applies where you are.',
        localCodesFirst,
      ],
    },
  };
}

const optional = (name: string, value: number | null, unit: string, upTo: number): GivenInput[] =>
  value === null ? [] : [{ name, value, unit, from: 0, upTo }];

function outcomeOf({ limit, isUpper }: Row, reading: number | null): LimitOutcome {
  if (reading === null) return 'NOT_MEASURED';
  return (isUpper ? reading <= limit : reading >= limit) ? 'KEPT' : 'BROKEN';
}
