// Builds the page. Addresses are relative because the same page is served from a scheme of the desktop's
// own and from a local address; nothing is inlined because the policy allows no data: addresses.
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  base: './',
  plugins: [react()],
  build: {
    outDir: '../dist/renderer',
    emptyOutDir: true,
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1200,
  },
});
