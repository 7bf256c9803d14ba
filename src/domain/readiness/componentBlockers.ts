import type { Blocker } from './blocker.js';
import type { ComponentFacts } from './readinessFacts.js';

/** The rejected and suspect components among those given, each as a blocker. */
export function componentBlockers(components: readonly ComponentFacts[]): Blocker[] {
  return components.flatMap((component): Blocker[] => {
    const subject = {
      level: 'NOT_READY',
      subjectKind: 'COMPONENT',
      subjectId: component.componentId,
    } as const;
    if (component.state === 'REJECTED') {
      return [
        {
          ...subject,
          code: 'COMPONENT_REJECTED',
          message: `“${component.name}” is outside its limits.`,
          wouldBeMetBy: `Replace “${component.name}”, or record a later reading within limits.`,
        },
      ];
    }
    if (component.state === 'SUSPECT') {
      return [
        {
          ...subject,
          code: 'COMPONENT_SUSPECT',
          message: `“${component.name}” failed on a tester and later passed in circuit.`,
          wouldBeMetBy: `Replace “${component.name}”, or test it again and record a reading within limits.`,
        },
      ];
    }
    return [];
  });
}
