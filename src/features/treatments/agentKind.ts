import { describedEnum } from '../../api/kit/describedEnum.js';

export const AgentKind = describedEnum('AgentKind', 'Kinds of agent, by what they must not meet.', {
  WATER: 'Water, plain or distilled.',
  DETERGENT: 'Mild detergent or soap.',
  ALCOHOL: 'Isopropyl or ethyl alcohol.',
  HYDROCARBON: 'Naphtha, white spirit, turpentine.',
  KETONE: 'Acetone and its kin.',
  STRONG_ALKALI: 'Strong alkaline cleaner: lye, silicates.',
  AMMONIA: 'Ammonia and cleaners with ammonia.',
  ACID: 'Phosphoric, citric or acetic acid; vinegar; rust removers.',
  CHLORINE_BLEACH: 'Bleach with hypochlorite.',
  PEROXIDE: 'Hydrogen peroxide.',
  ABRASIVE: 'Polish, wool, paper, powder.',
  CONTACT_CLEANER: 'Cleaner for switches, sockets and potentiometers.',
  WAX_OR_OIL: 'Wax, oil, polish that stays on.',
  OTHER: 'None of these.',
});
export type AgentKind = keyof typeof AgentKind;
