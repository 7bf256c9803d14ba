import type { ComponentOrigin, Disposition } from '../../../gql/graphql.js';

export interface PartDraft {
  designator: string;
  /** Empty until chosen: a part that sits there is never turned out unasked. */
  act: 'replace' | 'remove' | '';
  source: 'shelf' | 'new' | 'known';
  /** What is looked for on the shelf; null: what the position expects. */
  lookFor: string | null;
  lotId: string;
  /** Designation as typed; null: what the position expects. */
  partType: string | null;
  marking: string;
  dateCode: string;
  origin: ComponentOrigin;
  /** The set that a known part comes from. */
  fromNumber: string;
  componentId: string;
  /** A known part that is out of its old place already, though not yet in the new one. */
  takenOut: string;
  disposition: Disposition;
  outNote: string;
  note: string;
  at: string;
}

export const emptyPart: PartDraft = {
  designator: '',
  act: '',
  source: 'shelf',
  lookFor: null,
  lotId: '',
  partType: null,
  marking: '',
  dateCode: '',
  origin: 'REPLACEMENT',
  fromNumber: '',
  componentId: '',
  takenOut: '',
  disposition: 'STOCK',
  outNote: '',
  note: '',
  at: '',
};

/** Where what is half typed of a part is kept. */
export const partPlace = (itemId: string): string => `part.${itemId}`;
