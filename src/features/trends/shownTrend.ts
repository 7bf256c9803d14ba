import type { Basis } from '../../api/kit/basis.type.js';
import type { Row } from '../../api/kit/typeReads.js';
import { FEWEST_INSTANTS } from '../../domain/trend/trendOf.js';
import type { SubjectTrend } from './subjectTrends.js';

const method =
  'Theil–Sen slope, the median of the slopes of all pairs, with Sen’s 95 % interval; Mann–Kendall ' +
  'test, two-sided, a trend from a probability of 0.05 down. The dates of the limit are where lines ' +
  'of these slopes through the medians of time and value meet it.';

/** A trend as the API shows it. */
export function shownTrend(subjectId: string, found: SubjectTrend, nowMs: number): Row {
  const { quantity, tier, unit, series, trend } = found;
  const instants = { instants: trend.instants, outcome: trend.kind };
  const common = {
    id: JSON.stringify([subjectId, quantity, tier]),
    quantity,
    tier,
    unit,
    readingIds: series.points.map(({ readingId }) => readingId),
    whyEarlierLeftOut: whyLeftOut(found),
    basis: basisOf(found, nowMs),
    ...instants,
  };
  if (trend.kind === 'TOO_FEW') {
    return { ...common, ...nothing, missingInstants: trend.missing };
  }
  const { crossing, line, test } = trend;
  const limit = crossing?.end === 'LOWER' ? found.lower : found.upper;
  return {
    ...common,
    missingInstants: 0,
    slopePerYear: line.slopePerYear,
    slopeLowPerYear: line.interval?.lowPerYear ?? null,
    slopeHighPerYear: line.interval?.highPerYear ?? null,
    kendallS: test.s,
    probability: test.probability,
    isLimitNear: trend.isLimitNear,
    limitReached: crossing && {
      end: crossing.end,
      limit,
      central: instant(crossing.centralMs),
      earliest: instant(crossing.earliestMs),
      latest: instant(crossing.latestMs),
    },
  };
}

const nothing = {
  slopePerYear: null,
  slopeLowPerYear: null,
  slopeHighPerYear: null,
  kendallS: null,
  probability: null,
  isLimitNear: false,
  limitReached: null,
};

const instant = (atMs: number | null): string | null =>
  atMs === null ? null : new Date(atMs).toISOString();

function whyLeftOut({ series: { brokenBy, points } }: SubjectTrend): string | null {
  if (!brokenBy) return null;
  const named = (instrument: string | null | undefined): string =>
    instrument ?? 'an instrument that was not recorded';
  return (
    `Up to ${new Date(brokenBy.atMs).toISOString()} it was read with ${named(brokenBy.instrument)}, ` +
    `since then with ${named(points[0]?.instrument)}: give a comparison of the two to go on from there.`
  );
}

function basisOf({ series, leftOut, trend }: SubjectTrend, nowMs: number): Basis {
  const needs = `The method needs ${FEWEST_INSTANTS} readings at different times.`;
  return {
    method: trend.kind === 'TOO_FEW' ? `${method} ${needs}` : method,
    counted: [
      { what: 'comparable readings', count: series.points.length },
      { what: 'different times', count: trend.instants },
      { what: 'readings converted by a comparison factor', count: series.converted },
      { what: 'readings left out because their unit measures something else', count: leftOut },
    ],
    assumptions: [
      'Readings at one time count once, as their median.',
      'The change goes on in a straight line.',
    ],
    asOf: new Date(nowMs).toISOString(),
  };
}
