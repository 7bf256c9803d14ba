import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** The program that answers while the pages are worked on: `npm run dev` beside `npx vite src/web`. */
const program = 'http://127.0.0.1:4600';

export default defineConfig({
  plugins: [react()],
  build: { target: 'es2022', emptyOutDir: true, sourcemap: false },
  server: {
    host: '127.0.0.1',
    proxy: { '/graphql': { target: program, ws: true }, '/attachments': program },
  },
});
