import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { MoveSetDocument, type ChangeSetQuery } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ChangedSet } from './ChangePage.js';
import styles from './ChangePage.module.css';

const nowhere = { placeId: '', movedAt: '', note: '' };

/** Where it stands, and to where it goes: a move is an event, the places before are kept. */
export function MoveSet({
  item,
  places,
}: {
  item: ChangedSet;
  places: ChangeSetQuery['places']['nodes'];
}) {
  const { bench, change, shelf } = useTexts();
  const { draft, change: type, clear } = useDraft(`move.${item.id}`, nowhere);
  const { send, problems, isSending } = useSend(MoveSetDocument, (data) => data.moveItem);
  const [isDone, setIsDone] = useState(false);
  const move = async () => {
    const input = {
      itemId: item.id,
      placeId: draft.placeId,
      note: draft.note.trim() || null,
      ...(draft.movedAt !== '' && { movedAt: new Date(draft.movedAt).toISOString() }),
    };
    if (!(await send({ input }))) return;
    clear();
    setIsDone(true);
  };
  return (
    <Sheet id="place" title={change.place}>
      <p>{change.standsAt(item.place?.name ?? shelf.unplaced)}</p>
      <form
        className={styles['form']}
        onSubmit={(event) => {
          event.preventDefault();
          void move();
        }}
      >
        <div className={styles['fields']}>
          <Field label={change.to}>
            <select
              value={draft.placeId}
              required
              onChange={({ target }) => {
                setIsDone(false);
                type({ placeId: target.value });
              }}
            >
              <option value="">{change.choosePlace}</option>
              {places
                .filter(({ id }) => id !== item.place?.id)
                .map(({ id, name }) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
            </select>
          </Field>
          <Field label={change.movedAt}>
            <input
              type="datetime-local"
              value={draft.movedAt}
              onChange={({ target }) => {
                type({ movedAt: target.value });
              }}
            />
          </Field>
        </div>
        <Field label={change.fields.note}>
          <input
            value={draft.note}
            onChange={({ target }) => {
              type({ note: target.value });
            }}
          />
        </Field>
        <ProblemsElsewhere problems={problems} shown={[]} />
        <Button type="submit" disabled={isSending || draft.placeId === ''}>
          {change.move}
        </Button>
        <p role="status" className={styles['kept']}>
          {isDone && bench.kept}
        </p>
      </form>
    </Sheet>
  );
}
