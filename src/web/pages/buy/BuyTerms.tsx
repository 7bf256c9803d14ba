import type { ReactNode } from 'react';
import type { ShownProblem } from '../../api/useSend.js';
import type { SpreadMethod } from '../../gql/graphql.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { PartyField } from '../../parts/PartyField.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';
import type { BuyDraft } from './buyDraft.js';

const methods: readonly SpreadMethod[] = ['EQUAL_SHARES', 'STATED_VALUES', 'STATED_SHARES'];

export interface BuyParts {
  draft: BuyDraft;
  change: (changes: Partial<BuyDraft>) => void;
  problems: readonly ShownProblem[];
}

/** When, where, from whom, at what price, and how that is spread. */
export function BuyTerms({ draft, change, problems, currency }: BuyParts & { currency: string }) {
  const { buy, change: changeTexts } = useTexts();
  const at = (path: readonly string[], field: ReactNode) => (
    <div>
      {field}
      <ProblemsAt problems={problems} path={path} />
    </div>
  );
  return (
    <>
      <div className={form['fields']}>
        {at(
          ['acquiredOn'],
          <Field label={buy.day}>
            <input
              type="date"
              value={draft.acquiredOn}
              onChange={({ target }) => {
                change({ acquiredOn: target.value });
              }}
            />
          </Field>,
        )}
        {at(
          ['venue'],
          <Field label={buy.venue}>
            <input
              value={draft.venue}
              onChange={({ target }) => {
                change({ venue: target.value });
              }}
            />
          </Field>,
        )}
        <PartyField
          label={buy.from}
          typed={draft.from}
          onType={(from) => {
            change({ from });
          }}
          problems={problems}
          path={['otherParty']}
          isNewSent
        />
        {at(
          ['price'],
          <Field label={buy.price}>
            <input
              inputMode="decimal"
              value={draft.price}
              onChange={({ target }) => {
                change({ price: target.value });
              }}
            />
          </Field>,
        )}
        <Field label={changeTexts.outlookFields.currency}>
          <input
            spellCheck={false}
            maxLength={3}
            value={currency}
            onChange={({ target }) => {
              change({ currency: target.value.toUpperCase() });
            }}
          />
        </Field>
      </div>
      <Choice
        legend={buy.spread}
        name="spread"
        value={draft.spreadMethod}
        options={methods.map((value) => ({ value, words: buy.methods[value] }))}
        onChange={(spreadMethod) => {
          change({ spreadMethod });
        }}
      />
    </>
  );
}
