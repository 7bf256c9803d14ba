import { createClient } from 'graphql-ws';
import { announceChange } from './changes.js';
import { sayConnection } from './connection.js';

interface RecordsChanged {
  recordsChanged: { cursor: string };
}

const query = 'subscription Follow($after: String) { recordsChanged(after: $after) { cursor } }';
const firstPauseMilliseconds = 500;
const longestPauseMilliseconds = 10_000;

/**
 * Follows what is changed, in this window or in another, for as long as the page is open. After a
 * lost connection it goes on from where it was: what happened meanwhile is announced too.
 */
export async function followChanges(): Promise<never> {
  let after: string | undefined;
  let pause = firstPauseMilliseconds;
  for (let turn = 0; ; turn++) {
    const client = createClient({
      url: `${location.origin.replace(/^http/, 'ws')}/graphql`,
      retryAttempts: 0,
      keepAlive: 10_000,
      on: {
        connected: () => {
          pause = firstPauseMilliseconds;
          sayConnection(true);
          // Before the first event there is no cursor to go on from.
          if (turn > 0) announceChange();
        },
      },
    });
    try {
      for await (const { data } of client.iterate<RecordsChanged>({
        query,
        variables: { after: after ?? null },
      })) {
        after = data?.recordsChanged.cursor ?? after;
        announceChange();
      }
    } catch {
      // Told below, like an end without an error.
    }
    await client.dispose();
    sayConnection(false);
    await new Promise((resolve) => setTimeout(resolve, pause));
    pause = Math.min(pause * 2, longestPauseMilliseconds);
  }
}
