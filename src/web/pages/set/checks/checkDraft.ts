export interface CheckDraft {
  procedure: string;
  outcome: 'passed' | 'failed' | '';
  validDays: string;
  /** Null until somebody is named: then the owner is taken to have done it. */
  by: string | null;
  at: string;
  note: string;
}

export const emptyCheck: CheckDraft = {
  procedure: '',
  outcome: '',
  validDays: '365',
  by: null,
  at: '',
  note: '',
};

/** Where what is half typed of a check is kept. */
export const checkPlace = (itemId: string): string => `check.${itemId}`;
