import type { Row } from '../../api/kit/typeReads.js';
import type { Comparison } from '../../domain/parts/compareTubes.js';
import type { RecordedEdge } from './recordedEdges.reads.js';
import type { PartFacts } from './partFacts.js';
import type { SubstitutionGrade } from './substitutionGrade.js';

/** A substitute before stock and prices are known. */
export interface SubstituteDraft extends Row {
  partTypeId: string;
  recordedId: string | null;
  designation: string;
  grade: SubstitutionGrade | null;
}

/** What a person wrote down outranks ratings; both say what is to be watched. */
export function substituteRow(
  candidate: PartFacts,
  edge: RecordedEdge | undefined,
  compared: Comparison,
): SubstituteDraft {
  const isProven = compared.unproven.length === 0;
  const written = (text: string | null | undefined): string[] => (text ? [text] : []);
  const whyNot = edge ? [] : [...compared.whyNot];
  return {
    id: candidate.id,
    partTypeId: candidate.id,
    recordedId: edge?.id ?? null,
    designation: candidate.designation,
    origin: edge ? 'RECORDED' : 'COMPUTED',
    serves: edge ? true : isProven ? compared.grade !== null : null,
    grade: edge ? edge.grade : isProven ? compared.grade : null,
    supposedGrade: edge || isProven ? null : compared.grade,
    whyNot,
    worse: [...written(edge?.consequence), ...compared.worse],
    recheck: [...written(edge?.recheck), ...compared.recheck],
    unconfirmed: [...compared.unproven],
  };
}
