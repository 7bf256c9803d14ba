import { useSend } from '../../api/useSend.js';
import { newKey } from '../../api/newKey.js';
import { useDraft } from '../../drafts/useDraft.js';
import { StartBringUpDocument, type SetBringUpsQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { Notice } from '../../parts/Notice.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { SetHazards } from '../set/SetHazards.js';
import type { BroughtUpSet } from './BringUpPage.js';
import { ToClearing } from './ToClearing.js';
import styles from './BringUpPage.module.css';

const empty = { key: '', procedureKey: '', note: '' };

/** The choice of a procedure, with what can hurt before it. */
export function StartBringUp({
  item,
  procedures,
  onStarted,
}: {
  item: BroughtUpSet;
  procedures: SetBringUpsQuery['bringUpProcedures'];
  onStarted: (id: string) => void;
}) {
  const { bringUp, set } = useTexts();
  const formats = useFormats();
  const { draft, change, clear } = useDraft(`bringUp.start.${item.id}`, empty);
  const { send, problems, isSending } = useSend(StartBringUpDocument, (data) => data.startBringUp);
  if (item.retiredAt) {
    return <Notice title={set.gone(formats.day(item.retiredAt))} help={bringUp.goneHelp} />;
  }
  const chosen = procedures.find(({ key }) => key === draft.procedureKey);
  const standing = item.hazards.filter(
    ({ clearedAt, guide }) => clearedAt === null && !guide.belongsToDesign,
  );
  const start = async () => {
    const key = draft.key || newKey();
    change({ key });
    const kept = await send({
      input: {
        key,
        itemId: item.id,
        procedureKey: draft.procedureKey,
        note: draft.note.trim() || null,
      },
    });
    if (!kept?.bringUp) return;
    clear();
    onStarted(kept.bringUp.id);
  };
  return (
    <>
      <SetHazards item={item} />
      {standing.length > 0 && (
        <div className={styles['stop']}>
          <p>{bringUp.hazardsFirst}</p>
          <ToClearing number={item.inventoryNumber} />
        </div>
      )}
      <Sheet id="begin" title={bringUp.begin}>
        <form
          className={styles['form']}
          onSubmit={(event) => {
            event.preventDefault();
            void start();
          }}
        >
          <Choice
            legend={bringUp.procedure}
            name="procedure"
            value={chosen?.key ?? null}
            options={procedures.map(({ key, title }) => ({ value: key, words: title }))}
            onChange={(procedureKey) => {
              change({ procedureKey, key: '' });
            }}
          />
          <ProblemsAt problems={problems} path={['procedureKey']} />
          {chosen && (
            <>
              <p>{chosen.appliesTo}</p>
              <p className={styles['defer']} {...fromApi}>
                {chosen.advice}
              </p>
              <p>
                {bringUp.stepsOf(chosen.steps.length)}:{' '}
                {chosen.steps.map(({ title }) => title).join(', ')}.
              </p>
            </>
          )}
          <Field label={bringUp.note}>
            <textarea
              rows={2}
              value={draft.note}
              onChange={(event) => {
                change({ note: event.target.value, key: '' });
              }}
            />
          </Field>
          <ProblemsAt problems={problems} path={['note']} />
          <ProblemsElsewhere problems={problems} shown={[['procedureKey'], ['note']]} />
          <Button weight="main" type="submit" disabled={isSending || !chosen}>
            {bringUp.beginIt}
          </Button>
        </form>
      </Sheet>
    </>
  );
}
