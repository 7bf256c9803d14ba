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
  ceiling: {
    MONTH: (amount: string) => `Ceiling for a month: ${amount}`,
    YEAR: (amount: string) => `Ceiling for a year: ${amount}`,
  },
};
