const ATTRIBUTES = /^(href|src|action|formaction|poster)$/;
const STARTS = /^\/(?!\/)/;

/**
 * Whether an address begins with a slash and so leads past the prefix.
 *
 * @param {any} node
 * @returns {boolean}
 */
function absolute(node) {
	if (!node) return false;
	if (node.type === 'Literal') return typeof node.value === 'string' && STARTS.test(node.value);
	if (node.type === 'TemplateLiteral') return STARTS.test(node.quasis[0].value.raw);
	if (node.type === 'BinaryExpression') return absolute(node.left);
	if (node.type === 'ConditionalExpression') return absolute(node.consequent) || absolute(node.alternate);
	return false;
}

/**
 * Addresses of the ledger keep the prefix under which it may be served. In markup the build puts it before what begins
 * with a slash; what comes from data, and what code asks for, has it from PREFIX or redirectTo.
 *
 * @type {import('eslint').Rule.RuleModule}
 */
export const prefixedAddresses = {
	meta: {
		type: 'problem',
		schema: [],
		messages: {
			data: 'Put {PREFIX} ($lib/address/prefix) before an address that data hold.',
			call: 'Put PREFIX ($lib/address/prefix) before this address, or a prefixed ledger asks another site.',
			redirect: 'Use redirectTo ($lib/address/redirectTo): it puts the prefix before the path.'
		}
	},
	create(context) {
		if (context.filename.endsWith('redirectTo.ts')) return {};
		return {
			/** @param {any} node */
			SvelteAttribute(node) {
				if (!ATTRIBUTES.test(node.key.name)) return;
				const [first] = node.value;
				// {data.path}, and the same within a text
				if (first?.type !== 'SvelteMustacheTag' || first.expression.type !== 'MemberExpression') return;
				context.report({ node, messageId: 'data' });
			},
			/** @param {any} node */
			CallExpression(node) {
				const { callee } = node;
				const name = callee.type === 'MemberExpression' ? callee.property.name : callee.name;
				if (['fetch', 'goto', 'sendBeacon', 'preloadData'].includes(name) && absolute(node.arguments[0]))
					context.report({ node, messageId: 'call' });
			},
			/** @param {any} node */
			ImportDeclaration(node) {
				if (
					node.source.value === '@sveltejs/kit' &&
					node.specifiers.some((/** @type {any} */ one) => one.imported?.name === 'redirect')
				)
					context.report({ node, messageId: 'redirect' });
			}
		};
	}
};
