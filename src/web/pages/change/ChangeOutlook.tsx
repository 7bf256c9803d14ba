import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useFieldDraft } from '../../drafts/useFieldDraft.js';
import { SetOutlookDocument } from '../../gql/graphql.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { RecordForm } from '../../parts/RecordForm.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ChangedSet } from './ChangePage.js';
import {
  isStandard,
  outlookFields,
  outlookInput,
  standards,
  type OutlookFieldName,
} from './outlookFields.js';
import styles from './ChangePage.module.css';

/** What the owner alone can say: its condition, the chance of the work, and a premium with its reason. */
export function ChangeOutlook({
  item,
  homeCurrency,
  fetchAgain,
}: {
  item: ChangedSet;
  homeCurrency: string;
  fetchAgain: () => void;
}) {
  const { bench, change, words } = useTexts();
  const now = outlookFields(item.outlook, homeCurrency);
  const fields = useFieldDraft(`outlook.${item.id}`, now, item.outlook?.version ?? 0);
  const { send, problems, isSending } = useSend(SetOutlookDocument, (data) => data.setItemOutlook);
  const [isDone, setIsDone] = useState(false);
  const [isUnread, setIsUnread] = useState(false);
  const keep = async () => {
    const said = outlookInput(fields.changes, { ...now, ...fields.changes });
    setIsUnread(said === null);
    if (!said) return;
    if (await send({ input: { itemId: item.id, version: fields.version, ...said } })) {
      fields.clear();
      setIsDone(true);
    } else fetchAgain();
  };
  const bound = (name: OutlookFieldName) => ({
    value: fields.valueOf(name),
    onChange: (event: { target: { value: string } }) => {
      setIsDone(false);
      fields.type(name, event.target.value);
    },
  });
  return (
    <Sheet id="outlook" title={change.outlook}>
      <p>{change.outlookHelp}</p>
      <RecordForm
        className={styles['form']}
        fields={fields}
        problems={problems}
        isSending={isSending}
        shown={[['premium']]}
        nameOf={(name) => change.outlookFields[name]}
        writtenOf={(_name, value) => (isStandard(value) ? words.conditionStandard[value] : value)}
        outcome={isDone && bench.kept}
        keep={keep}
      >
        <div className={styles['fields']}>
          <Field label={change.outlookFields.presentStandard}>
            <select {...bound('presentStandard')}>
              <option value="">{change.fromProjects}</option>
              {standards.map((standard) => (
                <option key={standard} value={standard}>
                  {words.conditionStandard[standard]}
                </option>
              ))}
            </select>
          </Field>
          <Field label={change.outlookFields.successPercent}>
            <input type="number" min={0} max={100} step={1} {...bound('successPercent')} />
          </Field>
          <Field label={change.outlookFields.premium}>
            <input inputMode="decimal" {...bound('premium')} />
          </Field>
          <Field label={change.outlookFields.currency}>
            <input spellCheck={false} maxLength={3} {...bound('currency')} />
          </Field>
        </div>
        {isUnread && <p role="alert">{change.amountUnread}</p>}
        <ProblemsAt problems={problems} path={['premium']} />
        <Field label={change.outlookFields.premiumReason}>
          <textarea rows={2} {...bound('premiumReason')} />
        </Field>
      </RecordForm>
    </Sheet>
  );
}
