import { AcquisitionEntity } from './acquisitions/acquisition.entity.js';
import { ExtraCostEntity } from './acquisitions/extraCost.entity.js';
import { LotLineEntity } from './acquisitions/lotLine.entity.js';
import { AttachmentEntity } from './attachments/attachment.entity.js';
import { StoredFileEntity } from './attachments/storedFile.entity.js';
import { CollectionEntity } from './collection/collection.entity.js';
import { ExpenseEntity } from './expenses/expense.entity.js';
import { ChangeEventEntity } from './feed/changeEvent.entity.js';
import { ComputedVersionEntity } from './computedVersion.entity.js';
import { BringUpEntity } from './bringUp/bringUp.entity.js';
import { BringUpStepEntity } from './bringUp/bringUpStep.entity.js';
import { FindingEntity } from './findings/finding.entity.js';
import { HazardEntity } from './hazards/hazard.entity.js';
import { ChangeEntity } from './history/change.entity.js';
import { SignedHeadEntity } from './history/signedHead.entity.js';
import { FitOutCheckEntity } from './inspections/fitOutCheck.entity.js';
import { InspectionEntity } from './inspections/inspection.entity.js';
import { ItemEntity } from './items/item.entity.js';
import { ItemIdentityEntity } from './objectId/itemIdentity.entity.js';
import { ServiceEntity } from './items/service.entity.js';
import { FitOutPositionEntity } from './models/fitOutPosition.entity.js';
import { ModelEntity } from './models/model.entity.js';
import { ModelCapabilityEntity } from './models/modelCapability.entity.js';
import { ModelRoleEntity } from './models/modelRole.entity.js';
import {
  DisposalCostEntity,
  DisposalEntity,
  DisposalLineEntity,
} from './outOfHand/disposal.entity.js';
import { ItemLossEntity } from './outOfHand/itemLoss.entity.js';
import { LoanEntity } from './outOfHand/loan.entity.js';
import { PartOrderEntity } from './orders/partOrder.entity.js';
import { PartyEntity } from './parties/party.entity.js';
import { ComponentEntity } from './parts/component.entity.js';
import { FittingEntity } from './parts/fitting.entity.js';
import { PartTypeEntity } from './parts/partType.entity.js';
import { MoveEntity } from './places/move.entity.js';
import { PlaceEntity } from './places/place.entity.js';
import { ProjectEntity } from './projects/project.entity.js';
import { BaselineEntity } from './baselines/baseline.entity.js';
import { BaselineTaskEntity } from './baselines/baselineTask.entity.js';
import { ProjectPlanEntity } from './forecast/projectPlan.entity.js';
import { AwayEntity } from './pace/away.entity.js';
import { ClaimEntity } from './provenance/claim.entity.js';
import { DatedSerialEntity } from './provenance/datedSerial.entity.js';
import { EventPartyEntity } from './provenance/eventParty.entity.js';
import { EvidenceEntity } from './provenance/evidence.entity.js';
import { ProvenanceEventEntity } from './provenance/provenanceEvent.entity.js';
import { MaintenanceDoneEntity } from './use/maintenanceDone.entity.js';
import { MaintenanceRuleEntity } from './use/maintenanceRule.entity.js';
import { OnAirUseEntity } from './use/onAirUse.entity.js';
import { FinalCheckEntity } from './readiness/finalCheck.entity.js';
import { LimitEntity } from './readings/limit.entity.js';
import { ReadingEntity } from './readings/reading.entity.js';
import { ReadTokenEntity } from './readTokens/readToken.entity.js';
import { ReadTokenProofEntity } from './readTokens/readTokenProof.entity.js';
import { ItemCostEntity } from './standing/itemCost.entity.js';
import { ItemHoursEntity } from './standing/itemHours.entity.js';
import { ItemStandingEntity } from './standing/itemStanding.entity.js';
import { StockDrawEntity } from './stock/stockDraw.entity.js';
import { StockLotEntity } from './stock/stockLot.entity.js';
import { StockReservationEntity } from './stock/stockReservation.entity.js';
import { InstrumentComparisonEntity } from './trends/instrumentComparison.entity.js';
import { MatchedSetEntity } from './matchedSets/matchedSet.entity.js';
import { MatchedSetMemberEntity } from './matchedSets/matchedSetMember.entity.js';
import { SweepEntity } from './sweeps/sweep.entity.js';
import { SweepTemplateEntity } from './sweeps/sweepTemplate.entity.js';
import { FindEntity } from './wants/find.entity.js';
import { WantEntity } from './wants/want.entity.js';
import { WantSubstituteEntity } from './wants/wantSubstitute.entity.js';
import { TaskEntity } from './tasks/task.entity.js';
import { TaskPartEntity } from './tasks/taskPart.entity.js';
import { TaskPredecessorEntity } from './tasks/taskPredecessor.entity.js';
import { TaskStepEntity } from './tasks/taskStep.entity.js';
import { TaskTemplateEntity } from './templates/taskTemplate.entity.js';
import { TreatmentEntity } from './treatments/treatment.entity.js';
import { TreatmentAgentEntity } from './treatments/treatmentAgent.entity.js';
import { WorkBreakEntity } from './work/workBreak.entity.js';
import { SessionHazardEntity } from './work/sessionHazard.entity.js';
import { WorkSessionEntity } from './work/workSession.entity.js';
import { PriceNoteEntity } from './prices/priceNote.entity.js';
import { SubstitutionEntity } from './substitution/substitution.entity.js';
import { SpendingCeilingEntity } from './ceilings/spendingCeiling.entity.js';
import { PlannedCostEntity } from './costToCome/plannedCost.entity.js';
import { InquiryEntity } from './goingOn/inquiry.entity.js';
import { PriceIndexEntity, PriceIndexPointEntity } from './priceIndex/priceIndex.entity.js';
import { ExchangeRateEntity } from './rates/exchangeRate.entity.js';
import { ItemOutlookEntity } from './worth/itemOutlook.entity.js';
import { ValueNoteEntity } from './worth/valueNote.entity.js';
import { WorthTermsEntity } from './worth/worthTerms.entity.js';

