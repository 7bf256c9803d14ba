import { useState } from 'react';
import { useClient } from 'urql';
import { useSend, type ShownProblem } from '../../../api/useSend.js';
import {
  FitPartDocument,
  PartTypesLikeDocument,
  TakePartOutDocument,
  type FitComponentInput,
} from '../../../gql/graphql.js';
import { typedInstant } from '../../../locale/typedInstant.js';
import { useTexts } from '../../../texts/textsContext.js';
import type { PartDraft } from './partDraft.js';

type Source = Pick<FitComponentInput, 'component' | 'componentId' | 'fromStock'>;

export interface SentPart {
  itemId: string;
  draft: Omit<PartDraft, 'act'> & { act: 'fit' | 'replace' | 'remove'; partType: string };
  /** What sits there now. */
  sittingId: string | null;
  /** Whether the known part that was chosen still sits somewhere. */
  isKnownSitting: boolean;
  noteTakenOut: (componentId: string) => void;
}

/** Sends a part in, out, or one for another; what cannot be sent as typed is said beside its field. */
export function usePartSender() {
  const { prove } = useTexts();
  const client = useClient();
  const fitting = useSend(FitPartDocument, (data) => data.fitComponent);
  const taking = useSend(TakePartOutDocument, (data) => data.removeComponent);
  const [own, setOwn] = useState<readonly ShownProblem[]>([]);

  const refused = (message: string, ...path: string[]): null => {
    setOwn([{ code: 'INVALID', message, path }]);
    return null;
  };
  const newPart = async (draft: SentPart['draft']): Promise<Source | null> => {
    const text = draft.partType.trim();
    const answer = text && (await client.query(PartTypesLikeDocument, { text }).toPromise());
    const known = answer
      ? answer.data?.partTypes.nodes.find(
          ({ designation }) => designation.toLowerCase() === text.toLowerCase(),
        )
      : undefined;
    if (text && !known) return refused(prove.noPartType(text), 'component', 'partTypeId');
    const { marking, dateCode, origin } = draft;
    const component = {
      marking: marking.trim() || null,
      dateCode: dateCode.trim() || null,
      origin,
    };
    return { component: { ...component, partTypeId: known?.id ?? null } };
  };
  const sourceOf = async ({ draft, isKnownSitting, noteTakenOut }: SentPart) => {
    if (draft.source === 'new') return newPart(draft);
    if (draft.source === 'shelf') {
      if (draft.lotId === '') return refused(prove.chooseLotFirst, 'fromStock');
      return { fromStock: { lotId: draft.lotId } };
    }
    const { componentId } = draft;
    if (componentId === '') return refused(prove.choosePartFirst, 'componentId');
    if (isKnownSitting && draft.takenOut !== componentId) {
      const input = {
        componentId,
        disposition: 'MOVED',
        removedAt: typedInstant(draft.at),
      } as const;
      if (!(await taking.send({ input }))) return null;
      noteTakenOut(componentId);
    }
    return { componentId };
  };

  return {
    problems: [...own, ...taking.problems, ...fitting.problems],
    isSending: fitting.isSending || taking.isSending,
    /** @returns whether it is written down */
    send: async (sent: SentPart): Promise<boolean> => {
      setOwn([]);
      fitting.forget();
      taking.forget();
      const { draft, itemId, sittingId } = sent;
      const { act, disposition } = draft;
      const at = typedInstant(draft.at);
      const outNote = draft.outNote.trim() || null;
      if (act === 'remove') {
        if (sittingId === null) return false;
        const input = { componentId: sittingId, disposition, note: outNote, removedAt: at };
        return (await taking.send({ input })) !== null;
      }
      const source = await sourceOf(sent);
      if (!source) return false;
      const input = {
        itemId,
        designator: draft.designator.trim(),
        fittedAt: at,
        note: draft.note.trim() || null,
        ...source,
        ...(act === 'replace' && { removing: { disposition, note: outNote } }),
      };
      return (await fitting.send({ input })) !== null;
    },
  };
}
