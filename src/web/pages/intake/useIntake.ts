import { useState } from 'react';
import { useClient } from 'urql';
import { useSend } from '../../api/useSend.js';
import type { Draft } from '../../drafts/useDraft.js';
import {
  AttachPictureDocument,
  InspectionSentDocument,
  RaiseHazardDocument,
  RecordInspectionDocument,
  type HazardKind,
  type SentInspectionFragment,
} from '../../gql/graphql.js';
import type { IntakeDraft } from './intakeDraft.js';

/**
 * Sends an intake: the hazards first, then the inspection, then the pictures of its findings. What is
 * through is noted in the draft, so that after a lost connection it goes on where it stopped.
 */
export function useIntake(
  item: { id: string; inventoryNumber: string },
  { draft, change }: Draft<IntakeDraft>,
) {
  const client = useClient();
  const hazards = useSend(RaiseHazardDocument, (data) => data.raiseHazard);
  const inspection = useSend(RecordInspectionDocument, (data) => data.recordInspection);
  const pictures = useSend(AttachPictureDocument, (data) => data.attachFile);
  const [isSending, setIsSending] = useState(false);

  const raiseAll = async (): Promise<boolean> => {
    let { raised } = draft;
    for (const [kind, note] of Object.entries(draft.hazards) as [HazardKind, string][]) {
      if (raised.includes(kind)) continue;
      const input = { itemId: item.id, kind, note: note.trim() || null };
      if (!(await hazards.send({ input }))) return false;
      raised = [...raised, kind];
      change({ raised });
    }
    return true;
  };

  /** The one that was recorded when its answer got lost, if there is such a one. */
  const alreadySent = async (at: string): Promise<SentInspectionFragment | null> => {
    const answer = await client
      .query(
        InspectionSentDocument,
        { number: item.inventoryNumber },
        { requestPolicy: 'network-only' },
      )
      .toPromise();
    const there = answer.data?.item?.inspections.nodes ?? [];
    return there.find(({ inspectedAt }) => Date.parse(inspectedAt) === Date.parse(at)) ?? null;
  };

  const record = async (): Promise<SentInspectionFragment | null> => {
    const at = draft.inspectedAt ?? new Date().toISOString();
    if (draft.inspectedAt !== null) {
      const there = await alreadySent(at);
      if (there) return there;
    }
    change({ inspectedAt: at });
    const sent = await inspection.send({
      input: {
        itemId: item.id,
        inspectedAt: at,
        note: draft.note.trim() || null,
        findings: draft.findings.map(({ zone, severity, note }) => ({ zone, severity, note })),
        fitOutChecks: checksOf(draft),
      },
    });
    return sent?.inspection ?? null;
  };

  const attachAll = async ({ findings }: SentInspectionFragment): Promise<boolean> => {
    let { attached } = draft;
    for (const { fileIds, zone, note } of draft.findings) {
      const toId = findings.find((one) => one.zone === zone && one.note === note.trim())?.id;
      for (const fileId of fileIds) {
        if (toId === undefined || attached.includes(fileId)) continue;
        if (!(await pictures.send({ input: { fileId, toId } }))) return false;
        attached = [...attached, fileId];
        change({ attached });
      }
    }
    return true;
  };

  return {
    problems: [...hazards.problems, ...inspection.problems, ...pictures.problems],
    isSending,
    /** @returns whether all of it is in the records */
    send: async (): Promise<boolean> => {
      setIsSending(true);
      try {
        if (!(await raiseAll())) return false;
        const recorded = await record();
        return recorded !== null && (await attachAll(recorded));
      } finally {
        setIsSending(false);
      }
    },
  };
}

/** The positions ticked off, in the order in which the API will name them in its problems. */
export const checksOf = ({ checks }: IntakeDraft) =>
  Object.entries(checks).flatMap(([positionId, state]) => (state ? [{ positionId, state }] : []));
