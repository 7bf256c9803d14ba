import { newKey } from '../../api/newKey.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';
import type { BuyCost } from './buyDraft.js';
import type { BuyParts } from './BuyTerms.js';

/** What the lot cost beside its price: carriage, premium, fuel. */
export function BuyCosts({ draft, change, problems, currency }: BuyParts & { currency: string }) {
  const { buy, change: changeTexts, intake } = useTexts();
  const { costs } = draft;
  const changeOne = (key: string, changes: Partial<BuyCost>) => {
    change({ costs: costs.map((one) => (one.key === key ? { ...one, ...changes } : one)) });
  };
  return (
    <>
      {costs.length === 0 && <p className={form['soft']}>{buy.noCosts}</p>}
      {costs.map((cost, index) => (
        <fieldset key={cost.key} className={form['line']}>
          <legend>{buy.cost(index + 1)}</legend>
          <div className={form['fields']}>
            <div>
              <Field label={buy.costFor}>
                <input
                  value={cost.description}
                  onChange={({ target }) => {
                    changeOne(cost.key, { description: target.value });
                  }}
                />
              </Field>
              <ProblemsAt problems={problems} path={['extraCosts', String(index), 'description']} />
            </div>
            <div>
              <Field label={buy.amount}>
                <input
                  inputMode="decimal"
                  value={cost.amount}
                  onChange={({ target }) => {
                    changeOne(cost.key, { amount: target.value });
                  }}
                />
              </Field>
              <ProblemsAt problems={problems} path={['extraCosts', String(index), 'amount']} />
            </div>
            <Field label={changeTexts.outlookFields.currency}>
              <input
                spellCheck={false}
                maxLength={3}
                value={cost.currency || currency}
                onChange={({ target }) => {
                  changeOne(cost.key, { currency: target.value.toUpperCase() });
                }}
              />
            </Field>
          </div>
          <div>
            <Button
              weight="quiet"
              onClick={() => {
                change({ costs: costs.filter(({ key }) => key !== cost.key) });
              }}
            >
              {intake.drop}
            </Button>
          </div>
        </fieldset>
      ))}
      <div>
        <Button
          onClick={() => {
            const added = { key: newKey(), description: '', amount: '', currency: '' };
            change({ costs: [...costs, added] });
          }}
        >
          {buy.addCost}
        </Button>
      </div>
    </>
  );
}
