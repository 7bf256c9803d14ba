import { describedEnum } from '../../api/kit/describedEnum.js';

export const ListField = describedEnum(
  'ListField',
  'What a column of an existing list can be taken for.',
  {
    INVENTORY_NUMBER: "The collector's own number; every row needs one.",
    NAME: 'A name of its own.',
    MAKER: 'Who made the model; goes with MODEL.',
    MODEL: 'The designation of the model; goes with MAKER.',
    ROLE: 'What an accessory is for.',
    SERIAL_NUMBER: 'The serial number.',
    MADE: 'When it was made: a year, a month, a day, or an EDTF date.',
    PLACE: 'Where it stands; "Workshop > Shelf A" names a place in a place.',
    ACQUIRED_ON: 'The day it was bought.',
    PRICE: 'What was paid for it alone.',
    CURRENCY: 'The currency of the price, ISO 4217.',
    SELLER: 'From whom it was bought.',
    VENUE: 'The fair, auction or house where it was bought.',
    NOTE: 'Remarks; several columns may go there.',
  },
);
export type ListField = keyof typeof ListField;
