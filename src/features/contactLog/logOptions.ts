/** How a contact log is to be taken. */
export interface LogOptions {
  isDryRun: boolean;
  /** Nothing logged for longer ends a use. */
  gapMinutes: number;
  /** Record id of the rig of contacts that name none; null: such contacts are problems. */
  rigId: string | null;
  /** Which rig a text in MY_RIG means. */
  rigTexts: readonly { text: string; rigId: string }[];
  /** Texts in MY_RIG whose contacts are left out: a rig that is not in the collection. */
  ignore: readonly string[];
}
