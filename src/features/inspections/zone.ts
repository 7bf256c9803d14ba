import { describedEnum } from '../../api/kit/describedEnum.js';

export const Zone = describedEnum('Zone', 'The part of an item that is looked at in one go.', {
  CABINET: 'Case, covers, feet, finish.',
  FRONT_PANEL: 'Panel, dial, meter, lettering, knobs.',
  CONTROLS: 'Switches, potentiometers, variable capacitors, gears.',
  CHASSIS_TOP: 'Above the chassis: sockets, shields, coils, transformers.',
  CHASSIS_UNDERSIDE: 'Below the chassis: wiring, small parts, boards.',
  POWER_SECTION: 'Transformer, rectifiers, filter capacitors, fuse.',
  FINAL_STAGE: 'Output tubes, tank circuit, load and tune controls.',
  TUBES: 'All tubes and their sockets.',
  REAR_PANEL: 'Sockets, terminals, connectors at the back.',
  CORD_AND_CABLES: 'Line cord, plugs, interconnecting cables.',
  PAPERS: 'Manual, circuit diagram, receipts, notes.',
  WHOLE: 'The item as a whole.',
});
export type Zone = keyof typeof Zone;
