export const books = {
  title: 'Die Bücher',
  hoursName: 'Stunden',
  hoursByMonth: (all: string) => `Stunden nach Monat (insgesamt ${all})`,
  hoursByKind: 'Stunden nach Art der Arbeit',
  hoursByProject: 'Stunden nach Restaurierung',
  noHours: 'Noch ist keine Zeit an der Werkbank vermerkt.',
  project: 'Restaurierung',
  spent: 'Bisher ausgegeben',
  ceiling: {
    MONTH: (amount: string) => `Obergrenze für einen Monat: ${amount}`,
    YEAR: (amount: string) => `Obergrenze für ein Jahr: ${amount}`,
  },
};
