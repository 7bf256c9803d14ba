import type {
  AccessoryFacts,
  FindingFacts,
  HazardFacts,
  ItemFacts,
  ReadinessFacts,
} from '../../src/domain/readiness/readinessFacts.js';

export const DAY_MS = 86_400_000;

/** An item with nothing against it, save what is stated. */
export function item(itemId: string, more: Partial<ItemFacts> = {}): ItemFacts {
  return {
    itemId,
    name: itemId,
    isRetired: false,
    isInHand: true,
    findings: [],
    hazards: [],
    components: [],
    ...more,
  };
}

export function accessory(itemId: string, more: Partial<AccessoryFacts> = {}): AccessoryFacts {
  return { ...item(itemId), housedInId: null, ...more };
}

export function finding(more: Partial<FindingFacts> = {}): FindingFacts {
  return {
    findingId: 'finding',
    description: 'The mains lead is brittle.',
    isOpen: true,
    isBlocking: true,
    isElectricalHazard: false,
    ...more,
  };
}

export function hazard(more: Partial<HazardFacts> = {}): HazardFacts {
  return {
    hazardId: 'hazard',
    description: 'Charge stored in the filter capacitors.',
    caution: 'Discharge and measure before touching.',
    isCleared: false,
    clearedByCheck: 'Filter bank discharged',
    isByDesign: false,
    ...more,
  };
}

/** A rig with one supply and one final check passed on day 0, valid for 30 days. */
export function rigOnTheAir(more: Partial<ReadinessFacts> = {}): ReadinessFacts {
  return {
    rig: item('rig'),
    positions: [{ positionKey: 'V1', isRequired: true, state: 'PRESENT' }],
    requiredRoles: [{ roleCode: 'SUPPLY', roleName: 'power supply', accessoryIds: ['supply'] }],
    accessories: [accessory('supply')],
    procedures: [{ procedureCode: 'HUM', name: 'Hum and leakage', validityDays: 30 }],
    finalChecks: [{ checkId: 'check', procedureCode: 'HUM', isPassed: true, doneAtMs: 0 }],
    ...more,
  };
}
