import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { SaveSweepTemplateDocument } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import type { MeasuredPlace } from './measuredPlaces.js';
import { placeNamed, sentColumns, type SweepDraft } from './sweepDraft.js';
import { templateChosen } from './templateChosen.js';
import styles from './BenchEntry.module.css';

/** Sweeps of the model that have a name: to choose one, and to keep the present one as one. */
export function SweepTemplates({
  model,
  draft,
  places,
  change,
}: {
  model: NonNullable<BenchItem['model']>;
  draft: SweepDraft;
  places: readonly MeasuredPlace[];
  change: (changes: Partial<SweepDraft>) => void;
}) {
  const { bench } = useTexts();
  const [name, setName] = useState('');
  const [said, setSaid] = useState('');
  const { send, problems, isSending } = useSend(
    SaveSweepTemplateDocument,
    (data) => data.saveSweepTemplate,
  );
  const keep = async () => {
    const { tier, instrument } = draft;
    const kept = await send({
      input: {
        modelId: model.id,
        name,
        tier,
        instrument: instrument.trim() || null,
        quantities: sentColumns(draft),
        designators: positionsOf(draft, places),
      },
    });
    if (!kept?.sweepTemplate) return;
    setSaid(bench.templateKept(kept.sweepTemplate.name));
    setName('');
    change({ templateId: kept.sweepTemplate.id, planned: kept.sweepTemplate.designators });
  };
  return (
    <>
      <div className={styles['row']}>
        {model.sweepTemplates.length > 0 && (
          <Field label={bench.template}>
            <select
              value={draft.templateId}
              onChange={({ target }) => {
                const chosen = model.sweepTemplates.find(({ id }) => id === target.value);
                change(templateChosen(draft, chosen ?? null, places));
              }}
            >
              <option value="">{bench.noTemplate}</option>
              {model.sweepTemplates.map((template) => (
                <option key={template.id} value={template.id}>
                  {template.name}
                </option>
              ))}
            </select>
          </Field>
        )}
        <Field label={bench.templateName}>
          <input
            value={name}
            onChange={({ target }) => {
              setName(target.value);
              setSaid('');
            }}
          />
        </Field>
      </div>
      <p className={styles['soft']}>{bench.templateHelp}</p>
      <ProblemsElsewhere problems={problems} shown={[]} />
      <Button disabled={isSending || name.trim() === ''} onClick={() => void keep()}>
        {bench.keepTemplate}
      </Button>
      <p role="status" className={styles['kept']}>
        {said}
      </p>
    </>
  );
}

/** Those that were read; before the first the template's; else those that limits are known for. */
function positionsOf(draft: SweepDraft, places: readonly MeasuredPlace[]): string[] {
  const read = [...draft.kept, ...draft.rows].flatMap(
    ({ designator }) => placeNamed(places, designator)?.designator ?? [],
  );
  if (read.length > 0) return [...new Set(read)];
  if (draft.planned.length > 0) return [...draft.planned];
  const limited = places.filter(({ limits }) => limits.length > 0);
  return (limited.length > 0 ? limited : places).map(({ designator }) => designator);
}
