import { useCallback, useEffect, useState } from 'react';
import { useClient } from 'urql';
import { BoughtItDocument } from '../../gql/graphql.js';
import { useChanges } from '../../api/useChanges.js';
import { forgetFind, notedFinds, noteFind, type NotedFind } from './keptWants.js';

/**
 * Purchases noted on this device. Each is sent under its own key, as often as need be: the program
 * keeps it once.
 */
export function useFinds(): {
  waiting: readonly NotedFind[];
  note: (find: NotedFind) => Promise<void>;
  forget: (key: string) => Promise<void>;
  send: () => Promise<void>;
} {
  const client = useClient();
  const [waiting, setWaiting] = useState<readonly NotedFind[]>([]);
  const show = useCallback(async () => {
    setWaiting(await notedFinds());
  }, []);
  const send = useCallback(async () => {
    for (const find of await notedFinds()) {
      const { data, error } = await client
        .mutation(BoughtItDocument, { input: find.input })
        .toPromise();
      // Nobody answered: the rest waits too.
      if (error?.networkError) break;
      const problems = data?.recordFind.problems.map(({ message }) => message) ?? [
        error?.message ?? '',
      ];
      if (problems.length === 0) await forgetFind(find.input.key);
      else await noteFind({ ...find, problems });
    }
    await show();
  }, [client, show]);
  useEffect(() => {
    const sendNow = () => void send();
    sendNow();
    window.addEventListener('online', sendNow);
    return () => {
      window.removeEventListener('online', sendNow);
    };
  }, [send]);
  // A change that reaches us says that the program answers again.
  useChanges(() => {
    if (waiting.length > 0) void send();
  });
  return {
    waiting,
    send,
    note: async (find) => {
      await noteFind(find);
      await show();
      await send();
    },
    forget: async (key) => {
      await forgetFind(key);
      await show();
    },
  };
}
