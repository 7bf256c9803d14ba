import type { Evidence } from './condition.js';
import type { ComponentFacts, FindingFacts, HazardFacts, PositionFacts } from './readinessFacts.js';

export const findingEvidence = (finding: FindingFacts): Evidence => ({
  recordKind: 'FINDING',
  recordId: finding.findingId,
  atMs: (finding.isOpen ? finding.seenAtMs : finding.settledAtMs) ?? null,
  words: finding.isOpen ? 'Seen, and still open.' : 'Settled.',
});

export const hazardEvidence = (hazard: HazardFacts): Evidence => ({
  recordKind: 'HAZARD',
  recordId: hazard.hazardId,
  atMs: (hazard.isCleared ? hazard.clearedAtMs : hazard.raisedAtMs) ?? null,
  words: hazard.isCleared ? `Cleared by the check: ${hazard.checkDone ?? ''}` : 'Noticed.',
});

/** The check, fitting or removal that the state rests on; nothing where nobody has looked. */
export function positionEvidence(position: PositionFacts): Evidence[] {
  const { restsOn = 'NOTHING', checkId = null, componentId = null, sinceMs = null } = position;
  if (restsOn === 'CHECK' && checkId !== null) {
    const words = 'Looked at and checked off.';
    return [{ recordKind: 'POSITION_CHECK', recordId: checkId, atMs: sinceMs, words }];
  }
  if (componentId === null) return [];
  const words = restsOn === 'FITTING' ? 'Fitted.' : 'Taken out.';
  return [{ recordKind: 'COMPONENT', recordId: componentId, atMs: sinceMs, words }];
}

/** The readings that the state rests on; else the fitting. */
export function componentEvidence(component: ComponentFacts): Evidence[] {
  const readings = (component.readings ?? []).map(
    ({ readingId, takenAtMs, quantityCode, tier, verdict }): Evidence => ({
      recordKind: 'READING',
      recordId: readingId,
      atMs: takenAtMs,
      words: `${quantityCode}, ${tier === 'TESTER' ? 'on a tester' : 'in circuit'}: ${verdict.toLowerCase().replaceAll('_', ' ')}.`,
    }),
  );
  if (readings.length > 0) return readings;
  const { componentId, fittedAtMs = null } = component;
  return [{ recordKind: 'COMPONENT', recordId: componentId, atMs: fittedAtMs, words: 'Fitted.' }];
}
