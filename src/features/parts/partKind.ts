import { describedEnum } from '../../api/kit/describedEnum.js';

export const PartKind = describedEnum('PartKind', 'What sort of part it is.', {
  TUBE: 'A vacuum or gas-filled tube.',
  CAPACITOR: 'A capacitor of any dielectric.',
  RESISTOR: 'A resistor or potentiometer.',
  INDUCTOR: 'A coil or choke.',
  TRANSFORMER: 'A power, audio or intermediate-frequency transformer.',
  CRYSTAL: 'A quartz crystal.',
  FILTER: 'A crystal, mechanical or ceramic filter.',
  SEMICONDUCTOR: 'A diode, selenium stack or transistor.',
  LAMP: 'A pilot lamp.',
  MECHANICAL: 'Covers, knobs, shields, feet, dials, hardware.',
  CABLE: 'A cord or cable, with its plugs.',
  OTHER: 'None of the others.',
});
export type PartKind = keyof typeof PartKind;