/**
 * Every table that holds what a person recorded, in an order in which each refers only to those
 * before it (or to itself): the order in which an archive is written and loaded.
 */
export const recordEntities = [
  PartyEntity,
  CollectionEntity,
  PlaceEntity,
  PartTypeEntity,
  ModelEntity,
  ModelCapabilityEntity,
  ModelRoleEntity,
  FitOutPositionEntity,
  LimitEntity,
  SubstitutionEntity,
  PriceNoteEntity,
  ItemEntity,
  ItemIdentityEntity,
  ServiceEntity,
  MoveEntity,
  AcquisitionEntity,
  ExtraCostEntity,
  LotLineEntity,
  ClaimEntity,
  ProvenanceEventEntity,
  EvidenceEntity,
  LoanEntity,
  ItemLossEntity,
  DisposalEntity,
  DisposalLineEntity,
  DisposalCostEntity,
  EventPartyEntity,
  DatedSerialEntity,
  InspectionEntity,
  FitOutCheckEntity,
  FindingEntity,
  HazardEntity,
  ComponentEntity,
  FittingEntity,
  ReadingEntity,
  InstrumentComparisonEntity,
  MatchedSetEntity,
  MatchedSetMemberEntity,
  SweepTemplateEntity,
  SweepEntity,
  FinalCheckEntity,
  BringUpEntity,
  BringUpStepEntity,
  OnAirUseEntity,
  MaintenanceRuleEntity,
  MaintenanceDoneEntity,
  StoredFileEntity,
  AttachmentEntity,
  ProjectEntity,
  TaskEntity,
  TaskStepEntity,
  TaskPredecessorEntity,
  TreatmentEntity,
  TreatmentAgentEntity,
  StockLotEntity,
  StockReservationEntity,
  StockDrawEntity,
  ProjectPlanEntity,
  BaselineEntity,
  BaselineTaskEntity,
  AwayEntity,
  WantEntity,
  WantSubstituteEntity,
  PartOrderEntity,
  FindEntity,
  TaskPartEntity,
  TaskTemplateEntity,
  WorkSessionEntity,
  WorkBreakEntity,
  SessionHazardEntity,
  ExpenseEntity,
  ExchangeRateEntity,
  PriceIndexEntity,
  PriceIndexPointEntity,
  ValueNoteEntity,
  ItemOutlookEntity,
  WorthTermsEntity,
  PlannedCostEntity,
  InquiryEntity,
  SpendingCeilingEntity,
  SignedHeadEntity,
  ChangeEntity,
] as const;

/**
 * Tables that are computed from the records and can be rebuilt from them at any time, and the feed
 * of what was changed lately. None of them is part of an archive.
 */
export const computedEntities = [
  ItemStandingEntity,
  ItemHoursEntity,
  ItemCostEntity,
  ChangeEventEntity,
  ComputedVersionEntity,
] as const;

/**
 * What opens this collection to other programs. It belongs to the place where the collection is
 * served, not to the collection: no archive and no folder of CSV files holds it.
 */
export const accessEntities = [ReadTokenEntity, ReadTokenProofEntity] as const;
