/** Hours and money of the whole collection. */
export const books = {
  title: 'The books',
  hoursName: 'Hours',
  hoursByMonth: (all: string) => `Hours by month (${all} in all)`,
  hoursByKind: 'Hours by kind of work',
  hoursByProject: 'Hours by restoration',
  noHours: 'No time at the bench is written down yet.',
  project: 'Restoration',
  spent: 'Spent so far',
  months: 'Spent and worth by month',
  month: 'Month',
  spentIn: 'Spent in it',
  years: 'Cost and worth by year',
  onDay: 'On',
  held: 'Held (with a value)',
  cost: 'Had cost',
  worth: 'Were worth',
  noYears: 'Nothing has a cost or a value yet.',
  ofThemValued: (held: number, valued: number) => `${held} (${valued})`,
  wentFor: (number: string, day: string, gain: string, isLoss: boolean) =>
    `${number} went on ${day}: ${isLoss ? 'loss' : 'gain'} ${gain}`,
  schedule: 'Insurance schedule',
  beforeYouBuy: (currency: string) => `Before you buy: how much, in ${currency}?`,
  breaksCeiling: (name: string, over: string, ceiling: string) =>
    `${name}: ${over} beyond the ceiling of ${ceiling}. So much must wait, or the ceiling be raised.`,
  keepsCeiling: (name: string, left: string) => `${name}: ${left} would be left.`,
  noRateFor: (name: string) => `${name}: an exchange rate is missing, so nothing can be said.`,
  ceiling: {
    MONTH: (amount: string) => `Ceiling for a month: ${amount}`,
    YEAR: (amount: string) => `Ceiling for a year: ${amount}`,
  },
};
