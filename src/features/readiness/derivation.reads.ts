import { globalId } from '../../api/kit/globalId.js';
import { pastMoment } from '../../api/kit/pastMoment.js';
import type { Relation } from '../../api/kit/typeReads.js';
import type { Condition, Evidence } from '../../domain/readiness/condition.js';
import { mendingHours, type OpenTask } from '../../domain/readiness/mendingHours.js';
import { readinessTree } from '../../domain/readiness/readinessTree.js';
import { zoneOfBench } from '../pace/zoneOfBench.js';
import { readReadinessAsOf } from '../standing/readinessAsOf.js';
import { hundredths, shownBasis } from '../standing/standingFacts.js';
import { readOpenTasks } from './openTasks.reads.js';

/** Readiness as a tree, for all items of a page at once, now or at a past instant. */
const derivation: Relation = async ({ database: { reader }, nowMs }, parents, args) => {
  const atMs = pastMoment(args['asOf'] as Date | string | null | undefined, nowMs);
  const facts = await readReadinessAsOf(
    reader,
    parents.map(({ id }) => id),
    atMs,
  );
  const near = [...facts.values()].flatMap(({ rig, accessories }) => [rig, ...accessories]);
  const tasks = await readOpenTasks(reader, [...new Set(near.map(({ itemId }) => itemId))]);
  const zone = await zoneOfBench(reader);
  const values = parents.map(({ id }) => {
    const own = facts.get(id);
    return own ? shownDerivation(readinessTree(own, atMs, zone), tasks, atMs) : null;
  });
  return { values, children: [], childType: null };
};

export const derivationRelationsOfItem = { derivation };

function shownDerivation(
  tree: Condition,
  tasks: ReadonlyMap<string, readonly OpenTask[]>,
  atMs: number,
) {
  const all = inOrder(tree, '1', null);
  const conditions = all.map(({ condition, place, partOf }) => ({
    ...condition,
    place,
    partOf,
    depth: place.split('.').length - 1,
    evidence: condition.evidence.map(shownEvidence),
    roughly: roughly(condition, tasks.get(condition.itemId) ?? []),
  }));
  const leaves = conditions.filter(({ joins }) => joins === null);
  return {
    level: tree.level,
    conditions,
    unmet: leaves.filter(({ state }) => state === 'NOT_MET'),
    basis: shownBasis(
      {
        method:
          'Every condition judged from the facts as they were dated up to then; of parts that must all hold the worst decides, of those that may stand in for one another the best.',
        counted: [
          { what: 'leaves', count: leaves.length },
          { what: 'leaves that nothing recorded speaks for', count: countOf(leaves, 'NOT_KNOWN') },
          { what: 'leaves not met', count: countOf(leaves, 'NOT_MET') },
        ],
      },
      atMs,
      [
        'Fit-outs, limits and needed roles of models are taken as they are now.',
        'Hours of what is not planned are our own usual figures.',
      ],
    ),
  };
}

interface Placed {
  condition: Condition;
  place: string;
  partOf: string | null;
}

const inOrder = (condition: Condition, place: string, partOf: string | null): Placed[] => [
  { condition, place, partOf },
  ...condition.children.flatMap((child, index) => inOrder(child, `${place}.${index + 1}`, place)),
];

const countOf = (leaves: readonly { state: string }[], state: string): number =>
  leaves.filter((leaf) => leaf.state === state).length;

function roughly({ joins, blockerCode }: Condition, tasks: readonly OpenTask[]) {
  if (joins !== null || blockerCode === null) return null;
  const { hours, restsOn, taskIds } = mendingHours(blockerCode, tasks);
  return {
    hours: hundredths(hours),
    restsOn,
    taskIds: taskIds.map((id) => globalId('Task', id)),
  };
}

const typeNames = {
  FINDING: 'Finding',
  HAZARD: 'Hazard',
  INSPECTION: 'Inspection',
  POSITION_CHECK: 'FitOutCheck',
  COMPONENT: 'Component',
  READING: 'Reading',
  FINAL_CHECK: 'FinalCheck',
} as const;

const shownEvidence = ({ recordKind, recordId, atMs, words }: Evidence) => ({
  recordId: globalId(typeNames[recordKind], recordId),
  at: atMs === null ? null : new Date(atMs).toISOString(),
  words,
});
