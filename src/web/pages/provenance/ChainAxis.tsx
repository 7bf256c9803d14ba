import { useTexts } from '../../texts/textsContext.js';
import type { ShownProvenance } from './ProvenancePage.js';
import { bandOf, edgeOf, marksOf, yearOf, type Band } from './timeAxis.js';
import styles from './ChainAxis.module.css';

/** The chain as bars over the years: sure times full, uncertain ones hatched, gaps left open. */
export function ChainAxis({ shown }: { shown: ShownProvenance }) {
  const { provenance, words } = useTexts();
  const { chain, events, contradictions } = shown;
  const today = new Date().toISOString().slice(0, 10);
  const dated = events.nodes.filter(({ earliestOn, latestOn }) => earliestOn ?? latestOn);
  if (chain.holdings.length === 0 && dated.length === 0) return <p>{provenance.nothingDated}</p>;
  const edge = edgeOf(
    [
      ...chain.holdings.flatMap((held) => [held.cameEarliestOn, held.wentLatestOn]),
      ...dated.flatMap((event) => [event.earliestOn, event.latestOn]),
    ],
    today,
  );
  const place = placeOn(edge);
  const contradicted = new Set(contradictions.flatMap((each) => each.events.map(({ id }) => id)));
  return (
    <div className={styles['axis']} role="img" aria-label={provenance.axisHeard}>
      <div className={styles['marks']}>
        {marksOf(edge).map((year) => (
          <span
            key={year}
            style={{ insetInlineStart: place({ from: year, to: year }).insetInlineStart }}
          >
            {year}
          </span>
        ))}
      </div>
      {chain.holdings.map((held, index) => {
        const end = held.end === 'STILL_HELD' ? today : null;
        const may = bandOf(held.cameEarliestOn, held.wentLatestOn ?? end, edge);
        const sureFrom = held.cameLatestOn && yearOf(held.cameLatestOn);
        const sureTo = held.wentEarliestOn ?? end;
        const sure: Band | null =
          sureFrom && sureTo && yearOf(sureTo) > sureFrom
            ? { from: sureFrom, to: yearOf(sureTo) }
            : null;
        return (
          <div key={index} className={styles['row']}>
            {may && <span className={styles['may']} style={place(may)} />}
            {sure && <span className={styles['sure']} style={place(sure)} />}
            <span className={styles['name']}>
              {held.isOwnCollection
                ? provenance.thisCollection
                : (held.holder?.name ?? provenance.unknownHolder)}
            </span>
          </div>
        );
      })}
      {chain.gaps.map(({ from, to }) => (
        <div key={from} className={styles['row']}>
          <span className={styles['gap']} style={place({ from: yearOf(from), to: yearOf(to) })} />
          <span className={styles['name']}>{provenance.notAccountedFor}</span>
        </div>
      ))}
      {dated.map(({ id, kind, earliestOn, latestOn }) => {
        const band = bandOf(earliestOn, latestOn, edge);
        return (
          <div key={id} className={styles['row']}>
            {band && (
              <span
                className={contradicted.has(id) ? styles['against'] : styles['event']}
                style={place(band)}
              />
            )}
            <span className={styles['name']}>
              {words.eventKind[kind]}
              {contradicted.has(id) && ` – ${provenance.contradicted}`}
            </span>
          </div>
        );
      })}
    </div>
  );
}

const placeOn = (edge: Band) => (band: Band) => ({
  insetInlineStart: `${((band.from - edge.from) / (edge.to - edge.from)) * 100}%`,
  inlineSize: `max(4px, ${((band.to - band.from) / (edge.to - edge.from)) * 100}%)`,
});
