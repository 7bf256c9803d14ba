/** A problem and where it is: the line, and what is counted within it. */
export interface PlacedProblem {
  line: number | null;
  column: string | null;
  message: string;
}

/** RFC 4180, with a mark before what a spreadsheet would take for a formula. */
export const problemsAsCsv = (problems: readonly PlacedProblem[], placeName: string): string =>
  [['line', placeName, 'message'], ...problems.map(cells)]
    .map((row) => row.map(quoted).join(','))
    .join('\r\n');

const cells = ({ line, column, message }: PlacedProblem): string[] => [
  line === null ? '' : String(line),
  column ?? '',
  message,
];

const quoted = (cell: string): string => {
  const neutral = /^[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
  return `"${neutral.replaceAll('"', '""')}"`;
};
