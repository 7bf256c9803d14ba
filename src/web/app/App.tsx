import { RouterProvider } from '@tanstack/react-router';
import { useState } from 'react';
import { Provider } from 'urql';
import { makeClient } from '../api/client.js';
import type { Spoken } from '../texts/language.js';
import { TextsProvider } from '../texts/TextsProvider.js';
import { router } from './router.js';

/** The whole dashboard: the API's client, the texts in the person's language, and the pages. */
export function App({ first }: { first: Spoken }) {
  const [client] = useState(makeClient);
  return (
    <Provider value={client}>
      <TextsProvider first={first}>
        <RouterProvider router={router} />
      </TextsProvider>
    </Provider>
  );
}
