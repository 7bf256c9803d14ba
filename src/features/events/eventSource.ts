import type { EventKind } from './eventKind.js';

/** Something that happened, as it is kept: the fields that its source fills, null elsewhere. */
export interface EventRow {
  /** Of the record that tells it. */
  id: string;
  kind: EventKind;
  /** An instant, or midnight UTC of a day. */
  at: string;
  /** The hour is not known, only the day. */
  isDay: boolean;
  inventoryNumber: string;
  itemName: string | null;
  subject: string | null;
  detail: string | null;
  person: string | null;
  place: string | null;
  minorUnits: number | null;
  currency: string | null;
}

/** Where one kind of event is found: pieces of SQL. */
export interface EventSource {
  kind: EventKind;
  /** What follows FROM, with the table `item` joined. */
  from: string;
  /** The table whose `id` is the event's. */
  table: string;
  /** Column of an instant or of a day, never null where `where` holds. */
  at: string;
  isDay?: true;
  where?: string;
  columns?: Partial<
    Record<'subject' | 'detail' | 'person' | 'place' | 'minorUnits' | 'currency', string>
  >;
}

/** As text that sorts with every other event. */
export const whenOf = ({ at, isDay }: EventSource): string =>
  isDay ? `(${at} || 'T00:00:00.000Z')` : at;
