import { maintenanceDoneReads } from './use/maintenanceDone.reads.js';
import { maintenanceRuleReads, onAirUseReads, rotationReads } from './use/use.reads.js';
import { shackReads } from './shack/shack.reads.js';
import { awayReads, paceReads } from './pace/pace.reads.js';
import { baselineReads, baselineTaskReads } from './baselines/baseline.reads.js';
import { calibrationReads } from './calibration/calibration.reads.js';
import { earnedValueReads } from './earnedValue/earnedValue.reads.js';
import { forecastReads } from './forecast/projectForecast.reads.js';
import { projectPlanReads } from './forecast/projectPlan.reads.js';
import { workQueueReads } from './forecast/workQueue.reads.js';
import { readTokenReads } from './readTokens/readToken.reads.js';
import { readingReads } from './readings/reading.reads.js';
import { finalCheckReads } from './readiness/finalCheck.reads.js';
import { fittingReads } from './parts/fitting.reads.js';
import { componentReads, componentStandingReads } from './parts/component.reads.js';
import { fitOutCheckReads, inspectionReads } from './inspections/inspection.reads.js';
import { fitOutStandingReads } from './inspections/fitOutStanding.reads.js';
import { hazardReads } from './hazards/hazard.reads.js';
import { findingReads } from './findings/finding.reads.js';
import {
  attachmentReads,
  attachmentsOfRecord,
  storedFileReads,
} from './attachments/attachment.reads.js';
import { inquiryReads } from './goingOn/goingOn.reads.js';
import { plannedCostReads } from './costToCome/costToCome.reads.js';
import { spendingCeilingReads } from './ceilings/ceiling.reads.js';
import { priceIndexReads } from './priceIndex/priceIndex.reads.js';
import { itemOutlookReads, valueNoteReads, worthTermsReads } from './worth/worth.reads.js';
import { insuranceReads } from './insurance/insurance.reads.js';
import { exchangeRateReads } from './rates/exchangeRate.reads.js';
import type { Reads, TypeReads } from '../api/kit/typeReads.js';
import { acquisitionReads, extraCostReads } from './acquisitions/acquisition.reads.js';
import { lotLineReads } from './acquisitions/lotLine.reads.js';
import { expenseReads } from './expenses/expense.reads.js';
import { claimReads } from './provenance/claim.reads.js';
import { contradictionReads, provenanceReads } from './provenance/provenance.reads.js';
import { custodyReads } from './provenance/custody.reads.js';
import {
  holdingOverlapReads,
  holdingReads,
  provenanceChainReads,
} from './provenance/chain.reads.js';
import { datedSerialReads } from './provenance/datedSerial.reads.js';
import { eventPartyReads } from './provenance/eventParty.reads.js';
import { evidenceReads } from './provenance/evidence.reads.js';
import {
  disposalLineReads,
  disposalReads,
  itemLossReads,
  loanReads,
} from './outOfHand/outOfHand.reads.js';
import { whereaboutsReads } from './outOfHand/whereabouts.reads.js';
import { provenanceEventReads } from './provenance/provenanceEvent.reads.js';
import { itemReads } from './items/item.reads.js';
import { placeReads } from './places/place.reads.js';
import { moveReads } from './places/move.reads.js';
import { changeReads } from './history/change.reads.js';
import { collectionReads } from './collection/collection.reads.js';
import { fitOutPositionReads, modelReads } from './models/model.reads.js';
import { limitReads } from './readings/limit.reads.js';
import { partTypeReads } from './parts/partType.reads.js';
import { partyReads } from './parties/party.reads.js';
import { instrumentComparisonReads } from './trends/instrumentComparison.reads.js';
import { trendReads } from './trends/trend.reads.js';
import { matchedSetReads } from './matchedSets/matchedSet.reads.js';
import { bringUpReads, bringUpStepReads } from './bringUp/bringUp.reads.js';
import { sessionHazardReads } from './work/sessionHazard.reads.js';
import { partOrderReads } from './orders/partOrder.reads.js';
import { sweepReads, sweepRowReads } from './sweeps/sweep.reads.js';
import { sweepTemplateReads } from './sweeps/sweepTemplate.reads.js';
import { findReads, wantedListReads, wantReads } from './wants/want.reads.js';
import { positionHistoryReads } from './originality/originality.reads.js';
import { stockLotReads } from './stock/stockLot.reads.js';
import { stockReservationReads } from './stock/stockReservation.reads.js';
import { stockDrawReads } from './stock/stockDraw.reads.js';
import { serviceReads } from './services/service.reads.js';
import { projectReads } from './projects/project.reads.js';
import { heldBackTaskReads, nextTaskReads } from './nextTasks/nextTask.reads.js';
import { partNeededReads } from './tasks/partsNeeded.reads.js';
import { taskEvidenceReads } from './tasks/taskEvidence.reads.js';
import { taskTemplateReads } from './templates/taskTemplate.reads.js';
import { taskReads, taskStepReads } from './tasks/task.reads.js';
import { sessionOverlapReads } from './work/sessionOverlaps.reads.js';
import { workBreakReads, workSessionReads } from './work/workSession.reads.js';
import { priceNoteReads } from './prices/price.reads.js';
import { substituteReads, substitutionReads } from './substitution/substitutes.reads.js';
import {
  agentMeetingReads,
  treatmentAgentReads,
  treatmentReads,
} from './treatments/treatment.reads.js';
import { donorReads } from './replacements/donors.reads.js';
import { billLineReads, billReads } from './replacements/billOfMaterials.reads.js';
import { missingPartReads } from './replacements/missingParts.reads.js';

