import type { ReactNode } from 'react';
import type { ShownProblem } from '../../api/useSend.js';
import type { FieldDraft, Fields } from '../../drafts/useFieldDraft.js';
import { Button } from '../../parts/Button.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { SettleFields } from '../../parts/SettleFields.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './ChangePage.module.css';

/**
 * Fields of one record, what others changed in it meanwhile, the problems that no field shows, and the
 * way to write it down.
 */
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
  const { bench, frame } = useTexts();
  const { problems, isSending } = sending;
  const { theirChanges } = fields;
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  return (
    <form
      className={styles['form']}
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
          writtenOf={(_name, value) => writtenOf(value)}
          settle={(settled) => {
            fields.settle(settled as Partial<Values>);
          }}
        />
      )}
      {!isStale && <ProblemsElsewhere problems={problems} shown={shown} />}
      {!fields.isKept && <p role="alert">{frame.draftNotKept}</p>}
      <Button
        {...(isMain && { weight: 'main' })}
        type="submit"
        disabled={isSending || theirChanges.length > 0 || Object.keys(fields.changes).length === 0}
      >
        {bench.writeDown}
      </Button>
      <p role="status" className={styles['kept']}>
        {isDone && bench.kept}
      </p>
    </form>
  );
}
