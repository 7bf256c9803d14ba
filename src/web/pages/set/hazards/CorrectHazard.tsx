import { useSend } from '../../../api/useSend.js';
import { hasDraft } from '../../../drafts/keptDrafts.js';
import { useFieldDraft } from '../../../drafts/useFieldDraft.js';
import {
  ChangeHazardDocument,
  type HazardKind,
  type ShownHazardFragment,
} from '../../../gql/graphql.js';
import { Button } from '../../../parts/Button.js';
import { Field } from '../../../parts/Field.js';
import { Opener } from '../../../parts/Opener.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { SettleFields } from '../../../parts/SettleFields.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';

/** Kind and words of a hazard put right; one that was cleared may be said to stand again. */
export function CorrectHazard({
  hazard,
  onDone,
}: {
  hazard: ShownHazardFragment;
  onDone: (words: string) => void;
}) {
  const { bench, prove, words } = useTexts();
  const place = `hazard.correct.${hazard.id}`;
  const now: Record<'kind' | 'note', string> = { kind: hazard.kind, note: hazard.note ?? '' };
  const fields = useFieldDraft(place, now, hazard.version);
  const { send, problems, isSending } = useSend(ChangeHazardDocument, (data) => data.changeHazard);
  const { theirChanges, changes } = fields;
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  const correct = async (close: () => void) => {
    const { kind, note } = changes;
    const kept = await send({
      input: {
        id: hazard.id,
        version: fields.version,
        ...(kind !== undefined && { kind: kind as HazardKind }),
        ...(note !== undefined && { note: note.trim() || null }),
      },
    });
    if (!kept) return;
    fields.clear();
    close();
    onDone(bench.kept);
  };
  const openAgain = async () => {
    const input = { id: hazard.id, version: hazard.version, isOpenAgain: true };
    if (await send({ input })) onDone(prove.standsAgain(words.hazard[hazard.kind]));
  };
  return (
    <>
      {hazard.clearedAt !== null && (
        <div>
          <Button disabled={isSending} onClick={() => void openAgain()}>
            {prove.openAgain}
          </Button>
        </div>
      )}
      <Opener label={prove.correct} isOpenAtFirst={hasDraft(place)}>
        {(close) => (
          <form
            className={form['form']}
            onSubmit={(event) => {
              event.preventDefault();
              void correct(close);
            }}
          >
            <Field label={prove.kind}>
              <select
                value={fields.valueOf('kind')}
                onChange={({ target }) => {
                  fields.type('kind', target.value);
                }}
              >
                {Object.entries(words.hazard).map(([kind, said]) => (
                  <option key={kind} value={kind}>
                    {said}
                  </option>
                ))}
              </select>
            </Field>
            <Field label={prove.hazardNote}>
              <textarea
                rows={2}
                value={fields.valueOf('note')}
                onChange={({ target }) => {
                  fields.type('note', target.value);
                }}
              />
            </Field>
            <ProblemsAt problems={problems} path={['note']} />
            {theirChanges.length > 0 && !isSending && (
              <SettleFields
                changes={theirChanges}
                nameOf={(name) => (name === 'kind' ? prove.kind : prove.hazardNote)}
                writtenOf={(name, value) =>
                  name === 'kind' ? words.hazard[value as HazardKind] : value
                }
                settle={fields.settle}
              />
            )}
            <Button
              type="submit"
              disabled={isSending || theirChanges.length > 0 || Object.keys(changes).length === 0}
            >
              {bench.writeDown}
            </Button>
          </form>
        )}
      </Opener>
      {isStale ? (
        <p role="alert">{prove.changedMeanwhile}</p>
      ) : (
        <ProblemsElsewhere problems={problems} shown={[['note']]} />
      )}
    </>
  );
}
