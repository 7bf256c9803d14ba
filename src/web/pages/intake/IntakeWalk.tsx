import { useState } from 'react';
import { Tab, TabList, TabPanel, Tabs, type Key } from 'react-aria-components';
import { useDraft } from '../../drafts/useDraft.js';
import type { IntakeSetQuery, PositionState } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { classNames } from '../../parts/classNames.js';
import { useTexts } from '../../texts/textsContext.js';
import { emptyIntake, intakePlace, zones, type IntakeDraft } from './intakeDraft.js';
import { HazardTicks } from './HazardTicks.js';
import { IntakeDone } from './IntakeDone.js';
import { IntakeSend } from './IntakeSend.js';
import type { IntakeItem } from './IntakeWalkPage.js';
import { OthersInspections } from './OthersInspections.js';
import { checksOf, useIntake } from './useIntake.js';
import { useOthersInspections } from './useOthersInspections.js';
import { ZoneLeaf } from './ZoneLeaf.js';
import styles from './IntakeWalk.module.css';

/** The walk round a set. Everything is in one draft, kept on this device until it is sent. */
export function IntakeWalk({
  item,
  guides,
}: {
  item: IntakeItem;
  guides: IntakeSetQuery['hazardKinds'];
}) {
  const { frame, intake, words } = useTexts();
  const kept = useDraft<IntakeDraft>(intakePlace(item.inventoryNumber), emptyIntake);
  const { draft, change, clear, isKept } = kept;
  const { send, problems, isSending } = useIntake(item, kept);
  const { others, note } = useOthersInspections(item.inspections.nodes, kept);
  const [leaf, setLeaf] = useState<Key>('WHOLE');
  const [isDone, setIsDone] = useState(false);
  const order = checksOf(draft).map(({ positionId }) => positionId);
  const sendAll = async () => {
    if (!(await send())) return;
    clear();
    setIsDone(true);
  };
  if (isDone) return <IntakeDone number={item.inventoryNumber} />;
  const leaves: readonly string[] = [...zones, 'hazards', 'send'];
  const nameOf = (id: string): string => {
    const zone = zones.find((each) => each === id);
    return zone ? words.zone[zone] : id === 'hazards' ? intake.whole : intake.send;
  };
  const summaryOf = (id: string): string => {
    const places = item.fitOut.filter(({ position }) => position.zone === id);
    const ticked = places.filter(({ position }) => draft.checks[position.id]).length;
    const seen = draft.findings.filter(({ zone }) => zone === id).length;
    return intake.zoneSummary(seen, ticked, places.length);
  };
  const model = item.model && `${item.model.maker} ${item.model.designation}`;
  return (
    <>
      <h1>
        {intake.titleOf(item.inventoryNumber)} {item.name ?? model ?? ''}
      </h1>
      <p className={styles['intro']}>{intake.intro}</p>
      {!isKept && <p role="alert">{frame.draftNotKept}</p>}
      <OthersInspections others={others} note={note} />
      <Tabs
        className={styles['walk'] ?? ''}
        selectedKey={leaf}
        onSelectionChange={setLeaf}
        orientation="vertical"
      >
        <TabList aria-label={intake.zones} className={styles['zones'] ?? ''}>
          {leaves.map((id) => (
            <Tab key={id} id={id} className={styles['zone'] ?? ''}>
              <span>{nameOf(id)}</span>
              <span className={styles['summary']}>{summaryOf(id)}</span>
            </Tab>
          ))}
        </TabList>
        {leaves.map((id, index) => {
          const zone = zones.find((each) => each === id);
          const following = leaves[index + 1];
          return (
            <TabPanel key={id} id={id} className={classNames(styles['leaf'])}>
              <h2>{nameOf(id)}</h2>
              {zone && (
                <ZoneLeaf
                  zone={zone}
                  item={item}
                  draft={draft}
                  order={order}
                  problems={problems}
                  onTick={(checks: Readonly<Partial<Record<string, PositionState>>>) => {
                    change({ checks });
                  }}
                  onFindings={(changed) => {
                    change(({ findings }) => ({ findings: changed(findings) }));
                  }}
                />
              )}
              {id === 'hazards' && (
                <HazardTicks
                  guides={guides}
                  known={new Set(item.hazards.map(({ kind }) => kind))}
                  notes={draft.hazards}
                  onChange={(hazards) => {
                    change({ hazards });
                  }}
                />
              )}
              {id === 'send' && (
                <IntakeSend
                  draft={draft}
                  change={change}
                  othersCount={others.length}
                  problems={problems}
                  isSending={isSending}
                  send={() => void sendAll()}
                />
              )}
              {following !== undefined && (
                <div className={styles['next']}>
                  <Button
                    weight="main"
                    onClick={() => {
                      setLeaf(following);
                      document.getElementById('content')?.scrollIntoView();
                    }}
                  >
                    {intake.next(nameOf(following))}
                  </Button>
                </div>
              )}
            </TabPanel>
          );
        })}
      </Tabs>
    </>
  );
}
