import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { AbandonBringUpDocument, type ShownBringUpFragment } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './BringUpPage.module.css';

/** Gives a bring-up up for now, with the reason; what was recorded stays. */
export function GiveUp({ run }: { run: ShownBringUpFragment }) {
  const { bringUp } = useTexts();
  const { draft, change, clear } = useDraft(`bringUp.giveUp.${run.id}`, { reason: '' });
  const { send, problems, isSending } = useSend(
    AbandonBringUpDocument,
    (data) => data.abandonBringUp,
  );
  const giveUp = async () => {
    const kept = await send({
      input: { id: run.id, version: run.version, reason: draft.reason },
    });
    if (kept) clear();
  };
  return (
    <details className={styles['giveUp']} open={draft.reason !== '' || problems.length > 0}>
      <summary>{bringUp.giveUp}</summary>
      <form
        className={styles['form']}
        onSubmit={(event) => {
          event.preventDefault();
          void giveUp();
        }}
      >
        <p>{bringUp.giveUpHelp}</p>
        <Field label={bringUp.why}>
          <input
            value={draft.reason}
            onChange={(event) => {
              change({ reason: event.target.value });
            }}
          />
        </Field>
        <ProblemsAt problems={problems} path={['reason']} />
        <ProblemsElsewhere problems={problems} shown={[['reason']]} />
        <Button type="submit" disabled={isSending}>
          {bringUp.giveUpNow}
        </Button>
      </form>
    </details>
  );
}
