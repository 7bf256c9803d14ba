import { describedEnum } from '../../api/kit/describedEnum.js';

export const DossierReader = describedEnum(
  'DossierReader',
  'For whom a dossier is written, which settles what is left out unless said otherwise.',
  {
    BUYER: 'Who thinks of buying: people, prices and places are left out.',
    INSURER: 'Who insures: people are left out; price paid and serial numbers are in.',
    HEIR: 'Who inherits: everything is in.',
  },
);
export type DossierReader = keyof typeof DossierReader;

export const DossierWithheld = describedEnum(
  'DossierWithheld',
  'What can be left out of a dossier. What is left out is said to be left out.',
  {
    PEOPLE: 'Names, and remarks on the past that may hold names; pictures of papers.',
    PRICES: 'What was paid; pictures of papers.',
    PLACES: 'Where the thing stands, and where things happened.',
    SERIAL_NUMBERS: 'Serial numbers and what is printed on parts; pictures of markings.',
    PHOTOGRAPHS: 'All pictures.',
  },
);
export type DossierWithheld = keyof typeof DossierWithheld;

/** What is left out for each reader unless the owner says otherwise. */
export const usuallyWithheld: Record<DossierReader, readonly DossierWithheld[]> = {
  BUYER: ['PEOPLE', 'PRICES', 'PLACES'],
  INSURER: ['PEOPLE'],
  HEIR: [],
};

export const DossierFormat = describedEnum('DossierFormat', 'How a dossier is written.', {
  HTML: 'One page for a browser, pictures included.',
  PDF: 'Pages to print and to hand over.',
});
export type DossierFormat = keyof typeof DossierFormat;

export const DossierPaper = describedEnum('DossierPaper', 'The paper of a PDF.', {
  A4: '210 × 297 mm (ISO 216).',
  LETTER: '8.5 × 11 inches.',
});
export type DossierPaper = keyof typeof DossierPaper;

export const DossierExtent = describedEnum(
  'DossierExtent',
  'How much of an item is written down.',
  {
    DOSSIER: 'Everything that is recorded.',
    SHEET: 'The Object ID sheet with photographs, and the loss if one is on record.',
  },
);
export type DossierExtent = keyof typeof DossierExtent;
