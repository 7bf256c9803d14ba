import { bringUpRelationsOfItem } from '../bringUp/bringUp.reads.js';
import { attachmentRelationsOfItem } from '../attachments/attachment.reads.js';
import { originalityRelationsOfItem } from '../originality/originality.reads.js';
import { trendRelationsOfItem } from '../trends/trend.reads.js';
import { readingRelationsOfItem } from '../readings/reading.reads.js';
import { useRelationsOfItem } from '../use/use.reads.js';
import { derivationRelationsOfItem } from '../readiness/derivation.reads.js';
import { finalCheckRelationsOfItem } from '../readiness/finalCheck.reads.js';
import { fittingRelationsOfItem } from '../parts/fitting.reads.js';
import { inspectionRelationsOfItem } from '../inspections/inspection.reads.js';
import { fitOutRelationsOfItem } from '../inspections/fitOutStanding.reads.js';
import { hazardRelationsOfItem } from '../hazards/hazard.reads.js';
import { findingRelationsOfItem } from '../findings/finding.reads.js';
import { acquisitionRelationsOfItem } from '../acquisitions/lotLine.reads.js';
import { expenseRelationsOfItem } from '../expenses/expense.reads.js';
import { provenanceRelationsOfItem } from '../provenance/provenance.reads.js';
import { treatmentRelationsOfItem } from '../treatments/treatment.reads.js';
import { one } from '../../api/kit/relations.js';
import { historyRelationsOfItem } from '../history/change.reads.js';
import { housingRelationsOfItem } from '../housing/housing.reads.js';
import { moveRelationsOfItem } from '../places/move.reads.js';
import { serviceRelationsOfItem } from '../services/service.reads.js';
import { standingRelationsOfItem } from '../standing/standingRelations.js';
import { outOfHandRelationsOfItem } from '../outOfHand/outOfHand.reads.js';
import { objectIdRelationsOfItem } from '../objectId/objectId.reads.js';
import { missingPartRelationsOfItem } from '../replacements/missingParts.reads.js';
import { orderRelationsOfItem } from '../orders/partOrder.reads.js';
import { billRelationsOfItem } from '../replacements/billOfMaterials.reads.js';
import { fittedSpareRelationsOfItem } from '../stock/fittedSpares.reads.js';
import { replacementRelationsOfItem } from '../replacements/replacementList.reads.js';
import { worthRelationsOfItem } from '../worth/worth.reads.js';
import type { Relation } from '../../api/kit/typeReads.js';
import { projectRelationsOfItem } from '../projects/project.reads.js';
import { sessionRelationsOfItem } from '../work/workSession.reads.js';

/** Every relation of rigs and accessories; each feature adds what it knows of an item. */
export const itemRelations: Record<string, Relation> = {
  ...attachmentRelationsOfItem,
  ...bringUpRelationsOfItem,
  ...missingPartRelationsOfItem,
  ...worthRelationsOfItem,
  ...replacementRelationsOfItem,
  ...billRelationsOfItem,
  ...orderRelationsOfItem,
  ...fittedSpareRelationsOfItem,
  ...inspectionRelationsOfItem,
  ...fitOutRelationsOfItem,
  ...findingRelationsOfItem,
  ...treatmentRelationsOfItem,
  ...hazardRelationsOfItem,
  ...fittingRelationsOfItem,
  ...readingRelationsOfItem,
  ...trendRelationsOfItem,
  ...originalityRelationsOfItem,
  ...finalCheckRelationsOfItem,
  ...derivationRelationsOfItem,
  ...useRelationsOfItem,
  ...projectRelationsOfItem,
  ...sessionRelationsOfItem,
  ...acquisitionRelationsOfItem,
  ...expenseRelationsOfItem,
  ...provenanceRelationsOfItem,
  ...objectIdRelationsOfItem,
  ...outOfHandRelationsOfItem,
  ...standingRelationsOfItem,
  ...historyRelationsOfItem,
  ...housingRelationsOfItem,
  ...moveRelationsOfItem,
  ...serviceRelationsOfItem,
  model: one('Model', 'modelId'),
  place: one('Place', 'placeId'),
};