/** How each type of the schema is read. */
const everyType: readonly TypeReads[] = [
  attachmentReads,
  storedFileReads,
  ...shackReads,
  missingPartReads,
  billReads,
  billLineReads,
  donorReads,
  priceNoteReads,
  substitutionReads,
  substituteReads,
  onAirUseReads,
  maintenanceRuleReads,
  maintenanceDoneReads,
  rotationReads,
  inspectionReads,
  fitOutCheckReads,
  fitOutStandingReads,
  findingReads,
  treatmentReads,
  treatmentAgentReads,
  agentMeetingReads,
  hazardReads,
  componentReads,
  componentStandingReads,
  fittingReads,
  readingReads,
  finalCheckReads,
  projectReads,
  taskReads,
  taskStepReads,
  taskEvidenceReads,
  partNeededReads,
  taskTemplateReads,
  nextTaskReads,
  heldBackTaskReads,
  workSessionReads,
  workBreakReads,
  sessionOverlapReads,

  awayReads,
  paceReads,
  baselineReads,
  baselineTaskReads,
  ...calibrationReads,
  ...earnedValueReads,
  ...forecastReads,
  projectPlanReads,
  ...workQueueReads,
  ...itemReads,
  acquisitionReads,
  extraCostReads,
  lotLineReads,
  expenseReads,
  claimReads,
  provenanceReads,
  contradictionReads,
  provenanceEventReads,
  loanReads,
  itemLossReads,
  disposalReads,
  disposalLineReads,
  whereaboutsReads,
  evidenceReads,
  eventPartyReads,
  datedSerialReads,
  provenanceChainReads,
  holdingReads,
  holdingOverlapReads,
  custodyReads,
  placeReads,
  moveReads,
  changeReads,
  collectionReads,
  fitOutPositionReads,
  modelReads,
  limitReads,
  partTypeReads,
  partyReads,
  serviceReads,
  stockLotReads,
  positionHistoryReads,
  wantReads,
  wantedListReads,
  findReads,
  instrumentComparisonReads,
  trendReads,
  matchedSetReads,
  bringUpReads,
  bringUpStepReads,
  sessionHazardReads,
  sweepReads,
  sweepRowReads,
  sweepTemplateReads,
  partOrderReads,
  stockReservationReads,
  stockDrawReads,
  exchangeRateReads,
  ...insuranceReads,
  priceIndexReads,
  valueNoteReads,
  itemOutlookReads,
  worthTermsReads,
  plannedCostReads,
  inquiryReads,
  spendingCeilingReads,
  readTokenReads,
];

/** Photographs and papers can be shown with any record. */
export const reads: Reads = new Map(
  everyType.map((type) => [
    type.typeName,
    { ...type, relations: { attachments: attachmentsOfRecord, ...type.relations } },
  ]),
);
