import type { ShownProblem } from '../../../api/useSend.js';
import { Button } from '../../../parts/Button.js';
import { Field } from '../../../parts/Field.js';
import { PartyField } from '../../../parts/PartyField.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { WhenField } from '../../../parts/WhenField.js';
import { fromApi } from '../../../texts/fromApi.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import type { ClearDraft } from './ClearHazard.js';

const shown = [['clearedByCheck'], ['clearedById'], ['clearedAt']];

/** What was done and what it showed, by whom and when. */
export function ClearFields({
  draft,
  change,
  usual,
  problems,
  isStale,
  isSending,
  send,
}: {
  draft: ClearDraft & { by: string };
  change: (changes: Partial<ClearDraft>) => void;
  /** The check that usually clears this kind. */
  usual: string;
  problems: readonly ShownProblem[];
  isStale: boolean;
  isSending: boolean;
  send: () => void;
}) {
  const { prove } = useTexts();
  return (
    <form
      className={form['form']}
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <p className={form['caution']}>
        {prove.usualCheck} <span {...fromApi}>{usual}</span> {prove.clearCaution}
      </p>
      <div>
        <Field label={prove.check}>
          <textarea
            rows={2}
            value={draft.check}
            placeholder={prove.checkHint}
            onChange={({ target }) => {
              change({ check: target.value });
            }}
          />
        </Field>
        <ProblemsAt problems={problems} path={['clearedByCheck']} />
      </div>
      <div className={form['fields']}>
        <PartyField
          label={prove.checkedBy}
          kind="PERSON"
          typed={draft.by}
          onType={(by) => {
            change({ by });
          }}
          problems={problems}
          path={['clearedById']}
        />
        <WhenField
          typed={draft.at}
          onType={(at) => {
            change({ at });
          }}
          problems={problems}
          path={['clearedAt']}
        />
      </div>
      {isStale && <p role="alert">{prove.changedMeanwhile}</p>}
      <ProblemsElsewhere problems={problems} shown={shown} />
      <Button type="submit" disabled={isSending}>
        {prove.clearNow}
      </Button>
    </form>
  );
}
