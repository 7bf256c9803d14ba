/** The list for the fair. */
export const wanted = {
  title: 'Wanted',
  print: 'Print on one sheet',
  keptFrom: (minute: string) =>
    `No connection: the list as of ${minute}. What you buy is noted here and sent later.`,
  neverFetched:
    'The list was never opened on this device while the program answered. Open it once at home.',
  noneTitle: 'Nothing is wanted',
  noneHelp:
    'What a set lacks can be put on this list with addWant; it then says what waits for it.',
  waiting: 'Bought, not sent yet',
  forget: 'Forget this purchase',
  something: 'something not named',
  upTo: (amount: string) => `up to ${amount}`,
  noCeiling: 'no ceiling set',
  forSet: (set: string, where: string) => (where ? `for ${set}, ${where}` : `for ${set}`),
  instead: (names: string) => `will do instead: ${names}`,
  onOrder: (count: number, from: string, day: string | null) =>
    day === null
      ? `${count} on order from ${from}, no day said`
      : `${count} on order from ${from}, expected ${day}`,
  bought: 'Bought it',
  boughtThis: (what: string) => `Bought it: ${what}`,
  ordered: 'Ordered',
  orderedThis: (what: string) => `Ordered: ${what}`,
  orderedFrom: 'Where it was ordered',
  orderedOn: 'Day it was ordered',
  expectedOn: 'Expected on, if known',
  reference: 'Their number of the order, if any',
  orderAgain: 'Order it once more all the same',
  orderNeedsConnection:
    'No connection: an order is sent at once, because somebody else may have ordered it. What you typed stays here.',
  noteOrder: 'Write the order down',
  priceIn: (currency: string) => `Price of all, in ${currency}`,
  priceHelp: 'Write the price in figures: 12 or 12.50.',
  howMany: 'How many',
  whichOne: 'Which one',
  noteIt: 'Note it',
  notYet: 'Not yet',
};
