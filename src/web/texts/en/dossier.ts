/** What is written down for others. */
export const dossier = {
  title: 'Dossier',
  what: 'All that is known of it, written down for one reader. What is left out is said to be left out, and names, places and amounts are taken out of remarks as well.',
  reader: 'For',
  readers: { BUYER: 'a buyer', INSURER: 'an insurer', HEIR: 'an heir' },
  withhold: 'Leave out',
  withheld: {
    PEOPLE: 'people',
    PRICES: 'prices',
    PLACES: 'places',
    SERIAL_NUMBERS: 'serial numbers',
    PHOTOGRAPHS: 'photographs',
  },
  leftOut: (parts: string) => `Left out: ${parts}.`,
  leftIn: (parts: string) => `Of these the reader learns: ${parts}.`,
  nothingLeftOut: 'Nothing is left out.',
  asUsual: 'As usual for this reader',
  look: 'Look at it',
  inNewWindow: 'opens beside this page',
  pdfA4: 'PDF, A4',
  pdfLetter: 'PDF, Letter',
};
