import { AccessoryRole } from '../items/accessoryRole.js';
import { headerKey } from './headerKey.js';

/** What collectors call the roles, in English and German, beside the words of the schema. */
const otherWords: Readonly<Record<AccessoryRole, readonly string[]>> = {
  POWER_SUPPLY: ['supply', 'psu', 'mains unit', 'netzteil', 'netzgerat', 'stromversorgung'],
  SPEAKER: ['loudspeaker', 'lautsprecher'],
  HEADPHONES: ['headphone', 'headset', 'kopfhorer'],
  MICROPHONE: ['mic', 'mike', 'mikrofon', 'mikrophon'],
  KEY: ['morse key', 'keyer', 'paddle', 'taste', 'morsetaste'],
  VFO: ['external vfo', 'remote vfo'],
  ANTENNA_COUPLER: ['coupler', 'tuner', 'antenna tuner', 'atu', 'antennenkoppler', 'anpassgerat'],
  AMPLIFIER: ['linear', 'linear amplifier', 'pa', 'endstufe', 'verstarker'],
  CONTROL: ['control box', 'switch', 'relay', 'steuergerat', 'schalter'],
  TEST_GEAR: ['test equipment', 'meter', 'instrument', 'messgerat'],
};

const roleByWord = new Map<string, AccessoryRole>(
  (Object.keys(AccessoryRole) as AccessoryRole[]).flatMap((role) =>
    [role, ...otherWords[role]].map((word): [string, AccessoryRole] => [headerKey(word), role]),
  ),
);

/** The role that a list's word stands for, or null. */
export const readRole = (word: string): AccessoryRole | null =>
  roleByWord.get(headerKey(word)) ?? null;
