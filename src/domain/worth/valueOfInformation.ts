/** Payoffs of one choice, one for each state that may turn out to hold. */
export type Payoffs = readonly number[] | Float64Array;

export interface DecisionValue {
  /** Expected payoff of each choice. */
  readonly expected: readonly number[];
  /** Place of the best choice as things are known; the first of equals. */
  readonly best: number;
  /** Expected payoff of it. */
  readonly without: number;
  /** Expected payoff if the state were known before choosing. */
  readonly withPerfect: number;
  /** The most that it is worth to know: the difference, never below zero. */
  readonly perfectInformation: number;
}

/**
 * A decision under risk: the choice with the best expected payoff, and the expected value of
 * perfect information. Checked against a textbook in tests/published/decisions.test.ts.
 * @param probabilities one a state, or null where all are equally likely (trials)
 */
export function valueOfInformation(
  choices: readonly Payoffs[],
  probabilities: readonly number[] | null,
): DecisionValue {
  const states = choices[0]?.length ?? 0;
  if (states === 0 || choices.some((payoffs) => payoffs.length !== states)) {
    throw new RangeError('Every choice needs one payoff for each state.');
  }
  const weight = (state: number) => probabilities?.[state] ?? 1 / states;
  const expected = choices.map(() => 0);
  let withPerfect = 0;
  for (let state = 0; state < states; state += 1) {
    let highest = -Infinity;
    for (const [choice, payoffs] of choices.entries()) {
      const payoff = payoffs[state]!;
      expected[choice]! += weight(state) * payoff;
      highest = Math.max(highest, payoff);
    }
    withPerfect += weight(state) * highest;
  }
  const without = Math.max(...expected);
  return {
    expected,
    best: expected.indexOf(without),
    without,
    withPerfect,
    perfectInformation: Math.max(0, withPerfect - without),
  };
}
