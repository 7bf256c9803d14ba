import { useLiveQuery } from '../../api/useLiveQuery.js';
import { RunningTimersDocument } from '../../gql/graphql.js';
import { ForgottenTimer } from './ForgottenTimer.js';
import { RunningTimer } from './RunningTimer.js';

/** Who is at the bench now, with the clock running; nothing when nobody is. */
export function Timers() {
  const [{ data }] = useLiveQuery({ query: RunningTimersDocument, variables: {} });
  return data?.runningTimers.map((timer) =>
    timer.endQuestion === null ? (
      <RunningTimer key={timer.id} timer={timer} />
    ) : (
      <ForgottenTimer key={timer.id} timer={timer} />
    ),
  );
}
