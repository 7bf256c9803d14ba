import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetUseDocument, type SetUseQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import { spaced } from '../tonight/bandsOf.js';
import { RecordUse } from './RecordUse.js';
import { SetMaintenance } from './SetMaintenance.js';
import styles from './SetUse.module.css';

export type UsedSet = NonNullable<SetUseQuery['item']>;

/** How much it was on the air, what falls due by it, and the way to write a use down. */
export function SetUse({ number }: { number: string }) {
  const { use } = useTexts();
  const formats = useFormats();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetUseDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const { item } = data;
  if (!item) return null;
  const { hours, contacts, uses, lastUsedAt, basis } = item.use;
  return (
    <Sheet id="use" title={use.title} aside={<BasisButton of={use.title} basis={basis} />}>
      <p>
        {uses === 0
          ? use.never
          : use.sum(formats.hours(hours), contacts, uses, lastUsedAt && formats.day(lastUsedAt))}
      </p>
      <ul className={styles['list']}>
        {item.uses.nodes.map((one) => (
          <li key={one.id}>
            {[
              formats.minute(one.startedAt),
              formats.minutes(one.minutes),
              one.band && [spaced(one.band), one.mode].filter(Boolean).join(' '),
              one.contacts > 0 && use.contactsOf(one.contacts),
              one.note,
            ]
              .filter(Boolean)
              .join(' · ')}
          </li>
        ))}
      </ul>
      {item.__typename === 'Rig' && item.retiredAt === null && (
        <RecordUse key={item.id} rigId={item.id} item={item} servedBy={item.servedBy} />
      )}
      <SetMaintenance rules={item.maintenance.filter(({ retiredAt }) => retiredAt === null)} />
    </Sheet>
  );
}
