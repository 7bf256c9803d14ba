import { argumentProblem } from '../../api/kit/argumentProblem.js';
import { listParameter } from '../../db/dialect.js';
import type { RowSource } from '../../db/rowSource.js';
import type { ScheduleOf } from './schedule.reads.js';

/**
 * A schedule that lacks what was asked for would be found out after the fire: a number or a place
 * that is unknown is refused.
 * @throws GraphQLError naming all that is to be mended
 */
export async function checkScheduleOf(source: RowSource, of: ScheduleOf): Promise<void> {
  const problems = [
    ...(await problemsOfNumbers(source, of.numbers)),
    ...(await problemsOfPlace(source, of.placeName)),
  ];
  if (problems.length > 0) throw argumentProblem(problems.join(' '));
}

async function problemsOfNumbers(
  { rows, dialect }: RowSource,
  numbers: ScheduleOf['numbers'],
): Promise<string[]> {
  if (numbers === null) return [];
  if (numbers.length === 0) return ['Name at least one inventory number, or leave them out.'];
  const known = await rows<{ number: string; retiredAt: string | null }>(
    `SELECT inventory_number AS "number", retired_at AS "retiredAt" FROM item
     WHERE ${dialect.isAnyOf('inventory_number')}`,
    [listParameter(numbers)],
  );
  const byNumber = new Map(known.map((item) => [item.number, item]));
  return [...new Set(numbers)].flatMap((number) => {
    const item = byNumber.get(number);
    if (item === undefined) {
      return [`There is no item with the inventory number “${number.slice(0, 40)}”.`];
    }
    return item.retiredAt === null ? [] : [`${number} is no longer in the collection.`];
  });
}

async function problemsOfPlace(
  { rows }: RowSource,
  placeName: ScheduleOf['placeName'],
): Promise<string[]> {
  if (placeName === null) return [];
  const [place] = await rows<{ id: string }>('SELECT id AS "id" FROM place WHERE name = ?', [
    placeName,
  ]);
  return place ? [] : [`There is no place called “${placeName.slice(0, 60)}”.`];
}
