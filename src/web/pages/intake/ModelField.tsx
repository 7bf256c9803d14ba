import { useId } from 'react';
import { useQuery } from 'urql';
import { IntakeModelsDocument, type ItemKind } from '../../gql/graphql.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import { modelName } from './newItemDraft.js';

/** A model by its maker and designation, with those that answer to what is typed. */
export function ModelField({
  kind,
  typed,
  onType,
}: {
  kind: ItemKind;
  typed: string;
  onType: (typed: string) => void;
}) {
  const { intake } = useTexts();
  const models = useId();
  const [{ data }] = useQuery({
    query: IntakeModelsDocument,
    variables: { text: typed.trim() || null, itemKind: kind },
  });
  return (
    <Field label={intake.model}>
      <input
        list={models}
        value={typed}
        placeholder={intake.modelHint}
        onChange={(event) => {
          onType(event.target.value);
        }}
      />
      <datalist id={models}>
        {data?.models.nodes.map((model) => (
          <option key={model.id} value={modelName(model)} />
        ))}
      </datalist>
    </Field>
  );
}
