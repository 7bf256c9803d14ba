import { objectIdCategories, type ObjectIdCategory } from './objectIdCategory.js';

/** What is on record of an item; texts are as a person wrote them, null where nobody did. */
export interface ObjectIdFacts {
  readonly isRig: boolean;
  /** What an accessory is for, in words; null for a rig. */
  readonly role: string | null;
  readonly inventoryNumber: string;
  readonly name: string | null;
  readonly serialNumber: string | null;
  /** When it was made, as written on its record or in its provenance. */
  readonly made: string | null;
  readonly model: {
    readonly maker: string;
    readonly designation: string;
    readonly description: string | null;
    readonly firstYearMade: number | null;
    readonly lastYearMade: number | null;
  } | null;
  /** Open findings: what can be seen on this one and hardly on another. */
  readonly findings: readonly string[];
  readonly written: Partial<Record<ObjectIdCategory, string | null>>;
  readonly notApplicable: readonly ObjectIdCategory[];
}

/** A category is answered by what was written for it, by other records, by nothing, or never. */
export type ObjectIdSource = 'WRITTEN' | 'OTHER_RECORDS' | 'NOT_APPLICABLE' | 'MISSING';

export interface ObjectIdAnswer {
  readonly category: ObjectIdCategory;
  /** Null when it is missing or cannot apply. */
  readonly answer: string | null;
  readonly source: ObjectIdSource;
}

/**
 * The identification sheet of an item: every one of the nine categories of Object ID, answered from
 * what was written for it, or else from what other records say. Nothing is made up: what nobody
 * recorded is missing.
 */
export function objectIdOf(facts: ObjectIdFacts): ObjectIdAnswer[] {
  const derived = derivedAnswers(facts);
  return objectIdCategories.map((category): ObjectIdAnswer => {
    const written = facts.written[category] ?? null;
    if (written !== null) return { category, answer: written, source: 'WRITTEN' };
    if (facts.notApplicable.includes(category)) {
      return { category, answer: null, source: 'NOT_APPLICABLE' };
    }
    const answer = derived[category] ?? null;
    return { category, answer, source: answer === null ? 'MISSING' : 'OTHER_RECORDS' };
  });
}

function derivedAnswers(facts: ObjectIdFacts): Partial<Record<ObjectIdCategory, string | null>> {
  const { model, serialNumber, findings } = facts;
  const kind = facts.isRig ? 'Radio set' : facts.role;
  return {
    TYPE_OF_OBJECT: [kind, model?.description].filter(isText).join(': ') || null,
    INSCRIPTIONS_AND_MARKINGS: serialNumber === null ? null : `Serial number ${serialNumber}.`,
    DISTINGUISHING_FEATURES: findings.length === 0 ? null : findings.join(' '),
    TITLE: facts.name ?? (model ? `${model.maker} ${model.designation}` : null),
    DATE_OR_PERIOD: facts.made ?? yearsOfModel(model),
    MAKER: model?.maker ?? null,
  };
}

function yearsOfModel(model: ObjectIdFacts['model']): string | null {
  if (!model?.firstYearMade) return null;
  const { firstYearMade, lastYearMade } = model;
  return lastYearMade === null
    ? `The model was made from ${firstYearMade} on.`
    : `The model was made from ${firstYearMade} to ${lastYearMade}.`;
}

const isText = (text: string | null | undefined): text is string =>
  text !== null && text !== undefined && text !== '';
