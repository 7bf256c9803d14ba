import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { SettleFields } from '../../parts/SettleFields.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ChangedSet } from './ChangePage.js';
import { isRole, itemFields, type ItemFieldName } from './itemFields.js';
import { useDataSender } from './useDataSender.js';
import styles from './ChangePage.module.css';

/** Number, name, serial number, making and remarks of a set. */
export function ChangeData({ item, fetchAgain }: { item: ChangedSet; fetchAgain: () => void }) {
  const { frame, bench, change, words } = useTexts();
  const navigate = useNavigate();
  const fields = useFieldDraft(`change.${item.id}`, itemFields(item), item.version);
  const { send, problems, isSending } = useDataSender(item);
  const [isDone, setIsDone] = useState(false);
  const isStale = problems.some(({ code }) => code === 'OUT_OF_DATE');
  const { theirChanges } = fields;
  const keep = async () => {
    const number = await send(fields.changes, fields.version);
    if (number === null) {
      fetchAgain();
      return;
    }
    fields.clear();
    setIsDone(true);
    if (number !== item.inventoryNumber) {
      await navigate({ to: '/sets/$number/change', params: { number }, replace: true });
    }
  };
  const bound = (name: ItemFieldName) => ({
    value: fields.valueOf(name),
    onChange: (event: { target: { value: string } }) => {
      setIsDone(false);
      fields.type(name, event.target.value);
    },
  });
  const line = (name: ItemFieldName, hint?: string) => (
    <div>
      <Field label={change.fields[name]}>
        <input spellCheck={name === 'name'} placeholder={hint} {...bound(name)} />
      </Field>
      <ProblemsAt problems={problems} path={[name]} />
    </div>
  );
  return (
    <Sheet id="data" title={change.data}>
      <form
        className={styles['form']}
        onSubmit={(event) => {
          event.preventDefault();
          void keep();
        }}
      >
        <div className={styles['fields']}>
          {line('inventoryNumber')}
          {line('name')}
          {line('serialNumber')}
          {line('madeEdtf', change.madeHint)}
          {item.__typename === 'Accessory' && (
            <Field label={change.fields.role}>
              <select {...bound('role')}>
                {Object.entries(words.role).map(([role, said]) => (
                  <option key={role} value={role}>
                    {said}
                  </option>
                ))}
              </select>
            </Field>
          )}
        </div>
        <Field label={change.fields.note}>
          <textarea rows={4} {...bound('note')} />
        </Field>
        <ProblemsAt problems={problems} path={['note']} />
        {theirChanges.length > 0 && !isSending && (
          <SettleFields
            changes={theirChanges}
            nameOf={(name) => change.fields[name]}
            writtenOf={(_name, value) => (isRole(value) ? words.role[value] : value)}
            settle={fields.settle}
          />
        )}
        {!isStale && (
          <ProblemsElsewhere
            problems={problems}
            shown={Object.keys(change.fields).map((name) => [name])}
          />
        )}
        {!fields.isKept && <p>{frame.draftNotKept}</p>}
        <Button
          weight="main"
          type="submit"
          disabled={
            isSending || theirChanges.length > 0 || Object.keys(fields.changes).length === 0
          }
        >
          {bench.writeDown}
        </Button>
        <p role="status" className={styles['kept']}>
          {isDone && bench.kept}
        </p>
      </form>
    </Sheet>
  );
}
