import { useEffect, useRef, useState } from 'react';
import { useLiveQuery } from '../../../api/useLiveQuery.js';
import { SetFindingsDocument } from '../../../gql/graphql.js';
import { Failed } from '../../../parts/Failed.js';
import { Loading } from '../../../parts/Loading.js';
import { Sheet } from '../../../parts/Sheet.js';
import { useTexts } from '../../../texts/textsContext.js';
import { OneFinding } from './OneFinding.js';
import styles from './SetFindings.module.css';

/** What was found and is still open, with the step that settles it; below, what came of the rest. */
export function SetFindings({ number }: { number: string }) {
  const { prove } = useTexts();
  const [said, setSaid] = useState('');
  const status = useRef<HTMLParagraphElement>(null);
  // The line that was worked on is gone: who works by keyboard goes on from what came of it.
  useEffect(() => {
    if (said !== '') status.current?.focus();
  }, [said]);
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: SetFindingsDocument,
    variables: { number },
  });
  const item = data?.item;
  const settled = [...(item?.resolved.nodes ?? []), ...(item?.accepted.nodes ?? [])].sort(
    (one, other) => (other.settledAt ?? '').localeCompare(one.settledAt ?? ''),
  );
  const settledCount = (item?.resolved.totalCount ?? 0) + (item?.accepted.totalCount ?? 0);
  return (
    <Sheet id="findings" title={prove.findings}>
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!data && !error && <Loading />}
      {item?.open.nodes.length === 0 && <p>{prove.noFindings}</p>}
      <p role="status" tabIndex={-1} ref={status} className={styles['said']}>
        {said}
      </p>
      {item && item.open.nodes.length > 0 && (
        <ul className={styles['list']}>
          {item.open.nodes.map((finding) => (
            <OneFinding key={finding.id} finding={finding} onDone={setSaid} />
          ))}
        </ul>
      )}
      {item && item.open.totalCount > item.open.nodes.length && (
        <p>{prove.moreFindings(item.open.totalCount - item.open.nodes.length)}</p>
      )}
      {settledCount > 0 && (
        <details className={styles['settled']}>
          <summary>{prove.settledFindings(settledCount)}</summary>
          <ul className={styles['list']}>
            {settled.map((finding) => (
              <OneFinding key={finding.id} finding={finding} onDone={setSaid} />
            ))}
          </ul>
          {settledCount > settled.length && <p>{prove.olderFindings}</p>}
        </details>
      )}
    </Sheet>
  );
}
