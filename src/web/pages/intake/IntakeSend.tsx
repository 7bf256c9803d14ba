import type { ShownProblem } from '../../api/useSend.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { IntakeDraft } from './intakeDraft.js';
import { checksOf } from './useIntake.js';
import styles from './IntakeWalk.module.css';

/** What will be sent, what stands in its way, and the button. */
export function IntakeSend({
  draft,
  change,
  othersCount,
  problems,
  isSending,
  send,
}: {
  draft: IntakeDraft;
  change: (changes: Partial<IntakeDraft>) => void;
  /** Inspections that somebody else recorded since this one was begun; they stand above. */
  othersCount: number;
  problems: readonly ShownProblem[];
  isSending: boolean;
  send: () => void;
}) {
  const { intake, words } = useTexts();
  const hazards = Object.keys(draft.hazards).length;
  const checks = checksOf(draft).length;
  const isEmpty = draft.findings.length + checks + hazards === 0;
  return (
    <>
      <p>{isEmpty ? intake.nothing : intake.summary(draft.findings.length, checks, hazards)}</p>
      <ul className={styles['seen']}>
        {draft.findings.map(({ zone, severity, note }, index) => (
          <li key={index}>
            <strong>{words.zone[zone]}</strong>, {words.severity[severity]}: {note || '–'}
          </li>
        ))}
      </ul>
      <Field label={intake.note}>
        <textarea
          rows={3}
          value={draft.note}
          onChange={(event) => {
            change({ note: event.target.value });
          }}
        />
      </Field>
      {/* All of them again: here one looks for what stands in the way. */}
      <ProblemsAt problems={problems} path={[]} />
      {othersCount > 0 && <p>{intake.othersBeforeSending(othersCount)}</p>}
      <div className={styles['next']}>
        <Button weight="main" disabled={isSending} onClick={send}>
          {intake.record}
        </Button>
      </div>
    </>
  );
}
