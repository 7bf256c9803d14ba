import { describedEnum } from '../../api/kit/describedEnum.js';

export const EvidenceBearing = describedEnum(
  'EvidenceBearing',
  'Which way a piece of evidence points.',
  {
    SUPPORTS: 'It bears the statement out.',
    CONTRADICTS: 'It speaks against the statement.',
  },
);
export type EvidenceBearing = keyof typeof EvidenceBearing;

export const EvidenceStrength = describedEnum(
  'EvidenceStrength',
  'How much a piece of evidence weighs, as the collector judges it.',
  {
    WEAK: 'It may as well be about another set, or be explained otherwise.',
    MODERATE: 'It is about this set and of its time, with something left open.',
    STRONG: 'It names this very set, was made at the time, and can be looked at.',
  },
);
export type EvidenceStrength = keyof typeof EvidenceStrength;

export const EvidenceKind = describedEnum('EvidenceKind', 'What sort of thing the evidence is.', {
  INVOICE: 'A bill, receipt or delivery note.',
  LETTER: 'A letter or message.',
  STATION_LOG: 'A log of contacts or a station notebook.',
  LICENCE: 'A licence or other official paper.',
  PHOTOGRAPH: 'A photograph or film.',
  PUBLICATION: 'A catalogue, advertisement, article or book.',
  MAKERS_RECORD: 'A record of the maker: production or service papers.',
  LABEL: 'A label, tag or stamp on it.',
  MARKING: 'Writing or engraving on it.',
  DATE_CODE: 'A date code on a part.',
  PHYSICAL: 'How it is made, worn or repaired.',
  STATEMENT: 'What somebody says: itself a claim, it never supports one.',
  OTHER: 'Something else, as described.',
});
export type EvidenceKind = keyof typeof EvidenceKind;

export const EventPartyRole = describedEnum(
  'EventPartyRole',
  'What part somebody had in an event, beside giving and receiving.',
  {
    AUCTIONEER: 'Sold it for another.',
    AGENT: 'Acted for one of the two.',
    DEALER: 'Traded in it.',
    KEEPER: 'Had it in keeping without owning it.',
    EXHIBITOR: 'Showed it.',
    REPAIRER: 'Repaired or altered it.',
    OPERATOR: 'Used it on the air.',
    WITNESS: 'Saw it happen.',
  },
);
export type EventPartyRole = keyof typeof EventPartyRole;
