/** A report before it is written as Markdown or HTML. Texts in it are plain: the writers escape. */
export type ReportBlock =
  | { kind: 'HEADING'; level: 1 | 2; text: string }
  | { kind: 'WORDS'; text: string }
  | { kind: 'LIST'; items: readonly string[] }
  | {
      kind: 'TABLE';
      columns: readonly { name: string; isNumber?: boolean }[];
      rows: readonly (readonly string[])[];
    };
