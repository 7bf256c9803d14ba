import { useState } from 'react';
import { useSend } from '../../../api/useSend.js';
import { useDraft } from '../../../drafts/useDraft.js';
import { SettleFindingDocument, type ShownFindingFragment } from '../../../gql/graphql.js';
import { typedInstant } from '../../../locale/typedInstant.js';
import { Button } from '../../../parts/Button.js';
import { Choice } from '../../../parts/Choice.js';
import { Conflict } from '../../../parts/Conflict.js';
import { Field } from '../../../parts/Field.js';
import { Opener } from '../../../parts/Opener.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { WhenField } from '../../../parts/WhenField.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';

const outcomes = ['RESOLVED', 'ACCEPTED'] as const;
interface SettleDraft {
  status: (typeof outcomes)[number];
  note: string;
  at: string;
}
const empty: SettleDraft = { status: 'RESOLVED', note: '', at: '' };

/** A finding is put right or accepted, with what was done or why it stays. */
export function SettleFinding({
  finding,
  onDone,
}: {
  finding: ShownFindingFragment;
  onDone: (words: string) => void;
}) {
  const { prove, words } = useTexts();
  const { draft, change, clear } = useDraft(`finding.settle.${finding.id}`, empty);
  const { send, problems, isSending } = useSend(
    SettleFindingDocument,
    (data) => data.settleFinding,
  );
  // What is sent from here comes back by itself: that is no clash.
  const [isOwn, setIsOwn] = useState(false);
  const settle = async (note: string) => {
    setIsOwn(true);
    const { id, version } = finding;
    const { status } = draft;
    const settledAt = typedInstant(draft.at);
    const kept = await send({
      input: { id, version, status, note: note.trim() || null, settledAt },
    });
    if (kept) {
      clear();
      onDone(prove.findingSettled(words.findingStatus[status]));
    }
    setIsOwn(false);
  };
  if (finding.status !== 'OPEN' && !isOwn) {
    if (draft.note.trim() === '') return null;
    return (
      <Conflict
        theirs={finding.settledNote ?? ''}
        mine={draft.note}
        settle={(text) => {
          if (text === finding.settledNote) clear();
          else void settle(text);
        }}
      />
    );
  }
  return (
    <Opener label={prove.settle} isOpenAtFirst={draft.note.trim() !== ''}>
      {() => (
        <form
          className={form['form']}
          onSubmit={(event) => {
            event.preventDefault();
            void settle(draft.note);
          }}
        >
          <p className={form['soft']}>{prove.hazardsStay}</p>
          <Choice
            legend={prove.settledAs}
            name={`settle-${finding.id}`}
            value={draft.status}
            options={outcomes.map((value) => ({ value, words: words.findingStatus[value] }))}
            onChange={(status) => {
              change({ status });
            }}
          />
          <div>
            <Field label={draft.status === 'RESOLVED' ? prove.howMended : prove.whyAccepted}>
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
          <WhenField
            typed={draft.at}
            onType={(at) => {
              change({ at });
            }}
            problems={problems}
            path={['settledAt']}
          />
          {problems.some(({ code }) => code === 'OUT_OF_DATE') ? (
            <p role="alert">{prove.changedMeanwhile}</p>
          ) : (
            <ProblemsElsewhere problems={problems} shown={[['note'], ['settledAt']]} />
          )}
          <Button type="submit" disabled={isSending || isOwn}>
            {prove.settleNow}
          </Button>
        </form>
      )}
    </Opener>
  );
}
