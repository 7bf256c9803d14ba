import type { ReactNode } from 'react';
import type { ShownProblem } from '../../api/useSend.js';
import type { AccessoryRole, SpreadMethod } from '../../gql/graphql.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';
import { ModelField } from '../intake/ModelField.js';
import type { BuyLine } from './buyDraft.js';

/** One thing of a lot: a set or accessory that is new, one that is known, or other things in words. */
export function BuyLineFields({
  line,
  spreadMethod,
  currency,
  problems,
  path,
  change,
}: {
  line: BuyLine;
  spreadMethod: SpreadMethod;
  currency: string;
  problems: readonly ShownProblem[];
  path: readonly string[];
  change: (changes: Partial<BuyLine>) => void;
}) {
  const { buy, intake, words } = useTexts();
  const isNew = line.what === 'RIG' || line.what === 'ACCESSORY';
  const isByValue = spreadMethod === 'STATED_VALUES';
  const weightAt = isByValue ? 'statedValue' : 'statedShare';
  const shown: string[][] = [];
  const at = (under: readonly string[], field: ReactNode) => {
    const whole = [...path, ...under];
    shown.push(whole);
    return (
      <div>
        {field}
        <ProblemsAt problems={problems} path={whole} />
      </div>
    );
  };
  const text = (name: 'number' | 'name' | 'serialNumber', label: string) => (
    <Field label={label}>
      <input
        value={line[name]}
        spellCheck={name === 'name'}
        onChange={({ target }) => {
          change({ [name]: target.value });
        }}
      />
    </Field>
  );
  const fields = (
    <div className={form['fields']}>
      <Field label={intake.kind}>
        <select
          value={line.what}
          onChange={({ target }) => {
            change({ what: target.value as BuyLine['what'] });
          }}
        >
          {Object.entries(buy.what).map(([what, said]) => (
            <option key={what} value={what}>
              {said}
            </option>
          ))}
        </select>
      </Field>
      {line.what === 'ACCESSORY' &&
        at(
          ['newItem', 'role'],
          <Field label={intake.role}>
            <select
              value={line.role}
              onChange={({ target }) => {
                change({ role: target.value as AccessoryRole });
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
      {isNew && at(['newItem', 'inventoryNumber'], text('number', buy.number))}
      {line.what === 'KNOWN' && at(['itemId'], text('number', intake.number))}
      {isNew && at(['newItem', 'name'], text('name', intake.name))}
      {line.what === 'SUNDRIES' && at(['sundries'], text('name', buy.sundries))}
      {(line.what === 'RIG' || line.what === 'ACCESSORY') &&
        at(
          ['newItem', 'modelId'],
          <ModelField
            kind={line.what}
            typed={line.model}
            onType={(model) => {
              change({ model });
            }}
          />,
        )}
      {isNew && at(['newItem', 'serialNumber'], text('serialNumber', intake.serial))}
      {spreadMethod !== 'EQUAL_SHARES' &&
        at(
          [weightAt],
          <Field label={isByValue ? buy.value(currency) : buy.share}>
            <input
              inputMode="decimal"
              value={line.weight}
              onChange={({ target }) => {
                change({ weight: target.value });
              }}
            />
          </Field>,
        )}
    </div>
  );
  return (
    <>
      {fields}
      <ProblemsElsewhere
        problems={problems.filter((one) => path.every((part, index) => one.path[index] === part))}
        shown={shown}
      />
    </>
  );
}
