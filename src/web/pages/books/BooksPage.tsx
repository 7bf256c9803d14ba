import { useLiveQuery } from '../../api/useLiveQuery.js';
import { BooksDocument } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { CostTable } from '../../parts/CostTable.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { BeforeYouBuy } from './BeforeYouBuy.js';
import { everyMonth } from './everyMonth.js';
import { HourBars } from './HourBars.js';
import { MonthTable } from './MonthTable.js';
import { ProjectHours } from './ProjectHours.js';
import { ScheduleChoice } from './ScheduleChoice.js';
import { YearTable } from './YearTable.js';
import styles from './BooksPage.module.css';

const monthsShown = 18;

/** Hours and money of the whole collection. */
export function BooksPage() {
  const { books, words } = useTexts();
  const formats = useFormats();
  useTitle(books.title);
  const [{ data, error }, fetchAgain] = useLiveQuery({ query: BooksDocument, variables: {} });
  if (error && !data) return <Failed error={error} retry={fetchAgain} isWholePage />;
  if (!data) return <Loading />;
  const { hours, cost } = data.collection;
  return (
    <div className={styles['page']}>
      <h1>{books.title}</h1>
      <Sheet
        title={books.hoursByMonth(formats.hours(hours.hours))}
        aside={<BasisButton of={books.hoursName} basis={hours.basis} />}
      >
        <HourBars
          bars={everyMonth(hours.byMonth)
            .slice(-monthsShown)
            .map((each) => ({ name: formats.month(each.month), hours: each.hours }))}
        />
      </Sheet>
      <Sheet title={books.hoursByKind}>
        <HourBars
          bars={[...hours.byTaskKind]
            .sort((one, other) => other.hours - one.hours)
            .map((each) => ({ name: words.taskKind[each.taskKind], hours: each.hours }))}
        />
      </Sheet>
      <Sheet title={books.hoursByProject}>
        <ProjectHours projects={data.projects.nodes} />
      </Sheet>
      <Sheet title={books.spent} aside={<BasisButton of={books.spent} basis={cost.basis} />}>
        <CostTable name={books.spent} byCurrency={cost.byCurrency} />
        {data.spendingCeilings.map(
          ({ id, period, amount }) =>
            amount && <p key={id}>{books.ceiling[period](formats.money(amount))}</p>,
        )}
        {data.spendingCeilings.length > 0 && (
          <BeforeYouBuy currency={data.collection.homeCurrency} />
        )}
      </Sheet>
      <Sheet
        title={books.months}
        aside={<BasisButton of={books.months} basis={data.books.basis} />}
      >
        <MonthTable months={data.books.months} />
      </Sheet>
      <Sheet title={books.years} aside={<BasisButton of={books.years} basis={data.books.basis} />}>
        <YearTable shown={data.books} />
        <ScheduleChoice />
      </Sheet>
    </div>
  );
}
