import { BooksResolver } from './books/books.resolver.js';
import { InsuranceResolver, InsuredItemResolver } from './insurance/insurance.resolver.js';
import { CeilingsResolver } from './ceilings/ceilings.resolver.js';
import { CostsOfProjectResolver, PlannedCostResolver } from './costToCome/costToCome.resolver.js';
import { GoingOnOfProjectResolver, InquiryResolver } from './goingOn/goingOn.resolver.js';
import { PriceIndexResolver } from './priceIndex/priceIndex.resolver.js';
import {
  ItemOutlookResolver,
  ValueNoteResolver,
  ValuesOfModelResolver,
  WorthOfItemResolver,
  WorthTermsResolver,
} from './worth/worth.resolver.js';
import { RatesResolver } from './rates/rates.resolver.js';
import { DossierOfItemResolver, TheftReportResolver } from './dossier/dossier.resolver.js';
import {
  AttachmentResolver,
  AttachmentsOfRecordResolver,
  CoverPictureResolver,
} from './attachments/attachment.resolver.js';
import { StoredFileResolver } from './attachments/storedFile.resolver.js';
import { DoneOfRuleResolver, MaintenanceDoneResolver } from './use/maintenanceDone.resolver.js';
import { MaintenanceResolver, RotationResolver } from './use/maintenance.resolver.js';
import { OnAirUseResolver, UseOfComponentResolver, UseOfItemResolver } from './use/use.resolver.js';
import { OnAirResolver, OnAirRigResolver } from './shack/onAir.resolver.js';
import { NextStepResolver, NextStepsResolver } from './shack/nextSteps.resolver.js';
import {
  LeftOutRigResolver,
  RoleFilledResolver,
  ServedRigResolver,
  ShackResolver,
} from './shack/shack.resolver.js';
import { AwayResolver, PaceResolver } from './pace/pace.resolver.js';
import {
  BaselineResolver,
  BaselineTaskResolver,
  BaselinesOfProjectResolver,
} from './baselines/baseline.resolver.js';
import {
  CalibrationOfCollectionResolver,
  CalibrationResolver,
  EstimateEvidenceResolver,
} from './calibration/calibration.resolver.js';
import {
  EarnedValueOfProjectResolver,
  EarnedValueResolver,
  PlanBridgeResolver,
  PlanChangeResolver,
} from './earnedValue/earnedValue.resolver.js';
import {
  ForecastOfProjectResolver,
  ProjectForecastResolver,
  ProjectPlanResolver,
  TaskForecastResolver,
  TornadoBarResolver,
} from './forecast/projectForecast.resolver.js';
import { RemainingOfTaskResolver } from './forecast/taskRemaining.resolver.js';
import {
  QueuedProjectResolver,
  QueueEffectResolver,
  WorkQueueResolver,
} from './forecast/workQueue.resolver.js';
import { ItemReadingsResolver, ReadingResolver } from './readings/reading.resolver.js';
import { ItemDerivationResolver } from './readiness/derivation.resolver.js';
import { FinalCheckResolver, ItemFinalChecksResolver } from './readiness/finalCheck.resolver.js';
import { FittingResolver, ItemComponentsResolver } from './parts/fitting.resolver.js';
import { ComponentResolver, ComponentStandingResolver } from './parts/component.resolver.js';
import { InspectionResolver } from './inspections/inspection.resolver.js';
import {
  FitOutStandingResolver,
  ItemFitOutResolver,
} from './inspections/fitOutStanding.resolver.js';
import { FitOutCheckResolver } from './inspections/fitOutCheck.resolver.js';
import { HazardResolver } from './hazards/hazard.resolver.js';
import { ItemFindingsResolver } from './findings/itemFindings.resolver.js';
import { FeedResolver } from './feed/feed.resolver.js';
import { StockOfPartTypeResolver } from './stock/stockTotal.resolver.js';
import {
  FittedSparesOfItemResolver,
  FittedSparesOfProjectResolver,
} from './stock/fittedSpares.resolver.js';
import {
  BillLineResolver,
  BillOfItemResolver,
  BillOfMaterialsResolver,
} from './replacements/billOfMaterials.resolver.js';
import { FindingResolver } from './findings/finding.resolver.js';
import { AgentMeetingResolver, TreatmentAgentResolver } from './treatments/agent.resolver.js';
import { TreatmentResolver } from './treatments/treatment.resolver.js';
import {
  TreatmentsOfComponentResolver,
  TreatmentsOfFindingResolver,
  TreatmentsOfItemResolver,
  TreatmentsOfTaskResolver,
} from './treatments/treatmentsOf.resolver.js';
import { ImportResolver } from './import/import.resolver.js';
import { AcquisitionResolver, ExtraCostResolver } from './acquisitions/acquisition.resolver.js';
import { AcquisitionOfItemResolver, LotLineResolver } from './acquisitions/lotLine.resolver.js';
import { ExpenseResolver, ExpensesOfItemResolver } from './expenses/expense.resolver.js';
import { ClaimResolver, ClaimsOfItemResolver } from './provenance/claim.resolver.js';
import {
  ContradictionResolver,
  ProvenanceOfItemResolver,
  ProvenanceResolver,
} from './provenance/provenance.resolver.js';
import { ObjectIdOfItemResolver } from './objectId/objectId.resolver.js';
import {
  ChainOfProvenanceResolver,
  CustodyResolver,
  HoldingOverlapResolver,
  HoldingResolver,
  ProvenanceChainResolver,
} from './provenance/chain.resolver.js';
import { DatedSerialResolver } from './provenance/datedSerial.resolver.js';
import { EventPartyResolver, PartiesOfEventResolver } from './provenance/eventParty.resolver.js';
import {
  EvidenceOfClaimResolver,
  EvidenceOfEventResolver,
} from './provenance/evidence.resolver.js';
import { WrittenDatesResolver } from './provenance/writtenDates.resolver.js';
import {
  DisposalCostResolver,
  DisposalLineResolver,
  DisposalResolver,
  ItemLossResolver,
  LoanResolver,
  OutOfHandOfItemResolver,
  WhereaboutsResolver,
} from './outOfHand/outOfHand.resolver.js';
import { OutOfHandChangesResolver } from './outOfHand/outOfHandChanges.resolver.js';
import { ProvOfProvenanceResolver } from './provExport/prov.resolver.js';
import { ProvenanceEventResolver } from './provenance/provenanceEvent.resolver.js';
import { NodeResolver } from './nodes/node.resolver.js';
import { ItemResolver } from './items/item.resolver.js';
import { ItemMutationsResolver } from './items/itemMutations.resolver.js';
import { ItemQueriesResolver } from './items/itemQueries.resolver.js';
import {
  ChangeResolver,
  ItemHistoryResolver,
  RedactionResolver,
} from './history/history.resolver.js';
import { CollectionResolver } from './collection/collection.resolver.js';
import { FitOutPositionResolver } from './models/fitOutPosition.resolver.js';
import { HousingResolver } from './housing/housing.resolver.js';
import { LimitResolver } from './readings/limit.resolver.js';
import { ModelResolver } from './models/model.resolver.js';
import { ModelMutationsResolver } from './models/modelMutations.resolver.js';
import { MoveResolver } from './places/move.resolver.js';
import { PartTypeResolver } from './parts/partType.resolver.js';
import { PartyResolver } from './parties/party.resolver.js';
import {
  AccessoryServicesResolver,
  RigServicesResolver,
} from './services/itemServices.resolver.js';
import { ServiceResolver } from './services/service.resolver.js';
import {
  InstrumentComparisonResolver,
  TrendResolver,
  TrendsOfComponentResolver,
  TrendsOfItemResolver,
} from './trends/trend.resolver.js';
import {
  MatchedSetResolver,
  MatchedSetsOfComponentResolver,
} from './matchedSets/matchedSet.resolver.js';
import { SweepResolver, SweepRowResolver } from './sweeps/sweep.resolver.js';
import { FindResolver } from './wants/find.resolver.js';
import { WantedListResolver, WantResolver } from './wants/want.resolver.js';
import {
  NextFittingResolver,
  OriginalityOfItemResolver,
  PositionHistoryResolver,
} from './originality/originality.resolver.js';
import { StockLotResolver } from './stock/stockLot.resolver.js';
import {
  DrawsOfFittingResolver,
  ReservationsOfTaskResolver,
  StockDrawResolver,
  StockReservationResolver,
} from './stock/stockMoves.resolver.js';
import { StockMutationsResolver } from './stock/stockMutations.resolver.js';
import { PlaceResolver } from './places/place.resolver.js';
import {
  CollectionStandingResolver,
  ItemStandingResolver,
  ProjectStandingResolver,
} from './standing/standing.resolver.js';
import { ProjectResolver, ProjectsOfItemResolver } from './projects/project.resolver.js';
import { TaskResolver, TasksOfProjectResolver } from './tasks/task.resolver.js';
import { TaskChangesResolver } from './tasks/taskChanges.resolver.js';
import { TaskProgressResolver } from './tasks/taskProgress.resolver.js';
import { WorkChangesResolver } from './work/workChanges.resolver.js';
import {
  SessionOverlapResolver,
  SessionsOfItemResolver,
  SessionsOfTaskResolver,
  WorkSessionResolver,
} from './work/workSession.resolver.js';
import { BandsResolver } from './reference/bands.resolver.js';
import { TimerSubscriptionResolver } from './work/timer.subscription.js';
import { ValueCodesResolver } from './reference/valueCodes.resolver.js';
import { TubeReferenceResolver } from './reference/tubeReference.resolver.js';
import {
  PriceNoteResolver,
  PricesOfModelResolver,
  PricesOfPartTypeResolver,
} from './prices/price.resolver.js';
import {
  SubstituteResolver,
  SubstitutesOfPartTypeResolver,
  SubstitutionResolver,
} from './substitution/substitution.resolver.js';
import {
  DonorResolver,
  MissingPartResolver,
  ReplacementsOfItemResolver,
} from './replacements/replacements.resolver.js';
import { HeldBackTaskResolver, NextTaskResolver } from './nextTasks/nextTask.resolver.js';
import { ReportResolver } from './reports/report.resolver.js';
import { PartNeededResolver, PartsOfTaskResolver } from './tasks/partsNeeded.resolver.js';
import { EvidenceOfTaskResolver, TaskEvidenceResolver } from './tasks/taskEvidence.resolver.js';
import { TaskTemplateResolver } from './templates/taskTemplate.resolver.js';
import { SessionStoryResolver } from './work/sessionStory.resolver.js';

