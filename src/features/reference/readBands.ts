import { z } from 'zod';
import { readSeedFile } from './readSeedFile.js';
import { sourceNamed, type ReferenceSource } from './referenceSources.js';

const kilohertz = z.string().regex(/^\d+(\.\d+)?$/);

const bandShape = z.strictObject({
  /** Wavelength name, as in a model's capabilities: `40m`. */
  band: z.string().regex(/^\d{1,4}(\.\d{1,2})?(m|cm)$/),
  region: z.enum(['1', '2', '3']),
  lowerKilohertz: kilohertz,
  upperKilohertz: kilohertz,
  status: z.enum(['PRIMARY', 'SECONDARY']),
  sources: z.string().min(1),
  note: z.string(),
});

/** A band of the amateur service in one region of the ITU. */
export interface AmateurBand {
  band: string;
  region: 1 | 2 | 3;
  /** Edges in kHz, exact decimals. */
  lowerKilohertz: string;
  upperKilohertz: string;
  status: 'PRIMARY' | 'SECONDARY';
  sources: readonly ReferenceSource[];
  note: string | null;
}

/** @throws Error that names the file and what is wrong with it. */
export const readBands = (path: string): readonly AmateurBand[] =>
  readSeedFile(path, z.array(bandShape)).map((row) => ({
    ...row,
    region: Number(row.region) as AmateurBand['region'],
    sources: row.sources.split(' ').map(sourceNamed),
    note: row.note === '' ? null : row.note,
  }));
