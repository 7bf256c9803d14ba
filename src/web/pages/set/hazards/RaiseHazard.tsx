import { useQuery } from 'urql';
import { useSend } from '../../../api/useSend.js';
import { useDraft } from '../../../drafts/useDraft.js';
import { HazardKindsDocument, RaiseHazardDocument, type HazardKind } from '../../../gql/graphql.js';
import { typedInstant } from '../../../locale/typedInstant.js';
import { Button } from '../../../parts/Button.js';
import { Field } from '../../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { WhenField } from '../../../parts/WhenField.js';
import { fromApi } from '../../../texts/fromApi.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';

const empty: { kind: HazardKind | ''; note: string; at: string } = { kind: '', note: '', at: '' };

/** Where what is half typed of a hazard is kept. */
export const raisePlace = (itemId: string): string => `hazard.raise.${itemId}`;

/** Something that can hurt is written down; its cautions are there before it is sent. */
export function RaiseHazard({
  item,
  onDone,
}: {
  item: { id: string; hazards: readonly { kind: HazardKind; clearedAt: string | null }[] };
  onDone: (words: string) => void;
}) {
  const { frame, intake, prove, set, words } = useTexts();
  const { draft, change, clear, isKept } = useDraft(raisePlace(item.id), empty);
  const { send, problems, isSending } = useSend(RaiseHazardDocument, (data) => data.raiseHazard);
  const [{ data }] = useQuery({ query: HazardKindsDocument });
  const guide = data?.hazardKinds.find(({ kind }) => kind === draft.kind);
  const stands = item.hazards.some(({ kind, clearedAt }) => kind === draft.kind && !clearedAt);
  const raise = async () => {
    const { kind, note, at } = draft;
    if (kind === '') return;
    const input = { itemId: item.id, kind, note: note.trim() || null, raisedAt: typedInstant(at) };
    if (!(await send({ input }))) return;
    clear();
    onDone(prove.isRaised(words.hazard[kind]));
  };
  return (
    <form
      className={form['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void raise();
      }}
    >
      <Field label={prove.kind}>
        <select
          required
          value={draft.kind}
          onChange={({ target }) => {
            change({ kind: target.value as HazardKind | '' });
          }}
        >
          <option value="">{prove.chooseKind}</option>
          {Object.entries(words.hazard).map(([kind, said]) => (
            <option key={kind} value={kind}>
              {said}
            </option>
          ))}
        </select>
      </Field>
      {stands && <p>{intake.already}</p>}
      {guide && (
        <div className={form['caution']}>
          <p>
            {intake.recognised}: <span {...fromApi}>{guide.recognisedBy}</span>
          </p>
          <ul>
            {[...guide.cautions, ...guide.protection, guide.advice].map((said) => (
              <li key={said} {...fromApi}>
                {said}
              </li>
            ))}
          </ul>
          {guide.belongsToDesign && <p>{prove.designStays}</p>}
          <p>
            {set.source}: <span {...fromApi}>{guide.source}</span>
          </p>
        </div>
      )}
      <div className={form['fields']}>
        <div>
          <Field label={prove.hazardNote}>
            <input
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
          path={['raisedAt']}
        />
      </div>
      <ProblemsElsewhere problems={problems} shown={[['note'], ['raisedAt']]} />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button type="submit" disabled={isSending || draft.kind === ''}>
        {prove.raiseNow}
      </Button>
    </form>
  );
}
