import { describedEnum } from '../../api/kit/describedEnum.js';

export const AccessoryRole = describedEnum('AccessoryRole', 'What an accessory does for a rig.', {
  POWER_SUPPLY: 'Feeds the rig from the mains or from a battery.',
  SPEAKER: 'Makes its audio heard.',
  HEADPHONES: 'Makes its audio heard by one person.',
  MICROPHONE: 'Takes speech.',
  KEY: 'Keys the carrier.',
  VFO: 'Sets the frequency from outside the rig.',
  ANTENNA_COUPLER: 'Matches the antenna to the rig.',
  AMPLIFIER: 'Raises the output power.',
  CONTROL: 'Switches, relays and control boxes.',
  TEST_GEAR: 'Measures; serves no rig on the air.',
});
export type AccessoryRole = keyof typeof AccessoryRole;
