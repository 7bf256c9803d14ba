import { useQuery } from 'urql';
import type { ShownProblem } from '../../../api/useSend.js';
import { SparesLikeDocument } from '../../../gql/graphql.js';
import { useFormats } from '../../../locale/useFormats.js';
import { Field } from '../../../parts/Field.js';
import { ProblemsAt } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import type { PartDraft } from './partDraft.js';

/** A spare from one lot on the shelf: what the position expects is looked for first. */
export function FromShelf({
  draft,
  expected,
  change,
  problems,
}: {
  draft: PartDraft;
  expected: string | null;
  change: (changes: Partial<PartDraft>) => void;
  problems: readonly ShownProblem[];
}) {
  const { prove } = useTexts();
  const formats = useFormats();
  const lookFor = draft.lookFor ?? expected ?? '';
  const [{ data }] = useQuery({
    query: SparesLikeDocument,
    variables: { text: lookFor.trim() || null },
    requestPolicy: 'cache-and-network',
  });
  const lots = data?.stockLots.nodes ?? [];
  return (
    <div className={form['fields']}>
      <Field label={prove.lookFor}>
        <input
          value={lookFor}
          spellCheck={false}
          onChange={({ target }) => {
            change({ lookFor: target.value, lotId: '' });
          }}
        />
      </Field>
      <div>
        <Field label={prove.lot}>
          <select
            value={draft.lotId}
            onChange={({ target }) => {
              change({ lotId: target.value });
            }}
          >
            <option value="">{data && lots.length === 0 ? prove.noSpares : prove.chooseLot}</option>
            {lots.map((lot) => (
              <option key={lot.id} value={lot.id}>
                {[
                  lot.partType?.designation ?? lot.description,
                  lot.component?.marking,
                  prove.condition[lot.condition],
                  prove.toBeHad(lot.availableQuantity),
                  lot.place?.name,
                  formats.localDay(lot.receivedOn),
                ]
                  .filter(Boolean)
                  .join(', ')}
              </option>
            ))}
          </select>
        </Field>
        <ProblemsAt problems={problems} path={['fromStock']} />
      </div>
    </div>
  );
}
