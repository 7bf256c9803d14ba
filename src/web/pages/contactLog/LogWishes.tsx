import { useConnection } from '../../api/useConnection.js';
import { useEveryRow } from '../../api/useEveryRow.js';
import type { ShownProblem } from '../../api/useSend.js';
import { RigsOfLogDocument, type RigsOfLogQuery } from '../../gql/graphql.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownLog } from './ContactLogPage.js';
import type { LogDraft } from './logDraft.js';
import { LogRigs } from './LogRigs.js';
import styles from '../import/ImportWishes.module.css';

const rigsIn = (data: RigsOfLogQuery) => data.rigs;
const everything = {};
const pageSize = 100;

/** What the log does not say of itself: which rig is meant, and when a use has ended. */
export function LogWishes({
  draft,
  report,
  problems,
  choose,
}: {
  draft: LogDraft;
  report: ShownLog | null;
  problems: readonly ShownProblem[];
  choose: (changes: Partial<LogDraft>) => void;
}) {
  const { contactLog } = useTexts();
  const { rows: rigs } = useEveryRow(
    useConnection(RigsOfLogDocument, everything, rigsIn, pageSize),
  );
  return (
    <>
      <div className={styles['wishes']}>
        <Field label={contactLog.usualRig}>
          <select
            value={draft.rigId}
            onChange={(event) => {
              choose({ rigId: event.target.value });
            }}
          >
            <option value="">{contactLog.noUsualRig}</option>
            {rigs.map(({ id, inventoryNumber, name }) => (
              <option key={id} value={id}>
                {[inventoryNumber, name].filter(Boolean).join(' ')}
              </option>
            ))}
          </select>
        </Field>
        <Field label={contactLog.gap}>
          <input
            type="number"
            min={1}
            max={1440}
            value={draft.gapMinutes}
            onChange={(event) => {
              choose({ gapMinutes: event.target.value });
            }}
          />
        </Field>
      </div>
      <ProblemsAt problems={problems} path={['rigId']} />
      <ProblemsAt problems={problems} path={['gapMinutes']} />
      {report && report.rigTexts.length > 0 && (
        <LogRigs rigTexts={report.rigTexts} rigs={rigs} draft={draft} choose={choose} />
      )}
    </>
  );
}
