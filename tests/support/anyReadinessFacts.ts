import fc from 'fast-check';
import type {
  AccessoryFacts,
  ItemFacts,
  ReadinessFacts,
} from '../../src/domain/readiness/readinessFacts.js';
import { DAY_MS } from './readinessFacts.js';

const rarely = fc.integer({ min: 0, max: 4 }).map((number) => number === 0);
const mostly = rarely.map((is) => !is);
const several = <Fact>(fact: fc.Arbitrary<Fact>, key: keyof Fact) =>
  fc.uniqueArray(fact, { maxLength: 2, selector: (one) => one[key] });
const idOf = (kind: string) => fc.constantFrom(`${kind} 1`, `${kind} 2`);
const itemFacts = (itemId: string): fc.Arbitrary<ItemFacts> =>
  fc.record({
    itemId: fc.constant(itemId),
    name: fc.constant(itemId),
    isRetired: rarely,
    isInHand: mostly,
    findings: several(
      fc.record({
        findingId: idOf(`finding of ${itemId}`),
        description: fc.constant('A finding.'),
        isOpen: rarely,
        isBlocking: fc.boolean(),
        isElectricalHazard: fc.boolean(),
      }),
      'findingId',
    ),
    hazards: several(
      fc.record({
        hazardId: idOf(`hazard of ${itemId}`),
        description: fc.constant('A hazard.'),
        caution: fc.constant(null),
        isCleared: mostly,
        clearedByCheck: fc.constant(null),
        isByDesign: rarely,
      }),
      'hazardId',
    ),
    components: several(
      fc.record({
        componentId: idOf(`component of ${itemId}`),
        name: fc.constant('A component'),
        isInRequiredPosition: fc.boolean(),
        state: fc.constantFrom(
          'UNTESTED' as const,
          'PASSED_ON_TESTER' as const,
          'PROVEN_IN_CIRCUIT' as const,
          'SUSPECT' as const,
          'REJECTED' as const,
        ),
      }),
      'componentId',
    ),
  });
const positionFacts = several(
  fc.record({
    positionKey: fc.constantFrom('V1', 'V2'),
    isRequired: fc.boolean(),
    state: fc.constantFrom(
      'PRESENT' as const,
      'PRESENT' as const,
      'UNKNOWN' as const,
      'MISSING' as const,
      'WRONG' as const,
    ),
  }),
  'positionKey',
);
const procedureFacts = several(
  fc.record({
    procedureCode: fc.constantFrom('HUM', 'POWER'),
    name: fc.constant('Check'),
    validityDays: fc.constantFrom(null, 10, 30),
  }),
  'procedureCode',
);
const checkFacts = fc.array(
  fc.record({
    checkId: fc.uuid(),
    procedureCode: fc.constantFrom('HUM', 'POWER', 'OTHER'),
    isPassed: mostly,
    doneAtMs: fc.constantFrom(60, 70, 71, 90, 91, 100).map((day) => day * DAY_MS),
  }),
  { maxLength: 5 },
);
const identityFacts = fc.record({
  modelName: fc.constantFrom('model', 'model', 'model', null),
  serialNumber: fc.constantFrom('17', null),
});
const accessoryFacts = (itemId: string, housings: (string | null)[]) =>
  fc
    .record({
      facts: itemFacts(itemId),
      housedInId: fc.constantFrom(...housings),
      // Checks named by being made, as they are recorded.
      checks: fc.constantFrom<{ day: number; isPassed: boolean }[]>(
        [],
        [],
        [{ day: 95, isPassed: true }],
        [{ day: 60, isPassed: true }],
        [{ day: 99, isPassed: false }],
      ),
      isMissingFuse: rarely,
    })
    .map(({ facts, housedInId, checks, isMissingFuse }): AccessoryFacts => ({
      ...facts,
      housedInId,
      positions: [
        { positionKey: 'F1', isRequired: true, state: isMissingFuse ? 'MISSING' : 'PRESENT' },
      ],
      procedures: checks.map(() => ({ procedureCode: 'HUM', name: 'Hum', validityDays: 30 })),
      finalChecks: checks.map(({ day, isPassed }) => ({
        checkId: `${itemId} ${day}`,
        procedureCode: 'HUM',
        isPassed,
        doneAtMs: day * DAY_MS,
      })),
    }));

/** Facts at random about a rig, two accessories and a cabinet, checks between days 60 and 100. */
export const anyFacts: fc.Arbitrary<ReadinessFacts> = fc.record({
  rig: fc
    .tuple(itemFacts('rig'), identityFacts)
    .map(([facts, identity]): ItemFacts => ({ ...facts, identity })),
  positions: positionFacts,
  requiredRoles: several(
    fc.record({
      roleCode: fc.constantFrom('SUPPLY', 'SPEAKER'),
      roleName: fc.constant('helper'),
      accessoryIds: fc.subarray(['a', 'b', 'not recorded']),
    }),
    'roleCode',
  ),
  accessories: fc
    .tuple(
      accessoryFacts('a', [null, 'cabinet', 'b']),
      accessoryFacts('b', [null, 'cabinet', 'a']),
      accessoryFacts('cabinet', [null, 'gone']),
    )
    .map((all): AccessoryFacts[] => all),
  procedures: procedureFacts,
  finalChecks: checkFacts,
});
