import { useSend, type ShownProblem } from '../../api/useSend.js';
import {
  NoteOnAccessoryDocument,
  NoteOnRigDocument,
  NoteOnSessionDocument,
} from '../../gql/graphql.js';
import type { BenchItem, BenchTimerNow } from './BenchPage.js';

interface NoteSender {
  /** @returns whether it is kept */
  send: (note: string | null, version: number) => Promise<boolean>;
  problems: readonly ShownProblem[];
  isSending: boolean;
}

/** Where a note goes: to the session that runs, else to the set. */
export function useNoteSender(item: BenchItem, running: BenchTimerNow | null): NoteSender {
  const onSession = useSend(NoteOnSessionDocument, (data) => data.correctSession);
  const onRig = useSend(NoteOnRigDocument, (data) => data.changeRig);
  const onAccessory = useSend(NoteOnAccessoryDocument, (data) => data.changeAccessory);
  const sending = running ? onSession : item.__typename === 'Rig' ? onRig : onAccessory;
  return {
    problems: sending.problems,
    isSending: sending.isSending,
    send: async (note, version) =>
      (await sending.send({ input: { id: (running ?? item).id, version, note } })) !== null,
  };
}
