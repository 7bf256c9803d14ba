import { useParams } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { IntakeSetDocument, type IntakeSetQuery } from '../../gql/graphql.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { IntakeWalk } from './IntakeWalk.js';

export type IntakeItem = NonNullable<IntakeSetQuery['item']>;

/** One set looked over: zone by zone, then what can hurt, then sent. */
export function IntakeWalkPage() {
  const { number } = useParams({ from: '/intake/$number' });
  const { bench, frame, intake } = useTexts();
  useTitle(intake.titleOf(number));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: IntakeSetDocument,
    variables: { number },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { item, hazardKinds } = data;
  if (!item) return <Notice title={frame.notFoundTitle} help={bench.notFound} isWholePage />;
  return <IntakeWalk key={item.id} item={item} guides={hazardKinds} />;
}
