import type { ImportOptions } from '../../src/features/import/importOptions.js';

/** A list about which the person says nothing. */
export const importOptions: ImportOptions = {
  kind: 'RIG',
  isDryRun: false,
  encoding: null,
  delimiter: null,
  dateOrder: null,
  decimalMark: null,
  currency: null,
  role: null,
  takesFirstDay: false,
  mapping: [],
  ignore: [],
  latestDay: '2026-06-01',
  mostProblems: 1000,
};
