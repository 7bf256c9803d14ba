import { useId } from 'react';
import { useQuery } from 'urql';
import type { ShownProblem } from '../../../api/useSend.js';
import { PartTypesLikeDocument, type ComponentOrigin } from '../../../gql/graphql.js';
import { Field } from '../../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import type { PartDraft } from './partDraft.js';

const shown = ['partTypeId', 'marking', 'dateCode'].map((name) => ['component', name]);

/** A part that is not written down anywhere yet: its type, what is printed on it, whence it is. */
export function NewPart({
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
  const { prove, words } = useTexts();
  const types = useId();
  const partType = draft.partType ?? expected ?? '';
  const [{ data }] = useQuery({
    query: PartTypesLikeDocument,
    variables: { text: partType.trim() || null },
  });
  const ofPart = problems.filter(({ path }) => path[0] === 'component');
  return (
    <>
      <div className={form['fields']}>
        <div>
          <Field label={prove.partType}>
            <input
              list={types}
              value={partType}
              spellCheck={false}
              onChange={({ target }) => {
                change({ partType: target.value });
              }}
            />
          </Field>
          <datalist id={types}>
            {data?.partTypes.nodes.map(({ id, designation }) => (
              <option key={id} value={designation} />
            ))}
          </datalist>
          <ProblemsAt problems={ofPart} path={['component', 'partTypeId']} />
        </div>
        {(['marking', 'dateCode'] as const).map((name) => (
          <div key={name}>
            <Field label={prove[name]}>
              <input
                value={draft[name]}
                spellCheck={false}
                onChange={({ target }) => {
                  change({ [name]: target.value });
                }}
              />
            </Field>
            <ProblemsAt problems={ofPart} path={['component', name]} />
          </div>
        ))}
        <Field label={prove.origin}>
          <select
            value={draft.origin}
            onChange={({ target }) => {
              change({ origin: target.value as ComponentOrigin });
            }}
          >
            {Object.entries(words.origin).map(([origin, said]) => (
              <option key={origin} value={origin}>
                {said}
              </option>
            ))}
          </select>
        </Field>
      </div>
      <ProblemsElsewhere problems={ofPart} shown={shown} />
    </>
  );
}
