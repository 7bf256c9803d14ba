import { hash } from 'node:crypto';

const saltDigits = 32;

/**
 * The salt of one value, from the entry's own: 128 bits, so that nothing but guessing leads from
 * one to another once the entry's own is gone.
 * @param key side and field: `after.note`
 */
export const fieldSalt = (entrySalt: string, key: string): string =>
  hash('sha256', `${entrySalt} ${key}`).slice(0, saltDigits);

/** Ids, instants and counts of changes name nobody: they are covered as they are. */
export const isOpenField = (field: string): boolean =>
  field === 'id' || field === 'version' || field.endsWith('Id') || field.endsWith('At');
