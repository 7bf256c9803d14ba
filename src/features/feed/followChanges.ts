import type { Database } from '../../db/database.js';
import {
  eventsAfter,
  isKnownPosition,
  latestPosition,
  type ChangeEvent,
  type FeedPosition,
} from './changeEvents.reads.js';

/**
 * How often the records are looked at when this process has written nothing: another one (a
 * command, a second server) may have. Our own choice: a window is to show it within a second.
 */
const lookAgainMs = 700;

export interface FeedStep {
  position: FeedPosition;
  /** Null: what happened in between is not known any more, or is the start; load everything. */
  event: ChangeEvent | null;
}

/**
 * What is committed after a position, one step at a time, for as long as it is asked for.
 * @param after null: from now on. A position that the feed does not know any more gives one step
 * without an event, and goes on from now.
 */
export function followChanges(
  database: Database,
  after: FeedPosition | null,
): AsyncIterableIterator<FeedStep> {
  const end = new AbortController();
  const steps = follow(database, after, end.signal);
  return {
    next: () => steps.next(),
    return: () => {
      end.abort();
      return steps.return(undefined);
    },
    [Symbol.asyncIterator]() {
      return this;
    },
  };
}

async function* follow(
  database: Database,
  after: FeedPosition | null,
  end: AbortSignal,
): AsyncGenerator<FeedStep, undefined> {
  const { reader } = database;
  let position = after ?? (await latestPosition(reader));
  if (after && !(await isKnownPosition(reader, after))) {
    position = await latestPosition(reader);
    yield { position, event: null };
  }
  while (!end.aborted) {
    // Listening begins before the look, so that no commit falls between the two.
    const commit = nextCommit(database, end);
    const events = await eventsAfter(reader, position.sequence);
    for (const event of events) {
      position = { sequence: event.sequence, at: event.at };
      yield { position, event };
    }
    if (events.length > 0) commit.forget();
    else await commit.comes;
  }
  return undefined;
}

/** The next commit of this process, or the time to look again. */
function nextCommit(database: Database, end: AbortSignal) {
  let forget = (): void => undefined;
  const comes = new Promise<void>((resolve) => {
    const timer = setTimeout(() => {
      forget();
    }, lookAgainMs);
    const unlisten = database.onCommit(() => {
      forget();
    });
    forget = () => {
      clearTimeout(timer);
      unlisten();
      end.removeEventListener('abort', forget);
      resolve();
    };
    end.addEventListener('abort', forget);
  });
  return { comes, forget };
}
