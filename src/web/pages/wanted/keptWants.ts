import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { RecordFindInput, WantedQuery } from '../../gql/graphql.js';

/** A purchase noted on this device, to be sent when the program answers. */
export interface NotedFind {
  input: RecordFindInput;
  /** What it is, to be shown while it waits. */
  what: string;
  /** Why the program would not take it; empty while it was not asked. */
  problems: string[];
}

interface Kept extends DBSchema {
  list: { key: 'wanted'; value: WantedQuery };
  finds: { key: string; value: NotedFind };
}

let opened: Promise<IDBPDatabase<Kept>> | undefined;

const kept = (): Promise<IDBPDatabase<Kept>> =>
  (opened ??= openDB<Kept>('reglow-wanted', 2, {
    upgrade: (database, oldVersion, _newVersion, transaction) => {
      if (oldVersion < 1) {
        database.createObjectStore('list');
        database.createObjectStore('finds');
        return;
      }
      // A list of before lacks what is shown now; purchases that wait stay.
      void transaction.objectStore('list').clear();
    },
  }));

/** Keeps the list as it is, for the fair. */
export const keepList = async (list: WantedQuery): Promise<void> => {
  await (await kept()).put('list', list, 'wanted');
};

/** The list as it was when it was last fetched; undefined if it never was. */
export const keptList = async (): Promise<WantedQuery | undefined> =>
  (await kept()).get('list', 'wanted');

/** Notes a purchase, or what became of it, under its key. */
export const noteFind = async (find: NotedFind): Promise<void> => {
  await (await kept()).put('finds', find, find.input.key);
};

/** Purchases that wait to be sent. */
export const notedFinds = async (): Promise<NotedFind[]> => (await kept()).getAll('finds');

export const forgetFind = async (key: string): Promise<void> => {
  await (await kept()).delete('finds', key);
};
