import type { ReactNode } from 'react';
import type { ShownProblem } from '../../api/useSend.js';
import type { FieldDraft, Fields } from '../../drafts/useFieldDraft.js';
import { RecordFormEnd } from '../../parts/RecordFormEnd.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './ChangePage.module.css';

/** A form over fields of one record, with its end. */
export function ChangeForm<Values extends Fields>({
  fields,
  sending,
  shown,
  nameOf,
  writtenOf,
  isMain = false,
  isDone,
  keep,
  children,
}: {
  fields: FieldDraft<Values>;
  sending: { problems: readonly ShownProblem[]; isSending: boolean };
  /** Paths of problems that stand beside their fields. */
  shown: readonly (readonly string[])[];
  nameOf: (name: keyof Values & string) => string;
  /** How a value is shown, where the record holds a code. */
  writtenOf: (value: string) => string;
  isMain?: boolean;
  isDone: boolean;
  keep: () => Promise<void>;
  children: ReactNode;
}) {
  const { bench } = useTexts();
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      {children}
      <RecordFormEnd
        fields={fields}
        nameOf={nameOf}
        writtenOf={(_name, value) => writtenOf(value)}
        {...sending}
        shown={shown}
        weight={isMain ? 'main' : 'plain'}
        outcome={isDone && bench.kept}
      />
    </form>
  );
}
