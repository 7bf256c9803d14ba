import type { ShownProblem } from '../../../api/useSend.js';
import type { PlacedComponentFragment } from '../../../gql/graphql.js';
import { Choice } from '../../../parts/Choice.js';
import { Field } from '../../../parts/Field.js';
import { ProblemsAt } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';
import type { PlanRow } from '../planRows.js';
import type { PartDraft } from './partDraft.js';

/** Which position, what sits there by the records, and what is done about it. */
export function PlaceFields({
  rows,
  draft,
  sitting,
  act,
  change,
  problems,
}: {
  rows: readonly PlanRow[];
  draft: PartDraft;
  sitting: PlacedComponentFragment | null;
  act: PartDraft['act'] | 'fit';
  change: (changes: Partial<PartDraft>) => void;
  problems: readonly ShownProblem[];
}) {
  const { bench, prove, words } = useTexts();
  const name = [sitting?.partType?.designation, sitting?.marking].filter(Boolean).join(' ');
  return (
    <>
      <div>
        <Field label={bench.position}>
          <input
            list="part-positions"
            value={draft.designator}
            spellCheck={false}
            autoCapitalize="characters"
            onChange={({ target }) => {
              change({
                designator: target.value,
                act: '',
                lotId: '',
                lookFor: null,
                partType: null,
              });
            }}
          />
        </Field>
        <datalist id="part-positions">
          {rows.map(({ key, designator, expected, state }) => (
            <option key={key} value={designator}>
              {[expected, words.positionState[state]].filter(Boolean).join(', ')}
            </option>
          ))}
        </datalist>
        <ProblemsAt problems={problems} path={['designator']} />
      </div>
      {sitting !== null && (
        <Choice
          legend={prove.sittingThere(name || '–')}
          name="part-act"
          value={act === '' || act === 'fit' ? null : act}
          options={[
            { value: 'replace', words: prove.acts.replace },
            { value: 'remove', words: prove.acts.remove },
          ]}
          onChange={(chosen) => {
            change({ act: chosen });
          }}
        />
      )}
    </>
  );
}
