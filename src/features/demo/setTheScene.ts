import { globalId } from '../../api/kit/globalId.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { describeCollection } from '../collection/describeCollection.js';
import { createModel } from '../models/createModel.js';
import { createParty } from '../parties/createParty.js';
import { createPartType } from '../parts/createPartType.js';
import { createPlace } from '../places/createPlace.js';
import { setLimit } from '../readings/setLimit.js';
import type { DemoFile } from './demoFiles.js';
import type { DemoNames } from './demoNames.js';
import { DemoProblem } from './demoProblem.js';
import { messageOf } from './messageOf.js';

type Model = NonNullable<DemoFile['model']>;
type Limits = Model['limits'];

/** What is there before the story begins: people, places, part types, models, the collection. */
export async function setTheScene(
  work: UnitOfWork,
  names: DemoNames,
  files: readonly DemoFile[],
): Promise<void> {
  const each = async <Value>(
    pick: (file: DemoFile) => Record<string, Value>,
    write: (name: string, value: Value) => Promise<void>,
  ) => {
    for (const file of files) {
      for (const [name, value] of Object.entries(pick(file))) {
        await write(name, value).catch((error: unknown) => {
          throw new DemoProblem(`${file.path}, ${name}`, messageOf(error), error);
        });
      }
    }
  };
  await each(
    (file) => file.people,
    async (name, { kind, contact, note }) => {
      const id = await createParty(work, {
        kind,
        name,
        contact: contact ?? null,
        note: note ?? null,
      });
      names.keep('person', name, globalId('Party', id));
    },
  );
  await each(
    (file) => file.places,
    async (name, { within, note }) => {
      const withinId = names.optionalId('place', within);
      const id = await createPlace(work, { name, withinId, note: note ?? null });
      names.keep('place', name, globalId('Place', id));
    },
  );
  await each(
    (file) => file.partTypes,
    async (designation, { kind, description, source, ratings, limits }) => {
      const id = await createPartType(work, {
        kind,
        designation,
        description,
        ratings: Object.entries(ratings).map(([name, rating]) => {
          const [value = '', unit = ''] = rating.split(' ');
          return { name, value, unit, source: source ?? null };
        }),
      });
      names.keep('part type', designation, globalId('PartType', id));
      await setLimits(work, globalId('PartType', id), limits);
    },
  );
  await each(
    ({ model }) => (model ? { [`${model.maker} ${model.designation}`]: model } : {}),
    async (name, model) => {
      const id = globalId('Model', await createModel(work, modelInput(names, model)));
      names.keep('model', name, id);
      await setLimits(work, id, model.limits);
    },
  );
  await each<NonNullable<DemoFile['collection']>>(
    ({ collection }) => (collection ? { [collection.name]: collection } : {}),
    async (name, { owner, homeCurrency, zone, ituRegion, licenceClass }) => {
      const ownerId = names.id('person', owner);
      await describeCollection(work, {
        version: 0,
        name,
        ownerId,
        homeCurrency,
        zone,
        ...(ituRegion && { ituRegion }),
        ...(licenceClass !== undefined && { licenceClass }),
      });
    },
  );
}

function modelInput(names: DemoNames, model: Model): Parameters<typeof createModel>[1] {
  const { itemKind, maker, designation, description, years, note, bands, fitOut } = model;
  return {
    itemKind,
    maker,
    designation,
    description,
    firstYearMade: years[0],
    lastYearMade: years[1],
    note: note ?? null,
    capabilities: Object.entries(bands).flatMap(([mode, outputs]) =>
      Object.entries(outputs).map(([band, watts]) => ({
        band,
        mode,
        outputMilliwatts: watts === null ? null : watts * 1000,
      })),
    ),
    roles: [
      ...model.needs.map((role) => ({ role, isRequired: true })),
      ...model.worksWith.map((role) => ({ role, isRequired: false })),
    ],
    fitOut: Object.entries(fitOut).map(([designator, { part, ...position }]) => ({
      designator,
      ...position,
      note: position.note ?? null,
      partTypeId: names.optionalId('part type', part),
    })),
  };
}

async function setLimits(work: UnitOfWork, ofId: string, limits: Limits): Promise<void> {
  for (const { tier, lower, upper, ...limit } of limits) {
    await setLimit(work, {
      ...limit,
      ofId,
      tier: tier ?? null,
      lower: lower ?? null,
      upper: upper ?? null,
    });
  }
}
