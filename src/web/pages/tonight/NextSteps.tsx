import { Link } from '@tanstack/react-router';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { NextStepsDocument } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './NextSteps.module.css';

const shown = 5;

/** What would bring the most sets on the air for an hour of work, and why. */
export function NextSteps() {
  const { tonight, words } = useTexts();
  const formats = useFormats();
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: NextStepsDocument,
    variables: { first: shown },
  });
  const next = data?.nextSteps;
  return (
    <div className={styles['space']}>
      <Sheet
        title={tonight.next}
        aside={next && <BasisButton of={tonight.next} basis={next.basis} />}
      >
        {error && !data && <Failed error={error} retry={fetchAgain} />}
        {!data && !error && <Loading />}
        {next?.steps.length === 0 && <p>{tonight.noNext}</p>}
        <ol className={styles['steps']}>
          {next?.steps.map((step) => (
            <li key={step.rank}>
              <span className={styles['rank']} aria-hidden="true">
                {step.rank}
              </span>
              <div>
                <p>
                  <Link to="/sets/$number" params={{ number: step.item.inventoryNumber }}>
                    <span {...fromApi}>{step.action}</span>
                  </Link>
                </p>
                <p>
                  {tonight.stepGains(
                    words.stepKind[step.kind],
                    step.gainAtOnce,
                    formats.hours(step.roughly.hours),
                  )}
                </p>
                <p className={styles['why']} {...fromApi}>
                  {step.reason}
                </p>
              </div>
            </li>
          ))}
        </ol>
      </Sheet>
    </div>
  );
}
