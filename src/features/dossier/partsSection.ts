import type { Reader } from '../../db/reader.js';
import {
  originality,
  type OriginalityShare,
  type WeighedPosition,
} from '../../domain/originality/originality.js';
import { readOriginality } from '../originality/readOriginality.js';
import {
  dayOf,
  inWords,
  section,
  withheldWord,
  type DossierSection,
  type DossierWithholding,
} from './dossierDocument.js';
import type { DossierItem } from './dossierItem.js';

interface SittingPart {
  componentId: string;
  designator: string;
  type: string | null;
  marking: string | null;
  dateCode: string | null;
  origin: string;
  fittedAt: string;
}

/**
 * What sits in each position, and whether it was there from the start: the positions that the model
 * should have, in their order, then what else is fitted.
 */
export async function partsSection(
  reader: Reader,
  item: DossierItem,
  { withheld }: DossierWithholding,
  asOfMs: number,
): Promise<DossierSection> {
  const parts = await reader.rows<SittingPart>(
    `SELECT fitting.component_id AS "componentId", fitting.designator AS "designator",
       part_type.designation AS "type", component.marking AS "marking",
       component.date_code AS "dateCode", component.origin AS "origin",
       fitting.fitted_at AS "fittedAt"
     FROM fitting JOIN component ON component.id = fitting.component_id
     LEFT JOIN part_type ON part_type.id = component.part_type_id
     WHERE fitting.item_id = ? AND fitting.removed_at IS NULL
     ORDER BY natural_key(fitting.designator), fitting.id`,
    [item.id],
  );
  const found = (await readOriginality(reader, [item.id], asOfMs)).get(item.id);
  const positions = found?.positions ?? [];
  const partIn = new Map(parts.map((part) => [part.componentId, part]));
  const described = (part: SittingPart | undefined): string[] => [
    part?.type ?? '',
    withheld.has('SERIAL_NUMBERS') && part?.marking ? withheldWord : (part?.marking ?? ''),
    part?.dateCode ?? '',
  ];
  const shown = new Set(positions.map(({ componentId }) => componentId));
  const rows = [
    ...positions.map(({ designator, componentId, origin }) => {
      const part = componentId === null ? undefined : partIn.get(componentId);
      const fitted = origin === 'REPLACED' && part ? dayOf(part.fittedAt) : '';
      return [designator, ...described(part), inWords(origin), fitted];
    }),
    ...parts
      .filter(({ componentId }) => !shown.has(componentId))
      .map((part) => [
        part.designator,
        ...described(part),
        inWords(part.origin),
        part.origin === 'ORIGINAL' ? '' : dayOf(part.fittedAt),
      ]),
  ];
  return section('What is original', {
    remarks: remarksOn(rows.length, positions),
    table:
      rows.length === 0
        ? null
        : { columns: ['Position', 'Type', 'Marking', 'Date code', 'Origin', 'Fitted'], rows },
  });
}

function remarksOn(rowCount: number, positions: readonly WeighedPosition[]): string[] {
  if (rowCount === 0) return ['No parts are recorded.'];
  if (positions.length === 0) {
    return ['The positions that its model should have are not recorded: no share can be given.'];
  }
  const byPosition = originality(positions.map(({ origin }) => ({ origin, weight: 1 })));
  const { original, replaced, empty, unknown } = byPosition;
  return [
    `Of ${positions.length} positions ${original} hold the part that it was made with, ${replaced} another, ${empty} nothing; of ${unknown} nobody can say.`,
    `Original by position: ${shareWords(byPosition)}; by the weights of the positions: ${shareWords(originality(positions))}.`,
  ];
}

function shareWords({ low, high }: OriginalityShare): string {
  if (low === null || high === null) return 'unknown';
  const [least, most] = [Math.round(low * 100), Math.round(high * 100)];
  return least === most ? `${least} %` : `${least} % to ${most} %`;
}
