import { PeoplePlacesModels1764000000001 } from '../../migrations/1764000000001-people-places-models.js';
import { ItemsAndLots1764000000002 } from '../../migrations/1764000000002-items-and-lots.js';
import { IntakeAndParts1764000000003 } from '../../migrations/1764000000003-intake-and-parts.js';
import { WorkAndMoney1764000000004 } from '../../migrations/1764000000004-work-and-money.js';
import { HistoryAndStanding1764000000005 } from '../../migrations/1764000000005-history-and-standing.js';
import { ComparisonsAndSets1764200000510 } from '../../migrations/1764200000510-comparisons-and-sets.js';
import { PositionWeight1764200000530 } from '../../migrations/1764200000530-position-weight.js';
import { Wants1764200000520 } from '../../migrations/1764200000520-wants.js';
import { Stock1764200000500 } from '../../migrations/1764200000500-stock.js';
import { Search1764000000006 } from '../../migrations/1764000000006-search.js';
import { TextFunctions1764200000100 } from '../../migrations/1764200000100-text-functions.js';
import { ChangeEvents1764200000300 } from '../../migrations/1764200000300-change-events.js';
import { Attachments1764200000700 } from '../../migrations/1764200000700-attachments.js';
import { ObjectIdentity1764200000600 } from '../../migrations/1764200000600-object-identity.js';
import { SubstitutesAndPrices1764200000400 } from '../../migrations/1764200000400-substitutes-and-prices.js';
import { PlansAndForecasts1764200000200 } from '../../migrations/1764200000200-plans-and-forecasts.js';
import { ChainedLog1764200000701 } from '../../migrations/1764200000701-chained-log.js';
import { UseAndMaintenance1764200000800 } from '../../migrations/1764200000800-use-and-maintenance.js';
import { EvidenceAndDatedSerials1764200000601 } from '../../migrations/1764200000601-evidence-and-dated-serials.js';
import { InquiryStruck1764200001300 } from '../../migrations/1764200001300-inquiry-struck.js';
import { LoansIn1764200001100 } from '../../migrations/1764200001100-loans-in.js';
import { OutOfHand1764200000602 } from '../../migrations/1764200000602-out-of-hand.js';
import { TaskEvidence1764200000301 } from '../../migrations/1764200000301-task-evidence.js';
import { TaskTemplates1764200000302 } from '../../migrations/1764200000302-task-templates.js';
import { TaskParts1764200000303 } from '../../migrations/1764200000303-task-parts.js';
import { Worth1764200001000 } from '../../migrations/1764200001000-worth.js';
import { Treatments1764200000540 } from '../../migrations/1764200000540-treatments.js';
import { PhotographEvidence1764200001200 } from '../../migrations/1764200001200-photograph-evidence.js';
import { MaintenanceWithdrawn1764200001201 } from '../../migrations/1764200001201-maintenance-withdrawn.js';
import { BringUp1764200000900 } from '../../migrations/1764200000900-bring-up.js';
import { BringUpCorrections1764200001400 } from '../../migrations/1764200001400-bring-up-corrections.js';
import { ContactLogs1764200001401 } from '../../migrations/1764200001401-contact-logs.js';
import { OwnTubeBase1764200000541 } from '../../migrations/1764200000541-own-tube-base.js';
import { ReadTokens1764200001360 } from '../../migrations/1764200001360-read-tokens.js';
import { SweepTemplates1764200001330 } from '../../migrations/1764200001330-sweep-templates.js';
import { PartOrders1764200001331 } from '../../migrations/1764200001331-part-orders.js';
import { ComputedVersion1764200001332 } from '../../migrations/1764200001332-computed-version.js';

/** Every step of the schema, oldest first. Steps that have landed are never edited. */
export const migrations = [
  PeoplePlacesModels1764000000001,
  ItemsAndLots1764000000002,
  IntakeAndParts1764000000003,
  WorkAndMoney1764000000004,
  HistoryAndStanding1764000000005,
  Search1764000000006,
  TextFunctions1764200000100,
  ChangeEvents1764200000300,
  Attachments1764200000700,
  Stock1764200000500,
  ComparisonsAndSets1764200000510,
  ObjectIdentity1764200000600,
  SubstitutesAndPrices1764200000400,
  PlansAndForecasts1764200000200,
  Wants1764200000520,
  PositionWeight1764200000530,
  ChainedLog1764200000701,
  UseAndMaintenance1764200000800,
  EvidenceAndDatedSerials1764200000601,
  OutOfHand1764200000602,
  TaskEvidence1764200000301,
  TaskTemplates1764200000302,
  TaskParts1764200000303,
  Worth1764200001000,
  InquiryStruck1764200001300,
  LoansIn1764200001100,
  Treatments1764200000540,
  PhotographEvidence1764200001200,
  MaintenanceWithdrawn1764200001201,
  BringUp1764200000900,
  OwnTubeBase1764200000541,
  BringUpCorrections1764200001400,
  ReadTokens1764200001360,
  ContactLogs1764200001401,
  SweepTemplates1764200001330,
  PartOrders1764200001331,
  ComputedVersion1764200001332,
];
