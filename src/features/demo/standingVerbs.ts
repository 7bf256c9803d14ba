import { z } from 'zod';
import { houseAccessory } from '../housing/houseAccessory.js';
import { AccessoryRole } from '../items/accessoryRole.js';
import { retireItem } from '../items/retireItem.js';
import { moveItem } from '../places/moveItem.js';
import { EvidenceStanding } from '../provenance/evidenceStanding.js';
import { ProvenanceEventKind } from '../provenance/provenanceEventKind.js';
import { recordClaim } from '../provenance/recordClaim.js';
import { recordProvenanceEvent } from '../provenance/recordProvenanceEvent.js';
import { recordFinalCheck } from '../readiness/recordFinalCheck.js';
import { assignAccessory } from '../services/assignAccessory.js';
import { keptVersion } from './keptVersion.js';
import { personChoice } from './moneyVerbs.js';
import { storyVerb, text } from './storyEvent.js';

export const standingVerbs = {
  serve: storyVerb(
    'assignAccessory',
    {
      role: z.enum(AccessoryRole),
      rigs: z.array(text).min(1),
      isExclusive: z.boolean().default(false),
      note: text.optional(),
    },
    async ({ work, names, item }, event) => {
      for (const rig of event.rigs) {
        await assignAccessory(work, {
          accessoryId: names.id('item', item),
          rigId: names.id('item', rig),
          role: event.role,
          isExclusive: event.isExclusive,
          note: event.note ?? null,
        });
      }
    },
  ),

  house: storyVerb('houseAccessory', { in: text }, ({ work, names, item }, event) =>
    houseAccessory(work, {
      accessoryId: names.id('item', item),
      housingId: names.id('item', event.in),
    }),
  ),

  move: storyVerb('moveItem', { to: text, note: text.optional() }, ({ work, names, item }, event) =>
    moveItem(work, {
      itemId: names.id('item', item),
      placeId: names.id('place', event.to),
      note: event.note ?? null,
    }),
  ),

  check: storyVerb(
    'recordFinalCheck',
    {
      procedure: text,
      isPassed: z.boolean().default(true),
      validDays: z.int(),
      by: text.optional(),
      note: text.optional(),
    },
    ({ work, names, item }, { by, note, ...checked }) =>
      recordFinalCheck(work, {
        ...checked,
        itemId: names.id('item', item),
        checkedById: names.optionalId('person', by),
        note: note ?? null,
      }),
  ),

  happened: storyVerb(
    'recordProvenanceEvent',
    {
      what: z.enum(ProvenanceEventKind),
      /** EDTF; the past before the collection does not move with the day of loading. */
      date: text.optional(),
      /** Or a day within the story, which moves with it. */
      day: text.optional(),
      from: text.optional(),
      to: text.optional(),
      place: text.optional(),
      standing: z.enum(EvidenceStanding).default('CLAIM'),
      evidence: text.optional(),
      note: text.optional(),
    },
    ({ work, clock, names, item }, event) =>
      recordProvenanceEvent(work, {
        itemId: names.id('item', item),
        kind: event.what,
        dateEdtf: event.day === undefined ? (event.date ?? null) : clock.day(event.day),
        fromParty: personChoice(names, event.from),
        toParty: personChoice(names, event.to),
        placeName: event.place ?? null,
        standing: event.standing,
        evidence: event.evidence ?? null,
        note: event.note ?? null,
      }),
  ),

  say: storyVerb(
    'recordClaim',
    { statement: text, by: text },
    ({ work, clock, names, item }, event) =>
      recordClaim(work, {
        itemId: names.id('item', item),
        statement: event.statement,
        saidBy: personChoice(names, event.by),
        saidOn: clock.day(event.at.slice(0, 10)),
      }),
  ),

  retire: storyVerb('retireItem', { reason: text }, async ({ work, names, item }, { reason }) => {
    const id = names.id('item', item);
    return retireItem(work, { id, version: await keptVersion(work, 'item', id), reason });
  }),
};
