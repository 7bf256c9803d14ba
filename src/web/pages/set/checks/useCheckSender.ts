import { useState } from 'react';
import { usePartyNamed } from '../../../api/usePartyNamed.js';
import { useSend, type ShownProblem } from '../../../api/useSend.js';
import { RecordFinalCheckDocument } from '../../../gql/graphql.js';
import { typedInstant } from '../../../locale/typedInstant.js';
import { useTexts } from '../../../texts/textsContext.js';
import type { CheckDraft } from './checkDraft.js';

/** Sends a final check; what cannot be sent as it was typed is said beside its field. */
export function useCheckSender(itemId: string) {
  const { prove } = useTexts();
  const { send, problems, isSending, forget } = useSend(
    RecordFinalCheckDocument,
    (data) => data.recordFinalCheck,
  );
  const [own, setOwn] = useState<readonly ShownProblem[]>([]);
  const partyNamed = usePartyNamed('PERSON');
  return {
    problems: [...own, ...problems],
    isSending,
    /** @returns whether it is written down */
    record: async (draft: CheckDraft & { by: string }): Promise<boolean> => {
      const days = draft.validDays.trim();
      const by = draft.by.trim();
      const checkedById = await partyNamed(by);
      const found: ShownProblem[] = [];
      const mend = (message: string, name: string) => {
        found.push({ code: 'INVALID', message, path: [name], isOfPage: true });
      };
      if (draft.procedure.trim() === '') mend(prove.procedureMissing, 'procedure');
      if (draft.outcome === '') mend(prove.outcomeMissing, 'isPassed');
      if (!/^\d{1,9}$/.test(days)) mend(prove.daysUnread, 'validDays');
      if (by !== '' && checkedById === undefined) mend(prove.nobodyCalled(by), 'checkedById');
      setOwn(found);
      if (found.length > 0) {
        forget();
        return false;
      }
      const kept = await send({
        input: {
          itemId,
          procedure: draft.procedure.trim(),
          isPassed: draft.outcome === 'passed',
          validDays: Number(days),
          checkedById: checkedById ?? null,
          checkedAt: typedInstant(draft.at),
          note: draft.note.trim() || null,
        },
      });
      return kept !== null;
    },
  };
}
