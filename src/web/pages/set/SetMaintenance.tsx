import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { RecordMaintenanceDocument } from '../../gql/graphql.js';
import { typedInstant } from '../../locale/typedInstant.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { UsedSet } from './SetUse.js';
import styles from './SetUse.module.css';

type Rule = UsedSet['maintenance'][number];

/** What is to be done on it again and again, how near it is, and the way to say that it is done. */
export function SetMaintenance({ rules }: { rules: readonly Rule[] }) {
  const { use } = useTexts();
  if (rules.length === 0) return null;
  return (
    <section className={styles['maintenance']}>
      <h3>{use.maintenance}</h3>
      <ul className={styles['list']}>
        {rules.map((rule) => (
          <MaintenanceLine key={rule.id} rule={rule} />
        ))}
      </ul>
    </section>
  );
}

function MaintenanceLine({ rule }: { rule: Rule }) {
  const { use } = useTexts();
  const formats = useFormats();
  const { draft, change, clear } = useDraft(`maintenance.${rule.id}`, { doneAt: '', note: '' });
  const [isOpen, setIsOpen] = useState(draft.note !== '' || draft.doneAt !== '');
  const { send, problems, isSending } = useSend(
    RecordMaintenanceDocument,
    (data) => data.recordMaintenance,
  );
  const { title, isDue, useHoursLeft, dueAt, lastDoneAt } = rule;
  const near = [
    useHoursLeft !== null && use.hoursLeft(formats.hours(Math.max(0, useHoursLeft))),
    dueAt && use.dueOn(formats.day(dueAt)),
    lastDoneAt && use.lastDone(formats.day(lastDoneAt)),
  ].filter(Boolean);
  const keep = async () => {
    const kept = await send({
      input: {
        ruleId: rule.id,
        doneAt: typedInstant(draft.doneAt),
        note: draft.note.trim() || null,
      },
    });
    if (!kept) return;
    clear();
    setIsOpen(false);
  };
  return (
    <li>
      <p>
        <strong>{title}</strong>
        {isDue && ` – ${use.isDue}`}
      </p>
      <p className={styles['soft']}>{near.join(' · ')}</p>
      {rule.note && <p>{rule.note}</p>}
      {isOpen ? (
        <form
          className={styles['form']}
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          <Field label={use.doneAt(Intl.DateTimeFormat().resolvedOptions().timeZone)}>
            <input
              type="datetime-local"
              autoFocus
              value={draft.doneAt}
              onChange={(event) => {
                change({ doneAt: event.target.value });
              }}
            />
          </Field>
          <ProblemsAt problems={problems} path={['doneAt']} />
          <Field label={use.note}>
            <input
              value={draft.note}
              onChange={(event) => {
                change({ note: event.target.value });
              }}
            />
          </Field>
          <ProblemsAt problems={problems} path={['note']} />
          <ProblemsElsewhere problems={problems} shown={[['doneAt'], ['note']]} />
          <Button type="submit" disabled={isSending}>
            {use.writeDone}
          </Button>
        </form>
      ) : (
        <Button
          weight="quiet"
          aria-label={use.isDoneOf(title)}
          onClick={() => {
            setIsOpen(true);
          }}
        >
          {use.isDone}
        </Button>
      )}
    </li>
  );
}
