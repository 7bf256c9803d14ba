import { useState } from 'react';
import { Button } from '../../parts/Button.js';
import { CeilingWarnings } from '../../parts/CeilingWarnings.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import type { NotedFind } from './keptWants.js';
import type { ShownWant } from './WantedLine.js';
import { todayHere } from '../../locale/todayHere.js';
import { writtenAmount } from '../../locale/writtenAmount.js';
import styles from './BoughtIt.module.css';

/** Price, and what was bought if it is not the very thing: noted at once, sent when it can be. */
export function BoughtIt({
  want,
  what,
  currency,
  note,
  close,
}: {
  want: ShownWant;
  what: string;
  currency: string;
  note: (find: NotedFind) => Promise<void>;
  close: () => void;
}) {
  const { wanted } = useTexts();
  const [price, setPrice] = useState('');
  const [partTypeId, setPartTypeId] = useState('');
  const [quantity, setQuantity] = useState(1);
  const amount = writtenAmount(price);
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        if (amount === null) return;
        void note({
          what,
          problems: [],
          input: {
            key: crypto.randomUUID(),
            wantId: String(want.id),
            quantity,
            price: { amount, currency },
            foundOn: todayHere(),
            ...(partTypeId !== '' && { partTypeId }),
          },
        });
        close();
      }}
    >
      <Field label={wanted.priceIn(currency)}>
        <input
          inputMode="decimal"
          autoFocus
          required
          value={price}
          aria-invalid={price !== '' && amount === null}
          onChange={(event) => {
            setPrice(event.target.value);
          }}
        />
      </Field>
      {want.standing.openQuantity > 1 && (
        <Field label={wanted.howMany}>
          <input
            type="number"
            min={1}
            value={quantity}
            onChange={(event) => {
              setQuantity(Math.max(1, event.target.valueAsNumber || 1));
            }}
          />
        </Field>
      )}
      {want.substitutes.length > 0 && (
        <Field label={wanted.whichOne}>
          <select
            value={partTypeId}
            onChange={(event) => {
              setPartTypeId(event.target.value);
            }}
          >
            <option value="">{what}</option>
            {want.substitutes.map(({ id, designation }) => (
              <option key={id} value={id}>
                {designation}
              </option>
            ))}
          </select>
        </Field>
      )}
      {price !== '' && amount === null && (
        <p role="alert" className={styles['problem']}>
          {wanted.priceHelp}
        </p>
      )}
      <CeilingWarnings amount={amount} currency={currency} />
      <div className={styles['buttons']}>
        <Button type="submit" weight="main">
          {wanted.noteIt}
        </Button>
        <Button weight="quiet" onClick={close}>
          {wanted.notYet}
        </Button>
      </div>
    </form>
  );
}
