import { useState } from 'react';
import { useOwnerName } from '../../../api/useOwnerName.js';
import { usePartyNamed } from '../../../api/usePartyNamed.js';
import { useSend, type ShownProblem } from '../../../api/useSend.js';
import { hasDraft } from '../../../drafts/keptDrafts.js';
import { useDraft } from '../../../drafts/useDraft.js';
import {
  ChangeHazardDocument,
  ClearHazardDocument,
  type ShownHazardFragment,
} from '../../../gql/graphql.js';
import { typedInstant } from '../../../locale/typedInstant.js';
import { Conflict } from '../../../parts/Conflict.js';
import { Opener } from '../../../parts/Opener.js';
import { ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';
import { ClearFields } from './ClearFields.js';

export interface ClearDraft {
  check: string;
  /** Null until somebody is named: then the owner is taken to have done it. */
  by: string | null;
  at: string;
}
const empty: ClearDraft = { check: '', by: null, at: '' };

/** Where what is half typed of a check is kept. */
export const clearPlace = (hazardId: string): string => `hazard.clear.${hazardId}`;

/** A hazard is cleared by a check in words, made by somebody; two who do so at once settle it. */
export function ClearHazard({
  hazard,
  onDone,
}: {
  hazard: ShownHazardFragment;
  onDone: (words: string) => void;
}) {
  const { prove, words } = useTexts();
  const place = clearPlace(hazard.id);
  const { draft, change, clear } = useDraft(place, empty);
  const clearing = useSend(ClearHazardDocument, (data) => data.clearHazard);
  const opening = useSend(ChangeHazardDocument, (data) => data.changeHazard);
  const [nobody, setNobody] = useState<readonly ShownProblem[]>([]);
  // What is sent from here comes back by itself: that is no clash.
  const [isOwn, setIsOwn] = useState(false);
  const partyNamed = usePartyNamed('PERSON');
  const by = useOwnerName(draft.by);

  const keep = async (check: string, version: number): Promise<boolean> => {
    const clearedById = await partyNamed(by);
    if (clearedById === undefined) {
      const message = by.trim() === '' ? prove.nobodyNamed : prove.nobodyCalled(by);
      setNobody([{ code: 'INVALID', message, path: ['clearedById'], isOfPage: true }]);
      return false;
    }
    setNobody([]);
    const input = { id: hazard.id, version, clearedByCheck: check, clearedById };
    if (!(await clearing.send({ input: { ...input, clearedAt: typedInstant(draft.at) } }))) {
      return false;
    }
    clear();
    onDone(prove.isCleared(words.hazard[hazard.kind]));
    return true;
  };
  const putInPlace = async (check: string) => {
    const input = { id: hazard.id, version: hazard.version, isOpenAgain: true };
    const opened = (await opening.send({ input }))?.hazard;
    if (opened) await keep(check, opened.version);
  };
  const whileOwn = async (step: () => Promise<unknown>) => {
    setIsOwn(true);
    try {
      await step();
    } finally {
      setIsOwn(false);
    }
  };

  if (hazard.clearedAt !== null && !isOwn) {
    if (draft.check.trim() === '') return null;
    return (
      <>
        <Conflict
          theirs={hazard.clearedByCheck ?? ''}
          mine={draft.check}
          settle={(text) => {
            if (text === hazard.clearedByCheck) clear();
            else void whileOwn(() => putInPlace(text));
          }}
        />
        <ProblemsElsewhere problems={opening.problems} shown={[]} />
      </>
    );
  }
  // Somebody else changed it: what stands there now is on the page, above what was typed.
  const problems = [...nobody, ...clearing.problems.filter(({ code }) => code !== 'OUT_OF_DATE')];
  return (
    <Opener label={prove.clear} isOpenAtFirst={hasDraft(place)}>
      {() => (
        <ClearFields
          draft={{ ...draft, by }}
          change={change}
          usual={hazard.guide.clearedBy}
          problems={problems}
          isStale={clearing.problems.some(({ code }) => code === 'OUT_OF_DATE')}
          isSending={clearing.isSending || isOwn}
          send={() => void whileOwn(() => keep(draft.check, hazard.version))}
        />
      )}
    </Opener>
  );
}
