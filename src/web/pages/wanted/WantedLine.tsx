import { useState } from 'react';
import type { WantedQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { useTexts } from '../../texts/textsContext.js';
import { BoughtIt } from './BoughtIt.js';
import type { NotedFind } from './keptWants.js';
import { OrderedIt } from './OrderedIt.js';
import styles from './WantedLine.module.css';

export type ShownWant = WantedQuery['wantedList']['wants'][number];

/** One want: what, for which set, how badly, up to what price, and what will do instead. */
export function WantedLine({
  want,
  currency,
  note,
}: {
  want: ShownWant;
  currency: string;
  note: (find: NotedFind) => Promise<void>;
}) {
  const { wanted, words } = useTexts();
  const formats = useFormats();
  const [doing, setDoing] = useState<'BUYING' | 'ORDERING' | null>(null);
  const close = () => {
    setDoing(null);
  };
  const what = whatOf(want) || wanted.something;
  const { openQuantity, urgency } = want.standing;
  return (
    <li className={styles['want']}>
      <h2>
        {openQuantity > 1 && `${openQuantity} × `}
        {what}
      </h2>
      <p className={styles['ceiling']}>
        {want.ceiling ? wanted.upTo(formats.money(want.ceiling)) : wanted.noCeiling}
      </p>
      {want.item && (
        <p>
          {wanted.forSet(
            [want.item.inventoryNumber, want.item.name].filter(Boolean).join(' '),
            want.designator ?? '',
          )}
        </p>
      )}
      <p className={styles['soft']}>{words.urgency[urgency]}</p>
      {want.substitutes.length > 0 && (
        <p>{wanted.instead(want.substitutes.map(({ designation }) => designation).join(', '))}</p>
      )}
      {want.orders.map(({ id, quantity, orderedFrom, expectedOn }) => (
        <p key={id} className={styles['onOrder']}>
          {wanted.onOrder(quantity, orderedFrom, expectedOn && formats.localDay(expectedOn))}
        </p>
      ))}
      {want.note && <p className={styles['soft']}>{want.note}</p>}
      <div className={styles['ways']} data-print="no">
        {doing === null && (
          <>
            <Button
              aria-label={wanted.boughtThis(what)}
              onClick={() => {
                setDoing('BUYING');
              }}
            >
              {wanted.bought}
            </Button>
            <Button
              weight="quiet"
              aria-label={wanted.orderedThis(what)}
              onClick={() => {
                setDoing('ORDERING');
              }}
            >
              {wanted.ordered}
            </Button>
          </>
        )}
        {doing === 'BUYING' && (
          <BoughtIt want={want} what={what} currency={currency} note={note} close={close} />
        )}
        {doing === 'ORDERING' && <OrderedIt want={want} close={close} />}
      </div>
    </li>
  );
}

const whatOf = ({ partType, description }: ShownWant): string =>
  [partType?.designation, description].filter(Boolean).join(', ');
