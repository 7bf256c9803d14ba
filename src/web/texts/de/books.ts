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
  wentFor: (number: string, day: string, gain: string, isLoss: boolean) =>
    `${number} ging am ${day}: ${isLoss ? 'Verlust' : 'Gewinn'} ${gain}`,
  schedule: 'Versicherungsliste',
  beforeYouBuy: (currency: string) => `Vor dem Kauf: wie viel, in ${currency}?`,
  breaksCeiling: (name: string, over: string, ceiling: string) =>
    `${name}: ${over} über der Obergrenze von ${ceiling}. So viel muss warten, oder die Obergrenze steigt.`,
  keepsCeiling: (name: string, left: string) => `${name}: ${left} blieben übrig.`,
  noRateFor: (name: string) => `${name}: Ein Wechselkurs fehlt, es lässt sich nichts sagen.`,
  ceiling: {
    MONTH: (amount: string) => `Obergrenze für einen Monat: ${amount}`,
    YEAR: (amount: string) => `Obergrenze für ein Jahr: ${amount}`,
  },
};
