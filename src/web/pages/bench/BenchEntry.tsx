import { lazy, Suspense } from 'react';
import { Tab, TabList, TabPanel, Tabs } from 'react-aria-components';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem, BenchTimerNow } from './BenchPage.js';
import { FindingEntry } from './FindingEntry.js';
import { NoteEntry } from './NoteEntry.js';
import { PhotoEntry } from './PhotoEntry.js';
import styles from './BenchEntry.module.css';

// These come when their leaf is opened: the page is to be there soon.
const ReadingEntry = lazy(async () => ({
  default: (await import('./ReadingEntry.js')).ReadingEntry,
}));
const SweepEntry = lazy(async () => ({ default: (await import('./SweepEntry.js')).SweepEntry }));
const BenchPart = lazy(async () => ({ default: (await import('./BenchPart.js')).BenchPart }));

/** What is seen and measured is written down here, each kind on a leaf of its own. */
export function BenchEntry({ item, running }: { item: BenchItem; running: BenchTimerNow | null }) {
  const { bench, prove } = useTexts();
  const leaves = [
    { id: 'finding', content: <FindingEntry item={item} /> },
    { id: 'photo', content: <PhotoEntry item={item} /> },
    { id: 'reading', content: <ReadingEntry item={item} /> },
    { id: 'sweep', content: <SweepEntry item={item} /> },
    { id: 'part', content: <BenchPart item={item} /> },
    {
      id: 'note',
      content: <NoteEntry key={running?.id ?? item.id} item={item} running={running} />,
    },
  ] as const;
  return (
    <Sheet title={bench.entry}>
      <Tabs className={styles['tabs'] ?? ''} defaultSelectedKey="finding">
        <TabList aria-label={bench.entry} className={styles['list'] ?? ''}>
          {leaves.map(({ id }) => (
            <Tab key={id} id={id} className={styles['tab'] ?? ''}>
              {id === 'part' ? prove.partTab : bench.tabs[id]}
            </Tab>
          ))}
        </TabList>
        {leaves.map(({ id, content }) => (
          <TabPanel key={id} id={id} className={styles['leaf'] ?? ''}>
            <Suspense fallback={<Loading />}>{content}</Suspense>
          </TabPanel>
        ))}
      </Tabs>
    </Sheet>
  );
}
