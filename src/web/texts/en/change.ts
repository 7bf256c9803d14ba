/** Changing what is written down of a set. */
export const change = {
  title: 'Change what is written down',
  titleOf: (number: string) => `Change ${number}`,
  toChange: 'Change what is written down',
  data: 'What it is',
  fields: {
    inventoryNumber: 'Number',
    name: 'What you call it',
    serialNumber: 'Serial number',
    madeEdtf: 'When it was made',
    note: 'Remarks',
    role: 'What it does',
  },
  madeHint: '1962, 196X, 1962/1966',
  place: 'Where it stands',
  standsAt: (place: string) => `Now: ${place}.`,
  to: 'Goes to',
  choosePlace: 'choose a place',
  movedAt: 'When, if not now',
  move: 'Write the move down',
  outlook: 'What its owner says of it',
  outlookHelp:
    'Used where it is weighed whether to go on. Nobody else can say it, and nothing is taken for granted where it is empty.',
  outlookFields: {
    presentStandard: 'The condition it is in',
    successPercent: 'Chance that the work succeeds, %',
    premium: 'Worth to you beyond its price',
    currency: 'Currency',
    premiumReason: 'Why it is worth more to you',
  },
  fromProjects: 'as its restorations say',
  amountUnread: 'Write the amount in figures, with a point or a comma before the decimals: 127.50.',
};
