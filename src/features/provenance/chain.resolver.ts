import type { GraphQLResolveInfo } from 'graphql';
import { FieldResolver, Info, Resolver, Root } from 'type-graphql';
import { loadedField } from '../../api/kit/loadRelations.js';
import { Party } from '../parties/party.type.js';
import { Custody, Holding, HoldingOverlap, ProvenanceChain } from './chain.type.js';
import { ItemDateFindings } from './itemDates.type.js';
import { Provenance } from './provenance.type.js';

@Resolver(() => Provenance)
export class ChainOfProvenanceResolver {
  @FieldResolver(() => ProvenanceChain, {
    description: 'Who held it when, and what is not accounted for.',
  })
  chain(@Root() group: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(group, info);
  }

  @FieldResolver(() => ItemDateFindings, {
    description: 'When it was made, by its parts, its serial number and all that is said of it.',
  })
  dates(@Root() group: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(group, info);
  }
}

@Resolver(() => ProvenanceChain)
export class ProvenanceChainResolver {
  @FieldResolver(() => [Holding], { description: 'Who held it, one after another.' })
  holdings(@Root() chain: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(chain, info);
  }

  @FieldResolver(() => [HoldingOverlap], {
    description: 'When several held it at once, which cannot be; cut where one comes or goes.',
  })
  overlaps(@Root() chain: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(chain, info);
  }

  @FieldResolver(() => [Custody], {
    description: 'Where it was kept without changing hands: lent, stored, shown; by its beginning.',
  })
  custody(@Root() chain: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(chain, info);
  }
}

@Resolver(() => HoldingOverlap)
export class HoldingOverlapResolver {
  @FieldResolver(() => [Party], {
    description: 'All of them, but for the collection where its owner is not named.',
  })
  holders(@Root() overlap: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(overlap, info);
  }
}

@Resolver(() => Custody)
export class CustodyResolver {
  @FieldResolver(() => Party, {
    nullable: true,
    description: 'Who kept it, or whose it is where it is lent to us; null if unknown.',
  })
  keeper(@Root() custody: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(custody, info);
  }
}

@Resolver(() => Holding)
export class HoldingResolver {
  @FieldResolver(() => Party, { nullable: true, description: 'Who held it; null if unknown.' })
  holder(@Root() holding: object, @Info() info: GraphQLResolveInfo) {
    return loadedField(holding, info);
  }
}
