import type { Complexity } from 'type-graphql';

/** Thousands of trials take about as long as so many plain values: four to a query at the most. */
const valuesOfTrials = 20_000;

/** What a field that runs trials costs in a query, beside what is asked below it. */
export const priceOfTrials: Complexity = ({ childComplexity }) => valuesOfTrials + childComplexity;

/** Today and 52 steps; the weeks are drawn once more for it. */
export const priceOfWeeksAhead: Complexity = ({ childComplexity }) => 5_000 + 53 * childComplexity;
