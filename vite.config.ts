import { sveltekit } from '@sveltejs/kit/vite';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { entryFiles } from './src/cli/entryFiles.mjs';
import { readPrefix } from './src/cli/readPrefix.mjs';

const lib = fileURLToPath(new URL('./src/lib', import.meta.url));
/** what src/lib/address finds written in */
const define = { __SLIP_LEDGER_PREFIX__: JSON.stringify(readPrefix(process.env)) };

/**
 * Two builds share this file: the web app (through the framework) and, with `--mode entries`, the
 * entry files of src/cli and src/jobs, bundled so that production needs no package but the native
 * database.
 */
export default defineConfig(({ mode }) =>
	mode === 'entries'
		? {
				define,
				resolve: { alias: { $lib: lib } },
				build: {
					ssr: true,
					outDir: `${process.env.SLIP_LEDGER_BUILD_FOLDER ?? 'build/loose'}/entries`,
					emptyOutDir: true,
					copyPublicDir: false,
					sourcemap: true,
					rollupOptions: {
						input: entryFiles(),
						output: { entryFileNames: '[name].js', chunkFileNames: 'chunks/[name]-[hash].js' }
					}
				},
				ssr: { noExternal: true, external: ['better-sqlite3'] }
			}
		: {
				define,
				plugins: [sveltekit()],
				test: {
					projects: [
						{
							extends: true,
							test: {
								name: 'unit',
								include: [
									'tests/{address,ride,drivetrain,slip,reliability,hardware,release,charts,ui,server,jobs,cli,routes,lint,published,sample-rides}/**/*.test.ts'
								],
								environment: 'node',
								// a machine with other work must not turn a sound test red
								testTimeout: 60_000,
								hookTimeout: 60_000
							}
						},
						{
							extends: true,
							test: {
								name: 'faults',
								include: ['tests/faults/**/*.test.ts'],
								environment: 'node',
								testTimeout: 120_000,
								hookTimeout: 120_000,
								fileParallelism: false
							}
						},
						{
							extends: true,
							test: {
								name: 'browser',
								include: ['tests/browser/**/*.test.ts'],
								environment: 'node',
								testTimeout: 120_000,
								hookTimeout: 120_000,
								fileParallelism: false
							}
						}
					]
				}
			}
);
