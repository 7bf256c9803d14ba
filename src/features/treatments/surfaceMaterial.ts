import { describedEnum } from '../../api/kit/describedEnum.js';

export const SurfaceMaterial = describedEnum('SurfaceMaterial', 'What a treated surface is of.', {
  STEEL: 'Iron and steel, bare.',
  ALUMINIUM: 'Aluminium and its alloys, bare or anodised.',
  COPPER_ALLOY: 'Copper, brass, bronze.',
  PLATED_METAL: 'Metal plated with nickel, chrome, cadmium, zinc, silver.',
  PAINTED_METAL: 'Metal with paint, wrinkle finish or lacquer.',
  WOOD: 'Wood and veneer, with its finish.',
  PHENOLIC: 'Phenolic resin: knobs, cases, boards.',
  PLASTIC: 'Other plastics: dial windows, cases.',
  RUBBER: 'Rubber: feet, belts, cord.',
  TEXTILE: 'Grille cloth, cloth-covered cord.',
  GLASS: 'Dial glass, tube envelopes.',
  CERAMIC: 'Ceramic and porcelain.',
  LETTERING: 'Silk-screened, engraved or decal lettering.',
  PAPER: 'Labels, papers, cards.',
  CONTACTS: 'Contacts of switches, sockets, relays.',
  OTHER: 'None of these.',
});
export type SurfaceMaterial = keyof typeof SurfaceMaterial;
