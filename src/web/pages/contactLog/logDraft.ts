import type { ImportContactLogInput } from '../../gql/graphql.js';

/** What a log does not say of itself, as it was chosen. */
export interface LogDraft {
  /** The rig of contacts that name none; empty for none. */
  rigId: string;
  gapMinutes: string;
  /** By the text in MY_RIG: the rig that is meant, or that its contacts are left out. */
  meant: Record<string, string>;
}

export const leftOut = 'LEFT_OUT';
export const noChoice: LogDraft = { rigId: '', gapMinutes: '60', meant: {} };

/** Texts are chosen for once, whatever capitals a log writes them in. */
export const meantFor = (text: string): string => text.trim().toLowerCase();

export function logInput(
  adi: string,
  { rigId, gapMinutes, meant }: LogDraft,
  isDryRun: boolean,
): ImportContactLogInput {
  const chosen = Object.entries(meant);
  return {
    adi,
    isDryRun,
    rigId: rigId || null,
    rigs: chosen.flatMap(([text, rig]) => (rig === leftOut ? [] : [{ text, rigId: rig }])),
    ignore: chosen.flatMap(([text, rig]) => (rig === leftOut ? [text] : [])),
    // What is no number is refused by the API with what it may be.
    gapMinutes: Math.round(Number(gapMinutes)) || 0,
  };
}
