import { Refusal } from '../../db/refusal.js';

/** The id of a record in the whole collection: the name of its type and its own id. */
export const globalId = (typeName: string, id: string): string => `${typeName}_${id}`;

/** @returns the two halves, or null when the text is no such id. */
export function splitGlobalId(text: string): { typeName: string; id: string } | null {
  const [, typeName, id] = /^([A-Za-z]+)_([0-9a-f-]{36})$/.exec(text) ?? [];
  return typeName !== undefined && id !== undefined ? { typeName, id } : null;
}

/**
 * The record id behind a global id that must name one of some types.
 * @throws Refusal when it is no id, or the id of something else.
 */
export function recordId(
  wanted: string | readonly string[],
  text: string,
  path: string[] = ['id'],
): string {
  const types = typeof wanted === 'string' ? [wanted] : wanted;
  const split = splitGlobalId(text);
  if (split && types.includes(split.typeName)) return split.id;
  const kinds = types.join(' or ');
  throw Refusal.invalid(
    split
      ? `This is the id of a ${split.typeName}; a ${kinds} is wanted here.`
      : `"${text.slice(0, 60)}" is not an id. Use the id that the API gave for the ${kinds}.`,
    path,
  );
}

/** `recordId`, where leaving it out or giving null is allowed. */
export const optionalRecordId = <Missing extends null | undefined>(
  wanted: string | readonly string[],
  text: string | Missing,
  path: string[],
): string | Missing => (typeof text === 'string' ? recordId(wanted, text, path) : text);

/** Both kinds of item. */
export const itemTypes = ['Rig', 'Accessory'] as const;
