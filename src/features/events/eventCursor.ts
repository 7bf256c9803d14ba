import { argumentProblem } from '../../api/kit/argumentProblem.js';
import { eventKinds, type EventKind } from './eventKind.js';

/** Where a page of events ends: the order is by time, then record, then kind, the latest first. */
export interface EventPlace {
  at: string;
  id: string;
  kind: EventKind;
}

export const eventCursor = ({ at, id, kind }: EventPlace): string => `${at}~${id}~${kind}`;

/** @throws GraphQLError for one that no feed gave out. */
export function readEventCursor(text: string): EventPlace {
  const [, at, id, kind] =
    /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z)~([0-9a-f-]{36})~([A-Z_]+)$/.exec(text) ?? [];
  if (at !== undefined && id !== undefined && kind !== undefined && kind in eventKinds) {
    return { at, id, kind: kind as EventKind };
  }
  throw argumentProblem('“before” is not a place in this feed. Follow next_url, or leave it out.');
}

/** Whether one comes after another in the feed, so is earlier or told later. */
export function comesAfter(one: EventPlace, other: EventPlace): boolean {
  if (one.at !== other.at) return one.at < other.at;
  if (one.id !== other.id) return one.id < other.id;
  return one.kind < other.kind;
}
