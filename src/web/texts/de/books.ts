export const books = {
  title: 'Die Bücher',
  hoursName: 'Stunden',
  hoursByMonth: (all: string) => `Stunden nach Monat (insgesamt ${all})`,
  hoursByKind: 'Stunden nach Art der Arbeit',
  hoursByProject: 'Stunden nach Restaurierung',
  noHours: 'Noch ist keine Zeit an der Werkbank vermerkt.',
  project: 'Restaurierung',
  spent: 'Bisher ausgegeben',
  years: 'Kosten und Wert nach Jahr',
  onDay: 'Am',
  held: 'Bestand (mit Wert)',
  cost: 'Hatte gekostet',
  worth: 'War wert',
  noYears: 'Noch hat nichts einen Preis oder Wert.',
  ofThemValued: (held: number, valued: number) => `${held} (${valued})`,
  wentFor: (number: string, day: string, gain: string) =>
    `${number} ging am ${day}: Gewinn ${gain}`,
  schedule: 'Versicherungsliste',
  ceiling: {
    MONTH: (amount: string) => `Obergrenze für einen Monat: ${amount}`,
    YEAR: (amount: string) => `Obergrenze für ein Jahr: ${amount}`,
  },
};