import { BringUpResolver, BringUpsOfItemResolver } from './bringUp/bringUp.resolver.js';
import { BringUpStepResolver } from './bringUp/bringUpStep.resolver.js';
import { SessionHazardResolver, HazardsOfSessionResolver } from './work/sessionHazard.resolver.js';
import { CapacitorCalculatorsResolver } from './calculators/capacitorCalculators.resolver.js';
import { MainsCalculatorsResolver } from './calculators/mainsCalculators.resolver.js';
import { RadioCalculatorsResolver } from './calculators/radioCalculators.resolver.js';

/** Everything that can be asked and done. */
export const resolvers = [
  OnAirUseResolver,
  UseOfItemResolver,
  UseOfComponentResolver,
  MaintenanceResolver,
  DoneOfRuleResolver,
  MaintenanceDoneResolver,
  RotationResolver,
  OnAirResolver,
  OnAirRigResolver,
  BringUpResolver,
  BringUpsOfItemResolver,
  BringUpStepResolver,
  SessionHazardResolver,
  HazardsOfSessionResolver,
  CapacitorCalculatorsResolver,
  MainsCalculatorsResolver,
  RadioCalculatorsResolver,
  ShackResolver,
  ServedRigResolver,
  RoleFilledResolver,
  LeftOutRigResolver,
  NextStepsResolver,
  NextStepResolver,
  DonorResolver,
  MissingPartResolver,
  ReplacementsOfItemResolver,
  SubstituteResolver,
  SubstitutesOfPartTypeResolver,
  SubstitutionResolver,
  PriceNoteResolver,
  PricesOfModelResolver,
  PricesOfPartTypeResolver,
  TubeReferenceResolver,
  ValueCodesResolver,
  BandsResolver,
  AttachmentsOfRecordResolver,
  CoverPictureResolver,
  AttachmentResolver,
  StoredFileResolver,
  InspectionResolver,
  FitOutCheckResolver,
  FitOutStandingResolver,
  ItemFitOutResolver,
  FindingResolver,
  FittedSparesOfItemResolver,
  FittedSparesOfProjectResolver,
  BillOfItemResolver,
  BillOfMaterialsResolver,
  BillLineResolver,
  StockOfPartTypeResolver,
  TreatmentResolver,
  TreatmentAgentResolver,
  AgentMeetingResolver,
  TreatmentsOfItemResolver,
  TreatmentsOfComponentResolver,
  TreatmentsOfTaskResolver,
  TreatmentsOfFindingResolver,
  ItemFindingsResolver,
  HazardResolver,
  ComponentResolver,
  ComponentStandingResolver,
  FittingResolver,
  ItemComponentsResolver,
  ReadingResolver,
  ItemReadingsResolver,
  FinalCheckResolver,
  ItemFinalChecksResolver,
  ItemDerivationResolver,
  ProjectResolver,
  ProjectsOfItemResolver,
  TaskResolver,
  TasksOfProjectResolver,
  TaskChangesResolver,
  TaskProgressResolver,
  WorkChangesResolver,
  WorkSessionResolver,
  TimerSubscriptionResolver,
  FeedResolver,
  SessionStoryResolver,
  EvidenceOfTaskResolver,
  TaskEvidenceResolver,
  PartsOfTaskResolver,
  PartNeededResolver,
  TaskTemplateResolver,
  NextTaskResolver,
  HeldBackTaskResolver,
  ReportResolver,
  SessionOverlapResolver,
  SessionsOfItemResolver,
  SessionsOfTaskResolver,
  AcquisitionResolver,
  ExtraCostResolver,
  AcquisitionOfItemResolver,
  LotLineResolver,
  ExpenseResolver,
  ExpensesOfItemResolver,
  ClaimResolver,
  ClaimsOfItemResolver,
  ContradictionResolver,
  ProvenanceOfItemResolver,
  ProvenanceResolver,
  ProvenanceEventResolver,
  ProvOfProvenanceResolver,
  OutOfHandOfItemResolver,
  WhereaboutsResolver,
  LoanResolver,
  ItemLossResolver,
  DisposalResolver,
  DisposalLineResolver,
  DisposalCostResolver,
  OutOfHandChangesResolver,
  ChainOfProvenanceResolver,
  ProvenanceChainResolver,
  CustodyResolver,
  HoldingOverlapResolver,
  HoldingResolver,
  EvidenceOfEventResolver,
  EvidenceOfClaimResolver,
  EventPartyResolver,
  PartiesOfEventResolver,
  DatedSerialResolver,
  WrittenDatesResolver,
  ObjectIdOfItemResolver,
  ImportResolver,
  CollectionStandingResolver,
  ItemStandingResolver,
  ProjectStandingResolver,
  NodeResolver,
  ItemResolver,
  ItemMutationsResolver,
  ItemQueriesResolver,
  ChangeResolver,
  ItemHistoryResolver,
  RedactionResolver,
  CollectionResolver,
  FitOutPositionResolver,
  HousingResolver,
  LimitResolver,
  ModelResolver,
  ModelMutationsResolver,
  MoveResolver,
  PartTypeResolver,
  PartyResolver,
  AccessoryServicesResolver,
  RigServicesResolver,
  ServiceResolver,
  PlaceResolver,
  StockLotResolver,
  OriginalityOfItemResolver,
  PositionHistoryResolver,
  NextFittingResolver,
  WantResolver,
  WantedListResolver,
  FindResolver,
  TrendResolver,
  TrendsOfComponentResolver,
  TrendsOfItemResolver,
  InstrumentComparisonResolver,
  MatchedSetResolver,
  MatchedSetsOfComponentResolver,
  SweepResolver,
  SweepRowResolver,
  StockReservationResolver,
  StockDrawResolver,
  ReservationsOfTaskResolver,
  DrawsOfFittingResolver,
  StockMutationsResolver,
  AwayResolver,
  DossierOfItemResolver,
  TheftReportResolver,
  PaceResolver,
  BaselineResolver,
  BaselineTaskResolver,
  BaselinesOfProjectResolver,
  CalibrationOfCollectionResolver,
  CalibrationResolver,
  EstimateEvidenceResolver,
  EarnedValueOfProjectResolver,
  EarnedValueResolver,
  PlanBridgeResolver,
  PlanChangeResolver,
  ForecastOfProjectResolver,
  ProjectForecastResolver,
  ProjectPlanResolver,
  TaskForecastResolver,
  TornadoBarResolver,
  RemainingOfTaskResolver,
  QueuedProjectResolver,
  QueueEffectResolver,
  WorkQueueResolver,
  RatesResolver,
  PriceIndexResolver,
  ValueNoteResolver,
  ItemOutlookResolver,
  WorthTermsResolver,
  WorthOfItemResolver,
  ValuesOfModelResolver,
  PlannedCostResolver,
  CostsOfProjectResolver,
  InquiryResolver,
  GoingOnOfProjectResolver,
  CeilingsResolver,
  BooksResolver,
  InsuranceResolver,
  InsuredItemResolver,
] as const;
