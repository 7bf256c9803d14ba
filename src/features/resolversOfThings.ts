import { CollectionResolver } from './collection/collection.resolver.js';
import { FindingResolver } from './findings/finding.resolver.js';
import { ItemFindingsResolver } from './findings/itemFindings.resolver.js';
import { HazardResolver } from './hazards/hazard.resolver.js';
import { HousingResolver } from './housing/housing.resolver.js';
import { FitOutCheckResolver } from './inspections/fitOutCheck.resolver.js';
import {
  FitOutStandingResolver,
  ItemFitOutResolver,
} from './inspections/fitOutStanding.resolver.js';
import { InspectionResolver } from './inspections/inspection.resolver.js';
import { ItemResolver } from './items/item.resolver.js';
import { ItemMutationsResolver } from './items/itemMutations.resolver.js';
import { ItemQueriesResolver } from './items/itemQueries.resolver.js';
import {
  MatchedSetResolver,
  MatchedSetsOfComponentResolver,
} from './matchedSets/matchedSet.resolver.js';
import { FitOutPositionResolver } from './models/fitOutPosition.resolver.js';
import { ModelResolver } from './models/model.resolver.js';
import { ModelMutationsResolver } from './models/modelMutations.resolver.js';
import { NodeResolver } from './nodes/node.resolver.js';
import {
  OriginalityOfItemResolver,
  PositionHistoryResolver,
  NextFittingResolver,
} from './originality/originality.resolver.js';
import { PartyResolver } from './parties/party.resolver.js';
import { ComponentResolver, ComponentStandingResolver } from './parts/component.resolver.js';
import { FittingResolver, ItemComponentsResolver } from './parts/fitting.resolver.js';
import { PartTypeResolver } from './parts/partType.resolver.js';
import { MoveResolver } from './places/move.resolver.js';
import { PlaceResolver } from './places/place.resolver.js';
import { LimitResolver } from './readings/limit.resolver.js';
import { ReadingResolver, ItemReadingsResolver } from './readings/reading.resolver.js';
import { BandsResolver } from './reference/bands.resolver.js';
import { TubeReferenceResolver } from './reference/tubeReference.resolver.js';
import { ValueCodesResolver } from './reference/valueCodes.resolver.js';
import {
  BillOfItemResolver,
  BillOfMaterialsResolver,
  BillLineResolver,
} from './replacements/billOfMaterials.resolver.js';
import {
  DonorResolver,
  MissingPartResolver,
  ReplacementsOfItemResolver,
} from './replacements/replacements.resolver.js';
import {
  AccessoryServicesResolver,
  RigServicesResolver,
} from './services/itemServices.resolver.js';
import { ServiceResolver } from './services/service.resolver.js';
import {
  CollectionStandingResolver,
  ItemStandingResolver,
  ProjectStandingResolver,
} from './standing/standing.resolver.js';
import {
  SubstituteResolver,
  SubstitutesOfPartTypeResolver,
  SubstitutionResolver,
} from './substitution/substitution.resolver.js';
import { PartOrderResolver, PartOrdersOfItemResolver } from './orders/partOrder.resolver.js';
import { SweepResolver, SweepRowResolver } from './sweeps/sweep.resolver.js';
import {
  SweepTemplateResolver,
  SweepTemplatesOfModelResolver,
} from './sweeps/sweepTemplate.resolver.js';
import {
  TrendResolver,
  TrendsOfComponentResolver,
  TrendsOfItemResolver,
  InstrumentComparisonResolver,
} from './trends/trend.resolver.js';

/** The things themselves: rigs, accessories, models, parts, readings, findings, places, people. */
export const resolversOfThings = [
  DonorResolver,
  MissingPartResolver,
  ReplacementsOfItemResolver,
  SubstituteResolver,
  SubstitutesOfPartTypeResolver,
  SubstitutionResolver,
  TubeReferenceResolver,
  ValueCodesResolver,
  BandsResolver,
  InspectionResolver,
  FitOutCheckResolver,
  FitOutStandingResolver,
  ItemFitOutResolver,
  FindingResolver,
  BillOfItemResolver,
  BillOfMaterialsResolver,
  BillLineResolver,
  ItemFindingsResolver,
  HazardResolver,
  ComponentResolver,
  ComponentStandingResolver,
  FittingResolver,
  ItemComponentsResolver,
  ReadingResolver,
  ItemReadingsResolver,
  CollectionStandingResolver,
  ItemStandingResolver,
  ProjectStandingResolver,
  NodeResolver,
  ItemResolver,
  ItemMutationsResolver,
  ItemQueriesResolver,
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
  OriginalityOfItemResolver,
  PositionHistoryResolver,
  NextFittingResolver,
  TrendResolver,
  TrendsOfComponentResolver,
  TrendsOfItemResolver,
  InstrumentComparisonResolver,
  MatchedSetResolver,
  MatchedSetsOfComponentResolver,
  SweepResolver,
  SweepRowResolver,
  SweepTemplateResolver,
  SweepTemplatesOfModelResolver,
  PartOrderResolver,
  PartOrdersOfItemResolver,
] as const;
