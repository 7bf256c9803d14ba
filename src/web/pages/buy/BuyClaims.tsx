import { newKey } from '../../api/newKey.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';
import type { BuyClaim } from './buyDraft.js';
import type { BuyParts } from './BuyTerms.js';

/** What the seller said, of the lot or of one thing in it: kept as said, not as fact. */
export function BuyClaims({ draft, change, problems }: BuyParts) {
  const { buy, intake } = useTexts();
  const { claims, lines } = draft;
  const changeOne = (key: string, changes: Partial<BuyClaim>) => {
    change({ claims: claims.map((one) => (one.key === key ? { ...one, ...changes } : one)) });
  };
  return (
    <>
      <p className={form['soft']}>{buy.claimsHelp}</p>
      {claims.map((claim, index) => (
        <fieldset key={claim.key} className={form['line']}>
          <legend>{buy.claim(index + 1)}</legend>
          <Field label={buy.said}>
            <textarea
              rows={2}
              value={claim.statement}
              onChange={({ target }) => {
                changeOne(claim.key, { statement: target.value });
              }}
            />
          </Field>
          <Field label={buy.saidOf}>
            <select
              value={lines.some(({ key }) => key === claim.lineKey) ? claim.lineKey : ''}
              onChange={({ target }) => {
                changeOne(claim.key, { lineKey: target.value });
              }}
            >
              <option value="">{buy.wholeLot}</option>
              {lines.map(({ key, name, what, number }, at) =>
                what === 'SUNDRIES' ? null : (
                  <option key={key} value={key}>
                    {[buy.line(at + 1), number, name].filter(Boolean).join(' ')}
                  </option>
                ),
              )}
            </select>
          </Field>
          <ProblemsAt problems={problems} path={['claims', String(index)]} />
          <div>
            <Button
              weight="quiet"
              onClick={() => {
                change({ claims: claims.filter(({ key }) => key !== claim.key) });
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
            change({ claims: [...claims, { key: newKey(), lineKey: '', statement: '' }] });
          }}
        >
          {buy.addClaim}
        </Button>
      </div>
    </>
  );
}
