import type { ProvenanceEventKind } from '../provenance/provenanceEventKind.js';

/**
 * The class of CIDOC CRM 7.1.3 (ISO 21127), as Linked Art uses it, that fits each kind of event;
 * E7 Activity or E5 Event where none says more.
 */
export const crmClass: Readonly<Record<ProvenanceEventKind, string>> = {
  MADE: 'crm:E12_Production',
  ASSEMBLED: 'crm:E12_Production',
  SOLD: 'crm:E96_Purchase',
  GIFTED: 'crm:E8_Acquisition',
  INHERITED: 'crm:E8_Acquisition',
  LENT: 'crm:E10_Transfer_of_Custody',
  STORED: 'crm:E7_Activity',
  SHOWN: 'crm:E7_Activity',
  ALTERED: 'crm:E11_Modification',
  REPAIRED: 'crm:E11_Modification',
  LOST: 'crm:E5_Event',
  FOUND: 'crm:E5_Event',
  USED: 'crm:E7_Activity',
};
