import type { DossierExtent, DossierReader, DossierWithheld } from './dossierReader.js';

export interface DossierTable {
  columns: string[];
  rows: string[][];
  /** Names of columns whose figures stand below one another. */
  rightAligned?: readonly string[];
}

export interface DossierPicture {
  /** JPEG without anything that the camera wrote. */
  jpeg: Buffer;
  caption: string;
}

/** A part of a dossier, in the order: remarks, facts, table, pictures. */
export interface DossierSection {
  heading: string;
  remarks: string[];
  facts: [name: string, value: string][];
  table: DossierTable | null;
  pictures: DossierPicture[];
  /** How many pictures a printed row holds. */
  picturesAcross: 2 | 3;
}

/** What a dossier says, however it is written down. */
export interface DossierDocument {
  title: string;
  subtitle: string;
  /** The day that it states, ISO 8601: all that differs when nothing else has changed. */
  statedOn: string;
  sections: DossierSection[];
}

export interface DossierWithholding {
  withheld: ReadonlySet<DossierWithheld>;
}

/** What the owner has chosen. */
export interface DossierChoice extends DossierWithholding {
  reader: DossierReader;
  extent: DossierExtent;
  statedOn: string;
}

export const section = (
  heading: string,
  parts: Partial<Omit<DossierSection, 'heading'>>,
): DossierSection => ({
  heading,
  remarks: [],
  facts: [],
  table: null,
  pictures: [],
  picturesAcross: 2,
  ...parts,
});

/** What stands where something is left out: a reader must see that there is something. */
export const withheldWord = '[withheld]';

export const orUnknown = (value: unknown): string =>
  (typeof value === 'string' && value !== '') || typeof value === 'number'
    ? `${value}`
    : 'not recorded';

/** `SUPPORTED_BY` → `supported by` */
export const inWords = (word: unknown): string => String(word).toLowerCase().replaceAll('_', ' ');

/** The day of an instant in UTC. */
export const dayOf = (instant: unknown): string =>
  typeof instant === 'string' ? instant.slice(0, 10) : 'not recorded';
