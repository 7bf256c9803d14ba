import { objectIdCategories } from '../../domain/provenance/objectIdCategory.js';
import type { ObjectIdFacts } from '../../domain/provenance/objectIdOf.js';
import type { AccessoryRole } from '../items/accessoryRole.js';
import type { ItemKind } from '../items/itemKind.js';

/** An item with its model and what was written for its sheet, as one row. */
export interface ObjectIdRow {
  itemId: string;
  kind: ItemKind;
  role: AccessoryRole | null;
  inventoryNumber: string;
  name: string | null;
  serialNumber: string | null;
  madeEdtf: string | null;
  modelMaker: string | null;
  modelDesignation: string | null;
  modelDescription: string | null;
  firstYearMade: number | null;
  lastYearMade: number | null;
  version: number | null;
  documentedAt: string | null;
  objectType: string | null;
  materials: string | null;
  measurements: string | null;
  inscriptions: string | null;
  distinguishingFeatures: string | null;
  title: string | null;
  subject: string | null;
  maker: string | null;
  placeOfOrigin: string | null;
  relatedPapers: string | null;
  description: string | null;
  /** JSON. */
  notApplicable: string | null;
}

/** A row of the database as the rule wants it. */
export function factsOfItem(
  item: ObjectIdRow,
  findings: readonly string[],
  madeEvent: string | null,
): ObjectIdFacts {
  const said = JSON.parse(item.notApplicable ?? '[]') as unknown[];
  return {
    isRig: item.kind === 'RIG',
    role: item.role === null ? null : inWords(item.role),
    inventoryNumber: item.inventoryNumber,
    name: item.name,
    serialNumber: item.serialNumber,
    made: item.madeEdtf ?? madeEvent,
    model:
      item.modelMaker === null || item.modelDesignation === null
        ? null
        : {
            maker: item.modelMaker,
            designation: item.modelDesignation,
            description: item.modelDescription,
            firstYearMade: item.firstYearMade,
            lastYearMade: item.lastYearMade,
          },
    findings,
    written: {
      TYPE_OF_OBJECT: item.objectType,
      MATERIALS_AND_TECHNIQUES: item.materials,
      MEASUREMENTS: item.measurements,
      INSCRIPTIONS_AND_MARKINGS: item.inscriptions,
      DISTINGUISHING_FEATURES: item.distinguishingFeatures,
      TITLE: item.title,
      SUBJECT: item.subject,
      MAKER: item.maker,
    },
    notApplicable: objectIdCategories.filter((category) => said.includes(category)),
  };
}

/** POWER_SUPPLY → "Power supply". */
function inWords(word: string): string {
  const words = word.toLowerCase().replaceAll('_', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
