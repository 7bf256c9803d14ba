import { checkedRecordId } from '../../api/kit/checkedRecordId.js';
import type { Checklist } from '../../db/checklist.js';

const fewestMembers = 2;
const mostMembers = 50;

/** The components of a set as given; what is wrong goes to the checklist. */
export async function readMembers(
  check: Checklist,
  componentIds: readonly string[],
): Promise<string[]> {
  const path = ['componentIds'];
  check.that(
    componentIds.length >= fewestMembers && componentIds.length <= mostMembers,
    `A set has from ${fewestMembers} to ${mostMembers} components; these are ${componentIds.length}.`,
    path,
  );
  check.that(
    new Set(componentIds).size === componentIds.length,
    'One of them is named twice: a component cannot match itself.',
    path,
  );
  const ids: string[] = [];
  for (const [index, text] of componentIds.slice(0, mostMembers).entries()) {
    const at = [...path, String(index)];
    const id = checkedRecordId(check, 'Component', text, at);
    await check.exists('component', id, at);
    if (id !== null) ids.push(id);
  }
  return ids;
}
