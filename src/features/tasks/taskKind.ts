import { describedEnum } from '../../api/kit/describedEnum.js';

export const TaskKind = describedEnum(
  'TaskKind',
  'What sort of work it is; hours and estimates are compared by it.',
  {
    INSPECTION: 'Looking, documenting, photographing.',
    CLEANING: 'Dirt, tar, corrosion.',
    MECHANICAL: 'Gears, dials, switches, hardware.',
    CABINET: 'Case, paint, lettering.',
    CAPACITORS: 'Replacing or re-forming capacitors.',
    TUBES: 'Testing and fitting tubes.',
    WIRING: 'Cord, cables, solder joints, harness.',
    POWER: 'Supply, rectifiers, transformer.',
    REPAIR: 'Finding and mending a fault.',
    ALIGNMENT: 'Aligning and neutralising.',
    TESTING: 'Bringing up and final checks.',
    RESEARCH: 'Finding parts, papers and facts.',
    OTHER: 'None of the others.',
  },
);
export type TaskKind = keyof typeof TaskKind;
