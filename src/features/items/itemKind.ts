import { describedEnum } from '../../api/kit/describedEnum.js';

export const ItemKind = describedEnum('ItemKind', 'Whether a thing is a set or serves one.', {
  RIG: 'A transmitter, receiver or transceiver.',
  ACCESSORY: 'Something that serves rigs: a power supply, a speaker, a key.',
});
export type ItemKind = keyof typeof ItemKind;
