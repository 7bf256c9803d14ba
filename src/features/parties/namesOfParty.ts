/** Every way in which a party may be named: a person is called by one of the names as well. */
export const namesOfParty = ({ kind, name, contact }: NamedParty): string[] => {
  const parts =
    kind === 'PERSON' ? name.split(/[\s,]+/).filter((part) => /^\p{Lu}/u.test(part)) : [];
  return [name, ...parts, ...(contact === null ? [] : [contact])];
};

export interface NamedParty {
  kind: string;
  name: string;
  contact: string | null;
}
