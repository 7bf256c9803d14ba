import type { ReactNode } from 'react';
import type { ShownProblem } from '../api/useSend.js';
import type { FieldDraft, Fields } from '../drafts/useFieldDraft.js';
import { useTexts } from '../texts/textsContext.js';
import { Button } from './Button.js';
import { ProblemsElsewhere } from './ProblemsAt.js';
import { SettleFields } from './SettleFields.js';
import styles from './RecordForm.module.css';

/**
 * A form that changes a record: its fields, what somebody else wrote meanwhile, the problems that no
 * field shows, the button, and what came of it.
 */
export function RecordForm<Values extends Fields>({
  fields,
  nameOf,
  writtenOf,
  problems,
  shown,
  isSending,
  isComplete = Object.keys(fields.changes).length > 0,
  weight = 'plain',
  label,
  outcome,
  className,
  keep,
  children,
}: {
  fields: FieldDraft<Values>;
  nameOf: (name: keyof Values & string) => string;
  /** How a value is shown, where the record holds a code. */
  writtenOf?: (name: keyof Values & string, value: string) => string;
  problems: readonly ShownProblem[];
  /** Paths whose problems stand beside their fields. */
  shown: readonly (readonly string[])[];
  isSending: boolean;
  /** Whether there is something to send; unless said otherwise, once a field was changed. */
  isComplete?: boolean;
  weight?: 'main' | 'plain';
  /** What the button says; that it is written down, unless said otherwise. */
  label?: string;
  outcome: ReactNode;
  className: string | undefined;
  /** Sends what was changed. */
  keep: () => Promise<void>;
  children: ReactNode;
}) {
  const { bench, frame } = useTexts();
  const { theirChanges, settle, isKept } = fields;
  // Who is out of date sees the other's words beside the own ones instead of a refusal.
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  return (
    <form
      className={className}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      {children}
      {theirChanges.length > 0 && !isSending && (
        <SettleFields
          changes={theirChanges}
          nameOf={nameOf}
          settle={settle as (settled: Partial<Record<keyof Values & string, string>>) => void}
          {...(writtenOf && { writtenOf })}
        />
      )}
      {!isStale && <ProblemsElsewhere problems={problems} shown={shown} />}
      {!isKept && <p role="alert">{frame.draftNotKept}</p>}
      <Button
        weight={weight}
        type="submit"
        disabled={isSending || theirChanges.length > 0 || !isComplete}
      >
        {label ?? bench.writeDown}
      </Button>
      <p role="status" className={styles['outcome']}>
        {outcome}
      </p>
    </form>
  );
}
