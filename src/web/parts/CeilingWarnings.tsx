import { useQuery } from 'urql';
import { PurchaseWarningDocument } from '../gql/graphql.js';
import { useFormats } from '../locale/useFormats.js';
import { useTexts } from '../texts/textsContext.js';
import styles from './CeilingWarnings.module.css';

/**
 * What a purchase would do to the ceilings, said before it is made; nothing is said while the
 * program does not answer.
 */
export function CeilingWarnings({
  amount,
  currency,
  showsKept = false,
}: {
  /** null while what is typed is none. */
  amount: string | null;
  currency: string;
  /** Also the ceilings that it keeps to. */
  showsKept?: boolean;
}) {
  const { books } = useTexts();
  const formats = useFormats();
  const [{ data }] = useQuery({
    query: PurchaseWarningDocument,
    variables: { amount: { amount: amount ?? '0', currency } },
    pause: amount === null,
    requestPolicy: 'network-only',
  });
  const standings = amount === null ? [] : (data?.purchaseWarning ?? []);
  const shown = standings.filter(({ isBroken }) => isBroken || showsKept);
  return (
    <div role="status">
      {shown.map(({ of, name, ceiling, leftAfter, isBroken }) => {
        const shownName = of === 'MONTH' ? formats.month(name) : name;
        if (leftAfter === null) return <p key={of + name}>{books.noRateFor(shownName)}</p>;
        const over = { ...leftAfter, amount: leftAfter.amount.replace('-', '') };
        return (
          <p key={of + name} className={isBroken ? styles['broken'] : undefined}>
            {isBroken
              ? books.breaksCeiling(shownName, formats.money(over), formats.money(ceiling))
              : books.keepsCeiling(shownName, formats.money(leftAfter))}
          </p>
        );
      })}
    </div>
  );
}
