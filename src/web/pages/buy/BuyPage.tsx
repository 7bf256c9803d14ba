import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useQuery } from 'urql';
import { useDraft } from '../../drafts/useDraft.js';
import { BuyingTermsDocument } from '../../gql/graphql.js';
import { writtenAmount } from '../../locale/writtenAmount.js';
import { Button } from '../../parts/Button.js';
import { CeilingWarnings } from '../../parts/CeilingWarnings.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import form from '../../parts/Form.module.css';
import { newBuy, type BuyDraft } from './buyDraft.js';
import { BuyClaims } from './BuyClaims.js';
import { BuyCosts } from './BuyCosts.js';
import { BuyLines } from './BuyLines.js';
import { BuyTerms } from './BuyTerms.js';
import { useBuySender } from './useBuySender.js';

const shown = [
  'acquiredOn',
  'venue',
  'otherParty',
  'price',
  'lines',
  'extraCosts',
  'claims',
  'note',
].map((name) => [name]);

/** Several things bought at one price: written down on the spot, sorted out later. */
export function BuyPage() {
  const { buy, frame, intake } = useTexts();
  useTitle(buy.title);
  const navigate = useNavigate();
  const [empty] = useState(newBuy);
  const { draft, change, clear, isKept } = useDraft<BuyDraft>('buy', empty);
  const { record, problems, isSending } = useBuySender();
  const [{ data }] = useQuery({ query: BuyingTermsDocument });
  const currency = draft.currency ?? data?.collection.homeCurrency ?? '';
  const write = async () => {
    const id = await record({ ...draft, currency }, (sentAt) => {
      change({ sentAt });
    });
    if (id === null) return;
    clear();
    await navigate({ to: '/lots/$id', params: { id } });
  };
  const parts = { draft, change, problems };
  return (
    <>
      <h1>{buy.title}</h1>
      <p className={form['soft']}>{buy.intro}</p>
      <form
        className={form['wide']}
        onSubmit={(event) => {
          event.preventDefault();
          void write();
        }}
      >
        <Sheet title={buy.terms}>
          <BuyTerms {...parts} currency={currency} />
          <CeilingWarnings
            amount={/^[A-Z]{3}$/.test(currency) ? writtenAmount(draft.price) : null}
            currency={currency}
          />
        </Sheet>
        <Sheet title={buy.lines}>
          <BuyLines {...parts} currency={currency} />
        </Sheet>
        <Sheet title={buy.costs}>
          <BuyCosts {...parts} currency={currency} />
        </Sheet>
        <Sheet title={buy.claims}>
          <BuyClaims {...parts} />
          <Field label={intake.note}>
            <textarea
              rows={2}
              value={draft.note}
              onChange={({ target }) => {
                change({ note: target.value });
              }}
            />
          </Field>
          <ProblemsAt problems={problems} path={['note']} />
        </Sheet>
        <ProblemsElsewhere problems={problems} shown={shown} />
        {problems.length > 0 && <p role="status">{buy.notYet(problems.length)}</p>}
        {!isKept && <p>{frame.draftNotKept}</p>}
        <div>
          <Button weight="main" type="submit" disabled={isSending}>
            {buy.record}
          </Button>
        </div>
      </form>
    </>
  );
}
