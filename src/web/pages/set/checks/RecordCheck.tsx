import { useId } from 'react';
import { useOwnerName } from '../../../api/useOwnerName.js';
import { useDraft } from '../../../drafts/useDraft.js';
import type { ShownHazardFragment } from '../../../gql/graphql.js';
import { Button } from '../../../parts/Button.js';
import { Choice } from '../../../parts/Choice.js';
import { Field } from '../../../parts/Field.js';
import { OpenCautions } from '../../../parts/OpenCautions.js';
import { PartyField } from '../../../parts/PartyField.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { WhenField } from '../../../parts/WhenField.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import { checkPlace, emptyCheck } from './checkDraft.js';
import { useCheckSender } from './useCheckSender.js';

const shown = ['procedure', 'isPassed', 'validDays', 'checkedById', 'checkedAt', 'note'].map(
  (name) => [name],
);

/** A final check is written down: what was checked, how it came out, how long it holds. */
export function RecordCheck({
  itemId,
  hazards,
  known,
  onDone,
}: {
  itemId: string;
  hazards: readonly ShownHazardFragment[];
  /** Checks that have a name already, with how long each holds. */
  known: readonly { procedure: string; validDays: number }[];
  onDone: (words: string) => void;
}) {
  const { frame, prove } = useTexts();
  const names = useId();
  const { draft, change, clear, isKept } = useDraft(checkPlace(itemId), emptyCheck);
  const by = useOwnerName(draft.by);
  const { record, problems, isSending } = useCheckSender(itemId);
  const keep = async () => {
    if (!(await record({ ...draft, by }))) return;
    clear();
    onDone(prove.checkKept(draft.procedure.trim()));
  };
  return (
    <form
      className={form['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <OpenCautions hazards={hazards} />
      <div className={form['fields']}>
        <div>
          <Field label={prove.procedure}>
            <input
              list={names}
              value={draft.procedure}
              onChange={({ target: { value: procedure } }) => {
                const days = known.find((one) => one.procedure === procedure)?.validDays;
                change({ procedure, ...(days !== undefined && { validDays: String(days) }) });
              }}
            />
          </Field>
          <datalist id={names}>
            {[...new Set(known.map(({ procedure }) => procedure))].map((procedure) => (
              <option key={procedure} value={procedure} />
            ))}
          </datalist>
          <ProblemsAt problems={problems} path={['procedure']} />
        </div>
        <div>
          <Field label={prove.validDays}>
            <input
              inputMode="numeric"
              value={draft.validDays}
              onChange={({ target }) => {
                change({ validDays: target.value });
              }}
            />
          </Field>
          <ProblemsAt problems={problems} path={['validDays']} />
        </div>
      </div>
      <Choice
        legend={prove.outcome}
        name={`outcome-${itemId}`}
        value={draft.outcome}
        options={[
          { value: 'passed', words: prove.passed },
          { value: 'failed', words: prove.failed },
        ]}
        onChange={(outcome) => {
          change({ outcome });
        }}
      />
      <ProblemsAt problems={problems} path={['isPassed']} />
      <div>
        <Field label={prove.measured}>
          <textarea
            rows={2}
            value={draft.note}
            onChange={({ target }) => {
              change({ note: target.value });
            }}
          />
        </Field>
        <ProblemsAt problems={problems} path={['note']} />
      </div>
      <div className={form['fields']}>
        <PartyField
          label={prove.checkedBy}
          kind="PERSON"
          typed={by}
          onType={(name) => {
            change({ by: name });
          }}
          problems={problems}
          path={['checkedById']}
        />
        <WhenField
          typed={draft.at}
          onType={(at) => {
            change({ at });
          }}
          problems={problems}
          path={['checkedAt']}
        />
      </div>
      <ProblemsElsewhere problems={problems} shown={shown} />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button type="submit" disabled={isSending}>
        {prove.recordCheckNow}
      </Button>
    </form>
  );
}
