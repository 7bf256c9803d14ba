import { useState } from 'react';
import { useQuery } from 'urql';
import type { Draft } from '../../../drafts/useDraft.js';
import { PartsOfSetDocument, type ShownHazardFragment } from '../../../gql/graphql.js';
import { Button } from '../../../parts/Button.js';
import { Choice } from '../../../parts/Choice.js';
import { Field } from '../../../parts/Field.js';
import { OpenCautions } from '../../../parts/OpenCautions.js';
import { ProblemsAt, ProblemsElsewhere } from '../../../parts/ProblemsAt.js';
import { WhenField } from '../../../parts/WhenField.js';
import { useTexts } from '../../../texts/textsContext.js';
import form from '../../../parts/Form.module.css';
import type { PlanRow } from '../planRows.js';
import { ComesOut } from './ComesOut.js';
import { FromShelf } from './FromShelf.js';
import { KnownPartFields } from './KnownPartFields.js';
import { knownParts } from './knownParts.js';
import { NewPart } from './NewPart.js';
import type { PartDraft } from './partDraft.js';
import { PlaceFields } from './PlaceFields.js';
import { usePartSender } from './usePartSender.js';

const sources = ['shelf', 'new', 'known'] as const;
const shown = ['designator', 'component', 'componentId', 'fromStock', 'note', 'removing', 'act'];

/** A part goes in at a position, comes out of it, or makes room for another. */
export function PartEntry({
  item,
  rows,
  kept: { draft, change, clear },
}: {
  item: { id: string; inventoryNumber: string; hazards: readonly ShownHazardFragment[] };
  rows: readonly PlanRow[];
  kept: Draft<PartDraft>;
}) {
  const { prove } = useTexts();
  const { send, problems, isSending } = usePartSender();
  const [said, setSaid] = useState('');
  const row = rows.find(({ designator }) => nameOf(designator) === nameOf(draft.designator));
  const sitting = row?.sitting ?? null;
  const isFitting = sitting === null || draft.act === 'replace';
  const act = sitting === null ? 'fit' : draft.act;
  const expected = row?.expected ?? null;
  const fromNumber = draft.fromNumber.trim() || item.inventoryNumber;
  const [{ data }] = useQuery({
    query: PartsOfSetDocument,
    variables: { number: fromNumber },
    requestPolicy: 'cache-and-network',
    pause: draft.source !== 'known',
  });
  const parts = knownParts(data?.item ?? null);
  const write = async () => {
    if (act === '') return;
    const designator = draft.designator.trim();
    const isKept = await send({
      itemId: item.id,
      draft: { ...draft, act, partType: draft.partType ?? expected ?? '' },
      sittingId: sitting?.id ?? null,
      isKnownSitting: parts.some(
        ({ componentId, isSitting }) => isSitting && componentId === draft.componentId,
      ),
      noteTakenOut: (takenOut) => {
        change({ takenOut });
      },
    });
    if (!isKept) return;
    clear();
    setSaid(act === 'remove' ? prove.isOut(designator) : prove.isFitted(designator));
  };
  return (
    <form
      className={form['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <OpenCautions hazards={item.hazards} />
      <PlaceFields
        rows={rows}
        draft={draft}
        sitting={sitting}
        act={act}
        change={(changes) => {
          setSaid('');
          change(changes);
        }}
        problems={problems}
      />
      {isFitting && (
        <>
          <Choice
            legend={prove.source}
            name={`source-${item.id}`}
            value={draft.source}
            options={sources.map((value) => ({ value, words: prove.sources[value] }))}
            onChange={(source) => {
              change({ source });
            }}
          />
          {draft.source === 'shelf' && <FromShelf {...{ draft, expected, change, problems }} />}
          {draft.source === 'new' && <NewPart {...{ draft, expected, change, problems }} />}
          {draft.source === 'known' && (
            <KnownPartFields
              number={item.inventoryNumber}
              {...{ draft, parts, change, problems }}
            />
          )}
        </>
      )}
      {sitting !== null && (act === 'replace' || act === 'remove') && (
        <ComesOut draft={draft} change={change} problems={problems} />
      )}
      <div className={form['fields']}>
        <WhenField
          typed={draft.at}
          onType={(at) => {
            change({ at });
          }}
          problems={problems}
          path={[act === 'remove' ? 'removedAt' : 'fittedAt']}
        />
        {isFitting && (
          <div>
            <Field label={prove.fittingNote}>
              <input
                value={draft.note}
                onChange={({ target }) => {
                  change({ note: target.value });
                }}
              />
            </Field>
            <ProblemsAt problems={problems} path={['note']} />
          </div>
        )}
      </div>
      <ProblemsElsewhere
        problems={problems}
        shown={[...shown.map((name) => [name]), [act === 'remove' ? 'removedAt' : 'fittedAt']]}
      />
      <Button type="submit" disabled={isSending || act === '' || draft.designator.trim() === ''}>
        {act === 'remove' ? prove.takeOut : act === 'replace' ? prove.replace : prove.fit}
      </Button>
      <p role="status" className={form['kept']}>
        {said}
      </p>
    </form>
  );
}

/** Positions are the same whether typed v1 or V1, as the API takes them. */
const nameOf = (designator: string): string => designator.trim().toLowerCase();
