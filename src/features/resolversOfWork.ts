import {
  BaselineResolver,
  BaselineTaskResolver,
  BaselinesOfProjectResolver,
} from './baselines/baseline.resolver.js';
import { BringUpResolver, BringUpsOfItemResolver } from './bringUp/bringUp.resolver.js';
import { BringUpStepResolver } from './bringUp/bringUpStep.resolver.js';
import { CapacitorCalculatorsResolver } from './calculators/capacitorCalculators.resolver.js';
import { MainsCalculatorsResolver } from './calculators/mainsCalculators.resolver.js';
import { RadioCalculatorsResolver } from './calculators/radioCalculators.resolver.js';
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
import { FeedResolver } from './feed/feed.resolver.js';
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
import {
  ChangeResolver,
  ItemHistoryResolver,
  RedactionResolver,
} from './history/history.resolver.js';
import { ContactLogResolver } from './contactLog/contactLog.resolver.js';
import { ImportResolver } from './import/import.resolver.js';
import { NextTaskResolver, HeldBackTaskResolver } from './nextTasks/nextTask.resolver.js';
import { AwayResolver, PaceResolver } from './pace/pace.resolver.js';
import { ProjectResolver, ProjectsOfItemResolver } from './projects/project.resolver.js';
import { ItemDerivationResolver } from './readiness/derivation.resolver.js';
import { FinalCheckResolver, ItemFinalChecksResolver } from './readiness/finalCheck.resolver.js';
import { ReportResolver } from './reports/report.resolver.js';
import { NextStepsResolver, NextStepResolver } from './shack/nextSteps.resolver.js';
import { OnAirResolver, OnAirRigResolver } from './shack/onAir.resolver.js';
import {
  ShackResolver,
  ServedRigResolver,
  RoleFilledResolver,
  LeftOutRigResolver,
} from './shack/shack.resolver.js';
import { PartsOfTaskResolver, PartNeededResolver } from './tasks/partsNeeded.resolver.js';
import { TaskResolver, TasksOfProjectResolver } from './tasks/task.resolver.js';
import { TaskChangesResolver } from './tasks/taskChanges.resolver.js';
import { EvidenceOfTaskResolver, TaskEvidenceResolver } from './tasks/taskEvidence.resolver.js';
import { TaskProgressResolver } from './tasks/taskProgress.resolver.js';
import { TaskTemplateResolver } from './templates/taskTemplate.resolver.js';
import { TreatmentAgentResolver, AgentMeetingResolver } from './treatments/agent.resolver.js';
import { TreatmentResolver } from './treatments/treatment.resolver.js';
import {
  TreatmentsOfItemResolver,
  TreatmentsOfComponentResolver,
  TreatmentsOfTaskResolver,
  TreatmentsOfFindingResolver,
} from './treatments/treatmentsOf.resolver.js';
import { MaintenanceResolver, RotationResolver } from './use/maintenance.resolver.js';
import { DoneOfRuleResolver, MaintenanceDoneResolver } from './use/maintenanceDone.resolver.js';
import { OnAirUseResolver, UseOfItemResolver, UseOfComponentResolver } from './use/use.resolver.js';
import { SessionHazardResolver, HazardsOfSessionResolver } from './work/sessionHazard.resolver.js';
import { SessionStoryResolver } from './work/sessionStory.resolver.js';
import { TimerSubscriptionResolver } from './work/timer.subscription.js';
import { WorkChangesResolver } from './work/workChanges.resolver.js';
import {
  WorkSessionResolver,
  SessionOverlapResolver,
  SessionsOfItemResolver,
  SessionsOfTaskResolver,
} from './work/workSession.resolver.js';

/** What is planned and done: projects, tasks, sessions, bring-up, use on the air. */
export const resolversOfWork = [
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
  TreatmentResolver,
  TreatmentAgentResolver,
  AgentMeetingResolver,
  TreatmentsOfItemResolver,
  TreatmentsOfComponentResolver,
  TreatmentsOfTaskResolver,
  TreatmentsOfFindingResolver,
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
  ImportResolver,
  ContactLogResolver,
  ChangeResolver,
  ItemHistoryResolver,
  RedactionResolver,
  AwayResolver,
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
] as const;
