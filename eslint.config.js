import js from '@eslint/js';
import svelte from 'eslint-plugin-svelte';
import globals from 'globals';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';
import { CORE, importArrows } from './tests/lint/importArrows.js';
import { prefixedAddresses } from './tests/lint/prefixedAddresses.js';

const noChance = 'The core has no chance without a seed: take a seeded generator as an argument.';
const noClock = 'The core has no clock: take the instant as an argument.';

export default ts.config(
	{ ignores: ['build/', '.svelte-kit/', 'node_modules/', 'data/', 'static/'] },
	js.configs.recommended,
	...ts.configs.recommended,
	...svelte.configs.recommended,
	{
		languageOptions: { globals: { ...globals.browser, ...globals.node } },
		plugins: { house: { rules: { 'import-arrows': importArrows, 'prefixed-addresses': prefixedAddresses } } },
		rules: {
			'house/import-arrows': 'error',
			'max-lines': ['error', { max: 300 }],
			// TypeScript knows the names better
			'no-undef': 'off',
			'@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
			// the build puts the prefix before what stands in markup; the house's own rule holds the rest
			'svelte/no-navigation-without-resolve': 'off'
		}
	},
	{
		files: ['**/*.svelte', '**/*.svelte.ts'],
		languageOptions: {
			parserOptions: { extraFileExtensions: ['.svelte'], parser: ts.parser, svelteConfig }
		}
	},
	{ files: ['src/**'], rules: { 'house/prefixed-addresses': 'error' } },
	{
		files: CORE.map((room) => `src/${room}/**/*.ts`),
		rules: {
			'no-restricted-properties': [
				'error',
				{ object: 'Math', property: 'random', message: noChance },
				{ object: 'Date', property: 'now', message: noClock },
				{ object: 'performance', property: 'now', message: noClock }
			],
			'no-restricted-syntax': [
				'error',
				{ selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: noClock }
			]
		}
	}
);
