import type { ApiContext } from '../../api/kit/apiContext.js';
import { equalTo } from '../../api/kit/conditions.js';
import { groupedBy } from '../../db/groupedBy.js';
import { nameKey } from '../../domain/nameKey.js';
import { agentCatalogue } from './agentCatalogue.js';
import type { AgentKind } from './agentKind.js';
import type { SurfaceMaterial } from './surfaceMaterial.js';
import type { TreatmentFilter } from './treatment.inputs.js';
import { treatmentConditions } from './treatmentConditions.js';
import type { TreatmentOutcome } from './treatmentOutcome.js';
import type { TreatmentResult } from './treatmentResult.type.js';

interface CountedRow {
  surface: string;
  material: SurfaceMaterial;
  kind: AgentKind;
  outcome: TreatmentOutcome;
  treatments: number;
  last: string;
}

/** What was used most and worked best first. */
export async function readTreatmentResults(
  { database: { reader }, nowMs }: ApiContext,
  filter: TreatmentFilter | null | undefined,
  first: number,
): Promise<TreatmentResult[]> {
  const where = [...treatmentConditions(filter), ...equalTo('treatment_agent.kind', filter?.agent)];
  const all = where.length === 0 ? '' : `WHERE ${where.map(({ sql }) => sql).join(' AND ')}`;
  const rows = await reader.rows<CountedRow>(
    `SELECT treatment.surface AS "surface", treatment.material AS "material",
       treatment_agent.kind AS "kind", treatment.outcome AS "outcome",
       COUNT(DISTINCT treatment.id) AS "treatments", MAX(treatment.treated_at) AS "last"
     FROM treatment JOIN treatment_agent ON treatment_agent.treatment_id = treatment.id ${all}
     GROUP BY treatment.surface, treatment.material, treatment_agent.kind, treatment.outcome
     ORDER BY "last" DESC, "surface", "material", "kind", "outcome"`,
    where.flatMap(({ parameters }) => parameters),
  );
  const groups = groupedBy(rows, ({ surface, material, kind }) =>
    [nameKey(surface), material, kind].join('\n'),
  );
  const asOf = new Date(nowMs).toISOString();
  return [...groups.values()]
    .flatMap((own) => resultOf(own, asOf))
    .sort(
      (one, other) =>
        other.workedCount - one.workedCount ||
        other.treatmentCount - one.treatmentCount ||
        (one.lastTreatedAt < other.lastTreatedAt ? 1 : -1),
    )
    .slice(0, first);
}

const method =
  'Treatments counted by surface (its name, capitals and blanks apart), material and kind of agent. ' +
  'One with several agents counts once under each of them: what did the work is not told apart.';

function resultOf(rows: readonly CountedRow[], asOf: string): TreatmentResult[] {
  const [latest] = rows;
  if (!latest) return [];
  const count = (outcome?: TreatmentOutcome): number =>
    rows
      .filter((row) => outcome === undefined || row.outcome === outcome)
      .reduce((sum, { treatments }) => sum + Number(treatments), 0);
  const result = {
    surface: latest.surface,
    material: latest.material,
    agent: latest.kind,
    treatmentCount: count(),
    workedCount: count('WORKED'),
    workedInPartCount: count('WORKED_IN_PART'),
    noEffectCount: count('NO_EFFECT'),
    harmedCount: count('HARMED'),
    undecidedCount: count('UNDECIDED'),
    lastTreatedAt: latest.last,
    cautions: agentCatalogue.guides.get(latest.kind)?.cautions ?? [],
  };
  const counted = [{ what: 'treatments', count: result.treatmentCount }];
  return [{ ...result, basis: { method, counted, assumptions: [], asOf } }];
}
