import { fileURLToPath } from 'node:url'
import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

// The page is served by our own server under a content-security-policy without inline scripts and without data:
// addresses, hence assetsInlineLimit 0.
export default defineConfig({
  root: here('./src/web'),
  base: '/',
  plugins: [react()],
  build: {
    outDir: here('./dist/web'),
    emptyOutDir: true,
    target: 'es2023',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    sourcemap: true,
  },
  worker: { format: 'es' },
  server: { proxy: { '/api': process.env.UNDERLID_SERVER ?? 'http://127.0.0.1:7413' } },
})
