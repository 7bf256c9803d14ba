import { useNavigate } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import type { ShownProblem } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { IntakePlacesDocument, type AccessoryRole } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import { ModelField } from './ModelField.js';
import { emptyNewItem } from './newItemDraft.js';
import { useTakeIn } from './useTakeIn.js';
import styles from './IntakePage.module.css';

/** Number, name, model, serial and place of what comes in; each refusal beside its field. */
export function NewItem() {
  const { frame, intake, words } = useTexts();
  const navigate = useNavigate();
  const { draft, change, clear, isKept } = useDraft('intake.new', emptyNewItem);
  const { takeIn, problems, isSending } = useTakeIn();
  const [{ data }] = useLiveQuery({ query: IntakePlacesDocument, variables: {} });
  const write = async () => {
    const number = await takeIn(draft);
    if (number === null) return;
    clear();
    await navigate({ to: '/intake/$number', params: { number } });
  };
  const textField = (name: 'inventoryNumber' | 'name' | 'serialNumber' | 'madeEdtf' | 'note') => ({
    value: draft[name],
    onChange: (event: { target: { value: string } }) => {
      change({ [name]: event.target.value });
    },
  });
  const at = (name: string, field: ReactNode) => (
    <Beside problems={problems} name={name}>
      {field}
    </Beside>
  );
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
    >
      <Choice
        legend={intake.kind}
        name="kind"
        value={draft.kind}
        options={[
          { value: 'RIG', words: intake.rig },
          { value: 'ACCESSORY', words: intake.accessory },
        ]}
        onChange={(kind) => {
          change({ kind });
        }}
      />
      <div className={styles['row']}>
        {draft.kind === 'ACCESSORY' &&
          at(
            'role',
            <Field label={intake.role}>
              <select
                value={draft.role}
                onChange={(event) => {
                  change({ role: event.target.value as AccessoryRole });
                }}
              >
                {Object.entries(words.role).map(([role, said]) => (
                  <option key={role} value={role}>
                    {said}
                  </option>
                ))}
              </select>
            </Field>,
          )}
        {at(
          'inventoryNumber',
          <Field label={intake.number}>
            <input spellCheck={false} {...textField('inventoryNumber')} />
          </Field>,
        )}
        {at(
          'name',
          <Field label={intake.name}>
            <input {...textField('name')} />
          </Field>,
        )}
        {at(
          'modelId',
          <ModelField
            kind={draft.kind}
            typed={draft.model}
            onType={(model) => {
              change({ model });
            }}
          />,
        )}
        {at(
          'serialNumber',
          <Field label={intake.serial}>
            <input spellCheck={false} {...textField('serialNumber')} />
          </Field>,
        )}
        {at(
          'placeId',
          <Field label={intake.place}>
            <select
              value={draft.placeId}
              onChange={(event) => {
                change({ placeId: event.target.value });
              }}
            >
              <option value="">{intake.noPlace}</option>
              {data?.places.nodes.map(({ id, name }) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </Field>,
        )}
        {at(
          'madeEdtf',
          <Field label={intake.made}>
            <input placeholder={intake.madeHint} {...textField('madeEdtf')} />
          </Field>,
        )}
      </div>
      {at(
        'note',
        <Field label={intake.note}>
          <textarea rows={2} {...textField('note')} />
        </Field>,
      )}
      <ProblemsElsewhere
        problems={problems}
        shown={Object.keys(shownBeside).map((name) => [name])}
      />
      {!isKept && <p>{frame.draftNotKept}</p>}
      <Button weight="main" type="submit" disabled={isSending}>
        {intake.writeDown}
      </Button>
    </form>
  );
}

const shownBeside = { ...emptyNewItem, modelId: '' };

function Beside({
  name,
  problems,
  children,
}: {
  name: string;
  problems: readonly ShownProblem[];
  children: ReactNode;
}) {
  return (
    <div>
      {children}
      <ProblemsAt problems={problems} path={[name]} />
    </div>
  );
}
