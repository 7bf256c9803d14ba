import type { DossierReader, DossierWithheld } from '../../gql/graphql.js';

interface Asked {
  number: string;
  reader: DossierReader;
  withheld: readonly DossierWithheld[];
}

type Form = { kind: 'look' } | { kind: 'pdf'; paper: 'A4' | 'LETTER' };

/** Where the server hands out the dossier that is asked for. */
export function dossierAddress({ number, reader, withheld }: Asked, form: Form): string {
  const query = new URLSearchParams({
    item: number,
    reader,
    withhold: withheld.length === 0 ? 'nothing' : withheld.join(','),
    ...(form.kind === 'look' ? { show: '1' } : { paper: form.paper }),
  });
  return `/download/dossier.${form.kind === 'look' ? 'html' : 'pdf'}?${query.toString()}`;
}
