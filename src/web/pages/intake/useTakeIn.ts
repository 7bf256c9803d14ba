import { useState } from 'react';
import { useModelNamed } from '../../api/useModelNamed.js';
import { useSend, type ShownProblem } from '../../api/useSend.js';
import { TakeInAccessoryDocument, TakeInRigDocument } from '../../gql/graphql.js';
import { useTexts } from '../../texts/textsContext.js';
import type { NewItemDraft } from './newItemDraft.js';

/** Writes a new set or accessory down. */
export function useTakeIn() {
  const { intake } = useTexts();
  const modelNamed = useModelNamed();
  const rig = useSend(TakeInRigDocument, (data) => data.createRig);
  const accessory = useSend(TakeInAccessoryDocument, (data) => data.createAccessory);
  const [ofModel, setOfModel] = useState<readonly ShownProblem[]>([]);

  return {
    problems: [...ofModel, ...rig.problems, ...accessory.problems],
    isSending: rig.isSending || accessory.isSending,
    /** @returns its number; null when something is to be mended */
    takeIn: async (draft: NewItemDraft): Promise<string | null> => {
      const typed = draft.model.trim();
      const modelId = await modelNamed(typed, draft.kind);
      if (modelId === undefined) {
        setOfModel([
          {
            code: 'INVALID',
            message: intake.modelUnknown(typed),
            path: ['modelId'],
            isOfPage: true,
          },
        ]);
        return null;
      }
      setOfModel([]);
      const input = {
        modelId,
        inventoryNumber: draft.inventoryNumber,
        name: draft.name.trim() || null,
        serialNumber: draft.serialNumber.trim() || null,
        placeId: draft.placeId || null,
        madeEdtf: draft.madeEdtf.trim() || null,
        note: draft.note.trim() || null,
      };
      if (draft.kind === 'RIG') {
        accessory.forget();
        return (await rig.send({ input }))?.rig?.inventoryNumber ?? null;
      }
      rig.forget();
      const kept = await accessory.send({ input: { ...input, role: draft.role } });
      return kept?.accessory?.inventoryNumber ?? null;
    },
  };
}
