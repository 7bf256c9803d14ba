import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { RecordFindingDocument, type FindingSeverity, type Zone } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { FindingFields } from '../../parts/FindingFields.js';
import { PhotoButton } from '../../parts/PhotoButton.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import styles from './BenchEntry.module.css';

interface FindingDraft {
  zone: Zone;
  severity: FindingSeverity;
  note: string;
}
const empty: FindingDraft = { zone: 'WHOLE', severity: 'MINOR', note: '' };

/** One thing seen: where, how bad, in words; then a picture of it. */
export function FindingEntry({ item }: { item: BenchItem }) {
  const { bench, frame } = useTexts();
  const { draft, change, clear, isKept } = useDraft(`bench.finding.${item.id}`, empty);
  const { send, problems, isSending } = useSend(
    RecordFindingDocument,
    (data) => data.recordFinding,
  );
  const [keptId, setKeptId] = useState<string | null>(null);
  const record = async () => {
    const kept = await send({ input: { itemId: item.id, ...draft } });
    if (!kept) return;
    setKeptId(kept.finding?.id ?? null);
    // The next thing seen is most often in the same zone.
    clear({ zone: draft.zone });
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void record();
      }}
    >
      <FindingFields
        name="bench"
        finding={draft}
        problems={problems}
        path={[]}
        onChange={(changes) => {
          change(changes);
          setKeptId(null);
        }}
      />
      <ProblemsElsewhere problems={problems} shown={[['note'], ['zone'], ['severity']]} />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button weight="main" type="submit" disabled={isSending}>
        {bench.writeDown}
      </Button>
      <p role="status" className={styles['kept']}>
        {keptId !== null && bench.kept}
      </p>
      {keptId !== null && (
        <PhotoButton key={keptId} label={bench.addPicture} toId={keptId} onKept={() => undefined} />
      )}
    </form>
  );
}
