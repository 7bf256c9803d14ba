export const wanted = {
  title: 'Gesucht',
  print: 'Auf ein Blatt drucken',
  keptFrom: (minute: string) =>
    `Keine Verbindung: die Liste vom ${minute}. Gekauftes wird hier vermerkt und später gesendet.`,
  neverFetched:
    'Die Liste wurde auf diesem Gerät noch nie geöffnet, während das Programm antwortete. Einmal daheim öffnen.',
  noneTitle: 'Nichts wird gesucht',
  noneHelp:
    'Was einem Gerät fehlt, kann mit addWant auf diese Liste; sie sagt dann, was darauf wartet.',
  waiting: 'Gekauft, noch nicht gesendet',
  forget: 'Diesen Kauf vergessen',
  something: 'etwas Ungenanntes',
  upTo: (amount: string) => `bis ${amount}`,
  noCeiling: 'keine Obergrenze',
  forSet: (set: string, where: string) => (where ? `für ${set}, ${where}` : `für ${set}`),
  instead: (names: string) => `tut es auch: ${names}`,
  onOrder: (count: number, from: string, day: string | null) =>
    day === null
      ? `${count} bestellt bei ${from}, kein Tag genannt`
      : `${count} bestellt bei ${from}, erwartet am ${day}`,
  bought: 'Gekauft',
  boughtThis: (what: string) => `Gekauft: ${what}`,
  ordered: 'Bestellt',
  orderedThis: (what: string) => `Bestellt: ${what}`,
  orderedFrom: 'Wo es bestellt wurde',
  orderedOn: 'Tag der Bestellung',
  expectedOn: 'Erwartet am, falls bekannt',
  reference: 'Bestellnummer dort, falls es eine gibt',
  orderAgain: 'Trotzdem noch einmal bestellen',
  orderNeedsConnection:
    'Keine Verbindung: Eine Bestellung wird sofort gesendet, denn jemand anderes kann schon bestellt haben. Was getippt ist, bleibt hier.',
  noteOrder: 'Bestellung aufschreiben',
  priceIn: (currency: string) => `Preis für alle, in ${currency}`,
  priceHelp: 'Den Preis in Ziffern schreiben: 12 oder 12,50.',
  howMany: 'Wie viele',
  whichOne: 'Welches',
  noteIt: 'Vermerken',
  notYet: 'Noch nicht',
};
