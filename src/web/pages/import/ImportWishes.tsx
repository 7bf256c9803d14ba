import type { AccessoryRole, ItemKind, WrittenOrder } from '../../gql/graphql.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './ImportWishes.module.css';

export interface Wishes {
  kind: ItemKind;
  role: AccessoryRole | null;
  dateOrder: WrittenOrder | null;
}

/** What the list does not say of itself. */
export function ImportWishes({
  wishes,
  change,
}: {
  wishes: Wishes;
  change: (wishes: Wishes) => void;
}) {
  const { bringList, words } = useTexts();
  return (
    <div className={styles['wishes']}>
      <Field label={bringList.kind}>
        <select
          value={wishes.kind}
          onChange={(event) => {
            change({ ...wishes, kind: event.target.value as ItemKind });
          }}
        >
          <option value="RIG">{bringList.rigs}</option>
          <option value="ACCESSORY">{bringList.accessories}</option>
        </select>
      </Field>
      {wishes.kind === 'ACCESSORY' && (
        <Field label={bringList.role}>
          <select
            value={wishes.role ?? ''}
            onChange={(event) => {
              change({ ...wishes, role: (event.target.value || null) as AccessoryRole | null });
            }}
          >
            <option value="">{bringList.noRole}</option>
            {Object.entries(words.role).map(([role, name]) => (
              <option key={role} value={role}>
                {name}
              </option>
            ))}
          </select>
        </Field>
      )}
      <Field label={bringList.dateOrder}>
        <select
          value={wishes.dateOrder ?? ''}
          onChange={(event) => {
            change({ ...wishes, dateOrder: (event.target.value || null) as WrittenOrder | null });
          }}
        >
          <option value="">{bringList.askMe}</option>
          <option value="DAY_FIRST">{bringList.dayFirst}</option>
          <option value="MONTH_FIRST">{bringList.monthFirst}</option>
        </select>
      </Field>
    </div>
  );
}
