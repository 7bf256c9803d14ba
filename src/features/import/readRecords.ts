import { Readable } from 'node:stream';
import { parse, type CsvError } from 'csv-parse';

/** One row as it stands in the file. */
export interface ListRecord {
  /** Line in which it begins, from 1. */
  line: number;
  cells: string[];
}

/** A row may not be longer than this, so that a quotation mark left open does not eat the memory. */
export const longestRecord = 200_000;

/**
 * The rows of a list (RFC 4180), streaming. What cannot be read goes to `onProblem`; after a fault
 * that leaves the rest of the file unclear, reading ends.
 */
export async function* readRecords(
  text: AsyncIterable<string>,
  delimiterMark: string,
  onProblem: (line: number, message: string) => void,
): AsyncGenerator<ListRecord> {
  const faults: Fault[] = [];
  let lastLine = 0;
  const parser = parse({
    delimiter: delimiterMark,
    record_delimiter: ['\n'],
    info: true,
    relax_column_count: true,
    skip_empty_lines: true,
    skip_records_with_error: true,
    max_record_size: longestRecord,
    on_record: (record: string[], { lines }) => {
      lastLine = lines;
      return record;
    },
    on_skip: (error) => {
      if (error) faults.push(faultOf(error, lastLine));
      return undefined;
    },
  });
  const source = Readable.from(text);
  source.on('error', (error) => parser.destroy(error));
  let fatalAt = Infinity;
  let reported = 0;
  const report = () => {
    for (const { line, message, isFatal } of faults.splice(0)) {
      if (line <= reported || line > fatalAt) continue;
      reported = line;
      if (isFatal) fatalAt = line;
      onProblem(line, message);
    }
  };
  for await (const { record, info } of source.pipe(parser) as AsyncIterable<Parsed>) {
    report();
    const line = info.lines - record.reduce((sum, cell) => sum + newlines(cell), 0);
    if (line > fatalAt) break;
    yield { line, cells: record };
  }
  report();
  source.destroy();
  parser.destroy();
}

interface Parsed {
  record: string[];
  info: { lines: number };
}

interface Fault {
  line: number;
  message: string;
  isFatal: boolean;
}

const newlines = (cell: string): number => cell.split('\n').length - 1;

function faultOf(error: CsvError, lastLine: number): Fault {
  const at = typeof error['lines'] === 'number' ? error['lines'] : lastLine + 1;
  if (error.code === 'INVALID_OPENING_QUOTE') {
    const message =
      'A quotation mark stands inside a cell: put the whole cell in quotation marks and write ' +
      'each mark inside it twice, as in "6"" speaker".';
    return { line: at, message, isFatal: false };
  }
  const rest = 'What follows it was not read.';
  if (error.code === 'CSV_MAX_RECORD_SIZE' || error.code === 'CSV_QUOTE_NOT_CLOSED') {
    const message =
      error.code === 'CSV_MAX_RECORD_SIZE'
        ? `This row is longer than ${longestRecord} bytes; most often a quotation mark is not closed. ${rest}`
        : `A quotation mark that opens in this row, or below it, is never closed. ${rest}`;
    return { line: lastLine + 1, message, isFatal: true };
  }
  const message =
    'Text follows a closing quotation mark: write each quotation mark inside a cell twice, as in ' +
    `"6"" speaker". ${rest}`;
  return { line: at, message, isFatal: true };
}
