import type { ItemFilter, ItemSort, ItemSortKey, ReadinessLevel } from '../../gql/graphql.js';

/** What the shelf is asked for, as kept in the address. */
export interface ShelfSearch {
  find?: string;
  standing?: ReadinessLevel;
  by?: ShelfOrder;
  turned?: boolean;
  as?: 'table';
}

export const levels: readonly ReadinessLevel[] = [
  'ON_AIR_READY',
  'CHECKS_DUE',
  'NOT_READY',
  'DO_NOT_CONNECT',
];

export const orders = [
  'INVENTORY_NUMBER',
  'NAME',
  'READINESS',
  'COMPLETION',
  'HOURS',
  'CHANGED',
] as const satisfies readonly ItemSortKey[];
export type ShelfOrder = (typeof orders)[number];

/** What an address asks for; what it should not say is left out. */
export function readShelfSearch(search: Record<string, unknown>): ShelfSearch {
  const { find, standing, by, turned, as } = search;
  return {
    ...(typeof find === 'string' && find.trim() !== '' ? { find } : {}),
    ...(isOneOf(levels, standing) ? { standing } : {}),
    ...(isOneOf(orders, by) ? { by } : {}),
    ...(turned === true ? { turned } : {}),
    ...(as === 'table' ? { as } : {}),
  };
}

const isOneOf = <T extends string>(words: readonly T[], word: unknown): word is T =>
  (words as readonly unknown[]).includes(word);

/** The order of the list when nobody asked for one, and the end at which each order starts. */
const startsAtTheMost: readonly ShelfOrder[] = ['READINESS', 'COMPLETION', 'HOURS', 'CHANGED'];

/** The same as the API's arguments. */
export function shelfQuestion(search: ShelfSearch): { filter: ItemFilter; sort: ItemSort } {
  const by = search.by ?? 'INVENTORY_NUMBER';
  const isDescending = startsAtTheMost.includes(by) !== (search.turned ?? false);
  return {
    filter: {
      isRetired: false,
      ...(search.find ? { text: search.find } : {}),
      ...(search.standing ? { readiness: [search.standing] } : {}),
    },
    sort: { by, direction: isDescending ? 'DESC' : 'ASC' },
  };
}
