import { useState } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { useSend } from '../../api/useSend.js';
import {
  OrderOfWorkDocument,
  SetProjectPriorityDocument,
  type OrderOfWorkQuery,
  type PlannedProjectFragment,
} from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Field } from '../../parts/Field.js';
import { Loading } from '../../parts/Loading.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './PlanPage.module.css';

type Queue = OrderOfWorkQuery['workQueue'];

/** Which restoration gets the hours first, and what another order does to the dates. */
export function OrderOfWork({ project }: { project: PlannedProjectFragment }) {
  const { plan } = useTexts();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: OrderOfWorkDocument,
    variables: { personId: project.plan.workedBy?.id ?? null, movedUpId: project.id },
  });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const { workQueue: queue } = data;
  const place = queue.projects.find((queued) => queued.project.id === project.id)?.place;
  return (
    <>
      <p>
        {plan.orderHelp(queue.person?.name ?? plan.somebody)}
        <BasisButton of={plan.order} basis={queue.basis} />
      </p>
      <QueueTable queue={queue} ownId={String(project.id)} />
      {place !== undefined && queue.projects.length > 1 && (
        <PutAt
          key={place}
          projectId={String(project.id)}
          place={place}
          last={queue.projects.length}
        />
      )}
    </>
  );
}

function QueueTable({ queue, ownId }: { queue: Queue; ownId: string }) {
  const { plan, set } = useTexts();
  const formats = useFormats();
  const day = (on: string | null) =>
    on === null ? set.notWithinTwentyYears : formats.localDay(on);
  const isMoved = queue.ifMovedUp.length > 0;
  return (
    <Table
      name={plan.order}
      head={
        <tr>
          <th scope="col">{plan.orderOf.place}</th>
          <th scope="col">{plan.orderOf.work}</th>
          <th scope="col" className={figureCell}>
            {plan.orderOf.fairlySure}
          </th>
          {isMoved && <th scope="col">{plan.orderOf.ifUp}</th>}
        </tr>
      }
    >
      {queue.projects.map(({ place, p80On, project: { id, title, item } }) => {
        const effect = queue.ifMovedUp.find((moved) => moved.project.id === id);
        return (
          <tr key={id}>
            <td>{place}</td>
            <th scope="row">
              {item.inventoryNumber} {title}
              {id === ownId && ` (${plan.this})`}
            </th>
            <td className={figureCell}>{day(p80On)}</td>
            {isMoved && (
              <td>
                {effect?.p80DaysLater === null || effect === undefined
                  ? '–'
                  : plan.daysLater(effect.p80DaysLater)}
              </td>
            )}
          </tr>
        );
      })}
    </Table>
  );
}

function PutAt({ projectId, place, last }: { projectId: string; place: number; last: number }) {
  const { plan } = useTexts();
  const { send, problems, isSending } = useSend(
    SetProjectPriorityDocument,
    (data) => data.setProjectPriority,
  );
  const [wanted, setWanted] = useState(place);
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void send({ input: { projectId, place: wanted } });
      }}
    >
      <Field label={plan.putAt}>
        <select
          value={wanted}
          onChange={({ target }) => {
            setWanted(Number(target.value));
          }}
        >
          {Array.from({ length: last }, (_, index) => (
            <option key={index} value={index + 1}>
              {index + 1}
            </option>
          ))}
        </select>
      </Field>
      <ProblemsElsewhere problems={problems} shown={[]} />
      <Button type="submit" disabled={isSending || wanted === place}>
        {plan.putThere}
      </Button>
    </form>
  );
}
