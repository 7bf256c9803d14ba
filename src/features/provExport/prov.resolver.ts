import type { GraphQLResolveInfo } from 'graphql';
import { Arg, FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { describedEnum } from '../../api/kit/describedEnum.js';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Provenance } from '../provenance/provenance.type.js';

export const ProvFormat = describedEnum('ProvFormat', 'How a PROV document is written.', {
  PROV_JSON: 'PROV-JSON (W3C Member Submission, 2013).',
  JSON_LD: 'PROV-O (W3C Recommendation, 2013) as JSON-LD.',
  TURTLE: 'PROV-O as Turtle.',
});

@Resolver(() => Provenance)
export class ProvOfProvenanceResolver {
  @FieldResolver(() => String, {
    description:
      'The whole of it as W3C PROV, for other programs to read, with classes of CIDOC CRM for the ' +
      'kinds of events.',
  })
  prov(
    @Root() group: object,
    @Arg('format', () => ProvFormat, {
      defaultValue: ProvFormat.PROV_JSON,
      description: 'How it is written.',
    })
    _format: string,
    @Info() info: GraphQLResolveInfo,
  ) {
    return loadedField(group, info);
  }
}
