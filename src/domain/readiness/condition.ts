import type { Blocker, BlockerCode, SubjectKind } from './blocker.js';
import { worstLevel, type ReadinessLevel } from './readinessLevel.js';

/**
 * MET: something recorded says so. NOT_MET: something recorded stands against it.
 * NOT_KNOWN: nothing recorded says so; a caution, which by itself keeps no rig off the air.
 */
export type ConditionState = 'MET' | 'NOT_MET' | 'NOT_KNOWN';

export type ConditionCode =
  | 'ON_AIR'
  | 'IDENTITY_COMPLETE'
  | 'IN_HAND'
  | 'NO_BLOCKING_FINDING'
  | 'NO_HAZARD'
  | 'POSITIONS_FILLED'
  | 'COMPONENTS_ACCEPTED'
  | 'ROLES_SERVED'
  | 'ROLE_SERVED'
  | 'ACCESSORY_READY'
  | 'FINAL_CHECKS_PASSED';

/** A record that a condition rests on. */
export interface Evidence {
  readonly recordKind:
    | 'FINDING'
    | 'HAZARD'
    | 'INSPECTION'
    | 'POSITION_CHECK'
    | 'COMPONENT'
    | 'READING'
    | 'FINAL_CHECK';
  readonly recordId: string;
  /** When it was seen, done or taken; null where the record has no date. */
  readonly atMs: number | null;
  /** What it says, as a sentence. */
  readonly words: string;
}

/** One condition of a readiness answer: a leaf with its evidence, or a group of others. */
export interface Condition {
  readonly code: ConditionCode;
  /** As it stands, in a sentence. */
  readonly statement: string;
  readonly state: ConditionState;
  /** The best level that can be reached while it stands so. */
  readonly level: ReadinessLevel;
  /** How a group follows from its parts; null for a leaf. */
  readonly joins: 'ALL' | 'ANY' | null;
  readonly children: readonly Condition[];
  /** The item that it is a condition of. */
  readonly itemId: string;
  readonly subjectKind: SubjectKind;
  readonly subjectId: string;
  /** What stands in the way, where it is not met. */
  readonly blockerCode: BlockerCode | null;
  readonly evidence: readonly Evidence[];
  /** What would satisfy it; null when it is met. */
  readonly wouldBeMetBy: string | null;
}

type About = Pick<Condition, 'code' | 'itemId' | 'subjectKind' | 'subjectId'>;

export const metLeaf = (
  about: About,
  statement: string,
  evidence: readonly Evidence[] = [],
): Condition => ({ ...LEAF, ...about, statement, state: 'MET', evidence });

export const unknownLeaf = (
  about: About,
  statement: string,
  wouldBeMetBy: string,
  evidence: readonly Evidence[] = [],
): Condition => ({ ...LEAF, ...about, statement, state: 'NOT_KNOWN', wouldBeMetBy, evidence });

export const unmetLeaf = (
  about: Pick<About, 'code' | 'itemId'>,
  blocker: Blocker,
  evidence: readonly Evidence[] = [],
): Condition => ({
  ...LEAF,
  ...about,
  statement: blocker.message,
  state: 'NOT_MET',
  level: blocker.level,
  subjectKind: blocker.subjectKind,
  subjectId: blocker.subjectId,
  blockerCode: blocker.code,
  wouldBeMetBy: blocker.wouldBeMetBy,
  evidence,
});

const LEAF = {
  level: 'ON_AIR_READY',
  joins: null,
  children: [],
  blockerCode: null,
  wouldBeMetBy: null,
} as const;

/** Holds when all its parts hold; the worst of them decides. */
export const allOf = (
  about: About,
  statement: string,
  children: readonly Condition[],
): Condition => ({
  ...LEAF,
  ...about,
  statement,
  joins: 'ALL',
  children,
  evidence: [],
  state: hasState(children, 'NOT_MET')
    ? 'NOT_MET'
    : hasState(children, 'NOT_KNOWN')
      ? 'NOT_KNOWN'
      : 'MET',
  level: worstLevel(children.map(({ level }) => level)),
});

export const hasState = (children: readonly Condition[], wanted: ConditionState): boolean =>
  children.some(({ state }) => state === wanted);
