import { useState } from 'react';
import { useDraft } from '../../drafts/useDraft.js';
import { Button } from '../../parts/Button.js';
import { Conflict } from '../../parts/Conflict.js';
import { Field } from '../../parts/Field.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem, BenchTimerNow } from './BenchPage.js';
import { useNoteSender } from './useNoteSender.js';
import styles from './BenchEntry.module.css';

interface NoteDraft {
  /** Null until something is typed: then what is there is shown. */
  text: string | null;
  /** The version that was seen when the typing began. */
  version: number;
}
const untouched: NoteDraft = { text: null, version: 0 };

/** A note on the time that runs; on the set when none does. What others wrote meanwhile is not lost. */
export function NoteEntry({ item, running }: { item: BenchItem; running: BenchTimerNow | null }) {
  const { bench } = useTexts();
  const now = running ?? item;
  const { draft, change, clear } = useDraft(`bench.note.${now.id}`, untouched);
  const { send, problems, isSending } = useNoteSender(item, running);
  const [isKept, setIsKept] = useState(false);
  const text = draft.text ?? now.note ?? '';
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  const keep = async (note: string, version: number) => {
    if (!(await send(note.trim() || null, version))) return;
    clear();
    setIsKept(true);
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void keep(text, draft.text === null ? now.version : draft.version);
      }}
    >
      <Field label={running ? bench.noteOnSession : bench.noteOnSet}>
        <textarea
          rows={5}
          value={text}
          onChange={(event) => {
            setIsKept(false);
            const version = draft.text === null ? now.version : draft.version;
            change({ text: event.target.value, version });
          }}
        />
      </Field>
      {isStale && now.version !== draft.version && (
        <Conflict
          theirs={now.note ?? ''}
          mine={text}
          settle={(settled) => {
            change({ text: settled, version: now.version });
            void keep(settled, now.version);
          }}
        />
      )}
      {!isStale && <ProblemsElsewhere problems={problems} shown={[]} />}
      <Button weight="main" type="submit" disabled={isSending}>
        {bench.writeDown}
      </Button>
      <p role="status" className={styles['kept']}>
        {isKept && bench.kept}
      </p>
    </form>
  );
}
