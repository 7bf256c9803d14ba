import type { Reader } from '../../db/reader.js';
import { shownItem } from '../items/shownItem.js';
import type { LoanDirection } from '../outOfHand/lossKind.js';

export interface LoanFallingDue {
  loanId: string;
  version: number;
  itemName: string;
  direction: LoanDirection;
  otherParty: string;
  /** A day. */
  dueOn: string;
}

/** What is lent either way and is to be back by a day, the soonest first. */
export async function readLoansFallingDue(reader: Reader): Promise<LoanFallingDue[]> {
  const rows = await reader.rows<
    Omit<LoanFallingDue, 'itemName'> & { inventoryNumber: string; name: string | null }
  >(
    `SELECT loan.id AS "loanId", loan.version AS "version", loan.direction AS "direction",
       loan.due_on AS "dueOn", party.name AS "otherParty",
       item.inventory_number AS "inventoryNumber", item.name AS "name"
     FROM loan JOIN item ON item.id = loan.item_id JOIN party ON party.id = loan.borrower_id
     WHERE loan.returned_on IS NULL AND loan.due_on IS NOT NULL
     ORDER BY loan.due_on, loan.id`,
  );
  return rows.map(({ inventoryNumber, name, ...loan }) => ({
    ...loan,
    itemName: shownItem({ inventoryNumber, name }),
  }));
}
