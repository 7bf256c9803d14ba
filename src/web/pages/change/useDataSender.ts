import { useSend } from '../../api/useSend.js';
import { ChangeAccessoryDataDocument, ChangeRigDataDocument } from '../../gql/graphql.js';
import type { ChangedSet } from './ChangePage.js';
import { isRole, type ItemFieldName } from './itemFields.js';

/** Sends what was changed of a set or an accessory; what is emptied becomes “not recorded”. */
export function useDataSender(item: ChangedSet) {
  const rig = useSend(ChangeRigDataDocument, (data) => data.changeRig);
  const accessory = useSend(ChangeAccessoryDataDocument, (data) => data.changeAccessory);
  const sending = item.__typename === 'Rig' ? rig : accessory;
  return {
    problems: sending.problems,
    isSending: sending.isSending,
    /** @returns its number as it is now; null when something is to be mended */
    send: async (
      { inventoryNumber, role, ...texts }: Partial<Record<ItemFieldName, string>>,
      version: number,
    ): Promise<string | null> => {
      const emptied = Object.entries(texts).map(([name, value]) => [name, value.trim() || null]);
      const input = {
        id: item.id,
        version,
        ...(inventoryNumber !== undefined && { inventoryNumber: inventoryNumber.trim() }),
        ...(Object.fromEntries(emptied) as Record<string, string | null>),
      };
      if (item.__typename === 'Rig') {
        return (await rig.send({ input }))?.rig?.inventoryNumber ?? null;
      }
      const asked = { ...input, ...(role !== undefined && isRole(role) && { role }) };
      return (await accessory.send({ input: asked }))?.accessory?.inventoryNumber ?? null;
    },
  };
}
