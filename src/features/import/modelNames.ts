import { v7 as uuidv7 } from 'uuid';
import type { NewRow } from '../../db/insertRow.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ItemKind } from '../items/itemKind.js';
import type { ModelEntity } from '../models/model.entity.js';
import type { FoundName } from './foundName.js';
import { nameKey } from './nameKey.js';

/** The models by maker and designation; those that a list names first are to be added. */
export class ModelNames {
  /** Still to be written; whoever writes them empties the list. */
  pending: NewRow<ModelEntity>[] = [];
  readonly added: string[] = [];

  private constructor(private readonly known: Map<string, { id: string; itemKind: ItemKind }>) {}

  static async load(query: RowSource['rows']): Promise<ModelNames> {
    const rows = await query<{
      id: string;
      itemKind: ItemKind;
      maker: string;
      designation: string;
    }>(
      `SELECT id AS "id", item_kind AS "itemKind", maker AS "maker", designation AS "designation"
       FROM model`,
    );
    return new ModelNames(
      new Map(rows.map((row) => [keyOf(row), { id: row.id, itemKind: row.itemKind }])),
    );
  }

  find(model: { maker: string; designation: string }, itemKind: ItemKind): FoundName {
    const key = keyOf(model);
    const known = this.known.get(key);
    if (known === undefined) {
      const id = uuidv7();
      this.known.set(key, { id, itemKind });
      this.pending.push({ ...model, id, itemKind, ...nothingElse });
      this.added.push(`${model.maker} ${model.designation}`);
      return { id };
    }
    if (known.itemKind === itemKind) return { id: known.id };
    const [is, wanted] =
      itemKind === 'RIG' ? ['an accessory', 'of rigs'] : ['a rig', 'of accessories'];
    return {
      why: `The model ${model.maker} ${model.designation} is ${is}; this list is ${wanted}.`,
    };
  }
}

const keyOf = ({ maker, designation }: { maker: string; designation: string }): string =>
  `${nameKey(maker)}\n${nameKey(designation)}`;

const nothingElse = {
  description: null,
  firstYearMade: null,
  lastYearMade: null,
  note: null,
  retiredAt: null,
};
