/** A photograph in a report; without anything that the camera wrote. */
export interface ReportPicture {
  /** null when it cannot be read. */
  jpeg: Buffer | null;
  caption: string;
  /** Where the server of the collection hands it out. */
  path: string;
}

/** A report before it is written as Markdown or HTML. Texts in it are plain: the writers escape. */
export type ReportBlock =
  | { kind: 'HEADING'; level: 1 | 2; text: string }
  | { kind: 'WORDS'; text: string }
  | { kind: 'LIST'; items: readonly string[] }
  | { kind: 'PICTURES'; rows: readonly (readonly ReportPicture[])[] }
  | {
      kind: 'TABLE';
      columns: readonly { name: string; isNumber?: boolean }[];
      rows: readonly (readonly string[])[];
    };
