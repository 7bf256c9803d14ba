import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ChangedSet } from './ChangePage.js';
import { isRole, itemFields, type ItemFieldName } from './itemFields.js';
import { useDataSender } from './useDataSender.js';
import styles from './ChangePage.module.css';

/** Number, name, serial number, making and remarks of a set. */
export function ChangeData({ item, fetchAgain }: { item: ChangedSet; fetchAgain: () => void }) {
  const { bench, change, words } = useTexts();
  const navigate = useNavigate();
  const fields = useFieldDraft(`change.${item.id}`, itemFields(item), item.version);
  const { send, problems, isSending } = useDataSender(item);
  const [isDone, setIsDone] = useState(false);
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
      <RecordForm
        className={styles['form']}
        fields={fields}
        problems={problems}
        isSending={isSending}
        shown={Object.keys(change.fields).map((name) => [name])}
        nameOf={(name) => change.fields[name]}
        writtenOf={(_name, value) => (isRole(value) ? words.role[value] : value)}
        weight="main"
        outcome={isDone && bench.kept}
        keep={keep}
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
      </RecordForm>
    </Sheet>
  );
}
