import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const page = (name: string): string => join(import.meta.dirname, name);

/** The program that answers while the pages are worked on: `npm run dev` beside `npx vite src/web`. */
const program = 'http://127.0.0.1:4600';

export default defineConfig({
  plugins: [react()],
  build: {
    target: 'es2022',
    emptyOutDir: true,
    // For the worker, which keeps every file for when there is no connection.
    manifest: 'files.json',
    rolldownOptions: {
      input: { index: page('index.html'), 'offline-worker': page('worker/offlineWorker.ts') },
      output: {
        // A worker must lie above all that it serves.
        entryFileNames: ({ name }) =>
          name === 'offline-worker' ? '[name].js' : 'assets/[name]-[hash].js',
      },
    },
  },
  server: {
    host: '127.0.0.1',
    proxy: { '/graphql': { target: program, ws: true }, '/attachments': program },
  },
});
