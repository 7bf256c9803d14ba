import type { ShownProblem } from '../../../api/useSend.js';
import type { Disposition } from '../../../gql/graphql.js';
import { Field } from '../../../parts/Field.js';
import { ProblemsAt } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import type { PartDraft } from './partDraft.js';

/** Where the part goes that comes out, and what it was like. */
export function ComesOut({
  draft,
  change,
  problems,
}: {
  draft: PartDraft;
  change: (changes: Partial<PartDraft>) => void;
  problems: readonly ShownProblem[];
}) {
  const { prove } = useTexts();
  const note = draft.act === 'replace' ? ['removing', 'note'] : ['note'];
  return (
    <div className={form['fields']}>
      <Field label={prove.goesTo}>
        <select
          value={draft.disposition}
          onChange={({ target }) => {
            change({ disposition: target.value as Disposition });
          }}
        >
          {Object.entries(prove.disposition).map(([disposition, said]) => (
            <option key={disposition} value={disposition}>
              {said}
            </option>
          ))}
        </select>
      </Field>
      <div>
        <Field label={prove.whyOut}>
          <input
            value={draft.outNote}
            onChange={({ target }) => {
              change({ outNote: target.value });
            }}
          />
        </Field>
        <ProblemsAt problems={problems} path={note} />
      </div>
    </div>
  );
}
