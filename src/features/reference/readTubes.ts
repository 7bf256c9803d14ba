import { z } from 'zod';
import { tubeClasses, type TubeClass } from '../../domain/parts/tubeClass.js';
import { tubeFigures, type TubeFigure } from '../../domain/parts/tubeRatings.js';
import { readSeedFile } from './readSeedFile.js';
import { sourceNamed, type ReferenceSource } from './referenceSources.js';

const figure = z.string().regex(/^(\d+(\.\d+)?)?$/);

const tubeShape = z.strictObject({
  designation: z.string().regex(/^[A-Z0-9-]+$/),
  aliases: z.string(),
  class: z.enum(tubeClasses),
  base: z.string().regex(/^\d{1,2}[A-Z]{1,2}$/),
  heaterVolts: figure,
  heaterAmperes: figure,
  hasTappedHeater: z.enum(['yes', '']),
  transconductanceMicrosiemens: figure,
  plateDissipationWatts: figure,
  plateVolts: figure,
  inputPicofarads: figure,
  outputPicofarads: figure,
  gridPlatePicofarads: figure,
  /** `field:source+source field:source`; a field that is not named rests on memory alone. */
  confirmed: z.string().regex(/^([A-Za-z]+:[a-z0-9+-]+( [A-Za-z]+:[a-z0-9+-]+)*)?$/),
  note: z.string(),
});

/** What can be rated, as columns of the table. */
export const ratedFields = ['class', 'base', ...tubeFigures] as const;
export type RatedField = 'class' | 'base' | TubeFigure;

/** One tube type of the table, with the published sources of each field. */
export interface ReferenceTube {
  designation: string;
  /** Other names of the same type. */
  aliases: readonly string[];
  class: TubeClass;
  base: string;
  hasTappedHeater: boolean;
  /** Exact decimals, by name with unit. */
  figures: Partial<Record<TubeFigure, string>>;
  /** Empty for what rests on memory alone. */
  sources: Readonly<Record<RatedField, readonly ReferenceSource[]>>;
  note: string | null;
}

/** @throws Error that names the file and what is wrong with it. */
export const readTubes = (path: string): readonly ReferenceTube[] =>
  readSeedFile(path, z.array(tubeShape)).map((row) => {
    const confirmed = new Map(
      row.confirmed.split(' ').map((one): [string, ReferenceSource[]] => {
        const [field = '', keys = ''] = one.split(':');
        return [field, keys === '' ? [] : keys.split('+').map(sourceNamed)];
      }),
    );
    return {
      designation: row.designation,
      aliases: row.aliases === '' ? [] : row.aliases.split(' '),
      class: row.class,
      base: row.base,
      hasTappedHeater: row.hasTappedHeater === 'yes',
      figures: Object.fromEntries(
        tubeFigures.flatMap((name) => (row[name] === '' ? [] : [[name, row[name]]])),
      ),
      sources: Object.fromEntries(
        ratedFields.map((field) => [field, confirmed.get(field) ?? []]),
      ) as Record<RatedField, ReferenceSource[]>,
      note: row.note === '' ? null : row.note,
    };
  });
