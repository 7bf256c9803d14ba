import { describedEnum } from '../../api/kit/describedEnum.js';

export const HazardKind = describedEnum('HazardKind', 'What can hurt.', {
  STORED_CHARGE: 'Capacitors that hold their charge after the power is off.',
  LETHAL_VOLTAGE: 'Voltages that kill when touched.',
  UNGROUNDED_CHASSIS: 'A chassis without an earth bond, or joined to the mains.',
  DAMAGED_CORD: 'A line cord or plug that is brittle, bare or wrongly wired.',
  VERMIN_SOILING: 'Droppings, urine or nests of rodents.',
  TOBACCO_RESIDUE: 'Tar and nicotine on surfaces.',
  CAUSTIC_CLEANER: 'Strong alkali in use or left behind.',
  ACID_CLEANER: 'Acid in use or left behind.',
  OLD_DIELECTRIC: 'Oil or wax that may hold polychlorinated biphenyls.',
  SELENIUM: 'A selenium rectifier, toxic when it burns.',
  ASBESTOS: 'Asbestos board, paper or cord.',
  BERYLLIUM_OXIDE: 'Beryllium oxide ceramic, toxic as dust.',
  MERCURY: 'A tube or switch with mercury in it; its vapour is poisonous.',
  RADIOLUMINOUS_PAINT: 'A dial or switch painted with radium or another emitter.',
  LEAD_PAINT: 'Paint or solder with lead.',
  IMPLOSION: 'A large evacuated envelope.',
  HOT_PARTS: 'Tubes and resistors that burn the skin.',
  RF_BURN: 'Radio-frequency voltage that burns at the touch.',
  RF_EXPOSURE: 'Radio-frequency fields.',
});
export type HazardKind = keyof typeof HazardKind;
