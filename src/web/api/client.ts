import { cacheExchange, Client, fetchExchange } from 'urql';

/** The one way to the API; nothing else leaves the page. */
export function makeClient(): Client {
  return new Client({
    url: '/graphql',
    exchanges: [cacheExchange, fetchExchange],
    requestPolicy: 'cache-and-network',
    // The server refuses what is not asked for on purpose: urql's GET would need a header more.
    preferGetMethod: false,
  });
}
