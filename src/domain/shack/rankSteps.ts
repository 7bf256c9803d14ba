import { afterStep, readyCount, type ReadyCount } from './afterStep.js';
import { readyShack, type ShackModel } from './shackModel.js';
import type { ShackStep } from './shackSteps.js';

export interface RankedStep extends ShackStep {
  /** Rigs more that are ready, each looked at alone; and at once. */
  readonly gainAlone: number;
  readonly gainAtOnce: number;
  /** Rigs that are ready alone afterwards and were not before. */
  readonly bringsRigIds: readonly string[];
  /** Minor units of one currency; null when no price is known. */
  readonly priceMinorUnits: number | null;
  /** Why it stands where it stands. */
  readonly reason: string;
}

export type RankBy = 'HOUR' | 'MONEY';

/**
 * Steps by what they bring: more rigs at once per hour (or per unit of money) first, then more rigs
 * alone, then the shorter. A step whose price is not known comes after those that have one.
 */
export function rankSteps(
  model: ShackModel,
  steps: readonly ShackStep[],
  priceOf: (step: ShackStep) => number | null,
  by: RankBy,
): { before: ReadyCount; ranked: RankedStep[] } {
  const before = readyCount(model);
  const readyBefore = new Set(readyShack(model).rigs.map(({ rigId }) => rigId));
  const measured = steps.map((step): RankedStep => {
    const after = isIdle(step) ? model : afterStep(model, step);
    const readyAfter = readyShack(after).rigs.map(({ rigId }) => rigId);
    const brings = readyAfter.filter((rigId) => !readyBefore.has(rigId));
    const mayHelp = brings.length > 0 || step.adds !== null;
    const atOnce = mayHelp ? readyCount(after).atOnce : before.atOnce;
    const gains = { gainAlone: brings.length, gainAtOnce: Math.max(0, atOnce - before.atOnce) };
    const reason = reasonOf(step, gains, after, readyAfter);
    return { ...step, ...gains, bringsRigIds: brings, priceMinorUnits: priceOf(step), reason };
  });
  const cost = (step: RankedStep): number =>
    by === 'HOUR' ? step.hours : (step.priceMinorUnits ?? Infinity);
  const per = (gain: number, step: RankedStep): number =>
    gain === 0 ? 0 : gain / Math.max(cost(step), 1e-9);
  const ranked = measured.sort(
    (left, right) =>
      per(right.gainAtOnce, right) - per(left.gainAtOnce, left) ||
      right.gainAtOnce - left.gainAtOnce ||
      per(right.gainAlone, right) - per(left.gainAlone, left) ||
      right.gainAlone - left.gainAlone ||
      Number(isIdle(left)) - Number(isIdle(right)) ||
      left.hours - right.hours ||
      (left.action < right.action ? -1 : 1),
  );
  return { before, ranked };
}

/** A task that nothing recorded waits for. */
const isIdle = ({ settles, adds }: ShackStep): boolean => settles.length === 0 && adds === null;

function reasonOf(
  step: ShackStep,
  { gainAlone, gainAtOnce }: { gainAlone: number; gainAtOnce: number },
  after: ShackModel,
  readyAfter: readonly string[],
): string {
  const hours = `about ${Math.round(step.hours * 10) / 10} h`;
  if (gainAtOnce > 0) {
    return `It brings ${rigs(gainAtOnce)} more on the air at once, ${rigs(gainAlone)} more looked at alone, for ${hours}.`;
  }
  if (gainAlone > 0) {
    return `It makes ${rigs(gainAlone)} more ready alone for ${hours}, but not more at once: what serves them is in use elsewhere.`;
  }
  if (isIdle(step)) {
    return 'Nothing recorded that keeps a rig off the air waits for it.';
  }
  const left = after.items.get(step.itemId)?.blockers ?? [];
  if (step.adds === null && left.length > 0) {
    const more = left.length > 2 ? ` and ${left.length - 2} more` : '';
    const named = left.slice(0, 2).map(({ message }) => message);
    return `Alone it brings nothing: there remain ${named.join(' ')}${more}`;
  }
  const isReady = readyAfter.includes(step.itemId);
  return isReady || step.adds !== null
    ? 'It brings no more: nothing that is ready waits for it.'
    : 'It brings nothing by itself: whatever serves the rig, or the rig it serves, is not ready either.';
}

const rigs = (count: number): string => (count === 1 ? '1 rig' : `${count} rigs`);
