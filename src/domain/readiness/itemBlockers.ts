import type { Blocker } from './blocker.js';
import type { FindingFacts, HazardFacts, ItemFacts } from './readinessFacts.js';

/** What stands in the way in any item, rig or accessory, apart from its components. */
export function itemBlockers(item: ItemFacts): Blocker[] {
  const subject = { level: 'NOT_READY', subjectKind: 'ITEM', subjectId: item.itemId } as const;
  const blockers: Blocker[] = [];
  if (item.isRetired) {
    blockers.push({
      ...subject,
      code: 'RETIRED',
      message: `“${item.name}” is retired.`,
      wouldBeMetBy: `Bring “${item.name}” back from retirement.`,
    });
  }
  if (!item.isInHand) {
    blockers.push({
      ...subject,
      code: 'NOT_IN_HAND',
      message: `“${item.name}” is not in hand.`,
      wouldBeMetBy: `Record where “${item.name}” is once it is back.`,
    });
  }
  if (item.identity?.modelName === null) {
    blockers.push({
      ...subject,
      code: 'MODEL_NOT_NAMED',
      message: `No model is named for “${item.name}”, so nothing says what it must have.`,
      wouldBeMetBy: `Name the model of “${item.name}”.`,
    });
  }
  const findings = item.findings.filter(
    (finding) => finding.isOpen && (finding.isBlocking || finding.isElectricalHazard),
  );
  const hazards = item.hazards.filter((hazard) => !hazard.isCleared && !hazard.isByDesign);
  return [
    ...blockers,
    ...findings.map((finding) => findingBlocker(item, finding)),
    ...hazards.map((hazard) => hazardBlocker(item, hazard)),
  ];
}

function findingBlocker(item: ItemFacts, finding: FindingFacts): Blocker {
  const { isElectricalHazard } = finding;
  return {
    code: isElectricalHazard ? 'ELECTRICAL_HAZARD_OPEN' : 'BLOCKING_FINDING_OPEN',
    level: isElectricalHazard ? 'DO_NOT_CONNECT' : 'NOT_READY',
    message: `“${item.name}” has an open finding: ${finding.description}`,
    subjectKind: 'FINDING',
    subjectId: finding.findingId,
    wouldBeMetBy: isElectricalHazard
      ? 'Resolve the finding; work on live circuits only as local codes and your qualification allow.'
      : 'Resolve the finding.',
  };
}

function hazardBlocker(item: ItemFacts, hazard: HazardFacts): Blocker {
  const caution = hazard.caution === null ? '' : ` — ${hazard.caution}`;
  return {
    code: 'HAZARD_NOT_CLEARED',
    level: 'DO_NOT_CONNECT',
    message: `“${item.name}” has a hazard that is not cleared: ${hazard.description}${caution}`,
    subjectKind: 'HAZARD',
    subjectId: hazard.hazardId,
    wouldBeMetBy:
      hazard.clearedByCheck === null
        ? 'Name the check that clears this hazard, and record it as passed.'
        : `Record the check “${hazard.clearedByCheck}” as passed.`,
  };
}
