export const change = {
  title: 'Ändern, was vermerkt ist',
  titleOf: (number: string) => `${number} ändern`,
  toChange: 'Ändern, was vermerkt ist',
  data: 'Was es ist',
  fields: {
    inventoryNumber: 'Nummer',
    name: 'Wie es genannt wird',
    serialNumber: 'Seriennummer',
    madeEdtf: 'Wann es gebaut wurde',
    note: 'Bemerkungen',
    role: 'Was es tut',
  },
  madeHint: '1962, 196X, 1962/1966',
  place: 'Wo es steht',
  standsAt: (place: string) => `Jetzt: ${place}.`,
  to: 'Kommt nach',
  choosePlace: 'Ort wählen',
  movedAt: 'Wann, wenn nicht jetzt',
  move: 'Den Umzug festhalten',
  outlook: 'Was der Besitzer dazu sagt',
  outlookHelp:
    'Gebraucht, wo abgewogen wird, ob man weitermacht. Niemand sonst kann es sagen, und wo nichts steht, wird nichts angenommen.',
  outlookFields: {
    presentStandard: 'In welchem Zustand es ist',
    successPercent: 'Chance, dass die Arbeit gelingt, %',
    premium: 'Über den Preis hinaus wert',
    currency: 'Währung',
    premiumReason: 'Warum es mehr wert ist',
  },
  fromProjects: 'wie seine Restaurierungen sagen',
  amountUnread:
    'Den Betrag in Ziffern schreiben, mit Komma oder Punkt vor den Nachkommastellen: 127,50.',
};
