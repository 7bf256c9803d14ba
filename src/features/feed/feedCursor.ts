import { cursorOf, keyOf, type Order } from '../../api/kit/cursor.js';
import type { FeedPosition } from './changeEvents.reads.js';

const feedOrder: Order = { name: 'ChangeEvent change_event.sequence ASC', kind: 'largeCount' };

export const feedCursor = ({ sequence, at }: FeedPosition): string =>
  cursorOf(feedOrder, [sequence, at]);

/** @throws GraphQLError for a cursor that the feed did not give out. */
export function readFeedCursor(cursor: string | null | undefined): FeedPosition | null {
  if (cursor === null || cursor === undefined) return null;
  const [sequence, at] = keyOf(cursor, feedOrder);
  return { sequence: sequence as number, at };
}
