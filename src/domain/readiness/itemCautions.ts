import type { Caution } from './blocker.js';
import type { ItemFacts, PositionFacts } from './readinessFacts.js';

/** What to know about the rig itself though it stands in nobody's way. */
export function itemCautions(rig: ItemFacts, positions: readonly PositionFacts[]): Caution[] {
  const openFindings = rig.findings.filter(
    (finding) => finding.isOpen && !finding.isBlocking && !finding.isElectricalHazard,
  );
  const notGood = rig.components.filter(
    (component) =>
      !component.isInRequiredPosition && ['REJECTED', 'SUSPECT'].includes(component.state),
  );
  const notProven = rig.components.filter(
    (component) =>
      component.isInRequiredPosition && ['UNTESTED', 'PASSED_ON_TESTER'].includes(component.state),
  ).length;
  const unknown = positions.filter(
    (position) => position.isRequired && position.state === 'UNKNOWN',
  ).length;
  const aboutRig = { subjectKind: 'ITEM', subjectId: rig.itemId } as const;
  const cautions: Caution[] = [
    ...designCautions(rig),
    ...openFindings.map((finding) => ({
      code: 'FINDING_OPEN' as const,
      message: `An open finding remains: ${finding.description}`,
      subjectKind: 'FINDING' as const,
      subjectId: finding.findingId,
    })),
    ...notGood.map((component) => ({
      code: 'COMPONENT_NOT_GOOD' as const,
      message: `“${component.name}”, which is not required, is rejected or suspect.`,
      subjectKind: 'COMPONENT' as const,
      subjectId: component.componentId,
    })),
  ];
  if (notProven > 0) {
    const message = `Components in required positions not yet proven in circuit: ${notProven}.`;
    cautions.push({ code: 'COMPONENTS_NOT_PROVEN', message, ...aboutRig });
  }
  if (unknown > 0) {
    const message = `Required positions not known to be filled: ${unknown}.`;
    cautions.push({ code: 'POSITIONS_UNKNOWN', message, ...aboutRig });
  }
  return cautions;
}

/** The dangers that belong to an item's design, with their cautions. */
export function designCautions(item: ItemFacts): Caution[] {
  return item.hazards
    .filter((hazard) => hazard.isByDesign)
    .map((hazard) => ({
      code: 'HAZARD_BY_DESIGN',
      message:
        `“${item.name}”: ${hazard.description}` +
        (hazard.caution === null ? '' : ` — ${hazard.caution}`),
      subjectKind: 'HAZARD',
      subjectId: hazard.hazardId,
    }));
}
