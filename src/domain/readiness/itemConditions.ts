import type { Blocker } from './blocker.js';
import { componentBlockers } from './componentBlockers.js';
import {
  allOf,
  metLeaf,
  unknownLeaf,
  unmetLeaf,
  type Condition,
  type Evidence,
} from './condition.js';
import {
  componentEvidence,
  findingEvidence,
  hazardEvidence,
  positionEvidence,
} from './evidenceOf.js';
import { itemBlockers } from './itemBlockers.js';
import { positionBlockers } from './positionBlockers.js';
import type { ComponentFacts, ItemFacts, PositionFacts } from './readinessFacts.js';

/**
 * What must hold of any item, rig or accessory, each leaf with its evidence. The rules are those of
 * the blockers; here stands also what is met, and on what grounds.
 */
export function itemConditions(
  item: ItemFacts,
  positions: readonly PositionFacts[],
  components: readonly ComponentFacts[],
): Condition[] {
  const blockers = itemBlockers(item);
  return [
    ...identity(item, blockers),
    inHand(item, blockers),
    findings(item, blockers),
    hazards(item, blockers),
    ...filled(item, positions),
    ...accepted(item, components),
  ];
}

const aboutItem = ({ itemId }: ItemFacts) =>
  ({ itemId, subjectKind: 'ITEM', subjectId: itemId }) as const;

function identity(item: ItemFacts, blockers: readonly Blocker[]): Condition[] {
  if (item.identity === undefined) return [];
  const about = { ...aboutItem(item), code: 'IDENTITY_COMPLETE' } as const;
  const { modelName, serialNumber } = item.identity;
  const unnamed = blockers.find(({ code }) => code === 'MODEL_NOT_NAMED');
  const model = unnamed
    ? unmetLeaf(about, unnamed)
    : metLeaf(about, `It is known as a ${modelName ?? ''}.`);
  const serial =
    serialNumber === null
      ? unknownLeaf(
          about,
          'No serial number is recorded.',
          'Look for the serial number and record it, or write down that it has none.',
        )
      : metLeaf(about, 'Its serial number is recorded.');
  return [allOf(about, 'It is known which one it is.', [model, serial])];
}

function inHand(item: ItemFacts, blockers: readonly Blocker[]): Condition {
  const about = { ...aboutItem(item), code: 'IN_HAND' } as const;
  const against = blockers.filter(({ code }) => code === 'RETIRED' || code === 'NOT_IN_HAND');
  const [only] = against;
  if (only === undefined) return metLeaf(about, `“${item.name}” is in hand.`);
  return against.length === 1
    ? unmetLeaf(about, only)
    : allOf(
        about,
        `“${item.name}” must be in hand.`,
        against.map((one) => unmetLeaf(about, one)),
      );
}

/** Nothing found, and somebody has looked; or nothing found because nobody has. */
function nothingFound(item: ItemFacts, code: Condition['code'], statement: string): Condition {
  const about = { ...aboutItem(item), code } as const;
  const { lastInspection } = item;
  if (!lastInspection) {
    return unknownLeaf(about, `${statement} No inspection is recorded either.`, 'Inspect it.');
  }
  const seen: Evidence = {
    recordKind: 'INSPECTION',
    recordId: lastInspection.inspectionId,
    atMs: lastInspection.atMs,
    words: 'The latest inspection.',
  };
  return metLeaf(about, statement, [seen]);
}

function findings(item: ItemFacts, blockers: readonly Blocker[]): Condition {
  const about = { ...aboutItem(item), code: 'NO_BLOCKING_FINDING' } as const;
  const grave = item.findings.filter((finding) => finding.isBlocking || finding.isElectricalHazard);
  const leaves = grave.map((finding) => {
    const evidence = [findingEvidence(finding)];
    const blocker = blockers.find(
      ({ subjectKind, subjectId }) => subjectKind === 'FINDING' && subjectId === finding.findingId,
    );
    if (blocker) return unmetLeaf(about, blocker, evidence);
    const subject = { subjectKind: 'FINDING', subjectId: finding.findingId } as const;
    return metLeaf({ ...about, ...subject }, `Settled: ${finding.description}`, evidence);
  });
  const found =
    leaves.length > 0 ? leaves : [nothingFound(item, about.code, 'No blocking finding.')];
  return allOf(about, 'No blocking finding may be open.', found);
}

function hazards(item: ItemFacts, blockers: readonly Blocker[]): Condition {
  const about = { ...aboutItem(item), code: 'NO_HAZARD' } as const;
  const leaves = item.hazards.map((hazard) => {
    const evidence = [hazardEvidence(hazard)];
    const blocker = blockers.find(
      ({ subjectKind, subjectId }) => subjectKind === 'HAZARD' && subjectId === hazard.hazardId,
    );
    if (blocker) return unmetLeaf(about, blocker, evidence);
    const subject = { subjectKind: 'HAZARD', subjectId: hazard.hazardId } as const;
    const statement = hazard.isCleared
      ? `Cleared: ${hazard.description}`
      : `Belongs to the design and stays: ${hazard.description} ${hazard.caution ?? ''}`.trim();
    return metLeaf({ ...about, ...subject }, statement, evidence);
  });
  const found =
    leaves.length > 0 ? leaves : [nothingFound(item, about.code, 'No hazard is noted.')];
  return allOf(about, 'Every hazard must be cleared by its check.', found);
}

function filled(item: ItemFacts, positions: readonly PositionFacts[]): Condition[] {
  const about = { ...aboutItem(item), code: 'POSITIONS_FILLED' } as const;
  const required = positions.filter(({ isRequired }) => isRequired);
  if (required.length === 0) return [];
  const leaves = required.map((position) => {
    const [blocker] = positionBlockers([position]);
    const evidence = positionEvidence(position);
    if (blocker) return unmetLeaf(about, blocker, evidence);
    const { positionKey } = position;
    const own = { ...about, subjectKind: 'POSITION', subjectId: positionKey } as const;
    return position.state === 'PRESENT'
      ? metLeaf(own, `${positionKey} is filled.`, evidence)
      : unknownLeaf(
          own,
          `Nobody has looked at ${positionKey}.`,
          `Look at ${positionKey}.`,
          evidence,
        );
  });
  return [allOf(about, 'Every required position must be filled.', leaves)];
}

function accepted(item: ItemFacts, components: readonly ComponentFacts[]): Condition[] {
  const about = { ...aboutItem(item), code: 'COMPONENTS_ACCEPTED' } as const;
  if (components.length === 0) return [];
  const leaves = components.map((component) => {
    const [blocker] = componentBlockers([component]);
    const evidence = componentEvidence(component);
    if (blocker) return unmetLeaf(about, blocker, evidence);
    const own = { ...about, subjectKind: 'COMPONENT', subjectId: component.componentId } as const;
    return component.state === 'PROVEN_IN_CIRCUIT'
      ? metLeaf(own, `“${component.name}” is proven in circuit.`, evidence)
      : unknownLeaf(
          own,
          component.state === 'UNTESTED'
            ? `“${component.name}” is not tested.`
            : `“${component.name}” passed on a tester, which does not prove it.`,
          `Take a reading of “${component.name}” in its circuit.`,
          evidence,
        );
  });
  return [allOf(about, 'No component may be outside its limits.', leaves)];
}
