import { useState } from 'react';
import { useLiveQuery } from '../../../api/useLiveQuery.js';
import { hasDraft } from '../../../drafts/keptDrafts.js';
import { SetChecksDocument, type ShownHazardFragment } from '../../../gql/graphql.js';
import { Failed } from '../../../parts/Failed.js';
import { Loading } from '../../../parts/Loading.js';
import { Opener } from '../../../parts/Opener.js';
import { Sheet } from '../../../parts/Sheet.js';
import { useTexts } from '../../../texts/textsContext.js';
import { checkPlace } from './checkDraft.js';
import { LatestCheckLine } from './LatestCheckLine.js';
import { latestChecks } from './latestChecks.js';
import { RecordCheck } from './RecordCheck.js';
import styles from '../SetStanding.module.css';

/** The final checks: what is asked for, the latest of each with how long it holds, and a new one. */
export function SetChecks({
  number,
  hazards,
}: {
  number: string;
  hazards: readonly ShownHazardFragment[];
}) {
  const { prove, set } = useTexts();
  const [said, setSaid] = useState('');
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetChecksDocument,
    variables: { number },
  });
  const item = data?.item;
  const asking = item?.readiness.blockers.filter(({ code }) => code.includes('FINAL_CHECK')) ?? [];
  const latest = latestChecks(item?.finalChecks.nodes ?? [], new Date());
  const named = data?.bringUpProcedures.map(({ finalCheck }) => finalCheck) ?? [];
  return (
    <Sheet id="final-checks" title={prove.checks}>
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!data && !error && <Loading />}
      {asking.length > 0 && (
        <ul className={styles['list']}>
          {asking.map(({ code, message, wouldBeMetBy }) => (
            <li key={code + message}>
              {message}
              <span className={styles['soft']}>
                {set.wouldBeMetBy}: {wouldBeMetBy}
              </span>
            </li>
          ))}
        </ul>
      )}
      {item && latest.length === 0 && asking.length === 0 && <p>{prove.noChecks}</p>}
      {latest.length > 0 && (
        <ul className={styles['list']}>
          {latest.map((each) => (
            <LatestCheckLine key={each.check.id} latest={each} />
          ))}
        </ul>
      )}
      {item?.finalChecks.pageInfo.hasNextPage && <p>{prove.olderChecks}</p>}
      {item && (
        <Opener
          key={item.id}
          label={prove.recordCheck}
          isOpenAtFirst={hasDraft(checkPlace(item.id))}
        >
          {(close) => (
            <RecordCheck
              itemId={item.id}
              hazards={hazards}
              known={[...latest.map(({ check }) => check), ...named]}
              onDone={(words) => {
                close();
                setSaid(words);
              }}
            />
          )}
        </Opener>
      )}
      <p role="status">
        <strong>{said}</strong>
      </p>
    </Sheet>
  );
}
