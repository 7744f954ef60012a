import path from 'node:path';

/**
 * Which rooms of src a room may import from: the arrows of the house (DEVELOPERS.md, "The house"). A room
 * that is not named here imports nothing from the others.
 *
 * @type {Record<string, readonly string[]>}
 */
export const ARROWS = {
	'lib/ride': [],
	'lib/drivetrain': ['lib/ride'],
	'lib/slip': ['lib/drivetrain', 'lib/ride'],
	'lib/reliability': [],
	'lib/hardware': [],
	'lib/release': ['lib/reliability'],
	'lib/tables': [],
	// under which folder of a site the ledger is served
	'lib/address': [],
	// names of the drive's states; cells of tables to take away; what is fetched when it is asked for
	'lib/charts': ['lib/slip', 'lib/tables', 'lib/ui'],
	// packed figures are read in the page as well
	'lib/ui': ['lib/address', 'lib/tables'],
	'lib/server': [
		'lib/address',
		'lib/ride',
		'lib/drivetrain',
		'lib/slip',
		'lib/reliability',
		'lib/hardware',
		'lib/release',
		'lib/tables',
		'jobs'
	],
	jobs: ['lib/ride', 'lib/drivetrain', 'lib/slip', 'lib/reliability', 'lib/hardware', 'lib/release'],
	// child processes that read the ledger and write nothing
	readers: ['lib/server', 'lib/ui', 'jobs'],
	routes: ['lib/address', 'lib/server', 'lib/slip', 'lib/ride', 'lib/reliability', 'lib/charts', 'lib/ui'],
	cli: [
		'lib/address',
		'lib/server',
		'lib/ride',
		'lib/drivetrain',
		'lib/slip',
		'lib/reliability',
		'lib/hardware',
		'lib/release',
		'lib/ui'
	],
	// the framework's hooks start and stop the server's parts and say how data comes to pages
	hooks: ['lib/address', 'lib/server', 'lib/ui']
};

/** Rooms without input or output, clock or chance. */
export const CORE = [
	'lib/ride',
	'lib/drivetrain',
	'lib/slip',
	'lib/reliability',
	'lib/hardware',
	'lib/release'
];

const CORE_FORBIDDEN = /^(node:|svelte|@sveltejs|\$app|\$env|better-sqlite3|fs$|path$|os$|child_process$)/;

/**
 * The room that a file belongs to.
 *
 * @param {string} file path relative to the project
 * @returns {string | null} for instance "lib/ride"; null outside src
 */
export function roomOf(file) {
	const parts = file.split(path.sep).join('/').split('/');
	if (parts[0] !== 'src') return null;
	if (parts[1] === 'lib') return parts.length > 3 ? `lib/${parts[2]}` : null;
	if (parts.length === 3 && !['cli', 'jobs', 'readers', 'routes'].includes(parts[1])) return null;
	if (parts.length === 2) return /^hooks\./.test(parts[1]) ? 'hooks' : null;
	return parts[1];
}

/** @type {import('eslint').Rule.RuleModule} */
export const importArrows = {
	meta: {
		type: 'problem',
		schema: [],
		messages: {
			against: '{{from}} must not import from {{to}}: the arrows of the house go one way (DEVELOPERS.md).',
			outside: '{{from}} is core: no input or output, no framework ("{{name}}").'
		}
	},
	create(context) {
		const from = roomOf(path.relative(context.cwd, context.filename));
		if (!from) return {};

		/** @param {import('estree').Node & { value?: unknown }} source */
		function check(source) {
			const name = source?.value;
			if (typeof name !== 'string' || !from) return;
			if (CORE.includes(from) && CORE_FORBIDDEN.test(name)) {
				context.report({ node: source, messageId: 'outside', data: { from, name } });
				return;
			}
			const target = name.startsWith('$lib/')
				? `src/lib/${name.slice(5)}`
				: name.startsWith('.')
					? path.relative(context.cwd, path.resolve(path.dirname(context.filename), name))
					: null;
			if (!target) return;
			const to = roomOf(target) ?? roomOf(`${target}/index`);
			if (!to || to === from || ARROWS[from]?.includes(to)) return;
			context.report({ node: source, messageId: 'against', data: { from, to } });
		}

		return {
			ImportDeclaration: (node) => check(node.source),
			ExportNamedDeclaration: (node) => node.source && check(node.source),
			ExportAllDeclaration: (node) => check(node.source),
			ImportExpression: (node) => check(node.source)
		};
	}
};
