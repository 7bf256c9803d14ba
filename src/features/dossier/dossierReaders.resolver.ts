import { Query, Resolver } from 'type-graphql';
import { DossierReaderGuide } from './dossier.type.js';
import { DossierReader, usuallyWithheld } from './dossierReader.js';

@Resolver()
export class DossierReadersResolver {
  @Query(() => [DossierReaderGuide], {
    description: 'For whom dossiers are written, with what is usually left out for each.',
  })
  dossierReaders(): DossierReaderGuide[] {
    return Object.values(DossierReader).map((reader) => ({
      reader,
      usuallyWithheld: usuallyWithheld[reader],
    }));
  }
}
