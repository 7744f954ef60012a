import adapter from '@sveltejs/adapter-node';
import { prefixErrorPage, prefixPages } from './src/cli/prefixPages.mjs';
import { readPrefix } from './src/cli/readPrefix.mjs';

const prefix = readPrefix(process.env);

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true },
	preprocess: prefix ? [prefixPages(prefix)] : [],
	kit: {
		// without a prefix the addresses of scripts and styles are relative, with one they hold it
		paths: { base: prefix, relative: prefix === '' },
		...(prefix && {
			files: { errorTemplate: prefixErrorPage('src/error.html', '.svelte-kit/prefixed/error.html', prefix) }
		}),
		// the build command gives each build a folder of its own (src/cli/build.mjs)
		adapter: adapter({ out: process.env.SLIP_LEDGER_BUILD_FOLDER ?? 'build/loose' }),
		csp: {
			mode: 'nonce',
			directives: {
				'default-src': ['none'],
				'script-src': ['self'],
				// the thread that paints a ride's strips
				'worker-src': ['self'],
				'style-src': ['self'],
				// the one inline style of the framework's route announcer
				'style-src-attr': ['unsafe-hashes', 'sha256-S8qMpvofolR8Mpjy4kQvEm7m1q8clzU4dfDH0AmvZjo='],
				'img-src': ['self', 'data:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'form-action': ['self'],
				'frame-ancestors': ['none'],
				'base-uri': ['none']
			}
		}
	}
};
