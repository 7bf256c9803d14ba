import type { PartNeededInput, PlannedTaskFragment } from '../../gql/graphql.js';
import { unreadAt } from './unreadAt.js';
import type { Read } from './useReadAndSend.js';

/** A part as it is typed that a task cannot be done without. */
export interface TypedPart {
  id: string;
  name: string;
  quantity: string;
}

/** Parts as one text, so that a draft holds them like any other field. */
export const partsText = (parts: readonly TypedPart[]): string =>
  parts.length === 0
    ? ''
    : JSON.stringify(parts.map(({ id, name, quantity }) => ({ id, name, quantity })));

export const partsOf = (text: string): TypedPart[] =>
  text === '' ? [] : (JSON.parse(text) as TypedPart[]);

export const keptParts = ({ partsNeeded }: PlannedTaskFragment): string =>
  partsText(
    partsNeeded.map(({ partType, quantity }) => ({
      id: String(partType.id),
      name: partType.designation,
      quantity: String(quantity),
    })),
  );

export const readParts = (text: string, numberUnread: string): Read<PartNeededInput[]> => {
  const typed = partsOf(text);
  const unread = typed.flatMap(({ quantity }, index) =>
    /^\s*\d{1,9}\s*$/.test(quantity)
      ? []
      : [unreadAt(['parts', String(index), 'quantity'], numberUnread)],
  );
  if (unread.length > 0) return { unread };
  return {
    input: typed.map(({ id, quantity }) => ({ partTypeId: id, quantity: Number(quantity) })),
  };
};
