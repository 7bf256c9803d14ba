import { useState } from 'react';
import { CeilingWarnings } from '../../parts/CeilingWarnings.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import { writtenAmount } from '../../locale/writtenAmount.js';

/** An amount that is only thought of, against the ceilings of this month and year. */
export function BeforeYouBuy({ currency }: { currency: string }) {
  const { books, wanted } = useTexts();
  const [typed, setTyped] = useState('');
  const amount = writtenAmount(typed);
  const isWrong = typed.trim() !== '' && amount === null;
  return (
    <>
      <Field label={books.beforeYouBuy(currency)}>
        <input
          inputMode="decimal"
          value={typed}
          aria-invalid={isWrong}
          onChange={(event) => {
            setTyped(event.target.value);
          }}
        />
      </Field>
      {isWrong && <p role="alert">{wanted.priceHelp}</p>}
      <CeilingWarnings amount={amount} currency={currency} showsKept />
    </>
  );
}
