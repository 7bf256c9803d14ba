import { Arg, FieldResolver, Query, Resolver, Root } from 'type-graphql';
import { PartType } from '../parts/partType.type.js';
import { referenceTubeNamed, referenceTubes } from './referenceTubes.js';
import { shownTube } from './shownTube.js';
import { TubeReference } from './tubeReference.type.js';

@Resolver(() => PartType)
export class TubeReferenceResolver {
  @FieldResolver(() => TubeReference, {
    nullable: true,
    description: 'What the reference table has on a tube of this name; null if nothing.',
  })
  reference(@Root() partType: PartType) {
    const tube = partType.kind === 'TUBE' ? referenceTubeNamed(partType.designation) : undefined;
    return tube ? shownTube(tube) : null;
  }

  @Query(() => [TubeReference], {
    description: 'Tube types of the reference table whose name begins so; all of them if left out.',
  })
  referenceTubes(
    @Arg('beginning', () => String, {
      defaultValue: '',
      description: 'How the designation or another name begins: 6BA.',
    })
    beginning: string,
  ) {
    const start = beginning.trim().toUpperCase();
    return referenceTubes
      .filter(({ designation, aliases }) =>
        [designation, ...aliases].some((name) => name.startsWith(start)),
      )
      .map(shownTube);
  }
}
