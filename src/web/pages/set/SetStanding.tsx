import { Link } from '@tanstack/react-router';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Figure } from '../../parts/Figure.js';
import { Meter } from '../../parts/Meter.js';
import { Sheet } from '../../parts/Sheet.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { Remark } from './Remark.js';
import type { ShownSet } from './SetPage.js';
import styles from './SetStanding.module.css';

/** How it stands: what is in the way of the air, and the figures with what they rest on. */
export function SetStanding({ item }: { item: ShownSet }) {
  const { set, shelf, words } = useTexts();
  const formats = useFormats();
  const servedBy = item.__typename === 'Rig' ? item.servedBy : [];
  const { readiness, completion, hours, remaining, completeness, cost } = item;
  return (
    <Sheet
      id="standing"
      title={set.standing}
      aside={<BasisButton of={set.standing} basis={readiness.basis} />}
    >
      {readiness.blockers.length > 0 && (
        <div>
          <h3>{set.standsInTheWay}</h3>
          <ul className={styles['list']}>
            {readiness.blockers.map(({ code, message, wouldBeMetBy }) => (
              <li key={code + message}>
                <Remark code={code} message={message} />
                <span className={styles['soft']}>
                  {set.wouldBeMetBy}: <span {...fromApi}>{wouldBeMetBy}</span>
                </span>
              </li>
            ))}
          </ul>
        </div>
      )}
      {readiness.cautions.length > 0 && (
        <div>
          <h3>{set.minded}</h3>
          <ul className={styles['list']}>
            {readiness.cautions.map(({ code, message }) => (
              <li key={code + message}>
                <Remark code={code} message={message} />
              </li>
            ))}
          </ul>
        </div>
      )}
      {readiness.checksValidUntil && (
        <p>{set.checksUntil(formats.day(readiness.checksValidUntil))}</p>
      )}
      {servedBy.length > 0 && (
        <p>
          {set.servedBy}:{' '}
          {servedBy.map(({ id, role, accessory }, index) => (
            <span key={id}>
              {index > 0 && ', '}
              {words.role[role]}{' '}
              <Link to="/sets/$number" params={{ number: accessory.inventoryNumber }}>
                {[accessory.inventoryNumber, accessory.name].filter(Boolean).join(' ')}
              </Link>
            </span>
          ))}
        </p>
      )}
      <dl className={styles['figures']}>
        <Figure
          name={set.figures.completion}
          basis={completion.basis}
          value={
            <Meter
              share={completion.share}
              words={completion.share === null ? shelf.noTasks : formats.share(completion.share)}
            />
          }
        >
          {set.earned(
            formats.hours(completion.earnedHours),
            formats.hours(completion.budgetedHours),
          )}
        </Figure>
        <Figure name={set.figures.hours} basis={hours.basis} value={formats.hours(hours.hours)}>
          {hours.byTaskKind
            .map((each) => `${words.taskKind[each.taskKind]} ${formats.hours(each.hours)}`)
            .join(', ')}
        </Figure>
        <Figure
          name={set.figures.remaining}
          basis={remaining.basis}
          value={formats.hours(remaining.p50Hours)}
        >
          {set.fairlySure(formats.hours(remaining.p80Hours))}
        </Figure>
        <Figure
          name={set.figures.completeness}
          basis={completeness.basis}
          value={completeness.share === null ? '–' : formats.share(completeness.share)}
        >
          {completeness.share === null
            ? set.noFitOut
            : set.positionsThere(completeness.present, completeness.required)}
        </Figure>
        <Figure
          name={set.figures.cost}
          basis={cost.basis}
          value={cost.byCurrency.map(({ total }) => formats.money(total)).join(' + ') || set.noCost}
        />
      </dl>
    </Sheet>
  );
}
