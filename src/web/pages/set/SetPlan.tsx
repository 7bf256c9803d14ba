import { useRef, useState } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { SetPlanDocument, type PlacedComponentFragment } from '../../gql/graphql.js';
import { hasDraft } from '../../drafts/keptDrafts.js';
import { useDraft } from '../../drafts/useDraft.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import { emptyPart, partPlace } from './parts/partDraft.js';
import { PartEntry } from './parts/PartEntry.js';
import { planRows } from './planRows.js';
import type { ShownSet } from './SetPage.js';

/** Position by position: what is expected, what is there, and in what state. */
export function SetPlan({ item }: { item: ShownSet }) {
  const { set, prove, words } = useTexts();
  const number = item.inventoryNumber;
  const place = partPlace(item.id);
  const kept = useDraft(place, emptyPart);
  const [isOpen, setIsOpen] = useState(() => hasDraft(place));
  const entry = useRef<HTMLDivElement>(null);
  const openAt = (designator: string) => {
    kept.change({ ...emptyPart, designator });
    setIsOpen(true);
    // The fields come with the next drawing.
    requestAnimationFrame(() => entry.current?.querySelector('input')?.focus());
  };
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetPlanDocument,
    variables: { number },
  });
  const rows = planRows(data?.item ?? null);
  return (
    <Sheet id="positions" title={set.positions}>
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!data && !error && <Loading />}
      {data && rows.length === 0 && <p>{set.noPositions}</p>}
      {rows.length > 0 && (
        <Table
          name={set.positions}
          head={
            <tr>
              <th scope="col">{set.columns.position}</th>
              <th scope="col">{set.columns.expected}</th>
              <th scope="col">{set.columns.there}</th>
              <th scope="col">{set.columns.state}</th>
            </tr>
          }
        >
          {rows.map((row) => (
            <tr key={row.key}>
              <th scope="row">
                <Button
                  weight="quiet"
                  aria-label={prove.changePartAt(row.designator)}
                  onClick={() => {
                    openAt(row.designator);
                  }}
                >
                  {row.designator}
                </Button>
              </th>
              <td>
                {row.isExpected ? (row.expected ?? '–') : set.elsewhere}
                {row.isExpected && !row.isRequired && ` (${set.optional})`}
              </td>
              <td>
                {row.component ? (
                  <Part component={row.component} />
                ) : (
                  words.positionState[row.state]
                )}
              </td>
              <td>
                {row.component?.state.state
                  ? words.componentState[row.component.state.state]
                  : row.component
                    ? words.positionState[row.state]
                    : ''}
              </td>
            </tr>
          ))}
        </Table>
      )}
      {data && (
        <div data-print="no">
          <Button
            aria-expanded={isOpen}
            onClick={() => {
              setIsOpen(!isOpen);
            }}
          >
            <span aria-hidden="true">{isOpen ? '▾' : '▸'}</span>
            {prove.changePart}
          </Button>
        </div>
      )}
      {data && isOpen && (
        <div ref={entry}>
          <PartEntry item={item} rows={rows} kept={kept} />
        </div>
      )}
    </Sheet>
  );
}

function Part({ component }: { component: PlacedComponentFragment }) {
  const { words } = useTexts();
  const { partType, marking, dateCode, origin } = component;
  const name = [partType?.designation, marking, dateCode].filter(Boolean).join(' ');
  return (
    <>
      {name || '–'}, {words.origin[origin]}
    </>
  );
}
