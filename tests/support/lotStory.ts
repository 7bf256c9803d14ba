import type { Refused } from '../../src/db/refusal.js';
import type { TestApi } from './testApi.js';

export const money = (amount: string, currency = 'EUR') => ({ amount, currency });
export const newRig = (more: object = {}) => ({ newItem: { kind: 'RIG', ...more } });
export const newAccessory = (more: object = {}) => ({
  newItem: { kind: 'ACCESSORY', role: 'SPEAKER', ...more },
});

export const lotFields = `
  id version acquiredOn venue spreadMethod
  otherParty { id name kind }
  price { amount minorUnits currency }
  extraCosts { id version description amount { amount currency } }
  totals { amount currency }
  claims { nodes { statement saidBy { name } item { inventoryNumber } } }
  lines(first: 100) { totalCount nodes {
    id version ordinal sundries statedShare statedValue { amount currency }
    item { id inventoryNumber name }
    price { amount minorUnits } extras { amount currency minorUnits } totals { amount currency minorUnits }
    basis { method counted { what count } asOf }
  } }`;

/** A lot as the API shows it, with its pages as plain lists. */
export interface ShownLot {
  id: string;
  price: { minorUnits: number };
  extraCosts: any[];
  lines: any[];
  claims: any[];
  totals: { amount: string; currency: string }[];
}

export const shownLot = (lot: any): ShownLot => ({
  ...lot,
  lines: lot.lines.nodes,
  claims: lot.claims.nodes,
});

/** What a mutation answers: the thing or null under its own name, and problems. */
export interface Answer {
  acquisition?: any;
  claim?: any;
  expense?: any;
  provenanceEvent?: any;
  problems: Refused[];
}

/** Records a lot, and returns the payload with its problems. */
export const tryToRecord = async (api: TestApi, input: object): Promise<Answer> =>
  (
    await api.ask(
      `mutation ($input: RecordAcquisitionInput!) {
        recordAcquisition(input: $input) { acquisition { ${lotFields} } problems { code message path } }
      }`,
      { input: { acquiredOn: '2026-05-03', price: money('100.00'), ...input } },
    )
  ).recordAcquisition;

/** Records a lot that must be taken. */
export async function record(api: TestApi, input: object): Promise<ShownLot> {
  const { acquisition, problems } = await tryToRecord(api, input);
  if (!acquisition) throw new Error(JSON.stringify(problems));
  return shownLot(acquisition);
}

/** Sends a mutation with one input; returns its payload. `shown` is what is asked of the thing. */
export async function send(
  api: TestApi,
  verb: string,
  field: string,
  shown: string,
  input: object,
): Promise<Answer> {
  const type = `${verb.charAt(0).toUpperCase()}${verb.slice(1)}Input`;
  const answer = await api.ask(
    `mutation ($input: ${type}!) {
      ${verb}(input: $input) { ${field} { ${shown} } problems { code message path } }
    }`,
    { input },
  );
  return answer[verb];
}
