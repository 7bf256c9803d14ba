import { decodeList } from './decodeList.js';
import { detectEncoding } from './detectEncoding.js';
import type { ImportOptions } from './importOptions.js';
import type { ListDelimiter } from './listDelimiter.js';
import type { ListEncoding } from './listEncoding.js';
import type { ListProblems } from './listProblems.js';
import type { ListSource } from './listSource.js';
import { longestRecord } from './readRecords.js';
import { sniffDelimiter } from './sniffDelimiter.js';

export interface Survey {
  encoding: ListEncoding;
  delimiter: ListDelimiter;
}

/** How a list has to be read; what makes it no list at all goes to `problems`. */
export async function surveyList(
  source: ListSource,
  options: Pick<ImportOptions, 'encoding' | 'delimiter'>,
  problems: ListProblems,
): Promise<Survey> {
  const encoding = options.encoding ?? (await detectEncoding(source));
  let start = '';
  try {
    for await (const text of decodeList(source, encoding)) {
      if (start.length < longestRecord) start += text;
    }
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    problems.add(
      null,
      null,
      `This file is not text in ${encoding}; leave the encoding to be found out.`,
    );
  }
  if (problems.count === 0 && start.trim() === '') problems.add(null, null, 'The list is empty.');
  if (start.slice(0, 1000).includes('\0')) {
    problems.add(
      null,
      null,
      'This is not a plain text file (it holds NUL characters near its start): save the list as CSV in UTF-8.',
    );
  }
  return { encoding, delimiter: options.delimiter ?? sniffDelimiter(start) };
}
