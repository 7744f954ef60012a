var __create = Object.create;
var __defProp = Object.defineProperty;
var __getOwnPropDesc = Object.getOwnPropertyDescriptor;
var __getOwnPropNames = Object.getOwnPropertyNames;
var __getProtoOf = Object.getPrototypeOf;
var __hasOwnProp = Object.prototype.hasOwnProperty;
var __commonJS = (cb, mod) =>
	function __require() {
		try {
			return (mod || (0, cb[__getOwnPropNames(cb)[0]])((mod = { exports: {} }).exports, mod), mod.exports);
		} catch (e) {
			throw ((mod = 0), e);
		}
	};
var __copyProps = (to, from, except, desc) => {
	if ((from && typeof from === 'object') || typeof from === 'function') {
		for (let key of __getOwnPropNames(from))
			if (!__hasOwnProp.call(to, key) && key !== except)
				__defProp(to, key, {
					get: () => from[key],
					enumerable: !(desc = __getOwnPropDesc(from, key)) || desc.enumerable
				});
	}
	return to;
};
var __toESM = (mod, isNodeMode, target) => (
	(target = mod != null ? __create(__getProtoOf(mod)) : {}),
	__copyProps(
		// If the importer is in node compatibility mode or this is not an ESM
		// file that has been converted to a CommonJS file using a Babel-
		// compatible transform (i.e. "__esModule" has not been set), then set
		// "default" to the CommonJS "module.exports" for node compatibility.
		isNodeMode || !mod || !mod.__esModule
			? __defProp(target, 'default', { value: mod, enumerable: true })
			: target,
		mod
	)
);

// ../../../work/main/node_modules/xmlchars/xml/1.0/ed5.js
var require_ed5 = __commonJS({
	'../../../work/main/node_modules/xmlchars/xml/1.0/ed5.js'(exports) {
		'use strict';
		Object.defineProperty(exports, '__esModule', { value: true });
		exports.CHAR = '	\n\r -\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}';
		exports.S = ' 	\r\n';
		exports.NAME_START_CHAR =
			':A-Z_a-z\xC0-\xD6\xD8-\xF6\xF8-\u02FF\u0370-\u037D\u037F-\u1FFF\u200C\u200D\u2070-\u218F\u2C00-\u2FEF\u3001-\uD7FF\uF900-\uFDCF\uFDF0-\uFFFD\u{10000}-\u{EFFFF}';
		exports.NAME_CHAR = '-' + exports.NAME_START_CHAR + '.0-9\xB7\u0300-\u036F\u203F-\u2040';
		exports.CHAR_RE = new RegExp('^[' + exports.CHAR + ']$', 'u');
		exports.S_RE = new RegExp('^[' + exports.S + ']+$', 'u');
		exports.NAME_START_CHAR_RE = new RegExp('^[' + exports.NAME_START_CHAR + ']$', 'u');
		exports.NAME_CHAR_RE = new RegExp('^[' + exports.NAME_CHAR + ']$', 'u');
		exports.NAME_RE = new RegExp('^[' + exports.NAME_START_CHAR + '][' + exports.NAME_CHAR + ']*$', 'u');
		exports.NMTOKEN_RE = new RegExp('^[' + exports.NAME_CHAR + ']+$', 'u');
		var TAB = 9;
		var NL = 10;
		var CR = 13;
		var SPACE = 32;
		exports.S_LIST = [SPACE, NL, CR, TAB];
		function isChar(c) {
			return (
				(c >= SPACE && c <= 55295) ||
				c === NL ||
				c === CR ||
				c === TAB ||
				(c >= 57344 && c <= 65533) ||
				(c >= 65536 && c <= 1114111)
			);
		}
		exports.isChar = isChar;
		function isS(c) {
			return c === SPACE || c === NL || c === CR || c === TAB;
		}
		exports.isS = isS;
		function isNameStartChar(c) {
			return (
				(c >= 65 && c <= 90) ||
				(c >= 97 && c <= 122) ||
				c === 58 ||
				c === 95 ||
				c === 8204 ||
				c === 8205 ||
				(c >= 192 && c <= 214) ||
				(c >= 216 && c <= 246) ||
				(c >= 248 && c <= 767) ||
				(c >= 880 && c <= 893) ||
				(c >= 895 && c <= 8191) ||
				(c >= 8304 && c <= 8591) ||
				(c >= 11264 && c <= 12271) ||
				(c >= 12289 && c <= 55295) ||
				(c >= 63744 && c <= 64975) ||
				(c >= 65008 && c <= 65533) ||
				(c >= 65536 && c <= 983039)
			);
		}
		exports.isNameStartChar = isNameStartChar;
		function isNameChar(c) {
			return (
				isNameStartChar(c) ||
				(c >= 48 && c <= 57) ||
				c === 45 ||
				c === 46 ||
				c === 183 ||
				(c >= 768 && c <= 879) ||
				(c >= 8255 && c <= 8256)
			);
		}
		exports.isNameChar = isNameChar;
	}
});

// ../../../work/main/node_modules/xmlchars/xml/1.1/ed2.js
var require_ed2 = __commonJS({
	'../../../work/main/node_modules/xmlchars/xml/1.1/ed2.js'(exports) {
		'use strict';
		Object.defineProperty(exports, '__esModule', { value: true });
		exports.CHAR = '-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}';
		exports.RESTRICTED_CHAR = '-\b\v\f-\x7F-\x84\x86-\x9F';
		exports.S = ' 	\r\n';
		exports.NAME_START_CHAR =
			':A-Z_a-z\xC0-\xD6\xD8-\xF6\xF8-\u02FF\u0370-\u037D\u037F-\u1FFF\u200C\u200D\u2070-\u218F\u2C00-\u2FEF\u3001-\uD7FF\uF900-\uFDCF\uFDF0-\uFFFD\u{10000}-\u{EFFFF}';
		exports.NAME_CHAR = '-' + exports.NAME_START_CHAR + '.0-9\xB7\u0300-\u036F\u203F-\u2040';
		exports.CHAR_RE = new RegExp('^[' + exports.CHAR + ']$', 'u');
		exports.RESTRICTED_CHAR_RE = new RegExp('^[' + exports.RESTRICTED_CHAR + ']$', 'u');
		exports.S_RE = new RegExp('^[' + exports.S + ']+$', 'u');
		exports.NAME_START_CHAR_RE = new RegExp('^[' + exports.NAME_START_CHAR + ']$', 'u');
		exports.NAME_CHAR_RE = new RegExp('^[' + exports.NAME_CHAR + ']$', 'u');
		exports.NAME_RE = new RegExp('^[' + exports.NAME_START_CHAR + '][' + exports.NAME_CHAR + ']*$', 'u');
		exports.NMTOKEN_RE = new RegExp('^[' + exports.NAME_CHAR + ']+$', 'u');
		var TAB = 9;
		var NL = 10;
		var CR = 13;
		var SPACE = 32;
		exports.S_LIST = [SPACE, NL, CR, TAB];
		function isChar(c) {
			return (c >= 1 && c <= 55295) || (c >= 57344 && c <= 65533) || (c >= 65536 && c <= 1114111);
		}
		exports.isChar = isChar;
		function isRestrictedChar(c) {
			return (
				(c >= 1 && c <= 8) ||
				c === 11 ||
				c === 12 ||
				(c >= 14 && c <= 31) ||
				(c >= 127 && c <= 132) ||
				(c >= 134 && c <= 159)
			);
		}
		exports.isRestrictedChar = isRestrictedChar;
		function isCharAndNotRestricted(c) {
			return (
				c === 9 ||
				c === 10 ||
				c === 13 ||
				(c > 31 && c < 127) ||
				c === 133 ||
				(c > 159 && c <= 55295) ||
				(c >= 57344 && c <= 65533) ||
				(c >= 65536 && c <= 1114111)
			);
		}
		exports.isCharAndNotRestricted = isCharAndNotRestricted;
		function isS(c) {
			return c === SPACE || c === NL || c === CR || c === TAB;
		}
		exports.isS = isS;
		function isNameStartChar(c) {
			return (
				(c >= 65 && c <= 90) ||
				(c >= 97 && c <= 122) ||
				c === 58 ||
				c === 95 ||
				c === 8204 ||
				c === 8205 ||
				(c >= 192 && c <= 214) ||
				(c >= 216 && c <= 246) ||
				(c >= 248 && c <= 767) ||
				(c >= 880 && c <= 893) ||
				(c >= 895 && c <= 8191) ||
				(c >= 8304 && c <= 8591) ||
				(c >= 11264 && c <= 12271) ||
				(c >= 12289 && c <= 55295) ||
				(c >= 63744 && c <= 64975) ||
				(c >= 65008 && c <= 65533) ||
				(c >= 65536 && c <= 983039)
			);
		}
		exports.isNameStartChar = isNameStartChar;
		function isNameChar(c) {
			return (
				isNameStartChar(c) ||
				(c >= 48 && c <= 57) ||
				c === 45 ||
				c === 46 ||
				c === 183 ||
				(c >= 768 && c <= 879) ||
				(c >= 8255 && c <= 8256)
			);
		}
		exports.isNameChar = isNameChar;
	}
});

// ../../../work/main/node_modules/xmlchars/xmlns/1.0/ed3.js
var require_ed3 = __commonJS({
	'../../../work/main/node_modules/xmlchars/xmlns/1.0/ed3.js'(exports) {
		'use strict';
		Object.defineProperty(exports, '__esModule', { value: true });
		exports.NC_NAME_START_CHAR =
			'A-Z_a-z\xC0-\xD6\xD8-\xF6\xF8-\u02FF\u0370-\u037D\u037F-\u1FFF\u200C-\u200D\u2070-\u218F\u2C00-\u2FEF\u3001-\uD7FF\uF900-\uFDCF\uFDF0-\uFFFD\u{10000}-\u{EFFFF}';
		exports.NC_NAME_CHAR = '-' + exports.NC_NAME_START_CHAR + '.0-9\xB7\u0300-\u036F\u203F-\u2040';
		exports.NC_NAME_START_CHAR_RE = new RegExp('^[' + exports.NC_NAME_START_CHAR + ']$', 'u');
		exports.NC_NAME_CHAR_RE = new RegExp('^[' + exports.NC_NAME_CHAR + ']$', 'u');
		exports.NC_NAME_RE = new RegExp(
			'^[' + exports.NC_NAME_START_CHAR + '][' + exports.NC_NAME_CHAR + ']*$',
			'u'
		);
		function isNCNameStartChar(c) {
			return (
				(c >= 65 && c <= 90) ||
				c === 95 ||
				(c >= 97 && c <= 122) ||
				(c >= 192 && c <= 214) ||
				(c >= 216 && c <= 246) ||
				(c >= 248 && c <= 767) ||
				(c >= 880 && c <= 893) ||
				(c >= 895 && c <= 8191) ||
				(c >= 8204 && c <= 8205) ||
				(c >= 8304 && c <= 8591) ||
				(c >= 11264 && c <= 12271) ||
				(c >= 12289 && c <= 55295) ||
				(c >= 63744 && c <= 64975) ||
				(c >= 65008 && c <= 65533) ||
				(c >= 65536 && c <= 983039)
			);
		}
		exports.isNCNameStartChar = isNCNameStartChar;
		function isNCNameChar(c) {
			return (
				isNCNameStartChar(c) ||
				c === 45 ||
				c === 46 ||
				(c >= 48 && c <= 57) ||
				c === 183 ||
				(c >= 768 && c <= 879) ||
				(c >= 8255 && c <= 8256)
			);
		}
		exports.isNCNameChar = isNCNameChar;
	}
});

// ../../../work/main/node_modules/saxes/saxes.js
var require_saxes = __commonJS({
	'../../../work/main/node_modules/saxes/saxes.js'(exports) {
		'use strict';
		Object.defineProperty(exports, '__esModule', { value: true });
		exports.SaxesParser = exports.EVENTS = void 0;
		var ed5 = require_ed5();
		var ed2 = require_ed2();
		var NSed3 = require_ed3();
		var isS = ed5.isS;
		var isChar10 = ed5.isChar;
		var isNameStartChar = ed5.isNameStartChar;
		var isNameChar = ed5.isNameChar;
		var S_LIST = ed5.S_LIST;
		var NAME_RE = ed5.NAME_RE;
		var isChar11 = ed2.isChar;
		var isNCNameStartChar = NSed3.isNCNameStartChar;
		var isNCNameChar = NSed3.isNCNameChar;
		var NC_NAME_RE = NSed3.NC_NAME_RE;
		var XML_NAMESPACE = 'http://www.w3.org/XML/1998/namespace';
		var XMLNS_NAMESPACE = 'http://www.w3.org/2000/xmlns/';
		var rootNS = {
			// eslint-disable-next-line @typescript-eslint/no-explicit-any, @typescript-eslint/no-unsafe-assignment
			__proto__: null,
			xml: XML_NAMESPACE,
			xmlns: XMLNS_NAMESPACE
		};
		var XML_ENTITIES = {
			// eslint-disable-next-line @typescript-eslint/no-explicit-any, @typescript-eslint/no-unsafe-assignment
			__proto__: null,
			amp: '&',
			gt: '>',
			lt: '<',
			quot: '"',
			apos: "'"
		};
		var EOC = -1;
		var NL_LIKE = -2;
		var S_BEGIN = 0;
		var S_BEGIN_WHITESPACE = 1;
		var S_DOCTYPE = 2;
		var S_DOCTYPE_QUOTE = 3;
		var S_DTD = 4;
		var S_DTD_QUOTED = 5;
		var S_DTD_OPEN_WAKA = 6;
		var S_DTD_OPEN_WAKA_BANG = 7;
		var S_DTD_COMMENT = 8;
		var S_DTD_COMMENT_ENDING = 9;
		var S_DTD_COMMENT_ENDED = 10;
		var S_DTD_PI = 11;
		var S_DTD_PI_ENDING = 12;
		var S_TEXT = 13;
		var S_ENTITY = 14;
		var S_OPEN_WAKA = 15;
		var S_OPEN_WAKA_BANG = 16;
		var S_COMMENT = 17;
		var S_COMMENT_ENDING = 18;
		var S_COMMENT_ENDED = 19;
		var S_CDATA = 20;
		var S_CDATA_ENDING = 21;
		var S_CDATA_ENDING_2 = 22;
		var S_PI_FIRST_CHAR = 23;
		var S_PI_REST = 24;
		var S_PI_BODY = 25;
		var S_PI_ENDING = 26;
		var S_XML_DECL_NAME_START = 27;
		var S_XML_DECL_NAME = 28;
		var S_XML_DECL_EQ = 29;
		var S_XML_DECL_VALUE_START = 30;
		var S_XML_DECL_VALUE = 31;
		var S_XML_DECL_SEPARATOR = 32;
		var S_XML_DECL_ENDING = 33;
		var S_OPEN_TAG = 34;
		var S_OPEN_TAG_SLASH = 35;
		var S_ATTRIB = 36;
		var S_ATTRIB_NAME = 37;
		var S_ATTRIB_NAME_SAW_WHITE = 38;
		var S_ATTRIB_VALUE = 39;
		var S_ATTRIB_VALUE_QUOTED = 40;
		var S_ATTRIB_VALUE_CLOSED = 41;
		var S_ATTRIB_VALUE_UNQUOTED = 42;
		var S_CLOSE_TAG = 43;
		var S_CLOSE_TAG_SAW_WHITE = 44;
		var TAB = 9;
		var NL = 10;
		var CR = 13;
		var SPACE = 32;
		var BANG = 33;
		var DQUOTE = 34;
		var AMP = 38;
		var SQUOTE = 39;
		var MINUS = 45;
		var FORWARD_SLASH = 47;
		var SEMICOLON = 59;
		var LESS = 60;
		var EQUAL = 61;
		var GREATER = 62;
		var QUESTION = 63;
		var OPEN_BRACKET = 91;
		var CLOSE_BRACKET = 93;
		var NEL = 133;
		var LS = 8232;
		var isQuote = (c) => c === DQUOTE || c === SQUOTE;
		var QUOTES = [DQUOTE, SQUOTE];
		var DOCTYPE_TERMINATOR = [...QUOTES, OPEN_BRACKET, GREATER];
		var DTD_TERMINATOR = [...QUOTES, LESS, CLOSE_BRACKET];
		var XML_DECL_NAME_TERMINATOR = [EQUAL, QUESTION, ...S_LIST];
		var ATTRIB_VALUE_UNQUOTED_TERMINATOR = [...S_LIST, GREATER, AMP, LESS];
		function nsPairCheck(parser, prefix, uri) {
			switch (prefix) {
				case 'xml':
					if (uri !== XML_NAMESPACE) {
						parser.fail(`xml prefix must be bound to ${XML_NAMESPACE}.`);
					}
					break;
				case 'xmlns':
					if (uri !== XMLNS_NAMESPACE) {
						parser.fail(`xmlns prefix must be bound to ${XMLNS_NAMESPACE}.`);
					}
					break;
				default:
			}
			switch (uri) {
				case XMLNS_NAMESPACE:
					parser.fail(
						prefix === ''
							? `the default namespace may not be set to ${uri}.`
							: `may not assign a prefix (even "xmlns") to the URI ${XMLNS_NAMESPACE}.`
					);
					break;
				case XML_NAMESPACE:
					switch (prefix) {
						case 'xml':
							break;
						case '':
							parser.fail(`the default namespace may not be set to ${uri}.`);
							break;
						default:
							parser.fail('may not assign the xml namespace to another prefix.');
					}
					break;
				default:
			}
		}
		function nsMappingCheck(parser, mapping) {
			for (const local of Object.keys(mapping)) {
				nsPairCheck(parser, local, mapping[local]);
			}
		}
		var isNCName = (name) => NC_NAME_RE.test(name);
		var isName = (name) => NAME_RE.test(name);
		var FORBIDDEN_START = 0;
		var FORBIDDEN_BRACKET = 1;
		var FORBIDDEN_BRACKET_BRACKET = 2;
		exports.EVENTS = [
			'xmldecl',
			'text',
			'processinginstruction',
			'doctype',
			'comment',
			'opentagstart',
			'attribute',
			'opentag',
			'closetag',
			'cdata',
			'error',
			'end',
			'ready'
		];
		var EVENT_NAME_TO_HANDLER_NAME = {
			xmldecl: 'xmldeclHandler',
			text: 'textHandler',
			processinginstruction: 'piHandler',
			doctype: 'doctypeHandler',
			comment: 'commentHandler',
			opentagstart: 'openTagStartHandler',
			attribute: 'attributeHandler',
			opentag: 'openTagHandler',
			closetag: 'closeTagHandler',
			cdata: 'cdataHandler',
			error: 'errorHandler',
			end: 'endHandler',
			ready: 'readyHandler'
		};
		var SaxesParser2 = class {
			/**
			 * @param opt The parser options.
			 */
			constructor(opt) {
				this.opt = opt !== null && opt !== void 0 ? opt : {};
				this.fragmentOpt = !!this.opt.fragment;
				const xmlnsOpt = (this.xmlnsOpt = !!this.opt.xmlns);
				this.trackPosition = this.opt.position !== false;
				this.fileName = this.opt.fileName;
				if (xmlnsOpt) {
					this.nameStartCheck = isNCNameStartChar;
					this.nameCheck = isNCNameChar;
					this.isName = isNCName;
					this.processAttribs = this.processAttribsNS;
					this.pushAttrib = this.pushAttribNS;
					this.ns = Object.assign({ __proto__: null }, rootNS);
					const additional = this.opt.additionalNamespaces;
					if (additional != null) {
						nsMappingCheck(this, additional);
						Object.assign(this.ns, additional);
					}
				} else {
					this.nameStartCheck = isNameStartChar;
					this.nameCheck = isNameChar;
					this.isName = isName;
					this.processAttribs = this.processAttribsPlain;
					this.pushAttrib = this.pushAttribPlain;
				}
				this.stateTable = [
					/* eslint-disable @typescript-eslint/unbound-method */
					this.sBegin,
					this.sBeginWhitespace,
					this.sDoctype,
					this.sDoctypeQuote,
					this.sDTD,
					this.sDTDQuoted,
					this.sDTDOpenWaka,
					this.sDTDOpenWakaBang,
					this.sDTDComment,
					this.sDTDCommentEnding,
					this.sDTDCommentEnded,
					this.sDTDPI,
					this.sDTDPIEnding,
					this.sText,
					this.sEntity,
					this.sOpenWaka,
					this.sOpenWakaBang,
					this.sComment,
					this.sCommentEnding,
					this.sCommentEnded,
					this.sCData,
					this.sCDataEnding,
					this.sCDataEnding2,
					this.sPIFirstChar,
					this.sPIRest,
					this.sPIBody,
					this.sPIEnding,
					this.sXMLDeclNameStart,
					this.sXMLDeclName,
					this.sXMLDeclEq,
					this.sXMLDeclValueStart,
					this.sXMLDeclValue,
					this.sXMLDeclSeparator,
					this.sXMLDeclEnding,
					this.sOpenTag,
					this.sOpenTagSlash,
					this.sAttrib,
					this.sAttribName,
					this.sAttribNameSawWhite,
					this.sAttribValue,
					this.sAttribValueQuoted,
					this.sAttribValueClosed,
					this.sAttribValueUnquoted,
					this.sCloseTag,
					this.sCloseTagSawWhite
					/* eslint-enable @typescript-eslint/unbound-method */
				];
				this._init();
			}
			/**
			 * Indicates whether or not the parser is closed. If ``true``, wait for
			 * the ``ready`` event to write again.
			 */
			get closed() {
				return this._closed;
			}
			_init() {
				var _a;
				this.openWakaBang = '';
				this.text = '';
				this.name = '';
				this.piTarget = '';
				this.entity = '';
				this.q = null;
				this.tags = [];
				this.tag = null;
				this.topNS = null;
				this.chunk = '';
				this.chunkPosition = 0;
				this.i = 0;
				this.prevI = 0;
				this.carriedFromPrevious = void 0;
				this.forbiddenState = FORBIDDEN_START;
				this.attribList = [];
				const { fragmentOpt } = this;
				this.state = fragmentOpt ? S_TEXT : S_BEGIN;
				this.reportedTextBeforeRoot =
					this.reportedTextAfterRoot =
					this.closedRoot =
					this.sawRoot =
						fragmentOpt;
				this.xmlDeclPossible = !fragmentOpt;
				this.xmlDeclExpects = ['version'];
				this.entityReturnState = void 0;
				let { defaultXMLVersion } = this.opt;
				if (defaultXMLVersion === void 0) {
					if (this.opt.forceXMLVersion === true) {
						throw new Error('forceXMLVersion set but defaultXMLVersion is not set');
					}
					defaultXMLVersion = '1.0';
				}
				this.setXMLVersion(defaultXMLVersion);
				this.positionAtNewLine = 0;
				this.doctype = false;
				this._closed = false;
				this.xmlDecl = {
					version: void 0,
					encoding: void 0,
					standalone: void 0
				};
				this.line = 1;
				this.column = 0;
				this.ENTITIES = Object.create(XML_ENTITIES);
				(_a = this.readyHandler) === null || _a === void 0 ? void 0 : _a.call(this);
			}
			/**
			 * The stream position the parser is currently looking at. This field is
			 * zero-based.
			 *
			 * This field is not based on counting Unicode characters but is to be
			 * interpreted as a plain index into a JavaScript string.
			 */
			get position() {
				return this.chunkPosition + this.i;
			}
			/**
			 * The column number of the next character to be read by the parser.  *
			 * This field is zero-based. (The first column in a line is 0.)
			 *
			 * This field reports the index at which the next character would be in the
			 * line if the line were represented as a JavaScript string.  Note that this
			 * *can* be different to a count based on the number of *Unicode characters*
			 * due to how JavaScript handles astral plane characters.
			 *
			 * See [[column]] for a number that corresponds to a count of Unicode
			 * characters.
			 */
			get columnIndex() {
				return this.position - this.positionAtNewLine;
			}
			/**
			 * Set an event listener on an event. The parser supports one handler per
			 * event type. If you try to set an event handler over an existing handler,
			 * the old handler is silently overwritten.
			 *
			 * @param name The event to listen to.
			 *
			 * @param handler The handler to set.
			 */
			on(name, handler) {
				this[EVENT_NAME_TO_HANDLER_NAME[name]] = handler;
			}
			/**
			 * Unset an event handler.
			 *
			 * @parma name The event to stop listening to.
			 */
			off(name) {
				this[EVENT_NAME_TO_HANDLER_NAME[name]] = void 0;
			}
			/**
			 * Make an error object. The error object will have a message that contains
			 * the ``fileName`` option passed at the creation of the parser. If position
			 * tracking was turned on, it will also have line and column number
			 * information.
			 *
			 * @param message The message describing the error to report.
			 *
			 * @returns An error object with a properly formatted message.
			 */
			makeError(message) {
				var _a;
				let msg = (_a = this.fileName) !== null && _a !== void 0 ? _a : '';
				if (this.trackPosition) {
					if (msg.length > 0) {
						msg += ':';
					}
					msg += `${this.line}:${this.column}`;
				}
				if (msg.length > 0) {
					msg += ': ';
				}
				return new Error(msg + message);
			}
			/**
			 * Report a parsing error. This method is made public so that client code may
			 * check for issues that are outside the scope of this project and can report
			 * errors.
			 *
			 * @param message The error to report.
			 *
			 * @returns this
			 */
			fail(message) {
				const err = this.makeError(message);
				const handler = this.errorHandler;
				if (handler === void 0) {
					throw err;
				} else {
					handler(err);
				}
				return this;
			}
			/**
			 * Write a XML data to the parser.
			 *
			 * @param chunk The XML data to write.
			 *
			 * @returns this
			 */
			// We do need object for the type here. Yes, it often causes problems
			// but not in this case.
			write(chunk) {
				if (this.closed) {
					return this.fail('cannot write after close; assign an onready handler.');
				}
				let end = false;
				if (chunk === null) {
					end = true;
					chunk = '';
				} else if (typeof chunk === 'object') {
					chunk = chunk.toString();
				}
				if (this.carriedFromPrevious !== void 0) {
					chunk = `${this.carriedFromPrevious}${chunk}`;
					this.carriedFromPrevious = void 0;
				}
				let limit = chunk.length;
				const lastCode = chunk.charCodeAt(limit - 1);
				if (
					!end && // A trailing CR or surrogate must be carried over to the next
					// chunk.
					(lastCode === CR || (lastCode >= 55296 && lastCode <= 56319))
				) {
					this.carriedFromPrevious = chunk[limit - 1];
					limit--;
					chunk = chunk.slice(0, limit);
				}
				const { stateTable } = this;
				this.chunk = chunk;
				this.i = 0;
				while (this.i < limit) {
					stateTable[this.state].call(this);
				}
				this.chunkPosition += limit;
				return end ? this.end() : this;
			}
			/**
			 * Close the current stream. Perform final well-formedness checks and reset
			 * the parser tstate.
			 *
			 * @returns this
			 */
			close() {
				return this.write(null);
			}
			/**
			 * Get a single code point out of the current chunk. This updates the current
			 * position if we do position tracking.
			 *
			 * This is the algorithm to use for XML 1.0.
			 *
			 * @returns The character read.
			 */
			getCode10() {
				const { chunk, i } = this;
				this.prevI = i;
				this.i = i + 1;
				if (i >= chunk.length) {
					return EOC;
				}
				const code2 = chunk.charCodeAt(i);
				this.column++;
				if (code2 < 55296) {
					if (code2 >= SPACE || code2 === TAB) {
						return code2;
					}
					switch (code2) {
						case NL:
							this.line++;
							this.column = 0;
							this.positionAtNewLine = this.position;
							return NL;
						case CR:
							if (chunk.charCodeAt(i + 1) === NL) {
								this.i = i + 2;
							}
							this.line++;
							this.column = 0;
							this.positionAtNewLine = this.position;
							return NL_LIKE;
						default:
							this.fail('disallowed character.');
							return code2;
					}
				}
				if (code2 > 56319) {
					if (!(code2 >= 57344 && code2 <= 65533)) {
						this.fail('disallowed character.');
					}
					return code2;
				}
				const final = 65536 + (code2 - 55296) * 1024 + (chunk.charCodeAt(i + 1) - 56320);
				this.i = i + 2;
				if (final > 1114111) {
					this.fail('disallowed character.');
				}
				return final;
			}
			/**
			 * Get a single code point out of the current chunk. This updates the current
			 * position if we do position tracking.
			 *
			 * This is the algorithm to use for XML 1.1.
			 *
			 * @returns {number} The character read.
			 */
			getCode11() {
				const { chunk, i } = this;
				this.prevI = i;
				this.i = i + 1;
				if (i >= chunk.length) {
					return EOC;
				}
				const code2 = chunk.charCodeAt(i);
				this.column++;
				if (code2 < 55296) {
					if ((code2 > 31 && code2 < 127) || (code2 > 159 && code2 !== LS) || code2 === TAB) {
						return code2;
					}
					switch (code2) {
						case NL:
							this.line++;
							this.column = 0;
							this.positionAtNewLine = this.position;
							return NL;
						case CR: {
							const next = chunk.charCodeAt(i + 1);
							if (next === NL || next === NEL) {
								this.i = i + 2;
							}
						}
						/* yes, fall through */
						case NEL:
						// 0x85
						case LS:
							this.line++;
							this.column = 0;
							this.positionAtNewLine = this.position;
							return NL_LIKE;
						default:
							this.fail('disallowed character.');
							return code2;
					}
				}
				if (code2 > 56319) {
					if (!(code2 >= 57344 && code2 <= 65533)) {
						this.fail('disallowed character.');
					}
					return code2;
				}
				const final = 65536 + (code2 - 55296) * 1024 + (chunk.charCodeAt(i + 1) - 56320);
				this.i = i + 2;
				if (final > 1114111) {
					this.fail('disallowed character.');
				}
				return final;
			}
			/**
			 * Like ``getCode`` but with the return value normalized so that ``NL`` is
			 * returned for ``NL_LIKE``.
			 */
			getCodeNorm() {
				const c = this.getCode();
				return c === NL_LIKE ? NL : c;
			}
			unget() {
				this.i = this.prevI;
				this.column--;
			}
			/**
			 * Capture characters into a buffer until encountering one of a set of
			 * characters.
			 *
			 * @param chars An array of codepoints. Encountering a character in the array
			 * ends the capture. (``chars`` may safely contain ``NL``.)
			 *
			 * @return The character code that made the capture end, or ``EOC`` if we hit
			 * the end of the chunk. The return value cannot be NL_LIKE: NL is returned
			 * instead.
			 */
			captureTo(chars) {
				let { i: start } = this;
				const { chunk } = this;
				while (true) {
					const c = this.getCode();
					const isNLLike = c === NL_LIKE;
					const final = isNLLike ? NL : c;
					if (final === EOC || chars.includes(final)) {
						this.text += chunk.slice(start, this.prevI);
						return final;
					}
					if (isNLLike) {
						this.text += `${chunk.slice(start, this.prevI)}
`;
						start = this.i;
					}
				}
			}
			/**
			 * Capture characters into a buffer until encountering a character.
			 *
			 * @param char The codepoint that ends the capture. **NOTE ``char`` MAY NOT
			 * CONTAIN ``NL``.** Passing ``NL`` will result in buggy behavior.
			 *
			 * @return ``true`` if we ran into the character. Otherwise, we ran into the
			 * end of the current chunk.
			 */
			captureToChar(char) {
				let { i: start } = this;
				const { chunk } = this;
				while (true) {
					let c = this.getCode();
					switch (c) {
						case NL_LIKE:
							this.text += `${chunk.slice(start, this.prevI)}
`;
							start = this.i;
							c = NL;
							break;
						case EOC:
							this.text += chunk.slice(start);
							return false;
						default:
					}
					if (c === char) {
						this.text += chunk.slice(start, this.prevI);
						return true;
					}
				}
			}
			/**
			 * Capture characters that satisfy ``isNameChar`` into the ``name`` field of
			 * this parser.
			 *
			 * @return The character code that made the test fail, or ``EOC`` if we hit
			 * the end of the chunk. The return value cannot be NL_LIKE: NL is returned
			 * instead.
			 */
			captureNameChars() {
				const { chunk, i: start } = this;
				while (true) {
					const c = this.getCode();
					if (c === EOC) {
						this.name += chunk.slice(start);
						return EOC;
					}
					if (!isNameChar(c)) {
						this.name += chunk.slice(start, this.prevI);
						return c === NL_LIKE ? NL : c;
					}
				}
			}
			/**
			 * Skip white spaces.
			 *
			 * @return The character that ended the skip, or ``EOC`` if we hit
			 * the end of the chunk. The return value cannot be NL_LIKE: NL is returned
			 * instead.
			 */
			skipSpaces() {
				while (true) {
					const c = this.getCodeNorm();
					if (c === EOC || !isS(c)) {
						return c;
					}
				}
			}
			setXMLVersion(version) {
				this.currentXMLVersion = version;
				if (version === '1.0') {
					this.isChar = isChar10;
					this.getCode = this.getCode10;
				} else {
					this.isChar = isChar11;
					this.getCode = this.getCode11;
				}
			}
			// STATE ENGINE METHODS
			// This needs to be a state separate from S_BEGIN_WHITESPACE because we want
			// to be sure never to come back to this state later.
			sBegin() {
				if (this.chunk.charCodeAt(0) === 65279) {
					this.i++;
					this.column++;
				}
				this.state = S_BEGIN_WHITESPACE;
			}
			sBeginWhitespace() {
				const iBefore = this.i;
				const c = this.skipSpaces();
				if (this.prevI !== iBefore) {
					this.xmlDeclPossible = false;
				}
				switch (c) {
					case LESS:
						this.state = S_OPEN_WAKA;
						if (this.text.length !== 0) {
							throw new Error('no-empty text at start');
						}
						break;
					case EOC:
						break;
					default:
						this.unget();
						this.state = S_TEXT;
						this.xmlDeclPossible = false;
				}
			}
			sDoctype() {
				var _a;
				const c = this.captureTo(DOCTYPE_TERMINATOR);
				switch (c) {
					case GREATER: {
						(_a = this.doctypeHandler) === null || _a === void 0 ? void 0 : _a.call(this, this.text);
						this.text = '';
						this.state = S_TEXT;
						this.doctype = true;
						break;
					}
					case EOC:
						break;
					default:
						this.text += String.fromCodePoint(c);
						if (c === OPEN_BRACKET) {
							this.state = S_DTD;
						} else if (isQuote(c)) {
							this.state = S_DOCTYPE_QUOTE;
							this.q = c;
						}
				}
			}
			sDoctypeQuote() {
				const q = this.q;
				if (this.captureToChar(q)) {
					this.text += String.fromCodePoint(q);
					this.q = null;
					this.state = S_DOCTYPE;
				}
			}
			sDTD() {
				const c = this.captureTo(DTD_TERMINATOR);
				if (c === EOC) {
					return;
				}
				this.text += String.fromCodePoint(c);
				if (c === CLOSE_BRACKET) {
					this.state = S_DOCTYPE;
				} else if (c === LESS) {
					this.state = S_DTD_OPEN_WAKA;
				} else if (isQuote(c)) {
					this.state = S_DTD_QUOTED;
					this.q = c;
				}
			}
			sDTDQuoted() {
				const q = this.q;
				if (this.captureToChar(q)) {
					this.text += String.fromCodePoint(q);
					this.state = S_DTD;
					this.q = null;
				}
			}
			sDTDOpenWaka() {
				const c = this.getCodeNorm();
				this.text += String.fromCodePoint(c);
				switch (c) {
					case BANG:
						this.state = S_DTD_OPEN_WAKA_BANG;
						this.openWakaBang = '';
						break;
					case QUESTION:
						this.state = S_DTD_PI;
						break;
					default:
						this.state = S_DTD;
				}
			}
			sDTDOpenWakaBang() {
				const char = String.fromCodePoint(this.getCodeNorm());
				const owb = (this.openWakaBang += char);
				this.text += char;
				if (owb !== '-') {
					this.state = owb === '--' ? S_DTD_COMMENT : S_DTD;
					this.openWakaBang = '';
				}
			}
			sDTDComment() {
				if (this.captureToChar(MINUS)) {
					this.text += '-';
					this.state = S_DTD_COMMENT_ENDING;
				}
			}
			sDTDCommentEnding() {
				const c = this.getCodeNorm();
				this.text += String.fromCodePoint(c);
				this.state = c === MINUS ? S_DTD_COMMENT_ENDED : S_DTD_COMMENT;
			}
			sDTDCommentEnded() {
				const c = this.getCodeNorm();
				this.text += String.fromCodePoint(c);
				if (c === GREATER) {
					this.state = S_DTD;
				} else {
					this.fail('malformed comment.');
					this.state = S_DTD_COMMENT;
				}
			}
			sDTDPI() {
				if (this.captureToChar(QUESTION)) {
					this.text += '?';
					this.state = S_DTD_PI_ENDING;
				}
			}
			sDTDPIEnding() {
				const c = this.getCodeNorm();
				this.text += String.fromCodePoint(c);
				if (c === GREATER) {
					this.state = S_DTD;
				}
			}
			sText() {
				if (this.tags.length !== 0) {
					this.handleTextInRoot();
				} else {
					this.handleTextOutsideRoot();
				}
			}
			sEntity() {
				let { i: start } = this;
				const { chunk } = this;
				loop: while (true) {
					switch (this.getCode()) {
						case NL_LIKE:
							this.entity += `${chunk.slice(start, this.prevI)}
`;
							start = this.i;
							break;
						case SEMICOLON: {
							const { entityReturnState } = this;
							const entity = this.entity + chunk.slice(start, this.prevI);
							this.state = entityReturnState;
							let parsed;
							if (entity === '') {
								this.fail('empty entity name.');
								parsed = '&;';
							} else {
								parsed = this.parseEntity(entity);
								this.entity = '';
							}
							if (entityReturnState !== S_TEXT || this.textHandler !== void 0) {
								this.text += parsed;
							}
							break loop;
						}
						case EOC:
							this.entity += chunk.slice(start);
							break loop;
						default:
					}
				}
			}
			sOpenWaka() {
				const c = this.getCode();
				if (isNameStartChar(c)) {
					this.state = S_OPEN_TAG;
					this.unget();
					this.xmlDeclPossible = false;
				} else {
					switch (c) {
						case FORWARD_SLASH:
							this.state = S_CLOSE_TAG;
							this.xmlDeclPossible = false;
							break;
						case BANG:
							this.state = S_OPEN_WAKA_BANG;
							this.openWakaBang = '';
							this.xmlDeclPossible = false;
							break;
						case QUESTION:
							this.state = S_PI_FIRST_CHAR;
							break;
						default:
							this.fail('disallowed character in tag name');
							this.state = S_TEXT;
							this.xmlDeclPossible = false;
					}
				}
			}
			sOpenWakaBang() {
				this.openWakaBang += String.fromCodePoint(this.getCodeNorm());
				switch (this.openWakaBang) {
					case '[CDATA[':
						if (!this.sawRoot && !this.reportedTextBeforeRoot) {
							this.fail('text data outside of root node.');
							this.reportedTextBeforeRoot = true;
						}
						if (this.closedRoot && !this.reportedTextAfterRoot) {
							this.fail('text data outside of root node.');
							this.reportedTextAfterRoot = true;
						}
						this.state = S_CDATA;
						this.openWakaBang = '';
						break;
					case '--':
						this.state = S_COMMENT;
						this.openWakaBang = '';
						break;
					case 'DOCTYPE':
						this.state = S_DOCTYPE;
						if (this.doctype || this.sawRoot) {
							this.fail('inappropriately located doctype declaration.');
						}
						this.openWakaBang = '';
						break;
					default:
						if (this.openWakaBang.length >= 7) {
							this.fail('incorrect syntax.');
						}
				}
			}
			sComment() {
				if (this.captureToChar(MINUS)) {
					this.state = S_COMMENT_ENDING;
				}
			}
			sCommentEnding() {
				var _a;
				const c = this.getCodeNorm();
				if (c === MINUS) {
					this.state = S_COMMENT_ENDED;
					(_a = this.commentHandler) === null || _a === void 0 ? void 0 : _a.call(this, this.text);
					this.text = '';
				} else {
					this.text += `-${String.fromCodePoint(c)}`;
					this.state = S_COMMENT;
				}
			}
			sCommentEnded() {
				const c = this.getCodeNorm();
				if (c !== GREATER) {
					this.fail('malformed comment.');
					this.text += `--${String.fromCodePoint(c)}`;
					this.state = S_COMMENT;
				} else {
					this.state = S_TEXT;
				}
			}
			sCData() {
				if (this.captureToChar(CLOSE_BRACKET)) {
					this.state = S_CDATA_ENDING;
				}
			}
			sCDataEnding() {
				const c = this.getCodeNorm();
				if (c === CLOSE_BRACKET) {
					this.state = S_CDATA_ENDING_2;
				} else {
					this.text += `]${String.fromCodePoint(c)}`;
					this.state = S_CDATA;
				}
			}
			sCDataEnding2() {
				var _a;
				const c = this.getCodeNorm();
				switch (c) {
					case GREATER: {
						(_a = this.cdataHandler) === null || _a === void 0 ? void 0 : _a.call(this, this.text);
						this.text = '';
						this.state = S_TEXT;
						break;
					}
					case CLOSE_BRACKET:
						this.text += ']';
						break;
					default:
						this.text += `]]${String.fromCodePoint(c)}`;
						this.state = S_CDATA;
				}
			}
			// We need this separate state to check the first character fo the pi target
			// with this.nameStartCheck which allows less characters than this.nameCheck.
			sPIFirstChar() {
				const c = this.getCodeNorm();
				if (this.nameStartCheck(c)) {
					this.piTarget += String.fromCodePoint(c);
					this.state = S_PI_REST;
				} else if (c === QUESTION || isS(c)) {
					this.fail('processing instruction without a target.');
					this.state = c === QUESTION ? S_PI_ENDING : S_PI_BODY;
				} else {
					this.fail('disallowed character in processing instruction name.');
					this.piTarget += String.fromCodePoint(c);
					this.state = S_PI_REST;
				}
			}
			sPIRest() {
				const { chunk, i: start } = this;
				while (true) {
					const c = this.getCodeNorm();
					if (c === EOC) {
						this.piTarget += chunk.slice(start);
						return;
					}
					if (!this.nameCheck(c)) {
						this.piTarget += chunk.slice(start, this.prevI);
						const isQuestion = c === QUESTION;
						if (isQuestion || isS(c)) {
							if (this.piTarget === 'xml') {
								if (!this.xmlDeclPossible) {
									this.fail('an XML declaration must be at the start of the document.');
								}
								this.state = isQuestion ? S_XML_DECL_ENDING : S_XML_DECL_NAME_START;
							} else {
								this.state = isQuestion ? S_PI_ENDING : S_PI_BODY;
							}
						} else {
							this.fail('disallowed character in processing instruction name.');
							this.piTarget += String.fromCodePoint(c);
						}
						break;
					}
				}
			}
			sPIBody() {
				if (this.text.length === 0) {
					const c = this.getCodeNorm();
					if (c === QUESTION) {
						this.state = S_PI_ENDING;
					} else if (!isS(c)) {
						this.text = String.fromCodePoint(c);
					}
				} else if (this.captureToChar(QUESTION)) {
					this.state = S_PI_ENDING;
				}
			}
			sPIEnding() {
				var _a;
				const c = this.getCodeNorm();
				if (c === GREATER) {
					const { piTarget } = this;
					if (piTarget.toLowerCase() === 'xml') {
						this.fail('the XML declaration must appear at the start of the document.');
					}
					(_a = this.piHandler) === null || _a === void 0
						? void 0
						: _a.call(this, {
								target: piTarget,
								body: this.text
							});
					this.piTarget = this.text = '';
					this.state = S_TEXT;
				} else if (c === QUESTION) {
					this.text += '?';
				} else {
					this.text += `?${String.fromCodePoint(c)}`;
					this.state = S_PI_BODY;
				}
				this.xmlDeclPossible = false;
			}
			sXMLDeclNameStart() {
				const c = this.skipSpaces();
				if (c === QUESTION) {
					this.state = S_XML_DECL_ENDING;
					return;
				}
				if (c !== EOC) {
					this.state = S_XML_DECL_NAME;
					this.name = String.fromCodePoint(c);
				}
			}
			sXMLDeclName() {
				const c = this.captureTo(XML_DECL_NAME_TERMINATOR);
				if (c === QUESTION) {
					this.state = S_XML_DECL_ENDING;
					this.name += this.text;
					this.text = '';
					this.fail('XML declaration is incomplete.');
					return;
				}
				if (!(isS(c) || c === EQUAL)) {
					return;
				}
				this.name += this.text;
				this.text = '';
				if (!this.xmlDeclExpects.includes(this.name)) {
					switch (this.name.length) {
						case 0:
							this.fail('did not expect any more name/value pairs.');
							break;
						case 1:
							this.fail(`expected the name ${this.xmlDeclExpects[0]}.`);
							break;
						default:
							this.fail(`expected one of ${this.xmlDeclExpects.join(', ')}`);
					}
				}
				this.state = c === EQUAL ? S_XML_DECL_VALUE_START : S_XML_DECL_EQ;
			}
			sXMLDeclEq() {
				const c = this.getCodeNorm();
				if (c === QUESTION) {
					this.state = S_XML_DECL_ENDING;
					this.fail('XML declaration is incomplete.');
					return;
				}
				if (isS(c)) {
					return;
				}
				if (c !== EQUAL) {
					this.fail('value required.');
				}
				this.state = S_XML_DECL_VALUE_START;
			}
			sXMLDeclValueStart() {
				const c = this.getCodeNorm();
				if (c === QUESTION) {
					this.state = S_XML_DECL_ENDING;
					this.fail('XML declaration is incomplete.');
					return;
				}
				if (isS(c)) {
					return;
				}
				if (!isQuote(c)) {
					this.fail('value must be quoted.');
					this.q = SPACE;
				} else {
					this.q = c;
				}
				this.state = S_XML_DECL_VALUE;
			}
			sXMLDeclValue() {
				const c = this.captureTo([this.q, QUESTION]);
				if (c === QUESTION) {
					this.state = S_XML_DECL_ENDING;
					this.text = '';
					this.fail('XML declaration is incomplete.');
					return;
				}
				if (c === EOC) {
					return;
				}
				const value = this.text;
				this.text = '';
				switch (this.name) {
					case 'version': {
						this.xmlDeclExpects = ['encoding', 'standalone'];
						const version = value;
						this.xmlDecl.version = version;
						if (!/^1\.[0-9]+$/.test(version)) {
							this.fail('version number must match /^1\\.[0-9]+$/.');
						} else if (!this.opt.forceXMLVersion) {
							this.setXMLVersion(version);
						}
						break;
					}
					case 'encoding':
						if (!/^[A-Za-z][A-Za-z0-9._-]*$/.test(value)) {
							this.fail('encoding value must match /^[A-Za-z0-9][A-Za-z0-9._-]*$/.');
						}
						this.xmlDeclExpects = ['standalone'];
						this.xmlDecl.encoding = value;
						break;
					case 'standalone':
						if (value !== 'yes' && value !== 'no') {
							this.fail('standalone value must match "yes" or "no".');
						}
						this.xmlDeclExpects = [];
						this.xmlDecl.standalone = value;
						break;
					default:
				}
				this.name = '';
				this.state = S_XML_DECL_SEPARATOR;
			}
			sXMLDeclSeparator() {
				const c = this.getCodeNorm();
				if (c === QUESTION) {
					this.state = S_XML_DECL_ENDING;
					return;
				}
				if (!isS(c)) {
					this.fail('whitespace required.');
					this.unget();
				}
				this.state = S_XML_DECL_NAME_START;
			}
			sXMLDeclEnding() {
				var _a;
				const c = this.getCodeNorm();
				if (c === GREATER) {
					if (this.piTarget !== 'xml') {
						this.fail('processing instructions are not allowed before root.');
					} else if (this.name !== 'version' && this.xmlDeclExpects.includes('version')) {
						this.fail('XML declaration must contain a version.');
					}
					(_a = this.xmldeclHandler) === null || _a === void 0 ? void 0 : _a.call(this, this.xmlDecl);
					this.name = '';
					this.piTarget = this.text = '';
					this.state = S_TEXT;
				} else {
					this.fail('The character ? is disallowed anywhere in XML declarations.');
				}
				this.xmlDeclPossible = false;
			}
			sOpenTag() {
				var _a;
				const c = this.captureNameChars();
				if (c === EOC) {
					return;
				}
				const tag = (this.tag = {
					name: this.name,
					attributes: /* @__PURE__ */ Object.create(null)
				});
				this.name = '';
				if (this.xmlnsOpt) {
					this.topNS = tag.ns = /* @__PURE__ */ Object.create(null);
				}
				(_a = this.openTagStartHandler) === null || _a === void 0 ? void 0 : _a.call(this, tag);
				this.sawRoot = true;
				if (!this.fragmentOpt && this.closedRoot) {
					this.fail('documents may contain only one root.');
				}
				switch (c) {
					case GREATER:
						this.openTag();
						break;
					case FORWARD_SLASH:
						this.state = S_OPEN_TAG_SLASH;
						break;
					default:
						if (!isS(c)) {
							this.fail('disallowed character in tag name.');
						}
						this.state = S_ATTRIB;
				}
			}
			sOpenTagSlash() {
				if (this.getCode() === GREATER) {
					this.openSelfClosingTag();
				} else {
					this.fail('forward-slash in opening tag not followed by >.');
					this.state = S_ATTRIB;
				}
			}
			sAttrib() {
				const c = this.skipSpaces();
				if (c === EOC) {
					return;
				}
				if (isNameStartChar(c)) {
					this.unget();
					this.state = S_ATTRIB_NAME;
				} else if (c === GREATER) {
					this.openTag();
				} else if (c === FORWARD_SLASH) {
					this.state = S_OPEN_TAG_SLASH;
				} else {
					this.fail('disallowed character in attribute name.');
				}
			}
			sAttribName() {
				const c = this.captureNameChars();
				if (c === EQUAL) {
					this.state = S_ATTRIB_VALUE;
				} else if (isS(c)) {
					this.state = S_ATTRIB_NAME_SAW_WHITE;
				} else if (c === GREATER) {
					this.fail('attribute without value.');
					this.pushAttrib(this.name, this.name);
					this.name = this.text = '';
					this.openTag();
				} else if (c !== EOC) {
					this.fail('disallowed character in attribute name.');
				}
			}
			sAttribNameSawWhite() {
				const c = this.skipSpaces();
				switch (c) {
					case EOC:
						return;
					case EQUAL:
						this.state = S_ATTRIB_VALUE;
						break;
					default:
						this.fail('attribute without value.');
						this.text = '';
						this.name = '';
						if (c === GREATER) {
							this.openTag();
						} else if (isNameStartChar(c)) {
							this.unget();
							this.state = S_ATTRIB_NAME;
						} else {
							this.fail('disallowed character in attribute name.');
							this.state = S_ATTRIB;
						}
				}
			}
			sAttribValue() {
				const c = this.getCodeNorm();
				if (isQuote(c)) {
					this.q = c;
					this.state = S_ATTRIB_VALUE_QUOTED;
				} else if (!isS(c)) {
					this.fail('unquoted attribute value.');
					this.state = S_ATTRIB_VALUE_UNQUOTED;
					this.unget();
				}
			}
			sAttribValueQuoted() {
				const { q, chunk } = this;
				let { i: start } = this;
				while (true) {
					switch (this.getCode()) {
						case q:
							this.pushAttrib(this.name, this.text + chunk.slice(start, this.prevI));
							this.name = this.text = '';
							this.q = null;
							this.state = S_ATTRIB_VALUE_CLOSED;
							return;
						case AMP:
							this.text += chunk.slice(start, this.prevI);
							this.state = S_ENTITY;
							this.entityReturnState = S_ATTRIB_VALUE_QUOTED;
							return;
						case NL:
						case NL_LIKE:
						case TAB:
							this.text += `${chunk.slice(start, this.prevI)} `;
							start = this.i;
							break;
						case LESS:
							this.text += chunk.slice(start, this.prevI);
							this.fail('disallowed character.');
							return;
						case EOC:
							this.text += chunk.slice(start);
							return;
						default:
					}
				}
			}
			sAttribValueClosed() {
				const c = this.getCodeNorm();
				if (isS(c)) {
					this.state = S_ATTRIB;
				} else if (c === GREATER) {
					this.openTag();
				} else if (c === FORWARD_SLASH) {
					this.state = S_OPEN_TAG_SLASH;
				} else if (isNameStartChar(c)) {
					this.fail('no whitespace between attributes.');
					this.unget();
					this.state = S_ATTRIB_NAME;
				} else {
					this.fail('disallowed character in attribute name.');
				}
			}
			sAttribValueUnquoted() {
				const c = this.captureTo(ATTRIB_VALUE_UNQUOTED_TERMINATOR);
				switch (c) {
					case AMP:
						this.state = S_ENTITY;
						this.entityReturnState = S_ATTRIB_VALUE_UNQUOTED;
						break;
					case LESS:
						this.fail('disallowed character.');
						break;
					case EOC:
						break;
					default:
						if (this.text.includes(']]>')) {
							this.fail('the string "]]>" is disallowed in char data.');
						}
						this.pushAttrib(this.name, this.text);
						this.name = this.text = '';
						if (c === GREATER) {
							this.openTag();
						} else {
							this.state = S_ATTRIB;
						}
				}
			}
			sCloseTag() {
				const c = this.captureNameChars();
				if (c === GREATER) {
					this.closeTag();
				} else if (isS(c)) {
					this.state = S_CLOSE_TAG_SAW_WHITE;
				} else if (c !== EOC) {
					this.fail('disallowed character in closing tag.');
				}
			}
			sCloseTagSawWhite() {
				switch (this.skipSpaces()) {
					case GREATER:
						this.closeTag();
						break;
					case EOC:
						break;
					default:
						this.fail('disallowed character in closing tag.');
				}
			}
			// END OF STATE ENGINE METHODS
			handleTextInRoot() {
				let { i: start, forbiddenState } = this;
				const { chunk, textHandler: handler } = this;
				scanLoop: while (true) {
					switch (this.getCode()) {
						case LESS: {
							this.state = S_OPEN_WAKA;
							if (handler !== void 0) {
								const { text } = this;
								const slice = chunk.slice(start, this.prevI);
								if (text.length !== 0) {
									handler(text + slice);
									this.text = '';
								} else if (slice.length !== 0) {
									handler(slice);
								}
							}
							forbiddenState = FORBIDDEN_START;
							break scanLoop;
						}
						case AMP:
							this.state = S_ENTITY;
							this.entityReturnState = S_TEXT;
							if (handler !== void 0) {
								this.text += chunk.slice(start, this.prevI);
							}
							forbiddenState = FORBIDDEN_START;
							break scanLoop;
						case CLOSE_BRACKET:
							switch (forbiddenState) {
								case FORBIDDEN_START:
									forbiddenState = FORBIDDEN_BRACKET;
									break;
								case FORBIDDEN_BRACKET:
									forbiddenState = FORBIDDEN_BRACKET_BRACKET;
									break;
								case FORBIDDEN_BRACKET_BRACKET:
									break;
								default:
									throw new Error('impossible state');
							}
							break;
						case GREATER:
							if (forbiddenState === FORBIDDEN_BRACKET_BRACKET) {
								this.fail('the string "]]>" is disallowed in char data.');
							}
							forbiddenState = FORBIDDEN_START;
							break;
						case NL_LIKE:
							if (handler !== void 0) {
								this.text += `${chunk.slice(start, this.prevI)}
`;
							}
							start = this.i;
							forbiddenState = FORBIDDEN_START;
							break;
						case EOC:
							if (handler !== void 0) {
								this.text += chunk.slice(start);
							}
							break scanLoop;
						default:
							forbiddenState = FORBIDDEN_START;
					}
				}
				this.forbiddenState = forbiddenState;
			}
			handleTextOutsideRoot() {
				let { i: start } = this;
				const { chunk, textHandler: handler } = this;
				let nonSpace = false;
				outRootLoop: while (true) {
					const code2 = this.getCode();
					switch (code2) {
						case LESS: {
							this.state = S_OPEN_WAKA;
							if (handler !== void 0) {
								const { text } = this;
								const slice = chunk.slice(start, this.prevI);
								if (text.length !== 0) {
									handler(text + slice);
									this.text = '';
								} else if (slice.length !== 0) {
									handler(slice);
								}
							}
							break outRootLoop;
						}
						case AMP:
							this.state = S_ENTITY;
							this.entityReturnState = S_TEXT;
							if (handler !== void 0) {
								this.text += chunk.slice(start, this.prevI);
							}
							nonSpace = true;
							break outRootLoop;
						case NL_LIKE:
							if (handler !== void 0) {
								this.text += `${chunk.slice(start, this.prevI)}
`;
							}
							start = this.i;
							break;
						case EOC:
							if (handler !== void 0) {
								this.text += chunk.slice(start);
							}
							break outRootLoop;
						default:
							if (!isS(code2)) {
								nonSpace = true;
							}
					}
				}
				if (!nonSpace) {
					return;
				}
				if (!this.sawRoot && !this.reportedTextBeforeRoot) {
					this.fail('text data outside of root node.');
					this.reportedTextBeforeRoot = true;
				}
				if (this.closedRoot && !this.reportedTextAfterRoot) {
					this.fail('text data outside of root node.');
					this.reportedTextAfterRoot = true;
				}
			}
			pushAttribNS(name, value) {
				var _a;
				const { prefix, local } = this.qname(name);
				const attr = { name, prefix, local, value };
				this.attribList.push(attr);
				(_a = this.attributeHandler) === null || _a === void 0 ? void 0 : _a.call(this, attr);
				if (prefix === 'xmlns') {
					const trimmed = value.trim();
					if (this.currentXMLVersion === '1.0' && trimmed === '') {
						this.fail('invalid attempt to undefine prefix in XML 1.0');
					}
					this.topNS[local] = trimmed;
					nsPairCheck(this, local, trimmed);
				} else if (name === 'xmlns') {
					const trimmed = value.trim();
					this.topNS[''] = trimmed;
					nsPairCheck(this, '', trimmed);
				}
			}
			pushAttribPlain(name, value) {
				var _a;
				const attr = { name, value };
				this.attribList.push(attr);
				(_a = this.attributeHandler) === null || _a === void 0 ? void 0 : _a.call(this, attr);
			}
			/**
			 * End parsing. This performs final well-formedness checks and resets the
			 * parser to a clean state.
			 *
			 * @returns this
			 */
			end() {
				var _a, _b;
				if (!this.sawRoot) {
					this.fail('document must contain a root element.');
				}
				const { tags } = this;
				while (tags.length > 0) {
					const tag = tags.pop();
					this.fail(`unclosed tag: ${tag.name}`);
				}
				if (this.state !== S_BEGIN && this.state !== S_TEXT) {
					this.fail('unexpected end.');
				}
				const { text } = this;
				if (text.length !== 0) {
					(_a = this.textHandler) === null || _a === void 0 ? void 0 : _a.call(this, text);
					this.text = '';
				}
				this._closed = true;
				(_b = this.endHandler) === null || _b === void 0 ? void 0 : _b.call(this);
				this._init();
				return this;
			}
			/**
			 * Resolve a namespace prefix.
			 *
			 * @param prefix The prefix to resolve.
			 *
			 * @returns The namespace URI or ``undefined`` if the prefix is not defined.
			 */
			resolve(prefix) {
				var _a, _b;
				let uri = this.topNS[prefix];
				if (uri !== void 0) {
					return uri;
				}
				const { tags } = this;
				for (let index = tags.length - 1; index >= 0; index--) {
					uri = tags[index].ns[prefix];
					if (uri !== void 0) {
						return uri;
					}
				}
				uri = this.ns[prefix];
				if (uri !== void 0) {
					return uri;
				}
				return (_b = (_a = this.opt).resolvePrefix) === null || _b === void 0 ? void 0 : _b.call(_a, prefix);
			}
			/**
			 * Parse a qname into its prefix and local name parts.
			 *
			 * @param name The name to parse
			 *
			 * @returns
			 */
			qname(name) {
				const colon = name.indexOf(':');
				if (colon === -1) {
					return { prefix: '', local: name };
				}
				const local = name.slice(colon + 1);
				const prefix = name.slice(0, colon);
				if (prefix === '' || local === '' || local.includes(':')) {
					this.fail(`malformed name: ${name}.`);
				}
				return { prefix, local };
			}
			processAttribsNS() {
				var _a;
				const { attribList } = this;
				const tag = this.tag;
				{
					const { prefix, local } = this.qname(tag.name);
					tag.prefix = prefix;
					tag.local = local;
					const uri = (tag.uri = (_a = this.resolve(prefix)) !== null && _a !== void 0 ? _a : '');
					if (prefix !== '') {
						if (prefix === 'xmlns') {
							this.fail('tags may not have "xmlns" as prefix.');
						}
						if (uri === '') {
							this.fail(`unbound namespace prefix: ${JSON.stringify(prefix)}.`);
							tag.uri = prefix;
						}
					}
				}
				if (attribList.length === 0) {
					return;
				}
				const { attributes } = tag;
				const seen = /* @__PURE__ */ new Set();
				for (const attr of attribList) {
					const { name, prefix, local } = attr;
					let uri;
					let eqname;
					if (prefix === '') {
						uri = name === 'xmlns' ? XMLNS_NAMESPACE : '';
						eqname = name;
					} else {
						uri = this.resolve(prefix);
						if (uri === void 0) {
							this.fail(`unbound namespace prefix: ${JSON.stringify(prefix)}.`);
							uri = prefix;
						}
						eqname = `{${uri}}${local}`;
					}
					if (seen.has(eqname)) {
						this.fail(`duplicate attribute: ${eqname}.`);
					}
					seen.add(eqname);
					attr.uri = uri;
					attributes[name] = attr;
				}
				this.attribList = [];
			}
			processAttribsPlain() {
				const { attribList } = this;
				const attributes = this.tag.attributes;
				for (const { name, value } of attribList) {
					if (attributes[name] !== void 0) {
						this.fail(`duplicate attribute: ${name}.`);
					}
					attributes[name] = value;
				}
				this.attribList = [];
			}
			/**
			 * Handle a complete open tag. This parser code calls this once it has seen
			 * the whole tag. This method checks for well-formeness and then emits
			 * ``onopentag``.
			 */
			openTag() {
				var _a;
				this.processAttribs();
				const { tags } = this;
				const tag = this.tag;
				tag.isSelfClosing = false;
				(_a = this.openTagHandler) === null || _a === void 0 ? void 0 : _a.call(this, tag);
				tags.push(tag);
				this.state = S_TEXT;
				this.name = '';
			}
			/**
			 * Handle a complete self-closing tag. This parser code calls this once it has
			 * seen the whole tag. This method checks for well-formeness and then emits
			 * ``onopentag`` and ``onclosetag``.
			 */
			openSelfClosingTag() {
				var _a, _b, _c;
				this.processAttribs();
				const { tags } = this;
				const tag = this.tag;
				tag.isSelfClosing = true;
				(_a = this.openTagHandler) === null || _a === void 0 ? void 0 : _a.call(this, tag);
				(_b = this.closeTagHandler) === null || _b === void 0 ? void 0 : _b.call(this, tag);
				const top = (this.tag = (_c = tags[tags.length - 1]) !== null && _c !== void 0 ? _c : null);
				if (top === null) {
					this.closedRoot = true;
				}
				this.state = S_TEXT;
				this.name = '';
			}
			/**
			 * Handle a complete close tag. This parser code calls this once it has seen
			 * the whole tag. This method checks for well-formeness and then emits
			 * ``onclosetag``.
			 */
			closeTag() {
				const { tags, name } = this;
				this.state = S_TEXT;
				this.name = '';
				if (name === '') {
					this.fail('weird empty close tag.');
					this.text += '</>';
					return;
				}
				const handler = this.closeTagHandler;
				let l = tags.length;
				while (l-- > 0) {
					const tag = (this.tag = tags.pop());
					this.topNS = tag.ns;
					handler === null || handler === void 0 ? void 0 : handler(tag);
					if (tag.name === name) {
						break;
					}
					this.fail('unexpected close tag.');
				}
				if (l === 0) {
					this.closedRoot = true;
				} else if (l < 0) {
					this.fail(`unmatched closing tag: ${name}.`);
					this.text += `</${name}>`;
				}
			}
			/**
			 * Resolves an entity. Makes any necessary well-formedness checks.
			 *
			 * @param entity The entity to resolve.
			 *
			 * @returns The parsed entity.
			 */
			parseEntity(entity) {
				if (entity[0] !== '#') {
					const defined = this.ENTITIES[entity];
					if (defined !== void 0) {
						return defined;
					}
					this.fail(this.isName(entity) ? 'undefined entity.' : 'disallowed character in entity name.');
					return `&${entity};`;
				}
				let num = NaN;
				if (entity[1] === 'x' && /^#x[0-9a-f]+$/i.test(entity)) {
					num = parseInt(entity.slice(2), 16);
				} else if (/^#[0-9]+$/.test(entity)) {
					num = parseInt(entity.slice(1), 10);
				}
				if (!this.isChar(num)) {
					this.fail('malformed character entity.');
					return `&${entity};`;
				}
				return String.fromCodePoint(num);
			}
		};
		exports.SaxesParser = SaxesParser2;
	}
});

// tests/bench/training/labelledRides.ts
import { existsSync, readFileSync } from 'node:fs';

// src/lib/ride/longestRisingRun.ts
function longestRisingRun(values) {
	const before = new Int32Array(values.length);
	const tails = new Int32Array(values.length);
	let length = 0;
	for (let i = 0; i < values.length; i++) {
		if (!Number.isFinite(values[i])) continue;
		let low = 0;
		let high = length;
		if (length > 0 && values[tails[length - 1]] <= values[i]) low = length;
		while (low < high) {
			const middle = (low + high) >>> 1;
			if (values[tails[middle]] <= values[i]) low = middle + 1;
			else high = middle;
		}
		before[i] = low > 0 ? tails[low - 1] : -1;
		tails[low] = i;
		if (low === length) length++;
	}
	const run = new Int32Array(length);
	for (let k = length - 1, i = length > 0 ? tails[length - 1] : -1; k >= 0; k--, i = before[i]) run[k] = i;
	return run;
}

// src/lib/ride/plausible.ts
var PLAUSIBLE = {
	speedMps: [0, 40],
	distanceM: [0, 5e6],
	cadenceRpm: [0, 250],
	powerW: [0, 3e3],
	altitudeM: [-500, 9e3],
	temperatureC: [-50, 70],
	latitudeDeg: [-90, 90],
	longitudeDeg: [-180, 180],
	// an instantaneous logger sees the crank turned back and the wheel pushed
	wheelRpm: [-200, 1500],
	crankTorqueNm: [-500, 1e3]
};
var MAX_STEP_MS = 864e5;
function dropImplausible(name, values) {
	const [low, high] = PLAUSIBLE[name];
	let dropped = 0;
	for (let i = 0; i < values.length; i++) {
		if (values[i] >= low && values[i] <= high) continue;
		if (!Number.isNaN(values[i])) dropped++;
		values[i] = NaN;
	}
	return dropped;
}

// src/lib/ride/clockOrder.ts
function clockOrder(recordedAtMs) {
	const rising = longestRisingRun(recordedAtMs);
	const [from, to] = largestUnbrokenStretch(recordedAtMs, rising);
	const place = new Int32Array(recordedAtMs.length).fill(-1);
	const atMs = new Float64Array(to - from);
	let count = 0;
	for (let i = from; i < to; i++) {
		const instant = recordedAtMs[rising[i]];
		if (count === 0 || instant > atMs[count - 1]) atMs[count++] = instant;
		place[rising[i]] = count - 1;
	}
	let withoutClock = 0;
	for (const instant of recordedAtMs) if (!Number.isFinite(instant)) withoutClock++;
	return {
		atMs: atMs.slice(0, count),
		place,
		withoutClock,
		outOfOrder: recordedAtMs.length - withoutClock - (to - from),
		repeated: to - from - count
	};
}
function largestUnbrokenStretch(recordedAtMs, rising) {
	let best = [0, 0];
	let from = 0;
	for (let i = 1; i <= rising.length; i++) {
		const broken = i === rising.length || recordedAtMs[rising[i]] - recordedAtMs[rising[i - 1]] > MAX_STEP_MS;
		if (!broken) continue;
		if (i - from > best[1] - best[0]) best = [from, i];
		from = i;
	}
	return best;
}

// src/lib/ride/limits.ts
var MAX_FIT_BYTES = 64 * 1024 * 1024;
var MAX_FIT_MESSAGES = 15e5;
var MAX_FIT_PARTS = 32;
var MAX_XML_BYTES = 128 * 1024 * 1024;
var MAX_XML_DEPTH = 32;
var MAX_XML_TEXT = 1e4;
var MAX_LOGGER_BYTES = 512 * 1024 * 1024;
var MAX_LOGGER_SAMPLES = 72e5;
var MAX_RECORDS = 7e5;
var MAX_HANDFUL = 64;
var MAX_MARKS = 2e4;
var MAX_DURATION_S = 7 * 86400;

// src/lib/ride/onRideClock.ts
var NEAR_S = 60;
function marksWithin(marksAtMs, startedAtMs, durationS) {
	const times = /* @__PURE__ */ new Set();
	for (const atMs of marksAtMs) {
		const timeS = (atMs - startedAtMs) / 1e3;
		if (timeS > 0 && timeS <= durationS + NEAR_S) times.add(Math.min(timeS, durationS));
	}
	return [...times].sort((a, b) => a - b).map((timeS) => ({ timeS }));
}
function pausesWithin(pausesMs, startedAtMs, durationS) {
	const spans = pausesMs
		.map(([stopMs, startMs]) => {
			return [Math.max(0, (stopMs - startedAtMs) / 1e3), Math.min(durationS, (startMs - startedAtMs) / 1e3)];
		})
		.filter(([startS, endS]) => endS > startS)
		.sort((a, b) => a[0] - b[0]);
	const apart = [];
	for (const span of spans) {
		const last = apart.at(-1);
		if (last && span[0] <= last[1]) apart[apart.length - 1] = [last[0], Math.max(last[1], span[1])];
		else apart.push(span);
	}
	return apart;
}
function gearEventsWithin(events, startedAtMs, durationS) {
	const within = [];
	for (const { atMs, ...gear } of events) {
		const timeS = (atMs - startedAtMs) / 1e3;
		if (timeS >= -NEAR_S && timeS <= durationS) within.push({ timeS: Math.max(0, timeS), ...gear });
	}
	return within.sort((a, b) => a.timeS - b.timeS);
}

// src/lib/ride/recordingRhythm.ts
var LONGEST_SKIP_S = 15;
var IRREGULAR_SHARE = 0.1;
var EVENT_SLACK_S = 2;
function recordingRhythm(timeS, pauses) {
	const usualS = usualStep(timeS);
	let short = 0;
	let skipping = 0;
	for (let i = 1; i < timeS.length; i++) {
		const step = timeS[i] - timeS[i - 1];
		if (step > LONGEST_SKIP_S) continue;
		short++;
		if (step > 1.5 * usualS) skipping++;
	}
	const irregular = usualS >= 1.5 || (short > 0 && skipping / short > IRREGULAR_SHARE);
	const longestS = irregular ? Math.max(LONGEST_SKIP_S, 3 * usualS) : Math.max(2.5 * usualS, 0.1);
	const gaps = [];
	let first = 0;
	for (let i = 1; i < timeS.length; i++) {
		const span = [timeS[i - 1], timeS[i]];
		if (span[1] - span[0] <= longestS) continue;
		while (first < pauses.length && pauses[first][1] + EVENT_SLACK_S < span[0]) first++;
		if (unexplained(span, pauses, first) > longestS) gaps.push(span);
	}
	return { gaps, irregular };
}
function usualStep(timeS) {
	const steps = new Float64Array(Math.max(0, timeS.length - 1));
	for (let i = 0; i < steps.length; i++) steps[i] = timeS[i + 1] - timeS[i];
	steps.sort();
	return steps.length === 0 ? 1 : steps[Math.floor(steps.length / 4)];
}
function unexplained(span, pauses, first) {
	let seconds = span[1] - span[0];
	for (let i = first; i < pauses.length && pauses[i][0] - EVENT_SLACK_S <= span[1]; i++) {
		const overlap =
			Math.min(span[1], pauses[i][1] + EVENT_SLACK_S) - Math.max(span[0], pauses[i][0] - EVENT_SLACK_S);
		if (overlap > 0) seconds -= overlap;
	}
	return seconds;
}

// src/lib/ride/ride.ts
var CHANNEL_NAMES = [
	'speedMps',
	'distanceM',
	'cadenceRpm',
	'powerW',
	'altitudeM',
	'temperatureC',
	'latitudeDeg',
	'longitudeDeg',
	'wheelRpm',
	'crankTorqueNm'
];
var RideRefused = class extends Error {
	constructor(code2, sentence, detail) {
		super(sentence);
		this.code = code2;
		this.sentence = sentence;
		this.detail = detail;
		this.name = 'RideRefused';
	}
	code;
	sentence;
	detail;
};

// src/lib/ride/refusal.ts
var SENTENCES = {
	'not-a-ride-file':
		'This is not a ride file that can be read here. Upload the file as the ride computer wrote it (FIT), a TCX or GPX export, or a logger CSV.',
	'not-a-bicycle-ride':
		'This recording is not a bicycle ride. If it is one, set its sport to cycling where it was recorded and export it again.',
	'no-records':
		'The file holds no recorded points, only a summary or settings. Export the full recording instead.',
	'no-clock': 'The recorded points carry no usable time, so nothing can be measured from them.',
	'no-speed':
		'The ride holds no speed. Slip is found by setting the crank against the wheel: pair a speed sensor, best at the rear wheel.',
	'no-cadence':
		'The ride holds no cadence. Slip is found by setting the crank against the wheel: pair a cadence sensor or a power meter.',
	'too-large': 'The file is larger than any ride that this program reads. Split the recording and try again.',
	damaged: 'The file is damaged and nothing in it could be saved. Copy it from the device again.'
};
function refusal(code2, detail) {
	return new RideRefused(code2, SENTENCES[code2], detail);
}

// src/lib/ride/continuousDistance.ts
var FASTEST_MPS = 40;
var SLACK_M = 100;
function continuousDistance(timeS, distanceM) {
	let restarts = 0;
	let dropped = 0;
	let beforeM = 0;
	let offset = 0;
	let last = -1;
	for (let i = 0; i < distanceM.length; i++) {
		if (Number.isNaN(distanceM[i])) continue;
		const recorded = distanceM[i];
		const reachedM = last >= 0 ? distanceM[last] : 0;
		const sinceS = last >= 0 ? timeS[i] - timeS[last] : timeS[i];
		if (!follows(sinceS, recorded + offset - reachedM)) {
			if (!staysFrom(timeS, distanceM, i)) {
				distanceM[i] = NaN;
				dropped++;
				continue;
			}
			offset = reachedM - recorded;
			if (last >= 0) restarts++;
			else beforeM = recorded;
		}
		distanceM[i] = recorded + offset;
		last = i;
	}
	return { restarts, dropped, beforeM };
}
function follows(seconds, metres) {
	return metres >= 0 && metres <= FASTEST_MPS * seconds + SLACK_M;
}
function staysFrom(timeS, distanceM, i) {
	let at2 = i;
	let seen = 0;
	for (let k = i + 1; k < distanceM.length && seen < 2; k++) {
		if (Number.isNaN(distanceM[k])) continue;
		if (!follows(timeS[k] - timeS[at2], distanceM[k] - distanceM[at2])) return false;
		at2 = k;
		seen++;
	}
	return seen === 2;
}

// src/lib/ride/rideChannels.ts
function rideChannels(recorded, order, timeS, warnings) {
	const channels = {};
	const implausible = [];
	for (const name of CHANNEL_NAMES) {
		const column = recorded.columns[name];
		if (!column) continue;
		const dropped = dropImplausible(name, column);
		if (dropped > 0) implausible.push(`${name}: ${dropped}`);
		const value = new Float64Array(timeS.length).fill(NaN);
		let known2 = 0;
		for (let i = 0; i < column.length; i++) {
			const at2 = order.place[i];
			if (at2 < 0 || Number.isNaN(column[i]) || !Number.isNaN(value[at2])) continue;
			value[at2] = column[i];
			known2++;
		}
		if (known2 > 0) channels[name] = { timeS, value };
	}
	if (channels.distanceM) {
		const { restarts, dropped, beforeM } = continuousDistance(timeS, channels.distanceM.value);
		if (dropped > 0) implausible.push(`distanceM out of line: ${dropped}`);
		if (beforeM > 0) {
			warnings.push({
				code: 'distance-from-before',
				sentence: 'The recorded distance went on from earlier riding; this ride counts from its first point.',
				detail: `${beforeM.toFixed(0)} m taken off`
			});
		}
		if (restarts > 0) {
			warnings.push({
				code: 'distance-restarted',
				sentence: 'The recorded distance began again during the ride; the parts were added up.',
				detail: `${restarts} times`
			});
		}
	}
	keepWholePositions(channels);
	if (implausible.length > 0) {
		warnings.push({
			code: 'implausible-values',
			sentence: 'Some recorded values cannot be true for a bicycle and were left out.',
			detail: implausible.join(', ')
		});
	}
	return channels;
}
function keepWholePositions(channels) {
	const latitude = channels.latitudeDeg?.value;
	const longitude = channels.longitudeDeg?.value;
	let known2 = 0;
	for (let i = 0; latitude && longitude && i < latitude.length; i++) {
		const whole = !Number.isNaN(latitude[i]) && !Number.isNaN(longitude[i]);
		if (whole && (latitude[i] !== 0 || longitude[i] !== 0)) known2++;
		else latitude[i] = longitude[i] = NaN;
	}
	if (known2 > 0) return;
	delete channels.latitudeDeg;
	delete channels.longitudeDeg;
}

// src/lib/ride/assembleRide.ts
function assembleRide(recorded) {
	if (recorded.atMs.length === 0) throw refusal('no-records', 'no record in the file');
	const bound = recorded.format === 'logger-csv' ? MAX_LOGGER_SAMPLES : MAX_RECORDS;
	if (recorded.atMs.length > bound) {
		throw refusal('too-large', `${recorded.atMs.length} records, the bound is ${bound}`);
	}
	const order = clockOrder(recorded.atMs);
	if (order.atMs.length === 0) {
		throw refusal('no-clock', `${recorded.atMs.length} records, none with a usable instant`);
	}
	const startedAtMs = order.atMs[0];
	const timeS = order.atMs.map((atMs) => (atMs - startedAtMs) / 1e3);
	const durationS = timeS[timeS.length - 1];
	if (durationS > MAX_DURATION_S) {
		throw refusal('too-large', `${durationS} s long, the bound is ${MAX_DURATION_S} s`);
	}
	const warnings = [...recorded.warnings, ...clockWarnings(order)];
	const channels = rideChannels(recorded, order, timeS, warnings);
	requireMotion(channels);
	if (!channels.powerW && !channels.crankTorqueNm) {
		warnings.push({
			code: 'no-power',
			sentence: 'The ride holds no power, so it says much less about slipping and nothing about torque.',
			detail: 'no record with a power value'
		});
	}
	const pauses = pausesWithin(recorded.pausesMs, startedAtMs, durationS);
	return {
		format: recorded.format,
		startedAtMs,
		localOffsetS: recorded.localOffsetS,
		durationS,
		channels,
		...recordingRhythm(timeS, pauses),
		pauses,
		marks: marksWithin(recorded.marksAtMs, startedAtMs, durationS),
		gearEvents: gearEventsWithin(recorded.gearEvents, startedAtMs, durationS),
		sensors: recorded.sensors,
		speedSource: recorded.speedSource,
		trainer: recorded.trainer,
		motorAssisted: recorded.motorAssisted,
		warnings
	};
}
function requireMotion(channels) {
	const moves = (name) => channels[name]?.value.some((value) => value > 0) ?? false;
	if (!moves('speedMps') && !moves('wheelRpm')) throw refusal('no-speed', 'no speed above 0 in any record');
	if (!moves('cadenceRpm')) throw refusal('no-cadence', 'no cadence above 0 in any record');
}
function clockWarnings(order) {
	const warnings = [];
	const lost = order.withoutClock + order.outOfOrder;
	if (lost > 0) {
		warnings.push({
			code: 'records-out-of-order',
			sentence: 'The clock of the recording jumped or was missing; the points that do not fit were left out.',
			detail: `${order.outOfOrder} records against the clock, ${order.withoutClock} without a time`
		});
	}
	if (order.repeated > 0) {
		warnings.push({
			code: 'repeated-times',
			sentence: 'Some points carry the same time; each such group was read as one point.',
			detail: `${order.repeated} records merged`
		});
	}
	return warnings;
}

// src/lib/ride/fitMessages.ts
var FIRST_CALENDAR_MS = 6310656e5 + 268435456 * 1e3;
function numberOf(message, field) {
	const value = message[field];
	return typeof value === 'number' && Number.isFinite(value) ? value : NaN;
}
function instantOf(message, field) {
	const value = message[field];
	const ms = value instanceof Date ? value.getTime() : NaN;
	return ms >= FIRST_CALENDAR_MS ? ms : NaN;
}

// src/lib/ride/fitColumns.ts
function fitColumns(records) {
	const column = (read) => {
		const values = new Float64Array(records.length);
		for (let i = 0; i < values.length; i++) values[i] = read(records[i]);
		return values;
	};
	return {
		atMs: column((record) => instantOf(record, 'timestamp')),
		columns: {
			speedMps: column((record) => firstOf(record, 'speed', 'enhanced_speed')),
			distanceM: column((record) => numberOf(record, 'distance')),
			cadenceRpm: column(cadenceOf),
			powerW: column((record) => numberOf(record, 'power')),
			altitudeM: column((record) => firstOf(record, 'altitude', 'enhanced_altitude')),
			temperatureC: column((record) => numberOf(record, 'temperature')),
			latitudeDeg: column((record) => numberOf(record, 'position_lat')),
			longitudeDeg: column((record) => numberOf(record, 'position_long'))
		}
	};
}
function firstOf(record, plain, enhanced) {
	const value = numberOf(record, plain);
	return Number.isNaN(value) ? numberOf(record, enhanced) : value;
}
function cadenceOf(record) {
	const whole = numberOf(record, 'cadence');
	if (Number.isNaN(whole)) return numberOf(record, 'cadence256');
	const fraction = numberOf(record, 'fractional_cadence');
	return Number.isNaN(fraction) ? whole : whole + fraction;
}

// src/lib/ride/fitDamageWarning.ts
var SAID = {
	'not-closed': {
		code: 'recording-not-closed',
		sentence: 'The recording was never finished by the device; it was read up to its last whole point.'
	},
	'cut-off': {
		code: 'file-cut-off',
		sentence: 'The file ends too early; it was read up to its last whole point.'
	},
	'broken-inside': {
		code: 'file-broken-inside',
		sentence: 'The file is damaged inside; it was read up to the damage, what follows is lost.'
	},
	'bad-checksum': {
		code: 'bad-checksum',
		sentence: 'The checksum of the file does not match: some of its values may have been changed on the way.'
	}
};
function fitDamageWarning(part, damage, stepS) {
	const { kind, lostBytes, detail } = damage;
	const { code: code2, sentence } = SAID[kind];
	const bytesARecord = (part.dataEnd - part.dataStart) / part.records;
	const lostS = Math.round((lostBytes / bytesARecord) * stepS);
	const lost =
		lostBytes === 0
			? ''
			: ` Lost: ${lostBytes} bytes${lostS > 0 ? `, about ${lostS} s of riding by their size` : ''}.`;
	return { code: code2, sentence: sentence + lost, detail: `${detail}; ${lostBytes} bytes lost` };
}

// src/lib/ride/fitGearEvents.ts
function fitGearEvents(events) {
	const shifts = [];
	let last = { frontIndex: null, rearIndex: null, frontTeeth: null, rearTeeth: null };
	for (const event of events) {
		const front = event.event === 'front_gear_change';
		if (!front && event.event !== 'rear_gear_change') continue;
		const atMs = instantOf(event, 'timestamp');
		if (Number.isNaN(atMs) || shifts.length >= MAX_MARKS) continue;
		const read = gearOf(event);
		last = {
			frontIndex: read.frontIndex ?? (front ? null : last.frontIndex),
			frontTeeth: read.frontTeeth ?? (front ? null : last.frontTeeth),
			rearIndex: read.rearIndex ?? (front ? last.rearIndex : null),
			rearTeeth: read.rearTeeth ?? (front ? last.rearTeeth : null)
		};
		shifts.push({ atMs, ...last });
	}
	return shifts;
}
function gearOf(event) {
	const data = numberOf(event, 'data');
	if (Number.isInteger(data) && data >= 0) {
		return {
			rearIndex: known(data & 255),
			rearTeeth: known((data >>> 8) & 255),
			frontIndex: known((data >>> 16) & 255),
			frontTeeth: known((data >>> 24) & 255)
		};
	}
	return {
		rearIndex: known(numberOf(event, 'rear_gear_num')),
		rearTeeth: known(numberOf(event, 'rear_gear')),
		frontIndex: known(numberOf(event, 'front_gear_num')),
		frontTeeth: known(numberOf(event, 'front_gear'))
	};
}
function known(value) {
	return value > 0 && value < 255 ? value : null;
}

// src/lib/ride/fitLocalOffset.ts
var QUARTER_HOUR_S = 900;
var WEST_S = -12 * 3600;
var EAST_S = 14 * 3600;
function fitLocalOffset(activities) {
	for (const activity of activities) {
		const seconds = (instantOf(activity, 'local_timestamp') - instantOf(activity, 'timestamp')) / 1e3;
		const rounded = Math.round(seconds / QUARTER_HOUR_S) * QUARTER_HOUR_S;
		if (Math.abs(seconds - rounded) <= 60 && rounded >= WEST_S && rounded <= EAST_S) return rounded;
	}
	return null;
}

// src/lib/ride/fitMarks.ts
function fitMarks(laps, events) {
	const pressed = [
		...laps.filter((lap) => lap.lap_trigger === 'manual'),
		...events.filter((event) => event.event === 'user_marker')
	];
	return pressed
		.map((message) => instantOf(message, 'timestamp'))
		.filter((atMs) => !Number.isNaN(atMs))
		.slice(0, MAX_MARKS);
}

// src/lib/ride/fitPauses.ts
var STOPS = ['stop', 'stop_all', 'stop_disable', 'stop_disable_all'];
function fitPauses(events) {
	const pauses = [];
	let stoppedMs = NaN;
	for (const event of events) {
		if (event.event !== 'timer') continue;
		const atMs = instantOf(event, 'timestamp');
		if (Number.isNaN(atMs)) continue;
		if (STOPS.includes(event.event_type)) {
			if (Number.isNaN(stoppedMs)) stoppedMs = atMs;
		} else if (event.event_type === 'start') {
			if (atMs > stoppedMs && pauses.length < MAX_MARKS) pauses.push([stoppedMs, atMs]);
			stoppedMs = NaN;
		}
	}
	return pauses;
}

// src/lib/ride/fitSensors.ts
var KINDS = {
	bike_power: 'power',
	bike_speed: 'speed',
	bike_cadence: 'cadence',
	bike_speed_cadence: 'speed and cadence',
	shifting: 'shifting',
	11: 'power',
	34: 'shifting',
	121: 'speed and cadence',
	122: 'cadence',
	123: 'speed'
};
var OTHERS = ['heart_rate', 'fitness_equipment', 'bike_trainer', 'light_electric_vehicle'];
function fitSensors(devices) {
	const sensors = /* @__PURE__ */ new Map();
	for (const device of devices) {
		if (sensors.size === MAX_HANDFUL) break;
		if (device.device_index === 'creator') continue;
		const type = String(device.device_type ?? '');
		const kind = KINDS[type] ?? (OTHERS.includes(type) ? 'other' : null);
		if (!kind) continue;
		const named = cleaned(device.descriptor) || cleaned(device.product_name);
		const description = named || (kind === 'other' ? type.replaceAll('_', ' ') : kind);
		sensors.set(`${kind} ${description}`, { kind, description });
	}
	return [...sensors.values()];
}
function cleaned(text) {
	if (typeof text !== 'string') return '';
	return text
		.slice(0, 200)
		.replace(/[^\p{L}\p{N} ._/+()-]/gu, ' ')
		.replace(/[\p{N}A-F]*\p{N}[\p{N}A-F]{3,}/giu, ' ')
		.replace(/\s+/g, ' ')
		.trim()
		.slice(0, 40);
}

// src/lib/ride/fitSport.ts
var BICYCLE = ['cycling', 'e_biking'];
var OPEN = ['generic', 'all', 'training', 'multisport', 'transition', void 0];
var INDOOR = ['indoor_cycling', 'spin', 'virtual_activity'];
var MOTOR = ['e_bike_fitness', 'e_bike_mountain', 'e_bike_enduro'];
function fitSport(messages) {
	const sessions = messages.sessions.slice(0, MAX_HANDFUL);
	const said = sessions.length > 0 ? sessions : messages.sports.slice(0, MAX_HANDFUL);
	const kinds = said.map(kindOf);
	const kind = kinds.includes('bicycle')
		? 'bicycle'
		: kinds.includes('not stated') || kinds.length === 0
			? 'not stated'
			: 'other';
	const ridden = said.filter((_, i) => kinds[i] !== 'other');
	const subSports = ridden.map((message) => message.sub_sport);
	return {
		kind,
		otherSpansMs: sessions
			.filter((session) => kindOf(session) === 'other')
			.map((session) => [instantOf(session, 'start_time'), instantOf(session, 'timestamp')]),
		trainer: trainerSaid(subSports),
		motorAssisted:
			ridden.some((message) => message.sport === 'e_biking') || subSports.some((sub) => MOTOR.includes(sub))
				? true
				: null,
		stated: said.map((message) => `${message.sport ?? '?'}/${message.sub_sport ?? '?'}`).join(', ')
	};
}
function kindOf(message) {
	if (BICYCLE.includes(message.sport)) return 'bicycle';
	if (message.sport === 'fitness_equipment' && INDOOR.includes(message.sub_sport)) return 'bicycle';
	if (OPEN.includes(message.sport) || typeof message.sport === 'number') return 'not stated';
	return 'other';
}
function trainerSaid(subSports) {
	if (subSports.some((sub) => INDOOR.includes(sub))) return true;
	const outdoors = subSports.some((sub) => typeof sub === 'string' && sub !== 'generic' && sub !== 'all');
	return outdoors ? false : null;
}

// src/lib/ride/readFitMessages.ts
import FitParser from 'fit-file-parser';
async function readFitMessages(file) {
	let parsed;
	try {
		parsed = await new FitParser({ mode: 'list', force: true }).parseAsync(file.buffer);
	} catch (cause) {
		throw new Error(cause instanceof Error ? cause.message : String(cause), { cause });
	}
	const messages = parsed.messages ?? {};
	const of = (name) => messages[name] ?? [];
	return {
		records: of('record'),
		events: of('event'),
		laps: of('lap'),
		sessions: of('session'),
		sports: of('sport'),
		devices: of('device_info'),
		activities: of('activity'),
		fileIds: of('file_id')
	};
}

// src/lib/ride/fitChecksum.ts
var TABLE = Uint16Array.from({ length: 256 }, (_, byte) => {
	let remainder = byte;
	for (let bit = 0; bit < 8; bit++) remainder = remainder & 1 ? (remainder >> 1) ^ 40961 : remainder >> 1;
	return remainder;
});
function fitChecksum(bytes, from, to) {
	let remainder = 0;
	for (let i = from; i < to; i++) remainder = (remainder >> 8) ^ TABLE[(remainder ^ bytes[i]) & 255];
	return remainder;
}

// src/lib/ride/fitHeader.ts
function fitHeader(bytes, offset) {
	const headerBytes = bytes[offset];
	if (headerBytes !== 12 && headerBytes !== 14) return null;
	if (offset + headerBytes > bytes.length) return null;
	const signature = [46, 70, 73, 84];
	if (signature.some((byte, i) => bytes[offset + 8 + i] !== byte)) return null;
	const dataBytes =
		bytes[offset + 4] + bytes[offset + 5] * 256 + bytes[offset + 6] * 65536 + bytes[offset + 7] * 16777216;
	return { headerBytes, dataBytes };
}
function nextFitHeader(bytes, from) {
	for (let at2 = bytes.indexOf(46, from + 8); at2 !== -1; at2 = bytes.indexOf(46, at2 + 1)) {
		if (fitHeader(bytes, at2 - 8)) return at2 - 8;
	}
	return bytes.length;
}

// src/lib/ride/walkFitMessages.ts
var RECORD = 20;
var FIELD_DESCRIPTION = 206;
function walkFitMessages(bytes, from, limit, before = 0) {
	const definitions = /* @__PURE__ */ new Map();
	const descriptionNumberOffsets = [];
	let at2 = from;
	let messages = 0;
	let records = 0;
	let stoppedBy = null;
	while (at2 < limit) {
		const header = bytes[at2];
		const isDefinition = (header & 192) === 64;
		const read = isDefinition
			? readDefinition(bytes, at2, limit, definitions)
			: readMessage(header, at2, limit, definitions);
		if (typeof read === 'string') {
			stoppedBy = read;
			break;
		}
		if (isDefinition && read.number === FIELD_DESCRIPTION) descriptionNumberOffsets.push(at2 + 3);
		if (!isDefinition && read.number === RECORD) records++;
		at2 = read.end;
		if (before + ++messages > MAX_FIT_MESSAGES) {
			throw refusal('too-large', `more than ${MAX_FIT_MESSAGES} messages`);
		}
	}
	return { end: at2, messages, records, descriptionNumberOffsets, stoppedBy };
}
function readDefinition(bytes, at2, limit, definitions) {
	if (at2 + 6 > limit) return 'a definition is cut off';
	if ((bytes[at2] & 16) !== 0) return 'a definition sets a reserved bit';
	if (bytes[at2 + 2] > 1) return 'a definition has an unknown byte order';
	const little = bytes[at2 + 2] === 0;
	const number = little ? bytes[at2 + 3] | (bytes[at2 + 4] << 8) : (bytes[at2 + 3] << 8) | bytes[at2 + 4];
	const nativeEnd = at2 + 6 + 3 * bytes[at2 + 5];
	const hasDeveloperFields = (bytes[at2] & 32) !== 0;
	if (nativeEnd + (hasDeveloperFields ? 1 : 0) > limit) return 'a definition is cut off';
	const end = hasDeveloperFields ? nativeEnd + 1 + 3 * bytes[nativeEnd] : nativeEnd;
	if (end > limit) return 'a definition is cut off';
	let size = 0;
	for (let field = at2 + 6; field < nativeEnd; field += 3) size += bytes[field + 1];
	for (let field = nativeEnd + 1; field < end; field += 3) size += bytes[field + 1];
	const timestampFirst = bytes[at2 + 5] > 0 && bytes[at2 + 6] === 253;
	definitions.set(bytes[at2] & 15, {
		number,
		bytes: size,
		timestampBytes: timestampFirst ? bytes[at2 + 7] : 0
	});
	return { end, number };
}
function readMessage(header, at2, limit, definitions) {
	const compressed = (header & 128) !== 0;
	if (!compressed && (header & 48) !== 0) return 'a message sets a reserved bit';
	const definition = definitions.get(compressed ? (header >> 5) & 3 : header & 15);
	if (!definition) return 'a message has no definition';
	const end = at2 + 1 + definition.bytes - (compressed ? definition.timestampBytes : 0);
	return end > limit ? 'a message is cut off' : { end, number: definition.number };
}

// src/lib/ride/splitFitParts.ts
function splitFitParts(bytes) {
	const parts = [];
	let offset = 0;
	let messages = 0;
	while (offset < bytes.length) {
		const header = fitHeader(bytes, offset);
		if (!header) break;
		if (parts.length === MAX_FIT_PARTS)
			throw refusal('too-large', `more than ${MAX_FIT_PARTS} chained files`);
		const { part, next } = readPart(bytes, offset, header, messages);
		parts.push(part);
		messages += part.messages;
		offset = next;
	}
	if (parts.length === 0) throw refusal('not-a-ride-file', 'no FIT header at byte 0');
	return { parts, trailingBytes: bytes.length - offset };
}
function readPart(bytes, start, header, messagesBefore) {
	const dataStart = start + header.headerBytes;
	const statedEnd = dataStart + header.dataBytes;
	const closed = header.dataBytes > 0 && statedEnd + 2 <= bytes.length;
	const sound = closed && fitChecksum(bytes, start, statedEnd) === word(bytes, statedEnd);
	const sizeHolds =
		sound || (closed && (statedEnd + 2 === bytes.length || fitHeader(bytes, statedEnd + 2) !== null));
	const limit = sizeHolds ? statedEnd : nextFitHeader(bytes, dataStart);
	const walk = walkFitMessages(bytes, dataStart, limit, messagesBefore);
	const damage = damageOf(bytes, header, { start, statedEnd, limit, sound, sizeHolds }, walk);
	const { end: dataEnd, records, messages, descriptionNumberOffsets } = walk;
	return {
		part: { start, dataStart, dataEnd, records, messages, descriptionNumberOffsets, damage },
		next: sizeHolds ? statedEnd + 2 : limit
	};
}
function damageOf(bytes, header, ends, walk) {
	const { start, statedEnd, limit, sound, sizeHolds } = ends;
	const left = limit - walk.end - paddingBytes(bytes, walk.end, limit);
	const upTo = `whole up to byte ${walk.end}`;
	if (sizeHolds) {
		if (walk.stoppedBy)
			return { kind: 'broken-inside', lostBytes: left, detail: `${walk.stoppedBy}; ${upTo}` };
		return sound
			? null
			: { kind: 'bad-checksum', lostBytes: 0, detail: `the file checksum differs; ${upTo}` };
	}
	const stated = `the header states ${header.dataBytes} bytes of messages`;
	if (header.dataBytes === 0 || statedEnd < limit) {
		const isChecksum = left === 2 && fitChecksum(bytes, start, walk.end) === word(bytes, walk.end);
		return { kind: 'not-closed', lostBytes: isChecksum ? 0 : left, detail: `${stated}; ${upTo}` };
	}
	return { kind: 'cut-off', lostBytes: left + statedEnd - limit, detail: `${stated}; ${upTo}` };
}
function paddingBytes(bytes, from, to) {
	let at2 = to;
	while (at2 > from && (bytes[at2 - 1] === 0 || bytes[at2 - 1] === 255)) at2--;
	return to - at2 > 16 ? to - at2 : 0;
}
function word(bytes, at2) {
	return bytes[at2] | (bytes[at2 + 1] << 8);
}

// src/lib/ride/wholeFitFile.ts
var UNKNOWN_MESSAGE = 65399;
function wholeFitFile(bytes, part) {
	const dataBytes = part.dataEnd - part.dataStart;
	const file = new Uint8Array(12 + dataBytes);
	file.set(bytes.subarray(part.start, part.start + 12));
	file[0] = 12;
	new DataView(file.buffer).setUint32(4, dataBytes, true);
	file.set(bytes.subarray(part.dataStart, part.dataEnd), 12);
	for (const offset of part.descriptionNumberOffsets) {
		file[offset - part.dataStart + 12] = UNKNOWN_MESSAGE & 255;
		file[offset - part.dataStart + 13] = UNKNOWN_MESSAGE >> 8;
	}
	return file;
}

// src/lib/ride/decodeFit.ts
async function decodeFit(bytes) {
	if (bytes.length > MAX_FIT_BYTES) {
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_FIT_BYTES}`);
	}
	const { parts, trailingBytes } = splitFitParts(bytes);
	const records = parts.reduce((sum, part) => sum + part.records, 0);
	if (records > MAX_RECORDS) throw refusal('too-large', `${records} records, the bound is ${MAX_RECORDS}`);
	if (records === 0) refuseWithoutRecords(parts);
	const warnings = [];
	const read = [];
	for (const part of parts) {
		if (part.records === 0) continue;
		const messages = await messagesOf(bytes, part);
		read.push({ part, messages, sport: fitSport(messages) });
	}
	requireRideFile(read);
	const ridden = read.filter(({ sport }) => sport.kind !== 'other');
	if (ridden.length === 0) {
		throw refusal('not-a-bicycle-ride', `sport: ${read.map(({ sport }) => sport.stated).join(', ')}`);
	}
	if (trailingBytes > 0) {
		warnings.push({
			code: 'trailing-bytes',
			sentence: 'After the recording the file goes on with something else, which was left out.',
			detail: `${trailingBytes} bytes after the last part`
		});
	}
	return assembleFit(read, ridden, warnings);
}
function refuseWithoutRecords(parts) {
	const seen = parts.reduce((sum, part) => sum + part.messages, 0);
	const damage = parts.flatMap((part) => (part.damage ? [part.damage.detail] : []));
	const code2 = damage.length > 0 ? 'damaged' : 'no-records';
	throw refusal(code2, [`${parts.length} part(s), ${seen} messages, no record`, ...damage].join('; '));
}
async function messagesOf(bytes, part) {
	try {
		return await readFitMessages(wholeFitFile(bytes, part));
	} catch (error) {
		throw refusal('damaged', `part at byte ${part.start}: ${error.message}`);
	}
}
function requireRideFile(read) {
	const types = read.flatMap(({ messages }) =>
		messages.fileIds.slice(0, MAX_HANDFUL).map((fileId) => fileId.type)
	);
	const planned = ['course', 'workout', 'segment', 'settings', 'sport'];
	const named = types.filter((type) => typeof type === 'string');
	if (named.length > 0 && named.every((type) => planned.includes(type))) {
		throw refusal('not-a-ride-file', `FIT file of type ${named.join(', ')}`);
	}
}
function assembleFit(read, ridden, warnings) {
	const all = (of) => ridden.flatMap(({ messages }) => of(messages));
	const otherSpansMs = ridden.flatMap(({ sport }) => sport.otherSpansMs);
	const { atMs, columns } = fitColumns(all((messages) => messages.records));
	const left = leaveOut(atMs, otherSpansMs);
	for (const { part } of read) {
		if (part.damage) warnings.push(fitDamageWarning(part, part.damage, medianStepS(atMs)));
	}
	warnings.push(...sportWarnings(read, ridden, left));
	const events = all((messages) => messages.events);
	const sensors = fitSensors(all((messages) => messages.devices));
	const hasPosition = columns.latitudeDeg?.some((degrees) => !Number.isNaN(degrees)) ?? false;
	return assembleRide({
		format: 'fit',
		atMs,
		columns,
		marksAtMs: fitMarks(
			all((messages) => messages.laps),
			events
		),
		pausesMs: fitPauses(events),
		gearEvents: fitGearEvents(events),
		sensors,
		localOffsetS: fitLocalOffset(all((messages) => messages.activities)),
		speedSource: speedSourceOf(sensors, hasPosition),
		trainer: trainerOf(ridden, sensors, hasPosition),
		motorAssisted: motorOf(ridden, sensors),
		warnings
	});
}
function leaveOut(atMs, spansMs) {
	let left = 0;
	for (let i = 0; i < atMs.length && spansMs.length > 0; i++) {
		if (!spansMs.some(([fromMs, toMs]) => atMs[i] >= fromMs && atMs[i] < toMs)) continue;
		atMs[i] = NaN;
		left++;
	}
	return left;
}
function medianStepS(atMs) {
	const steps = atMs.subarray(1).map((at2, i) => (at2 - atMs[i]) / 1e3);
	const forward = steps.filter((step) => step > 0).sort();
	return forward.length > 0 ? forward[forward.length >> 1] : 0;
}
function sportWarnings(read, ridden, left) {
	const warnings = [];
	const stated = read.map(({ sport }) => sport.stated || 'none').join(', ');
	if (ridden.every(({ sport }) => sport.kind === 'not stated')) {
		warnings.push({
			code: 'sport-not-stated',
			sentence: 'The file does not say that this was a bicycle ride; it was taken as one.',
			detail: `sport: ${stated}`
		});
	}
	if (left > 0 || ridden.length < read.length) {
		warnings.push({
			code: 'other-sports-left-out',
			sentence: 'The file also holds other sports; only the bicycle ride was read.',
			detail: `sport: ${stated}; ${left} records left out`
		});
	}
	if (ridden.length > 1) {
		warnings.push({
			code: 'several-parts',
			sentence: 'The file holds several recordings one after the other; they were read as one ride.',
			detail: `${ridden.length} parts with ${ridden.map(({ part }) => part.records).join(', ')} records`
		});
	}
	return warnings;
}
function speedSourceOf(sensors, hasPosition) {
	if (sensors.some(({ kind }) => kind === 'speed' || kind === 'speed and cadence')) return 'wheel';
	return sensors.length > 0 && hasPosition ? 'position' : 'not known';
}
function trainerOf(ridden, sensors, hasPosition) {
	const said = ridden.map(({ sport }) => sport.trainer);
	if (said.includes(true)) return true;
	const paired = sensors.some(({ description }) => /^(fitness equipment|bike trainer)$/.test(description));
	if (paired && !hasPosition) return true;
	return said.includes(false) ? false : null;
}
function motorOf(ridden, sensors) {
	const said = ridden.some(({ sport }) => sport.motorAssisted === true);
	const paired = sensors.some(({ description }) => description === 'light electric vehicle');
	return said || paired ? true : null;
}

// src/lib/ride/distanceFromPosition.ts
var EARTH_M = 6371009;
function distanceFromPosition(latitudeDeg, longitudeDeg) {
	const distanceM = new Float64Array(latitudeDeg.length).fill(NaN);
	const rad = Math.PI / 180;
	let last = -1;
	let sum = 0;
	for (let i = 0; i < latitudeDeg.length; i++) {
		if (Number.isNaN(latitudeDeg[i]) || Number.isNaN(longitudeDeg[i])) continue;
		if (last >= 0) {
			const north = Math.sin(((latitudeDeg[i] - latitudeDeg[last]) * rad) / 2);
			const east = Math.sin(((longitudeDeg[i] - longitudeDeg[last]) * rad) / 2);
			const h = north ** 2 + Math.cos(latitudeDeg[i] * rad) * Math.cos(latitudeDeg[last] * rad) * east ** 2;
			sum += 2 * EARTH_M * Math.asin(Math.min(1, Math.sqrt(h)));
		}
		distanceM[i] = sum;
		last = i;
	}
	return distanceM;
}

// src/lib/ride/parseInstant.ts
var PATTERN = /^(\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:\.\d{1,9})?)(Z|[+-]\d\d:\d\d)?$/;
function parseInstant(text) {
	const match = PATTERN.exec(text.trim());
	if (!match) return null;
	const zone = match[2] ?? 'Z';
	const atMs = Date.parse(match[1] + zone);
	if (Number.isNaN(atMs)) return null;
	if (zone === 'Z') return { atMs, localOffsetS: null };
	const sign = zone.startsWith('-') ? -1 : 1;
	const offsetS = sign * (Number(zone.slice(1, 3)) * 3600 + Number(zone.slice(4, 6)) * 60);
	return { atMs, localOffsetS: offsetS };
}

// src/lib/ride/readXml.ts
var import_saxes = __toESM(require_saxes(), 1);
var CHUNK = 65536;
function readXml(bytes, handlers) {
	if (bytes.length > MAX_XML_BYTES) {
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_XML_BYTES}`);
	}
	const parser = new import_saxes.SaxesParser();
	const path = [];
	let text = '';
	let broken = null;
	const add = (more) => {
		if (text.length + more.length > MAX_XML_TEXT)
			throw refusal('too-large', `text of more than ${MAX_XML_TEXT}`);
		text += more;
	};
	parser.on('error', (error) => {
		broken ??= error.message;
	});
	parser.on('doctype', () => {
		throw refusal('not-a-ride-file', 'the file declares a document type');
	});
	parser.on('opentag', ({ name, attributes }) => {
		if (broken !== null) return;
		if (path.length >= MAX_XML_DEPTH)
			throw refusal('too-large', `elements nested deeper than ${MAX_XML_DEPTH}`);
		path.push(localName(name));
		text = '';
		handlers.open(path, attributes);
	});
	parser.on('closetag', () => {
		if (broken !== null) return;
		handlers.close(path, text.trim());
		path.pop();
		text = '';
	});
	parser.on('text', add);
	parser.on('cdata', add);
	const decoder = new TextDecoder('utf-8');
	for (let at2 = 0; at2 < bytes.length && broken === null; at2 += CHUNK) {
		parser.write(decoder.decode(bytes.subarray(at2, at2 + CHUNK), { stream: true }));
	}
	if (broken === null) parser.close();
	return broken;
}
function localName(name) {
	return name.slice(name.indexOf(':') + 1);
}

// src/lib/ride/speedFromDistance.ts
var LONGEST_STEP_S = 10;
function speedFromDistance(atMs, distanceM) {
	const speedMps = new Float64Array(atMs.length).fill(NaN);
	let last = -1;
	for (let i = 0; i < atMs.length; i++) {
		if (Number.isNaN(distanceM[i]) || Number.isNaN(atMs[i])) continue;
		if (last >= 0) {
			const seconds = (atMs[i] - atMs[last]) / 1e3;
			const metres = distanceM[i] - distanceM[last];
			if (seconds > 0 && seconds <= LONGEST_STEP_S && metres >= 0) speedMps[i] = metres / seconds;
		}
		last = i;
	}
	return speedMps;
}

// src/lib/ride/trackColumns.ts
var READ = [
	'speedMps',
	'distanceM',
	'cadenceRpm',
	'powerW',
	'altitudeM',
	'temperatureC',
	'latitudeDeg',
	'longitudeDeg'
];
var TrackColumns = class {
	atMs = [];
	values = READ.map(() => []);
	get length() {
		return this.atMs.length;
	}
	/** instant of the last point that was added; NaN = none */
	get lastAtMs() {
		return this.atMs.at(-1) ?? NaN;
	}
	/** @throws RideRefused 'too-large' past the bound on records */
	add(point) {
		if (this.atMs.length >= MAX_RECORDS) throw refusal('too-large', `more than ${MAX_RECORDS} points`);
		this.atMs.push(point.atMs ?? NaN);
		READ.forEach((name, i) => this.values[i].push(point[name] ?? NaN));
	}
	/** instants and one column a channel, NaN = missing */
	columns() {
		const columns = READ.map((name, i) => [name, Float64Array.from(this.values[i])]);
		return { atMs: Float64Array.from(this.atMs), columns: Object.fromEntries(columns) };
	}
};
function decimal(text) {
	return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,3})?$/.test(text) ? Number(text) : NaN;
}

// src/lib/ride/decodeGpx.ts
var CHANNELS = {
	ele: 'altitudeM',
	speed: 'speedMps',
	cad: 'cadenceRpm',
	cadence: 'cadenceRpm',
	power: 'powerW',
	PowerInWatts: 'powerW',
	atemp: 'temperatureC'
};
var BICYCLE2 = /bik|cycl/i;
var OTHER = /run|walk|hik|swim|ski|row|sail/i;
async function decodeGpx(bytes) {
	const reading = {
		points: new TrackColumns(),
		types: [],
		pausesMs: [],
		localOffsetS: null,
		point: null,
		segmentEndedMs: NaN
	};
	const broken = readXml(bytes, {
		open: (path, attributes) => {
			if (path.at(-1) !== 'trkpt') return;
			reading.point = {
				latitudeDeg: decimal(attributes.lat ?? ''),
				longitudeDeg: decimal(attributes.lon ?? '')
			};
		},
		close: (path, text) => close(reading, path, text)
	});
	if (reading.points.length === 0) {
		throw refusal(broken === null ? 'no-records' : 'damaged', broken ?? 'no track point in the file');
	}
	const stated = reading.types.join(', ');
	if (reading.types.length > 0 && reading.types.every((type) => OTHER.test(type) && !BICYCLE2.test(type))) {
		throw refusal('not-a-bicycle-ride', `type of track: ${stated}`);
	}
	const { atMs, columns } = reading.points.columns();
	const warnings = warningsOf(reading, broken);
	columns.distanceM = distanceFromPosition(columns.latitudeDeg, columns.longitudeDeg);
	const hasSpeed = columns.speedMps.some((speed) => !Number.isNaN(speed));
	if (!hasSpeed) {
		columns.speedMps = speedFromDistance(atMs, columns.distanceM);
		warnings.push({
			code: 'speed-from-position',
			sentence:
				'The file records no speed; it was taken from the positions, which are too coarse for most slips. Upload the FIT file if there is one.',
			detail: 'no speed in the extensions of any point'
		});
	}
	return assembleRide({
		format: 'gpx',
		atMs,
		columns,
		marksAtMs: [],
		pausesMs: reading.pausesMs,
		gearEvents: [],
		sensors: [],
		localOffsetS: reading.localOffsetS,
		speedSource: hasSpeed ? 'not known' : 'position',
		trainer: null,
		motorAssisted: null,
		warnings
	});
}
function close(reading, path, text) {
	const name = path.at(-1);
	const { point } = reading;
	if (name === 'type' && path.at(-2) === 'trk' && text !== '') reading.types.push(text.slice(0, 40));
	if (name === 'trkseg') reading.segmentEndedMs = reading.points.lastAtMs;
	if (!point) return;
	if (name === 'trkpt') {
		if (point.atMs > reading.segmentEndedMs && reading.pausesMs.length < MAX_MARKS) {
			reading.pausesMs.push([reading.segmentEndedMs, point.atMs]);
		}
		reading.segmentEndedMs = NaN;
		reading.points.add(point);
		reading.point = null;
	} else if (name === 'time' && path.at(-2) === 'trkpt') {
		const instant = parseInstant(text);
		point.atMs = instant?.atMs;
		reading.localOffsetS ??= instant?.localOffsetS ?? null;
	} else if (Object.hasOwn(CHANNELS, name)) {
		point[CHANNELS[name]] = decimal(text);
	}
}
function warningsOf(reading, broken) {
	const warnings = [];
	if (broken !== null) {
		warnings.push({
			code: 'file-cut-off',
			sentence: 'The file ends too early or is damaged; it was read up to its last whole point.',
			detail: `${broken}; ${reading.points.length} points read`
		});
	}
	if (!reading.types.some((type) => BICYCLE2.test(type))) {
		warnings.push({
			code: 'sport-not-stated',
			sentence: 'The file does not say that this was a bicycle ride; it was taken as one.',
			detail: `type of track: ${reading.types.join(', ') || 'none'}`
		});
	}
	return warnings;
}

// src/lib/ride/loggerHeader.ts
function loggerHeader(text) {
	let bodyAt = 0;
	let startedAtMs = null;
	for (let lines = 1; bodyAt < text.length; lines++) {
		const end = text.indexOf('\n', bodyAt);
		const line2 = text
			.slice(bodyAt, end === -1 ? text.length : end)
			.replace(/^\uFEFF/, '')
			.trim();
		bodyAt = end === -1 ? text.length : end + 1;
		if (line2 === '') continue;
		if (line2.startsWith('#')) {
			const stated = /^#\s*started_at\s*:\s*(\S+)$/i.exec(line2);
			if (stated) startedAtMs = parseInstant(stated[1])?.atMs ?? null;
			continue;
		}
		const delimiter = [',', ';', '	'].find((character) => line2.includes(character));
		if (!delimiter) return null;
		const names = line2.split(delimiter).map((name) =>
			name
				.trim()
				.replace(/^"(.*)"$/, '$1')
				.toLowerCase()
		);
		const at2 = (name) => names.indexOf(name);
		const [time, crankRpm, wheelRpm] = [at2('time_s'), at2('crank_rpm'), at2('wheel_rpm')];
		const crankTorqueNm = at2('crank_torque_nm');
		if (time === -1 || (crankRpm === -1 && wheelRpm === -1 && crankTorqueNm === -1)) return null;
		const places = { time, crankRpm, wheelRpm, crankTorqueNm, columns: names.length };
		return { delimiter, ...places, startedAtMs, bodyAt, lines };
	}
	return null;
}

// ../../../work/main/node_modules/csv-parse/lib/api/CsvError.js
var CsvError = class _CsvError extends Error {
	constructor(code2, message, options, ...contexts) {
		if (Array.isArray(message)) message = message.join(' ').trim();
		super(message);
		if (Error.captureStackTrace !== void 0) {
			Error.captureStackTrace(this, _CsvError);
		}
		this.code = code2;
		for (const context of contexts) {
			for (const key in context) {
				const value = context[key];
				this[key] = Buffer.isBuffer(value)
					? value.toString(options.encoding)
					: value == null
						? value
						: JSON.parse(JSON.stringify(value));
			}
		}
	}
};

// ../../../work/main/node_modules/csv-parse/lib/utils/is_object.js
var is_object = function (obj) {
	return typeof obj === 'object' && obj !== null && !Array.isArray(obj);
};

// ../../../work/main/node_modules/csv-parse/lib/api/normalize_columns_array.js
var normalize_columns_array = function (columns) {
	const normalizedColumns = [];
	for (let i = 0, l = columns.length; i < l; i++) {
		const column = columns[i];
		if (column === void 0 || column === null || column === false) {
			normalizedColumns[i] = { disabled: true };
		} else if (typeof column === 'string' || typeof column === 'number') {
			normalizedColumns[i] = { name: `${column}` };
		} else if (is_object(column)) {
			if (typeof column.name !== 'string') {
				throw new CsvError('CSV_OPTION_COLUMNS_MISSING_NAME', [
					'Option columns missing name:',
					`property "name" is required at position ${i}`,
					'when column is an object literal'
				]);
			}
			normalizedColumns[i] = column;
		} else {
			throw new CsvError('CSV_INVALID_COLUMN_DEFINITION', [
				'Invalid column definition:',
				'expect a string or a literal object,',
				`got ${JSON.stringify(column)} at position ${i}`
			]);
		}
	}
	return normalizedColumns;
};

// ../../../work/main/node_modules/csv-parse/lib/utils/ResizeableBuffer.js
var ResizeableBuffer = class {
	constructor(size = 100) {
		this.size = size;
		this.length = 0;
		this.buf = Buffer.allocUnsafe(size);
	}
	prepend(val) {
		if (Buffer.isBuffer(val)) {
			const length = this.length + val.length;
			if (length >= this.size) {
				this.resize();
				if (length >= this.size) {
					throw Error('INVALID_BUFFER_STATE');
				}
			}
			const buf = this.buf;
			this.buf = Buffer.allocUnsafe(this.size);
			val.copy(this.buf, 0);
			buf.copy(this.buf, val.length);
			this.length += val.length;
		} else {
			const length = this.length++;
			if (length === this.size) {
				this.resize();
			}
			const buf = this.clone();
			this.buf[0] = val;
			buf.copy(this.buf, 1, 0, length);
		}
	}
	append(val) {
		const length = this.length++;
		if (length === this.size) {
			this.resize();
		}
		this.buf[length] = val;
	}
	clone() {
		return Buffer.from(this.buf.slice(0, this.length));
	}
	resize() {
		const length = this.length;
		this.size = this.size * 2;
		const buf = Buffer.allocUnsafe(this.size);
		this.buf.copy(buf, 0, 0, length);
		this.buf = buf;
	}
	toString(encoding) {
		if (encoding) {
			return this.buf.toString(encoding, 0, this.length);
		} else {
			return Uint8Array.prototype.slice.call(this.buf.slice(0, this.length));
		}
	}
	toJSON() {
		return this.toString('utf8');
	}
	reset() {
		this.length = 0;
	}
};
var ResizeableBuffer_default = ResizeableBuffer;

// ../../../work/main/node_modules/csv-parse/lib/api/init_state.js
var init_state = function (options) {
	const timchars = [
		// Basic Latin
		32,
		// [Space](https://www.fileformat.info/info/unicode/char/0020/index.htm)
		9,
		// [CHARACTER TABULATION (HT)](https://www.fileformat.info/info/unicode/char/0009/index.htm)
		10,
		// [LINE FEED (LF)](https://www.fileformat.info/info/unicode/char/000a/index.htm)
		13,
		// [CARRIAGE RETURN (CR)](https://www.fileformat.info/info/unicode/char/000d/index.htm)
		12,
		// [FORM FEED (FF)](https://www.fileformat.info/info/unicode/char/000c/index.htm)
		11,
		// [LINE TABULATION (VT)](https://www.fileformat.info/info/unicode/char/000b/index.htm)
		// Latin-1 Supplement
		160,
		// [NO-BREAK SPACE (NBSP)](https://www.fileformat.info/info/unicode/char/00a0/index.htm)
		// Ogham
		5760,
		// [OGHAM SPACE MARK](https://www.fileformat.info/info/unicode/char/1680/index.htm)
		// General Punctuation
		8192,
		// [EN QUAD](https://www.fileformat.info/info/unicode/char/2000/index.htm)
		8193,
		// [EM QUAD](https://www.fileformat.info/info/unicode/char/2001/index.htm)
		8194,
		// [EN SPACE](https://www.fileformat.info/info/unicode/char/2002/index.htm)
		8195,
		// [EM SPACE](https://www.fileformat.info/info/unicode/char/2003/index.htm)
		8196,
		// [THREE-PER-EM SPACE](https://www.fileformat.info/info/unicode/char/2004/index.htm)
		8197,
		// [FOUR-PER-EM SPACE](https://www.fileformat.info/info/unicode/char/2005/index.htm)
		8198,
		// [SIX-PER-EM SPACE](https://www.fileformat.info/info/unicode/char/2006/index.htm)
		8199,
		// [FIGURE SPACE](https://www.fileformat.info/info/unicode/char/2007/index.htm)
		8200,
		// [PUNCTUATION SPACE](https://www.fileformat.info/info/unicode/char/2008/index.htm)
		8201,
		// [THIN SPACE](https://www.fileformat.info/info/unicode/char/2009/index.htm)
		8202,
		// [HAIR SPACE](https://www.fileformat.info/info/unicode/char/200a/index.htm)
		8232,
		// [LINE SEPARATOR](https://www.fileformat.info/info/unicode/char/2028/index.htm)
		8233,
		// [PARAGRAPH SEPARATOR](https://www.fileformat.info/info/unicode/char/2029/index.htm)
		8239,
		// [NARROW NO-BREAK SPACE (NNBSP)](https://www.fileformat.info/info/unicode/char/202f/index.htm)
		8287,
		// [MEDIUM MATHEMATICAL SPACE (MMSP)](https://www.fileformat.info/info/unicode/char/205f/index.htm)
		12288,
		// [IDEOGRAPHIC SPACE](https://www.fileformat.info/info/unicode/char/3000/index.htm)
		65279
		// [ZERO WIDTH NO-BREAK SPACE (BOM)](https://www.fileformat.info/info/unicode/char/feff/index.htm)
	].reduce((acc, codepoint) => {
		const encoded = Buffer.from(String.fromCharCode(codepoint), options.encoding);
		if (codepoint !== 63 && encoded.length === 1 && encoded[0] === 63) {
			return acc;
		}
		acc.push(encoded);
		return acc;
	}, []);
	const timcharFirstBytes = new Uint8Array(256);
	for (const t2 of timchars) timcharFirstBytes[t2[0]] = 1;
	return {
		bomSkipped: false,
		bufBytesStart: 0,
		castField: options.cast_function,
		commenting: false,
		delimiterBufPrevious: void 0,
		delimiterDiscovered: false,
		// Current error encountered by a record
		error: void 0,
		enabled: options.from_line === 1,
		escaping: false,
		escapeIsQuote:
			Buffer.isBuffer(options.escape) &&
			Buffer.isBuffer(options.quote) &&
			Buffer.compare(options.escape, options.quote) === 0,
		// columns can be `false`, `true`, `Array`
		expectedRecordLength: Array.isArray(options.columns) ? options.columns.length : void 0,
		field: new ResizeableBuffer_default(20),
		firstLineToHeaders: options.cast_first_line_to_header,
		needMoreDataSize: Math.max(
			// Skip if the remaining buffer smaller than comment
			options.comment !== null ? options.comment.length : 0,
			...(options.delimiter ? options.delimiter.map((delimiter) => delimiter.length) : []),
			// Auto discovery of delimiter is limited to 1 character
			options.delimiter_auto ? 1 : 0,
			// Skip if the remaining buffer can be escape sequence
			options.quote !== null ? options.quote.length : 0,
			...timchars.map((t2) => t2.length)
		),
		previousBuf: void 0,
		quoting: false,
		stop: false,
		rawBuffer: new ResizeableBuffer_default(100),
		record: [],
		recordHasError: false,
		record_length: 0,
		recordDelimiterMaxLength:
			options.record_delimiter.length === 0 ? 0 : Math.max(...options.record_delimiter.map((v) => v.length)),
		trimChars: [Buffer.from(' ', options.encoding)[0], Buffer.from('	', options.encoding)[0]],
		wasQuoting: false,
		wasRowDelimiter: false,
		timchars,
		timcharFirstBytes
	};
};

// ../../../work/main/node_modules/csv-parse/lib/utils/underscore.js
var underscore = function (str) {
	return str.replace(/([A-Z])/g, function (_, match) {
		return '_' + match.toLowerCase();
	});
};

// ../../../work/main/node_modules/csv-parse/lib/api/normalize_options.js
var normalize_options = function (opts) {
	const options = {};
	for (const opt in opts) {
		options[underscore(opt)] = opts[opt];
	}
	if (options.encoding === void 0 || options.encoding === true) {
		options.encoding = 'utf8';
	} else if (options.encoding === null || options.encoding === false) {
		options.encoding = null;
	} else if (typeof options.encoding !== 'string' && options.encoding !== null) {
		throw new CsvError(
			'CSV_INVALID_OPTION_ENCODING',
			[
				'Invalid option encoding:',
				'encoding must be a string or null to return a buffer,',
				`got ${JSON.stringify(options.encoding)}`
			],
			options
		);
	}
	if (options.bom === void 0 || options.bom === null || options.bom === false) {
		options.bom = false;
	} else if (options.bom !== true) {
		throw new CsvError(
			'CSV_INVALID_OPTION_BOM',
			['Invalid option bom:', 'bom must be true,', `got ${JSON.stringify(options.bom)}`],
			options
		);
	}
	options.cast_function = null;
	if (options.cast === void 0 || options.cast === null || options.cast === false || options.cast === '') {
		options.cast = void 0;
	} else if (typeof options.cast === 'function') {
		options.cast_function = options.cast;
		options.cast = true;
	} else if (options.cast !== true) {
		throw new CsvError(
			'CSV_INVALID_OPTION_CAST',
			['Invalid option cast:', 'cast must be true or a function,', `got ${JSON.stringify(options.cast)}`],
			options
		);
	}
	if (
		options.cast_date === void 0 ||
		options.cast_date === null ||
		options.cast_date === false ||
		options.cast_date === ''
	) {
		options.cast_date = false;
	} else if (options.cast_date === true) {
		options.cast_date = function (value) {
			const date = Date.parse(value);
			return !isNaN(date) ? new Date(date) : value;
		};
	} else if (typeof options.cast_date !== 'function') {
		throw new CsvError(
			'CSV_INVALID_OPTION_CAST_DATE',
			[
				'Invalid option cast_date:',
				'cast_date must be true or a function,',
				`got ${JSON.stringify(options.cast_date)}`
			],
			options
		);
	}
	options.cast_first_line_to_header = void 0;
	if (options.columns === true) {
		options.cast_first_line_to_header = void 0;
	} else if (typeof options.columns === 'function') {
		options.cast_first_line_to_header = options.columns;
		options.columns = true;
	} else if (Array.isArray(options.columns)) {
		options.columns = normalize_columns_array(options.columns);
	} else if (options.columns === void 0 || options.columns === null || options.columns === false) {
		options.columns = false;
	} else {
		throw new CsvError(
			'CSV_INVALID_OPTION_COLUMNS',
			[
				'Invalid option columns:',
				'expect an array, a function or true,',
				`got ${JSON.stringify(options.columns)}`
			],
			options
		);
	}
	if (
		options.group_columns_by_name === void 0 ||
		options.group_columns_by_name === null ||
		options.group_columns_by_name === false
	) {
		options.group_columns_by_name = false;
	} else if (options.group_columns_by_name !== true) {
		throw new CsvError(
			'CSV_INVALID_OPTION_GROUP_COLUMNS_BY_NAME',
			[
				'Invalid option group_columns_by_name:',
				'expect an boolean,',
				`got ${JSON.stringify(options.group_columns_by_name)}`
			],
			options
		);
	} else if (options.columns === false) {
		throw new CsvError(
			'CSV_INVALID_OPTION_GROUP_COLUMNS_BY_NAME',
			['Invalid option group_columns_by_name:', 'the `columns` mode must be activated.'],
			options
		);
	}
	if (
		options.comment === void 0 ||
		options.comment === null ||
		options.comment === false ||
		options.comment === ''
	) {
		options.comment = null;
	} else {
		if (typeof options.comment === 'string') {
			options.comment = Buffer.from(options.comment, options.encoding);
		}
		if (!Buffer.isBuffer(options.comment)) {
			throw new CsvError(
				'CSV_INVALID_OPTION_COMMENT',
				[
					'Invalid option comment:',
					'comment must be a buffer or a string,',
					`got ${JSON.stringify(options.comment)}`
				],
				options
			);
		}
	}
	if (
		options.comment_no_infix === void 0 ||
		options.comment_no_infix === null ||
		options.comment_no_infix === false
	) {
		options.comment_no_infix = false;
	} else if (options.comment_no_infix !== true) {
		throw new CsvError(
			'CSV_INVALID_OPTION_COMMENT',
			[
				'Invalid option comment_no_infix:',
				'value must be a boolean,',
				`got ${JSON.stringify(options.comment_no_infix)}`
			],
			options
		);
	}
	if (
		options.delimiter_auto === void 0 ||
		options.delimiter_auto === null ||
		options.delimiter_auto === false
	) {
		options.delimiter_auto = false;
	} else if (options.delimiter_auto === true) {
		options.delimiter_auto = {};
	} else if (!is_object(options.delimiter_auto)) {
		throw new CsvError(
			'CSV_INVALID_OPTION_DELIMITER_AUTO',
			[
				'Invalid option delimiter_auto:',
				'delimiter_auto must be a boolean or a configuration object,',
				`got ${JSON.stringify(options.delimiter_auto)}`
			],
			options
		);
	}
	if (options.delimiter_auto) {
		if (options.delimiter_auto.preferred === void 0)
			options.delimiter_auto.preferred = {
				[','.charCodeAt(0)]: 1.8,
				['	'.charCodeAt(0)]: 1.8,
				[';'.charCodeAt(0)]: 1.6,
				[' '.charCodeAt(0)]: 1.6,
				[':'.charCodeAt(0)]: 1.5,
				['.'.charCodeAt(0)]: 1.4,
				['/'.charCodeAt(0)]: 1.4
			};
		else if (!is_object(options.delimiter_auto.preferred)) {
			throw new CsvError(
				'CSV_INVALID_OPTION_DELIMITER_AUTO',
				[
					'Invalid option delimiter_auto:',
					'preferred must be an object,',
					`got ${JSON.stringify(options.delimiter_auto.preferred)}`
				],
				options
			);
		}
		if (options.delimiter_auto.score === void 0)
			options.delimiter_auto.score = (info, options2) => {
				return (info.total - info.std) * (options2.preferred[info.char_code] || 1);
			};
		else if (typeof options.delimiter_auto.score !== 'function') {
			throw new CsvError(
				'CSV_INVALID_OPTION_DELIMITER_AUTO',
				[
					'Invalid option delimiter_auto:',
					'score must be a function,',
					`got ${JSON.stringify(options.delimiter_auto.score)}`
				],
				options
			);
		}
		if (options.delimiter_auto.size === void 0) options.delimiter_auto.size = 2048;
		else if (typeof options.delimiter_auto.size !== 'number') {
			throw new CsvError(
				'CSV_INVALID_OPTION_DELIMITER_AUTO',
				[
					'Invalid option delimiter_auto:',
					'size must be a number,',
					`got ${JSON.stringify(options.delimiter_auto.size)}`
				],
				options
			);
		}
	}
	const delimiter_json = JSON.stringify(options.delimiter);
	if (options.delimiter_auto !== false) {
		options.delimiter = [];
	}
	if (!Array.isArray(options.delimiter)) {
		if (options.delimiter === void 0 || options.delimiter === null || options.delimiter === false) {
			options.delimiter = Buffer.from(',', options.encoding);
		}
		options.delimiter = [options.delimiter];
	}
	options.delimiter = options.delimiter.map(function (delimiter) {
		if (typeof delimiter === 'string') {
			delimiter = Buffer.from(delimiter, options.encoding);
		}
		if (!Buffer.isBuffer(delimiter) || delimiter.length === 0) {
			throw new CsvError(
				'CSV_INVALID_OPTION_DELIMITER',
				[
					'Invalid option delimiter:',
					'delimiter must be a non empty string or buffer or array of string|buffer,',
					`got ${delimiter_json}`
				],
				options
			);
		}
		return delimiter;
	});
	if (options.escape === void 0 || options.escape === true) {
		options.escape = Buffer.from('"', options.encoding);
	} else if (typeof options.escape === 'string') {
		options.escape = Buffer.from(options.escape, options.encoding);
	} else if (options.escape === null || options.escape === false) {
		options.escape = null;
	}
	if (options.escape !== null) {
		if (!Buffer.isBuffer(options.escape)) {
			throw new Error(
				`Invalid Option: escape must be a buffer, a string or a boolean, got ${JSON.stringify(options.escape)}`
			);
		}
	}
	if (options.from === void 0 || options.from === null) {
		options.from = 1;
	} else {
		if (typeof options.from === 'string' && /\d+/.test(options.from)) {
			options.from = parseInt(options.from);
		}
		if (Number.isInteger(options.from)) {
			if (options.from < 0) {
				throw new Error(`Invalid Option: from must be a positive integer, got ${JSON.stringify(opts.from)}`);
			}
		} else {
			throw new Error(`Invalid Option: from must be an integer, got ${JSON.stringify(options.from)}`);
		}
	}
	if (options.from_line === void 0 || options.from_line === null) {
		options.from_line = 1;
	} else {
		if (typeof options.from_line === 'string' && /\d+/.test(options.from_line)) {
			options.from_line = parseInt(options.from_line);
		}
		if (Number.isInteger(options.from_line)) {
			if (options.from_line <= 0) {
				throw new Error(
					`Invalid Option: from_line must be a positive integer greater than 0, got ${JSON.stringify(opts.from_line)}`
				);
			}
		} else {
			throw new Error(`Invalid Option: from_line must be an integer, got ${JSON.stringify(opts.from_line)}`);
		}
	}
	if (options.ignore_last_delimiters === void 0 || options.ignore_last_delimiters === null) {
		options.ignore_last_delimiters = false;
	} else if (typeof options.ignore_last_delimiters === 'number') {
		options.ignore_last_delimiters = Math.floor(options.ignore_last_delimiters);
		if (options.ignore_last_delimiters === 0) {
			options.ignore_last_delimiters = false;
		}
	} else if (typeof options.ignore_last_delimiters !== 'boolean') {
		throw new CsvError(
			'CSV_INVALID_OPTION_IGNORE_LAST_DELIMITERS',
			[
				'Invalid option `ignore_last_delimiters`:',
				'the value must be a boolean value or an integer,',
				`got ${JSON.stringify(options.ignore_last_delimiters)}`
			],
			options
		);
	}
	if (options.ignore_last_delimiters === true && options.columns === false) {
		throw new CsvError(
			'CSV_IGNORE_LAST_DELIMITERS_REQUIRES_COLUMNS',
			['The option `ignore_last_delimiters`', 'requires the activation of the `columns` option'],
			options
		);
	}
	if (options.info === void 0 || options.info === null || options.info === false) {
		options.info = false;
	} else if (options.info !== true) {
		throw new Error(`Invalid Option: info must be true, got ${JSON.stringify(options.info)}`);
	}
	if (
		options.max_record_size === void 0 ||
		options.max_record_size === null ||
		options.max_record_size === false
	) {
		options.max_record_size = 0;
	} else if (Number.isInteger(options.max_record_size) && options.max_record_size >= 0) {
	} else if (typeof options.max_record_size === 'string' && /\d+/.test(options.max_record_size)) {
		options.max_record_size = parseInt(options.max_record_size);
	} else {
		throw new Error(
			`Invalid Option: max_record_size must be a positive integer, got ${JSON.stringify(options.max_record_size)}`
		);
	}
	if (options.objname === void 0 || options.objname === null || options.objname === false) {
		options.objname = void 0;
	} else if (Buffer.isBuffer(options.objname)) {
		if (options.objname.length === 0) {
			throw new Error(`Invalid Option: objname must be a non empty buffer`);
		}
		if (options.encoding === null) {
		} else {
			options.objname = options.objname.toString(options.encoding);
		}
	} else if (typeof options.objname === 'string') {
		if (options.objname.length === 0) {
			throw new Error(`Invalid Option: objname must be a non empty string`);
		}
	} else if (typeof options.objname === 'number') {
	} else {
		throw new Error(`Invalid Option: objname must be a string or a buffer, got ${options.objname}`);
	}
	if (options.objname !== void 0) {
		if (typeof options.objname === 'number') {
			if (options.columns !== false) {
				throw Error('Invalid Option: objname index cannot be combined with columns or be defined as a field');
			}
		} else {
			if (options.columns === false) {
				throw Error('Invalid Option: objname field must be combined with columns or be defined as an index');
			}
		}
	}
	if (options.on_record === void 0 || options.on_record === null) {
		options.on_record = void 0;
	} else if (typeof options.on_record !== 'function') {
		throw new CsvError(
			'CSV_INVALID_OPTION_ON_RECORD',
			['Invalid option `on_record`:', 'expect a function,', `got ${JSON.stringify(options.on_record)}`],
			options
		);
	}
	if (options.on_skip !== void 0 && options.on_skip !== null && typeof options.on_skip !== 'function') {
		throw new Error(`Invalid Option: on_skip must be a function, got ${JSON.stringify(options.on_skip)}`);
	}
	if (options.quote === null || options.quote === false || options.quote === '') {
		options.quote = null;
	} else {
		if (options.quote === void 0 || options.quote === true) {
			options.quote = Buffer.from('"', options.encoding);
		} else if (typeof options.quote === 'string') {
			options.quote = Buffer.from(options.quote, options.encoding);
		}
		if (!Buffer.isBuffer(options.quote)) {
			throw new Error(
				`Invalid Option: quote must be a buffer or a string, got ${JSON.stringify(options.quote)}`
			);
		}
	}
	if (options.raw === void 0 || options.raw === null || options.raw === false) {
		options.raw = false;
	} else if (options.raw !== true) {
		throw new Error(`Invalid Option: raw must be true, got ${JSON.stringify(options.raw)}`);
	}
	if (options.record_delimiter === void 0) {
		options.record_delimiter = [];
	} else if (typeof options.record_delimiter === 'string' || Buffer.isBuffer(options.record_delimiter)) {
		if (options.record_delimiter.length === 0) {
			throw new CsvError(
				'CSV_INVALID_OPTION_RECORD_DELIMITER',
				[
					'Invalid option `record_delimiter`:',
					'value must be a non empty string or buffer,',
					`got ${JSON.stringify(options.record_delimiter)}`
				],
				options
			);
		}
		options.record_delimiter = [options.record_delimiter];
	} else if (!Array.isArray(options.record_delimiter)) {
		throw new CsvError(
			'CSV_INVALID_OPTION_RECORD_DELIMITER',
			[
				'Invalid option `record_delimiter`:',
				'value must be a string, a buffer or array of string|buffer,',
				`got ${JSON.stringify(options.record_delimiter)}`
			],
			options
		);
	}
	options.record_delimiter = options.record_delimiter.map(function (rd, i) {
		if (typeof rd !== 'string' && !Buffer.isBuffer(rd)) {
			throw new CsvError(
				'CSV_INVALID_OPTION_RECORD_DELIMITER',
				[
					'Invalid option `record_delimiter`:',
					'value must be a string, a buffer or array of string|buffer',
					`at index ${i},`,
					`got ${JSON.stringify(rd)}`
				],
				options
			);
		} else if (rd.length === 0) {
			throw new CsvError(
				'CSV_INVALID_OPTION_RECORD_DELIMITER',
				[
					'Invalid option `record_delimiter`:',
					'value must be a non empty string or buffer',
					`at index ${i},`,
					`got ${JSON.stringify(rd)}`
				],
				options
			);
		}
		if (typeof rd === 'string') {
			rd = Buffer.from(rd, options.encoding);
		}
		return rd;
	});
	if (typeof options.relax_column_count === 'boolean') {
	} else if (options.relax_column_count === void 0 || options.relax_column_count === null) {
		options.relax_column_count = false;
	} else {
		throw new Error(
			`Invalid Option: relax_column_count must be a boolean, got ${JSON.stringify(options.relax_column_count)}`
		);
	}
	if (typeof options.relax_column_count_less === 'boolean') {
	} else if (options.relax_column_count_less === void 0 || options.relax_column_count_less === null) {
		options.relax_column_count_less = false;
	} else {
		throw new Error(
			`Invalid Option: relax_column_count_less must be a boolean, got ${JSON.stringify(options.relax_column_count_less)}`
		);
	}
	if (typeof options.relax_column_count_more === 'boolean') {
	} else if (options.relax_column_count_more === void 0 || options.relax_column_count_more === null) {
		options.relax_column_count_more = false;
	} else {
		throw new Error(
			`Invalid Option: relax_column_count_more must be a boolean, got ${JSON.stringify(options.relax_column_count_more)}`
		);
	}
	if (typeof options.relax_quotes === 'boolean') {
	} else if (options.relax_quotes === void 0 || options.relax_quotes === null) {
		options.relax_quotes = false;
	} else {
		throw new Error(
			`Invalid Option: relax_quotes must be a boolean, got ${JSON.stringify(options.relax_quotes)}`
		);
	}
	if (typeof options.skip_empty_lines === 'boolean') {
	} else if (options.skip_empty_lines === void 0 || options.skip_empty_lines === null) {
		options.skip_empty_lines = false;
	} else {
		throw new Error(
			`Invalid Option: skip_empty_lines must be a boolean, got ${JSON.stringify(options.skip_empty_lines)}`
		);
	}
	if (typeof options.skip_records_with_empty_values === 'boolean') {
	} else if (
		options.skip_records_with_empty_values === void 0 ||
		options.skip_records_with_empty_values === null
	) {
		options.skip_records_with_empty_values = false;
	} else {
		throw new Error(
			`Invalid Option: skip_records_with_empty_values must be a boolean, got ${JSON.stringify(options.skip_records_with_empty_values)}`
		);
	}
	if (typeof options.skip_records_with_error === 'boolean') {
	} else if (options.skip_records_with_error === void 0 || options.skip_records_with_error === null) {
		options.skip_records_with_error = false;
	} else {
		throw new Error(
			`Invalid Option: skip_records_with_error must be a boolean, got ${JSON.stringify(options.skip_records_with_error)}`
		);
	}
	if (options.rtrim === void 0 || options.rtrim === null || options.rtrim === false) {
		options.rtrim = false;
	} else if (options.rtrim !== true) {
		throw new Error(`Invalid Option: rtrim must be a boolean, got ${JSON.stringify(options.rtrim)}`);
	}
	if (options.ltrim === void 0 || options.ltrim === null || options.ltrim === false) {
		options.ltrim = false;
	} else if (options.ltrim !== true) {
		throw new Error(`Invalid Option: ltrim must be a boolean, got ${JSON.stringify(options.ltrim)}`);
	}
	if (options.trim === void 0 || options.trim === null || options.trim === false) {
		options.trim = false;
	} else if (options.trim !== true) {
		throw new Error(`Invalid Option: trim must be a boolean, got ${JSON.stringify(options.trim)}`);
	}
	if (options.trim === true && opts.ltrim !== false) {
		options.ltrim = true;
	} else if (options.ltrim !== true) {
		options.ltrim = false;
	}
	if (options.trim === true && opts.rtrim !== false) {
		options.rtrim = true;
	} else if (options.rtrim !== true) {
		options.rtrim = false;
	}
	if (options.to === void 0 || options.to === null) {
		options.to = -1;
	} else if (options.to !== -1) {
		if (typeof options.to === 'string' && /\d+/.test(options.to)) {
			options.to = parseInt(options.to);
		}
		if (Number.isInteger(options.to)) {
			if (options.to <= 0) {
				throw new Error(
					`Invalid Option: to must be a positive integer greater than 0, got ${JSON.stringify(opts.to)}`
				);
			}
		} else {
			throw new Error(`Invalid Option: to must be an integer, got ${JSON.stringify(opts.to)}`);
		}
	}
	if (options.to_line === void 0 || options.to_line === null) {
		options.to_line = -1;
	} else if (options.to_line !== -1) {
		if (typeof options.to_line === 'string' && /\d+/.test(options.to_line)) {
			options.to_line = parseInt(options.to_line);
		}
		if (Number.isInteger(options.to_line)) {
			if (options.to_line <= 0) {
				throw new Error(
					`Invalid Option: to_line must be a positive integer greater than 0, got ${JSON.stringify(opts.to_line)}`
				);
			}
		} else {
			throw new Error(`Invalid Option: to_line must be an integer, got ${JSON.stringify(opts.to_line)}`);
		}
	}
	return options;
};

// ../../../work/main/node_modules/csv-parse/lib/utils/delimiter_discover.js
var delimiter_discover = function (records, options) {
	if (!options) {
		({ delimiter_auto: options } = normalize_options({ delimiter_auto: true }));
	}
	if (typeof records === 'string') {
		records = Buffer.from(records);
	}
	if (Buffer.isBuffer(records)) {
		records = ((data) => {
			const records2 = [];
			const parser = transform({ delimiter: [] });
			const push = (record) => records2.push(record);
			const close3 = () => {};
			const error = parser.parse(data, true, push, close3);
			if (error !== void 0) throw error;
			return records2;
		})(records);
	}
	const info = Array(127)
		.fill()
		.map(() => ({ lines: [] }));
	records.map(([record], line2) => {
		for (let i = 0, l = record.length; i < l; i++) {
			const code2 = record.charCodeAt(i);
			if (info[code2].lines[line2] === void 0) info[code2].lines[line2] = 0;
			info[code2].lines[line2]++;
		}
	});
	info.map((info2, i) => {
		info2.char_code = i;
		info2.std = std(info2.lines);
		info2.total = info2.lines.reduce((acc, val) => acc + val, 0);
		info2.preferred = !!options.preferred[i];
		info2.score = options.score(info2, options);
	});
	const result = info.reduce((acc, info2) => (acc.score > info2.score ? acc : info2), {});
	return String.fromCharCode(result.char_code);
};
var std = function (array) {
	const n = array.length;
	if (n === 0) return 0;
	const mean3 = array.reduce((a, b) => a + b) / n;
	return Math.sqrt(array.map((x) => Math.pow(x - mean3, 2)).reduce((a, b) => a + b) / n);
};

// ../../../work/main/node_modules/csv-parse/lib/api/index.js
var isRecordEmpty = function (record) {
	return record.every((field) => field == null || (field.toString && field.toString().trim() === ''));
};
var cr = 13;
var nl = 10;
var boms = {
	// Note, the following are equals:
	// Buffer.from("\ufeff")
	// Buffer.from([239, 187, 191])
	// Buffer.from('EFBBBF', 'hex')
	utf8: Buffer.from([239, 187, 191]),
	// Note, the following are equals:
	// Buffer.from "\ufeff", 'utf16le
	// Buffer.from([255, 254])
	utf16le: Buffer.from([255, 254])
};
var transform = function (original_options = {}) {
	const info = {
		bytes: 0,
		bytes_records: 0,
		comment_lines: 0,
		empty_lines: 0,
		invalid_field_length: 0,
		lines: 1,
		records: 0
	};
	const options = normalize_options(original_options);
	return {
		info,
		original_options,
		options,
		state: init_state(options),
		__needMoreData: function (i, bufLen, end) {
			if (end) return false;
			const { encoding, escape, quote } = this.options;
			const { quoting, needMoreDataSize, recordDelimiterMaxLength } = this.state;
			const numOfCharLeft = bufLen - i - 1;
			const requiredLength = Math.max(
				needMoreDataSize,
				// Skip if the remaining buffer smaller than record delimiter
				// If "record_delimiter" is yet to be discovered:
				// 1. It is equals to `[]` and "recordDelimiterMaxLength" equals `0`
				// 2. We set the length to windows line ending in the current encoding
				// Note, that encoding is known from user or bom discovery at that point
				// recordDelimiterMaxLength,
				recordDelimiterMaxLength === 0 ? Buffer.from('\r\n', encoding).length : recordDelimiterMaxLength,
				// Skip if remaining buffer can be an escaped quote
				quoting ? (escape === null ? 0 : escape.length) + quote.length : 0,
				// Skip if remaining buffer can be record delimiter following the closing quote
				quoting ? quote.length + recordDelimiterMaxLength : 0
			);
			return numOfCharLeft < requiredLength;
		},
		// Central parser implementation
		parse: function (nextBuf, end, push, close3) {
			const {
				bom,
				comment_no_infix,
				delimiter_auto,
				encoding,
				from_line,
				ltrim,
				max_record_size,
				raw,
				relax_quotes,
				rtrim,
				skip_empty_lines,
				to,
				to_line
			} = this.options;
			let { comment, escape, quote, record_delimiter } = this.options;
			const { bomSkipped, delimiterDiscovered, delimiterBufPrevious, rawBuffer, escapeIsQuote } = this.state;
			if (!delimiterDiscovered && delimiter_auto) {
				let delimiterBuf;
				if (delimiterBufPrevious === void 0) {
					delimiterBuf = nextBuf;
				} else if (delimiterBufPrevious !== void 0 && nextBuf === void 0) {
					delimiterBuf = delimiterBufPrevious;
				} else {
					delimiterBuf = Buffer.concat([delimiterBufPrevious, nextBuf]);
				}
				nextBuf = void 0;
				if (end || delimiterBuf.length > delimiter_auto.size) {
					this.options.delimiter = [
						Buffer.from(delimiter_discover(delimiterBuf, this.options.delimiter_auto))
					];
					this.state.previousBuf = delimiterBuf;
					this.state.delimiterBufPrevious = void 0;
					this.state.delimiterDiscovered = true;
				} else {
					this.state.delimiterBufPrevious = delimiterBuf;
					return;
				}
			}
			const { previousBuf } = this.state;
			let buf;
			if (previousBuf === void 0) {
				if (nextBuf === void 0) {
					close3();
					return;
				} else {
					buf = nextBuf;
				}
			} else if (previousBuf !== void 0 && nextBuf === void 0) {
				buf = previousBuf;
			} else {
				buf = Buffer.concat([previousBuf, nextBuf]);
			}
			if (bomSkipped === false) {
				if (bom === false) {
					this.state.bomSkipped = true;
				} else if (buf.length < 3) {
					if (end === false) {
						this.state.previousBuf = buf;
						return;
					}
				} else {
					for (const encoding2 in boms) {
						if (boms[encoding2].compare(buf, 0, boms[encoding2].length) === 0) {
							const bomLength = boms[encoding2].length;
							this.state.bufBytesStart += bomLength;
							buf = buf.slice(bomLength);
							const options2 = normalize_options({
								...this.original_options,
								encoding: encoding2
							});
							for (const key in options2) {
								this.options[key] = options2[key];
							}
							({ comment, escape, quote } = this.options);
							break;
						}
					}
					this.state.bomSkipped = true;
				}
			}
			const bufLen = buf.length;
			let pos;
			for (pos = 0; pos < bufLen; pos++) {
				if (this.__needMoreData(pos, bufLen, end)) {
					break;
				}
				if (this.state.wasRowDelimiter === true) {
					this.info.lines++;
					this.state.wasRowDelimiter = false;
				}
				if (to_line !== -1 && this.info.lines > to_line) {
					this.state.stop = true;
					close3();
					return;
				}
				if (this.state.quoting === false && record_delimiter.length === 0) {
					const record_delimiterCount = this.__autoDiscoverRecordDelimiter(buf, pos);
					if (record_delimiterCount) {
						record_delimiter = this.options.record_delimiter;
					}
				}
				const chr = buf[pos];
				if (raw === true) {
					rawBuffer.append(chr);
				}
				if ((chr === cr || chr === nl) && this.state.wasRowDelimiter === false) {
					this.state.wasRowDelimiter = true;
				}
				if (this.state.escaping === true) {
					this.state.escaping = false;
				} else {
					if (
						escape !== null &&
						this.state.quoting === true &&
						this.__isEscape(buf, pos, chr) &&
						pos + escape.length < bufLen
					) {
						if (escapeIsQuote) {
							if (this.__isQuote(buf, pos + escape.length)) {
								this.state.escaping = true;
								pos += escape.length - 1;
								continue;
							}
						} else {
							this.state.escaping = true;
							pos += escape.length - 1;
							continue;
						}
					}
					if (this.state.commenting === false && this.__isQuote(buf, pos)) {
						if (this.state.quoting === true) {
							const nextChr = buf[pos + quote.length];
							const isNextChrTrimable = rtrim && this.__isCharTrimable(buf, pos + quote.length);
							const isNextChrComment =
								comment !== null && this.__compareBytes(comment, buf, pos + quote.length, nextChr);
							const isNextChrDelimiter = this.__isDelimiter(buf, pos + quote.length, nextChr);
							const isNextChrRecordDelimiter =
								record_delimiter.length === 0
									? this.__autoDiscoverRecordDelimiter(buf, pos + quote.length)
									: this.__isRecordDelimiter(nextChr, buf, pos + quote.length);
							if (
								escape !== null &&
								this.__isEscape(buf, pos, chr) &&
								this.__isQuote(buf, pos + escape.length)
							) {
								pos += escape.length - 1;
							} else if (
								!nextChr ||
								isNextChrDelimiter ||
								isNextChrRecordDelimiter ||
								isNextChrComment ||
								isNextChrTrimable
							) {
								this.state.quoting = false;
								this.state.wasQuoting = true;
								pos += quote.length - 1;
								continue;
							} else if (relax_quotes === false) {
								const err = this.__error(
									new CsvError(
										'CSV_INVALID_CLOSING_QUOTE',
										[
											'Invalid Closing Quote:',
											`got "${String.fromCharCode(nextChr)}"`,
											`at line ${this.info.lines}`,
											'instead of delimiter, record delimiter, trimable character',
											'(if activated) or comment'
										],
										this.options,
										this.__infoField()
									)
								);
								if (err !== void 0) return err;
							} else {
								this.state.quoting = false;
								this.state.wasQuoting = true;
								this.state.field.prepend(quote);
								pos += quote.length - 1;
							}
						} else {
							if (this.state.field.length !== 0) {
								if (relax_quotes === false) {
									const info2 = this.__infoField();
									const bom2 = Object.keys(boms)
										.map((b) => (boms[b].equals(this.state.field.toString()) ? b : false))
										.filter(Boolean)[0];
									const err = this.__error(
										new CsvError(
											'INVALID_OPENING_QUOTE',
											[
												'Invalid Opening Quote:',
												`a quote is found on field ${JSON.stringify(info2.column)} at line ${info2.lines}, value is ${JSON.stringify(this.state.field.toString(encoding))}`,
												bom2 ? `(${bom2} bom)` : void 0
											],
											this.options,
											info2,
											{
												field: this.state.field
											}
										)
									);
									if (err !== void 0) return err;
								}
							} else {
								this.state.quoting = true;
								pos += quote.length - 1;
								continue;
							}
						}
					}
					if (this.state.quoting === false) {
						const recordDelimiterLength = this.__isRecordDelimiter(chr, buf, pos);
						if (recordDelimiterLength !== 0) {
							const skipCommentLine =
								this.state.commenting &&
								this.state.wasQuoting === false &&
								this.state.record.length === 0 &&
								this.state.field.length === 0;
							if (skipCommentLine) {
								this.info.comment_lines++;
							} else {
								if (
									this.state.enabled === false &&
									this.info.lines + (this.state.wasRowDelimiter === true ? 1 : 0) >= from_line
								) {
									this.state.enabled = true;
									this.__resetField();
									this.__resetRecord();
									pos += recordDelimiterLength - 1;
									continue;
								}
								if (
									skip_empty_lines === true &&
									this.state.wasQuoting === false &&
									this.state.record.length === 0 &&
									this.state.field.length === 0
								) {
									this.info.empty_lines++;
									pos += recordDelimiterLength - 1;
									continue;
								}
								this.info.bytes = this.state.bufBytesStart + pos;
								const errField = this.__onField();
								if (errField !== void 0) return errField;
								this.info.bytes = this.state.bufBytesStart + pos + recordDelimiterLength;
								const errRecord = this.__onRecord(push);
								if (errRecord !== void 0) return errRecord;
								if (to !== -1 && this.info.records >= to) {
									this.state.stop = true;
									close3();
									return;
								}
							}
							this.state.commenting = false;
							pos += recordDelimiterLength - 1;
							continue;
						}
						if (this.state.commenting) {
							continue;
						}
						if (
							comment !== null &&
							(comment_no_infix === false ||
								(this.state.record.length === 0 && this.state.field.length === 0))
						) {
							const commentCount = this.__compareBytes(comment, buf, pos, chr);
							if (commentCount !== 0) {
								this.state.commenting = true;
								continue;
							}
						}
						const delimiterLength = this.__isDelimiter(buf, pos, chr);
						if (delimiterLength !== 0) {
							this.info.bytes = this.state.bufBytesStart + pos;
							const errField = this.__onField();
							if (errField !== void 0) return errField;
							pos += delimiterLength - 1;
							continue;
						}
					}
				}
				if (this.state.commenting === false) {
					if (max_record_size !== 0 && this.state.record_length + this.state.field.length > max_record_size) {
						return this.__error(
							new CsvError(
								'CSV_MAX_RECORD_SIZE',
								[
									'Max Record Size:',
									'record exceed the maximum number of tolerated bytes',
									`of ${max_record_size}`,
									`at line ${this.info.lines}`
								],
								this.options,
								this.__infoField()
							)
						);
					}
				}
				const lappend =
					ltrim === false ||
					this.state.quoting === true ||
					this.state.field.length !== 0 ||
					!this.__isCharTrimable(buf, pos);
				const rappend = rtrim === false || this.state.wasQuoting === false;
				if (lappend === true && rappend === true) {
					this.state.field.append(chr);
				} else if (rtrim === true && !this.__isCharTrimable(buf, pos)) {
					return this.__error(
						new CsvError(
							'CSV_NON_TRIMABLE_CHAR_AFTER_CLOSING_QUOTE',
							['Invalid Closing Quote:', 'found non trimable byte after quote', `at line ${this.info.lines}`],
							this.options,
							this.__infoField()
						)
					);
				} else {
					if (lappend === false) {
						pos += this.__isCharTrimable(buf, pos) - 1;
					}
					continue;
				}
			}
			if (end === true) {
				if (this.state.quoting === true) {
					const err = this.__error(
						new CsvError(
							'CSV_QUOTE_NOT_CLOSED',
							[
								'Quote Not Closed:',
								`the parsing is finished with an opening quote at line ${this.info.lines}`
							],
							this.options,
							this.__infoField()
						)
					);
					if (err !== void 0) return err;
				} else {
					if (
						this.state.wasQuoting === true ||
						this.state.record.length !== 0 ||
						this.state.field.length !== 0
					) {
						this.info.bytes = this.state.bufBytesStart + pos;
						const errField = this.__onField();
						if (errField !== void 0) return errField;
						const errRecord = this.__onRecord(push);
						if (errRecord !== void 0) return errRecord;
					} else if (this.state.wasRowDelimiter === true) {
						this.info.empty_lines++;
					} else if (this.state.commenting === true) {
						this.info.comment_lines++;
					}
				}
			} else {
				this.state.bufBytesStart += pos;
				this.state.previousBuf = buf.slice(pos);
			}
			if (this.state.wasRowDelimiter === true) {
				this.info.lines++;
				this.state.wasRowDelimiter = false;
			}
		},
		__onRecord: function (push) {
			const {
				columns,
				group_columns_by_name,
				encoding,
				info: info2,
				from,
				relax_column_count,
				relax_column_count_less,
				relax_column_count_more,
				raw,
				skip_records_with_empty_values
			} = this.options;
			const { enabled, record } = this.state;
			if (enabled === false) {
				return this.__resetRecord();
			}
			const recordLength = record.length;
			if (columns === true) {
				if (skip_records_with_empty_values === true && isRecordEmpty(record)) {
					this.__resetRecord();
					return;
				}
				return this.__firstLineToColumns(record);
			}
			if (columns === false && this.info.records === 0) {
				this.state.expectedRecordLength = recordLength;
			}
			if (recordLength !== this.state.expectedRecordLength) {
				const err =
					columns === false
						? new CsvError(
								'CSV_RECORD_INCONSISTENT_FIELDS_LENGTH',
								[
									'Invalid Record Length:',
									`expect ${this.state.expectedRecordLength},`,
									`got ${recordLength} on line ${this.info.lines}`
								],
								this.options,
								this.__infoField(),
								{
									record
								}
							)
						: new CsvError(
								'CSV_RECORD_INCONSISTENT_COLUMNS',
								[
									'Invalid Record Length:',
									`columns length is ${columns.length},`,
									// rename columns
									`got ${recordLength} on line ${this.info.lines}`
								],
								this.options,
								this.__infoField(),
								{
									record
								}
							);
				if (
					relax_column_count === true ||
					(relax_column_count_less === true && recordLength < this.state.expectedRecordLength) ||
					(relax_column_count_more === true && recordLength > this.state.expectedRecordLength)
				) {
					this.info.invalid_field_length++;
					this.state.error = err;
				} else {
					const finalErr = this.__error(err);
					if (finalErr) return finalErr;
				}
			}
			if (skip_records_with_empty_values === true && isRecordEmpty(record)) {
				this.__resetRecord();
				return;
			}
			if (this.state.recordHasError === true) {
				this.__resetRecord();
				this.state.recordHasError = false;
				return;
			}
			this.info.records++;
			if (from === 1 || this.info.records >= from) {
				const { objname } = this.options;
				if (columns !== false) {
					const obj = {};
					for (let i = 0, l = record.length; i < l; i++) {
						if (columns[i] === void 0 || columns[i].disabled) continue;
						if (group_columns_by_name === true && Object.hasOwn(obj, columns[i].name)) {
							if (Array.isArray(obj[columns[i].name])) {
								obj[columns[i].name] = obj[columns[i].name].concat(record[i]);
							} else {
								obj[columns[i].name] = [obj[columns[i].name], record[i]];
							}
						} else {
							Object.defineProperty(obj, columns[i].name, {
								value: record[i],
								enumerable: true,
								writable: true,
								configurable: true
							});
						}
					}
					if (raw === true || info2 === true) {
						const extRecord = Object.assign(
							{ record: obj },
							raw === true ? { raw: this.state.rawBuffer.toString(encoding) } : {},
							info2 === true ? { info: this.__infoRecord() } : {}
						);
						const err = this.__push(objname === void 0 ? extRecord : [obj[objname], extRecord], push);
						if (err) {
							return err;
						}
					} else {
						const err = this.__push(objname === void 0 ? obj : [obj[objname], obj], push);
						if (err) {
							return err;
						}
					}
				} else {
					if (raw === true || info2 === true) {
						const extRecord = Object.assign(
							{ record },
							raw === true ? { raw: this.state.rawBuffer.toString(encoding) } : {},
							info2 === true ? { info: this.__infoRecord() } : {}
						);
						const err = this.__push(objname === void 0 ? extRecord : [record[objname], extRecord], push);
						if (err) {
							return err;
						}
					} else {
						const err = this.__push(objname === void 0 ? record : [record[objname], record], push);
						if (err) {
							return err;
						}
					}
				}
			}
			this.__resetRecord();
		},
		__firstLineToColumns: function (record) {
			const { firstLineToHeaders } = this.state;
			try {
				const headers = firstLineToHeaders === void 0 ? record : firstLineToHeaders.call(null, record);
				if (!Array.isArray(headers)) {
					return this.__error(
						new CsvError(
							'CSV_INVALID_COLUMN_MAPPING',
							[
								'Invalid Column Mapping:',
								'expect an array from column function,',
								`got ${JSON.stringify(headers)}`
							],
							this.options,
							this.__infoField(),
							{
								headers
							}
						)
					);
				}
				const normalizedHeaders = normalize_columns_array(headers);
				this.state.expectedRecordLength = normalizedHeaders.length;
				this.options.columns = normalizedHeaders;
				this.__resetRecord();
				return;
			} catch (err) {
				return err;
			}
		},
		__resetRecord: function () {
			if (this.options.raw === true) {
				this.state.rawBuffer.reset();
			}
			this.state.error = void 0;
			this.state.record = [];
			this.state.record_length = 0;
		},
		__onField: function () {
			const { cast, encoding, rtrim, max_record_size } = this.options;
			const { enabled, wasQuoting } = this.state;
			if (enabled === false) {
				return this.__resetField();
			}
			let field = this.state.field.toString(encoding);
			if (rtrim === true && wasQuoting === false) {
				field = field.trimRight();
			}
			if (cast === true) {
				const [err, f] = this.__cast(field);
				if (err !== void 0) return err;
				field = f;
			}
			this.state.record.push(field);
			if (max_record_size !== 0 && typeof field === 'string') {
				this.state.record_length += field.length;
			}
			this.__resetField();
		},
		__resetField: function () {
			this.state.field.reset();
			this.state.wasQuoting = false;
		},
		__push: function (record, push) {
			const { on_record } = this.options;
			if (on_record !== void 0) {
				const info2 = this.__infoRecord();
				try {
					record = on_record.call(null, record, info2);
				} catch (err) {
					return err;
				}
				if (record === void 0 || record === null) {
					return;
				}
			}
			this.info.bytes_records += this.info.bytes;
			push(record);
		},
		// Return a tuple with the error and the casted value
		__cast: function (field) {
			const { columns, relax_column_count } = this.options;
			const isColumns = Array.isArray(columns);
			if (
				isColumns === true &&
				relax_column_count &&
				this.options.columns.length <= this.state.record.length
			) {
				return [void 0, void 0];
			}
			if (this.state.castField !== null) {
				try {
					const info2 = this.__infoField();
					return [void 0, this.state.castField.call(null, field, info2)];
				} catch (err) {
					return [err];
				}
			}
			if (this.__isFloat(field)) {
				return [void 0, parseFloat(field)];
			} else if (this.options.cast_date !== false) {
				const info2 = this.__infoField();
				return [void 0, this.options.cast_date.call(null, field, info2)];
			}
			return [void 0, field];
		},
		__compareBytes: function (sourceBuf, targetBuf, targetPos, firstByte) {
			if (sourceBuf[0] !== firstByte) return 0;
			const sourceLength = sourceBuf.length;
			for (let i = 1; i < sourceLength; i++) {
				if (sourceBuf[i] !== targetBuf[targetPos + i]) return 0;
			}
			return sourceLength;
		},
		// Helper to test if a character is trimable
		__isCharTrimable: function (buf, pos) {
			const { timchars, timcharFirstBytes } = this.state;
			const first = buf[pos];
			if (first === void 0 || timcharFirstBytes[first] === 0) return 0;
			loop1: for (let i = 0; i < timchars.length; i++) {
				const timchar = timchars[i];
				for (let j = 0; j < timchar.length; j++) {
					if (timchar[j] !== buf[pos + j]) continue loop1;
				}
				return timchar.length;
			}
			return 0;
		},
		__isDelimiter: function (buf, pos, chr) {
			const { delimiter, ignore_last_delimiters } = this.options;
			if (ignore_last_delimiters === true && this.state.record.length === this.options.columns.length - 1) {
				return 0;
			} else if (
				ignore_last_delimiters !== false &&
				typeof ignore_last_delimiters === 'number' &&
				this.state.record.length === ignore_last_delimiters - 1
			) {
				return 0;
			}
			loop1: for (let i = 0; i < delimiter.length; i++) {
				const del = delimiter[i];
				if (del[0] === chr) {
					for (let j = 1; j < del.length; j++) {
						if (del[j] !== buf[pos + j]) continue loop1;
					}
					return del.length;
				}
			}
			return 0;
		},
		__isEscape: function (buf, pos, chr) {
			const { escape } = this.options;
			if (escape === null) return false;
			const l = escape.length;
			if (escape[0] === chr) {
				for (let i = 0; i < l; i++) {
					if (escape[i] !== buf[pos + i]) {
						return false;
					}
				}
				return true;
			}
			return false;
		},
		__isFloat: function (value) {
			return value - parseFloat(value) + 1 >= 0;
		},
		// Keep it in case we implement the `cast_int` option
		// __isInt(value){
		//   // return Number.isInteger(parseInt(value))
		//   // return !isNaN( parseInt( obj ) );
		//   return /^(\-|\+)?[1-9][0-9]*$/.test(value)
		// }
		__isQuote: function (buf, pos) {
			const { quote } = this.options;
			if (quote === null) return false;
			const l = quote.length;
			for (let i = 0; i < l; i++) {
				if (quote[i] !== buf[pos + i]) {
					return false;
				}
			}
			return true;
		},
		__isRecordDelimiter: function (chr, buf, pos) {
			const { record_delimiter } = this.options;
			const recordDelimiterLength = record_delimiter.length;
			loop1: for (let i = 0; i < recordDelimiterLength; i++) {
				const rd = record_delimiter[i];
				const rdLength = rd.length;
				if (rd[0] !== chr) {
					continue;
				}
				for (let j = 1; j < rdLength; j++) {
					if (rd[j] !== buf[pos + j]) {
						continue loop1;
					}
				}
				return rd.length;
			}
			return 0;
		},
		__autoDiscoverRecordDelimiter: function (buf, pos) {
			const { encoding } = this.options;
			const rds = [
				// Important, the windows line ending must be before mac os 9
				Buffer.from('\r\n', encoding),
				Buffer.from('\n', encoding),
				Buffer.from('\r', encoding)
			];
			loop: for (let i = 0; i < rds.length; i++) {
				const l = rds[i].length;
				for (let j = 0; j < l; j++) {
					if (rds[i][j] !== buf[pos + j]) {
						continue loop;
					}
				}
				this.options.record_delimiter.push(rds[i]);
				this.state.recordDelimiterMaxLength = rds[i].length;
				return rds[i].length;
			}
			return 0;
		},
		__error: function (msg) {
			const { encoding, raw, skip_records_with_error } = this.options;
			const err = typeof msg === 'string' ? new Error(msg) : msg;
			if (skip_records_with_error) {
				this.state.recordHasError = true;
				if (this.options.on_skip !== void 0) {
					try {
						this.options.on_skip(err, raw ? this.state.rawBuffer.toString(encoding) : void 0);
					} catch (err2) {
						return err2;
					}
				}
				return void 0;
			} else {
				return err;
			}
		},
		__infoDataSet: function () {
			return {
				...this.info,
				columns: this.options.columns
			};
		},
		__infoRecord: function () {
			const { columns, raw, encoding } = this.options;
			return {
				...this.__infoDataSet(),
				bytes_records: this.info.bytes,
				error: this.state.error,
				header: columns === true,
				index: this.state.record.length,
				raw: raw ? this.state.rawBuffer.toString(encoding) : void 0
			};
		},
		__infoField: function () {
			const { columns } = this.options;
			const isColumns = Array.isArray(columns);
			const bytes_records = this.info.bytes_records;
			return {
				...this.__infoRecord(),
				bytes_records,
				column:
					isColumns === true
						? columns.length > this.state.record.length
							? columns[this.state.record.length].name
							: null
						: this.state.record.length,
				quoting: this.state.wasQuoting
			};
		}
	};
};

// ../../../work/main/node_modules/csv-parse/lib/sync.js
var parse = function (data, opts = {}) {
	if (typeof data === 'string') {
		data = Buffer.from(data);
	}
	const records = opts && opts.objname ? /* @__PURE__ */ Object.create(null) : [];
	const parser = transform(opts);
	const push = (record) => {
		if (parser.options.objname === void 0) records.push(record);
		else {
			records[record[0]] = record[1];
		}
	};
	const close3 = () => {};
	const error = parser.parse(data, true, push, close3);
	if (error !== void 0) throw error;
	return records;
};

// src/lib/ride/readLoggerRows.ts
var CHUNK2 = 1 << 20;
var NEWLINE = 10;
function readLoggerRows(bytes, bodyAt, header) {
	const end = bytes.lastIndexOf(NEWLINE) + 1;
	const most = countLines(bytes, bodyAt, end);
	if (most > MAX_LOGGER_SAMPLES)
		throw refusal('too-large', `${most} lines, the bound is ${MAX_LOGGER_SAMPLES}`);
	const column = () => new Float64Array(most);
	const rows = { timeS: column(), crankRpm: column(), wheelRpm: column(), crankTorqueNm: column() };
	let count = 0;
	let ragged = 0;
	let firstRaggedLine = 0;
	let notNumbers = 0;
	let line2 = header.lines;
	const comma = header.delimiter !== ',';
	const cell = (record, at2) => {
		if (at2 === -1 || record[at2] === '') return NaN;
		const value = decimal(comma ? record[at2].replace(',', '.') : record[at2]);
		if (Number.isNaN(value)) notNumbers++;
		return value;
	};
	for (let from = bodyAt; from < end;) {
		const to = from + CHUNK2 >= end ? end : bytes.lastIndexOf(NEWLINE, from + CHUNK2) + 1 || end;
		const pieceEnd = to > from ? to : bytes.indexOf(NEWLINE, from) + 1;
		parsePiece(bytes.subarray(from, pieceEnd), header.delimiter, line2, (record, at2) => {
			if (record.length !== header.columns) {
				if (ragged++ === 0) firstRaggedLine = at2;
				return;
			}
			rows.timeS[count] = cell(record, header.time);
			rows.crankRpm[count] = cell(record, header.crankRpm);
			rows.wheelRpm[count] = cell(record, header.wheelRpm);
			rows.crankTorqueNm[count] = cell(record, header.crankTorqueNm);
			count++;
		});
		line2 += countLines(bytes, from, pieceEnd);
		from = pieceEnd;
	}
	return {
		timeS: rows.timeS.subarray(0, count),
		crankRpm: rows.crankRpm.subarray(0, count),
		wheelRpm: rows.wheelRpm.subarray(0, count),
		crankTorqueNm: rows.crankTorqueNm.subarray(0, count),
		ragged,
		firstRaggedLine,
		notNumbers
	};
}
function parsePiece(piece, delimiter, lineBefore, row) {
	try {
		parse(new TextDecoder('utf-8').decode(piece), {
			delimiter,
			comment: '#',
			trim: true,
			skip_empty_lines: true,
			relax_column_count: true,
			max_record_size: 1e5,
			on_record: (record, { lines }) => {
				row(record, lineBefore + lines);
				return null;
			}
		});
	} catch (error) {
		throw refusal('damaged', `after line ${lineBefore}: ${error.message}`);
	}
}
function countLines(bytes, from, to) {
	let lines = 0;
	for (let at2 = bytes.indexOf(NEWLINE, from); at2 !== -1 && at2 < to; at2 = bytes.indexOf(NEWLINE, at2 + 1))
		lines++;
	return lines;
}

// src/lib/ride/decodeLoggerCsv.ts
var HEAD_BYTES = 65536;
async function decodeLoggerCsv(bytes) {
	if (bytes.length > MAX_LOGGER_BYTES) {
		throw refusal('too-large', `${bytes.length} bytes, the bound is ${MAX_LOGGER_BYTES}`);
	}
	const head = new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes.subarray(0, HEAD_BYTES));
	const header = loggerHeader(head);
	if (!header) throw refusal('not-a-ride-file', 'no line names time_s and a crank or wheel column');
	const bodyAt = new TextEncoder().encode(head.slice(0, header.bodyAt)).length;
	const rows = readLoggerRows(bytes, bodyAt, header);
	const ride = assembleRide({
		format: 'logger-csv',
		atMs: rows.timeS.map((second) => second * 1e3),
		columns: {
			cadenceRpm: rows.crankRpm,
			wheelRpm: rows.wheelRpm,
			crankTorqueNm: rows.crankTorqueNm
		},
		marksAtMs: [],
		pausesMs: [],
		gearEvents: [],
		sensors: [],
		localOffsetS: null,
		speedSource: 'wheel',
		trainer: null,
		motorAssisted: null,
		warnings: warningsOf2(header, rows)
	});
	const startedAtMs = header.startedAtMs === null ? 0 : header.startedAtMs + ride.startedAtMs;
	return { ...ride, startedAtMs };
}
function warningsOf2(header, rows) {
	const warnings = [];
	if (header.startedAtMs === null) {
		warnings.push({
			code: 'no-clock-in-logger',
			sentence: 'The logger knows no date. Say when this ride was, so that it finds the build on the wheel.',
			detail: 'no comment line "# started_at: ISO" before the column names'
		});
	}
	if (rows.ragged > 0) {
		warnings.push({
			code: 'rows-left-out',
			sentence: 'Some lines of the file have missing or surplus columns and were left out.',
			detail: `${rows.ragged} lines, the first is line ${rows.firstRaggedLine}`
		});
	}
	if (rows.notNumbers > 0) {
		warnings.push({
			code: 'cells-left-out',
			sentence: 'Some cells of the file hold no number and were left out.',
			detail: `${rows.notNumbers} cells`
		});
	}
	return warnings;
}

// src/lib/ride/decodeTcx.ts
var CHANNELS2 = {
	LatitudeDegrees: 'latitudeDeg',
	LongitudeDegrees: 'longitudeDeg',
	AltitudeMeters: 'altitudeM',
	DistanceMeters: 'distanceM',
	Cadence: 'cadenceRpm',
	Speed: 'speedMps',
	Watts: 'powerW'
};
async function decodeTcx(bytes) {
	const reading = {
		points: new TrackColumns(),
		sports: [],
		marksAtMs: [],
		pausesMs: [],
		localOffsetS: null,
		point: null,
		wanted: false,
		endedByHand: false,
		trackEndedMs: NaN
	};
	const broken = readXml(bytes, {
		open: (path, attributes) => open(reading, path, attributes),
		close: (path, text) => close2(reading, path, text)
	});
	requireRide(reading, broken);
	const { atMs, columns } = reading.points.columns();
	const warnings = warningsOf3(reading, broken);
	if (columns.distanceM && !columns.speedMps?.some((speed) => !Number.isNaN(speed))) {
		columns.speedMps = speedFromDistance(atMs, columns.distanceM);
		warnings.push({
			code: 'speed-from-distance',
			sentence:
				'The file records no speed; it was taken from the distance and is coarser. FIT files hold more.',
			detail: 'no speed in the extension of any trackpoint'
		});
	}
	return assembleRide({
		format: 'tcx',
		atMs,
		columns,
		marksAtMs: reading.marksAtMs,
		pausesMs: reading.pausesMs,
		gearEvents: [],
		sensors: [],
		localOffsetS: reading.localOffsetS,
		speedSource: 'not known',
		trainer: null,
		motorAssisted: null,
		warnings
	});
}
function open(reading, path, attributes) {
	switch (path.at(-1)) {
		case 'Activity':
			reading.sports.push(attributes.Sport ?? 'none');
			reading.wanted = attributes.Sport === void 0 || ['Biking', 'Other'].includes(attributes.Sport);
			reading.endedByHand = false;
			break;
		case 'Lap':
			openLap(reading, attributes.StartTime ?? '');
			break;
		case 'Trackpoint':
			reading.point = {};
			break;
	}
}
function openLap(reading, startTime) {
	const startMs = parseInstant(startTime)?.atMs ?? reading.points.lastAtMs;
	if (reading.endedByHand && reading.marksAtMs.length < MAX_MARKS) reading.marksAtMs.push(startMs);
	reading.endedByHand = false;
	reading.trackEndedMs = NaN;
}
function close2(reading, path, text) {
	const name = path.at(-1);
	const parent = path.at(-2);
	if (name === 'TriggerMethod' && parent === 'Lap') reading.endedByHand = reading.wanted && text === 'Manual';
	if (name === 'Track') reading.trackEndedMs = reading.points.lastAtMs;
	if (!reading.point) return;
	if (name === 'Trackpoint') {
		if (reading.wanted && path.includes('Activity')) addPoint(reading, reading.point);
		reading.point = null;
	} else if (name === 'Time' && parent === 'Trackpoint') {
		const instant = parseInstant(text);
		reading.point.atMs = instant?.atMs;
		reading.localOffsetS ??= instant?.localOffsetS ?? null;
	} else if (Object.hasOwn(CHANNELS2, name)) {
		reading.point[CHANNELS2[name]] = decimal(text);
	}
}
function addPoint(reading, point) {
	const atMs = point.atMs ?? NaN;
	if (atMs > reading.trackEndedMs && reading.pausesMs.length < MAX_MARKS) {
		reading.pausesMs.push([reading.trackEndedMs, atMs]);
	}
	reading.trackEndedMs = NaN;
	reading.points.add(point);
}
function requireRide(reading, broken) {
	const sports = reading.sports.join(', ');
	if (reading.sports.length === 0) {
		throw refusal(broken === null ? 'not-a-ride-file' : 'damaged', broken ?? 'no activity in the file');
	}
	if (!reading.sports.some((sport) => ['Biking', 'Other', 'none'].includes(sport))) {
		throw refusal('not-a-bicycle-ride', `sport: ${sports}`);
	}
	if (reading.points.length === 0)
		throw refusal(broken === null ? 'no-records' : 'damaged', broken ?? 'no trackpoint');
}
function warningsOf3(reading, broken) {
	const warnings = [];
	const detail = `sport: ${reading.sports.join(', ')}`;
	if (broken !== null) {
		warnings.push({
			code: 'file-cut-off',
			sentence: 'The file ends too early or is damaged; it was read up to its last whole point.',
			detail: `${broken}; ${reading.points.length} points read`
		});
	}
	if (!reading.sports.includes('Biking')) {
		warnings.push({
			code: 'sport-not-stated',
			sentence: 'The file does not say that this was a bicycle ride; it was taken as one.',
			detail
		});
	}
	if (reading.sports.some((sport) => !['Biking', 'Other', 'none'].includes(sport))) {
		warnings.push({
			code: 'other-sports-left-out',
			sentence: 'The file also holds other sports; only the bicycle ride was read.',
			detail
		});
	}
	return warnings;
}

// src/lib/ride/recogniseFormat.ts
var LOOKED_AT = 4096;
function recogniseFormat(bytes) {
	if (fitHeader(bytes, 0)) return 'fit';
	const start = new TextDecoder('utf-8').decode(bytes.subarray(0, LOOKED_AT)).replace(/^\uFEFF/, '');
	if (/^\s*</.test(start)) {
		if (/<(\w+:)?TrainingCenterDatabase[\s>]/.test(start)) return 'tcx';
		if (/<(\w+:)?gpx[\s>]/.test(start)) return 'gpx';
		return null;
	}
	return loggerHeader(start) ? 'logger-csv' : null;
}

// src/lib/ride/decodeRide.ts
async function decodeRide(bytes, fileName) {
	try {
		switch (recogniseFormat(bytes)) {
			case 'fit':
				return await decodeFit(bytes);
			case 'tcx':
				return await decodeTcx(bytes);
			case 'gpx':
				return await decodeGpx(bytes);
			case 'logger-csv':
				return await decodeLoggerCsv(bytes);
			default:
				throw refusal('not-a-ride-file', `${bytes.length} bytes, first ${firstBytes(bytes)}`);
		}
	} catch (error) {
		if (!(error instanceof RideRefused)) throw error;
		throw new RideRefused(error.code, error.sentence, `${fileName}: ${error.detail}`);
	}
}
function firstBytes(bytes) {
	return Array.from(bytes.subarray(0, 12), (byte) => byte.toString(16).padStart(2, '0')).join(' ');
}

// tests/bench/training/labelledRides.ts
var LABELLED = new URL('../../../../shared/labelled-rides/', import.meta.url).pathname;
var REAL_GROUPS = { r02: 'r01', r03: 'r01', r04: 'r01', r05: 'r01' };
async function labelledRides(folder, root = LABELLED) {
	const base = `${root}${folder}/`;
	if (!existsSync(`${base}truth.json`)) return [];
	const truth = JSON.parse(readFileSync(`${base}truth.json`, 'utf8'));
	const rides2 = [];
	for (const name of Object.keys(truth)) {
		const entry = truth[name];
		try {
			const ride = await decodeRide(readFileSync(base + entry.file), entry.file);
			const bike = entry.chainrings
				? {
						chainrings: entry.chainrings,
						cassette: entry.cassette,
						circumferenceM: entry.circumferenceSetting,
						speedSensor: entry.speedSource
					}
				: {};
			const own = name.slice(0, 3);
			const group = `${folder}/${REAL_GROUPS[own] ?? own}`;
			rides2.push({ name, group, ride, bike, km: entry.km, events: entry.events });
		} catch (error) {
			console.log(`${name}: refused (${error instanceof Error ? error.message : error})`);
		}
	}
	return rides2;
}

// src/lib/drivetrain/learnLag.ts
var LAGS_S = [0, 1, -1, 2, -2];
var PEDALLING_RPM = 40;
var ROLLING_MPS = 2;
function learnLag(grid) {
	if (grid.irregular) return 0;
	let best = 0;
	let bestScatter = Infinity;
	for (const lagS of LAGS_S) {
		const scatter = ratioScatter(grid, lagS);
		if (scatter < bestScatter * (best === lagS ? 1 : 0.97)) {
			best = lagS;
			bestScatter = scatter;
		}
	}
	return best;
}
function ratioScatter(grid, lagS) {
	let sum = 0;
	let count = 0;
	let before = NaN;
	for (let t2 = 2; t2 < grid.seconds - 2; t2++) {
		const rpm = grid.cadenceRpm[t2];
		const mps = grid.speedMps[t2 + lagS];
		const now = rpm > PEDALLING_RPM && mps > ROLLING_MPS ? Math.log(rpm / mps) : NaN;
		const change = Math.abs(now - before);
		if (change >= 0) {
			sum += Math.min(change, 0.08);
			count++;
		}
		before = now;
	}
	return count > 200 ? sum / count : Infinity;
}

// src/lib/drivetrain/median.ts
function median(values) {
	return quantile(values, 0.5);
}
function quantile(values, share) {
	if (values.length > FEW) return quantileOfMany(values, share);
	const sorted = sortedFew(values);
	if (sorted.length === 0) return NaN;
	const at2 = share * (sorted.length - 1);
	const below = Math.floor(at2);
	const above = Math.min(sorted.length - 1, below + 1);
	return sorted[below] + (sorted[above] - sorted[below]) * (at2 - below);
}
var FEW = 32;
function sortedFew(values) {
	const sorted = [];
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		if (Number.isNaN(value)) continue;
		let k = sorted.length;
		sorted.push(value);
		while (k > 0 && sorted[k - 1] > value) {
			sorted[k] = sorted[k - 1];
			k--;
		}
		sorted[k] = value;
	}
	return sorted;
}
function quantileOfMany(values, share) {
	const kept = new Float64Array(values.length);
	let length = 0;
	for (let i = 0; i < values.length; i++) {
		const value = values[i];
		if (value === value) kept[length++] = value;
	}
	if (length === 0) return NaN;
	const at2 = share * (length - 1);
	const below = Math.floor(at2);
	select(kept, length, below);
	const low = kept[below];
	if (below + 1 >= length) return low;
	let next = kept[below + 1];
	for (let i = below + 2; i < length; i++) if (kept[i] < next) next = kept[i];
	return low + (next - low) * (at2 - below);
}
function select(values, length, k) {
	let from = 0;
	let to = length - 1;
	while (from < to) {
		const pivot = middleOf(values[from], values[(from + to) >> 1], values[to]);
		let i = from;
		let j = to;
		while (i <= j) {
			while (values[i] < pivot) i++;
			while (values[j] > pivot) j--;
			if (i > j) break;
			const swapped = values[i];
			values[i++] = values[j];
			values[j--] = swapped;
		}
		if (k <= j) to = j;
		else if (k >= i) from = i;
		else return;
	}
}
function middleOf(a, b, c) {
	return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
}

// src/lib/drivetrain/driveSignals.ts
var TURNING_RPM = 25;
var ROLLING_MPS2 = 1.1;
var PRESSING_W = 30;
var MEDIAN_STEP_TO_SD = 1.048;
function driveSignals(grid) {
	const lagS = learnLag(grid);
	const { seconds, cadenceRpm, powerW } = grid;
	const speedMps = new Float64Array(seconds).fill(NaN);
	const logRatio = new Float64Array(seconds).fill(NaN);
	const pressing = new Uint8Array(seconds);
	for (let t2 = 0; t2 < seconds; t2++) {
		const at2 = t2 + lagS;
		if (at2 >= 0 && at2 < seconds) speedMps[t2] = grid.speedMps[at2];
		if (cadenceRpm[t2] >= TURNING_RPM && speedMps[t2] >= ROLLING_MPS2) {
			logRatio[t2] = Math.log(cadenceRpm[t2] / (60 * speedMps[t2]));
			pressing[t2] = powerW[t2] < PRESSING_W ? 0 : 1;
		}
	}
	const steps = new Float64Array(seconds);
	let count = 0;
	for (let t2 = 1; t2 < seconds; t2++) {
		if (pressing[t2] && pressing[t2 - 1]) steps[count++] = Math.abs(logRatio[t2] - logRatio[t2 - 1]);
	}
	const noise = count > 100 ? Math.max(3e-3, median(steps.subarray(0, count)) * MEDIAN_STEP_TO_SD) : 0.03;
	return { grid, lagS, speedMps, logRatio, pressing, noise };
}

// src/lib/drivetrain/nameGears.ts
var DEFAULT_CIRCUMFERENCE_M = 2.15;
var SAME = 0.022;
function nameGears(ratios, bike) {
	const statedM = bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M;
	const pairs = (bike.chainrings ?? []).flatMap((chainring) =>
		(bike.cassette ?? []).map((sprocket) => ({ chainring, sprocket }))
	);
	const scale = pairs.length > 0 ? bestScale(ratios, pairs, statedM, bike.circumferenceM !== void 0) : null;
	const circumferenceM = scale?.circumferenceM ?? statedM;
	const gears = ratios.map((learned) => {
		const developmentM = Math.exp(-learned.logRatio);
		const ratio2 = developmentM / circumferenceM;
		const pair = scale ? nearest(pairs, ratio2) : null;
		return {
			label: pair ? `${pair.chainring}/${pair.sprocket}` : `${ratio2.toFixed(2)}:1`,
			ratio: pair ? pair.chainring / pair.sprocket : ratio2,
			developmentM,
			chainring: pair?.chainring ?? null,
			sprocket: pair?.sprocket ?? null,
			seconds: learned.seconds
		};
	});
	return { gears, circumferenceM, fitted: scale !== null };
}
function nearest(pairs, ratio2) {
	let best = null;
	let bestOff = SAME;
	for (const pair of pairs) {
		const off = Math.abs(Math.log(pair.chainring / pair.sprocket / ratio2));
		if (off < bestOff) {
			bestOff = off;
			best = pair;
		}
	}
	return best;
}
function bestScale(ratios, pairs, statedM, stated) {
	const reach = stated ? 0.06 : 0.15;
	const total = ratios.reduce((sum, ratio2) => sum + ratio2.seconds, 0);
	let best = { circumferenceM: statedM, score: 0 };
	for (let off = -reach; off <= reach; off += 2e-3) {
		const circumferenceM = statedM * Math.exp(off);
		let score = 0;
		for (const { logRatio, seconds } of ratios) {
			const ratio2 = Math.exp(-logRatio) / circumferenceM;
			const pair = nearest(pairs, ratio2);
			if (!pair) continue;
			const misfit2 = Math.log(pair.chainring / pair.sprocket / ratio2) / SAME;
			score += seconds * (1 - misfit2 * misfit2);
		}
		score -= total * 0.15 * (off / reach) ** 2;
		if (score > best.score) best = { circumferenceM, score };
	}
	return best.score > 0.5 * total ? best : null;
}

// src/lib/drivetrain/cadenceByTurn.ts
var TURNING_RPM2 = 60;
var FALLS_TO = 0.85;
var STANDS_WITHIN_S = 4;
var LEAST_STOPS = 15;
var LARGEST_SHARE = 0.3;
function cadenceByTurn(cadenceRpm) {
	let stops = 0;
	let between = 0;
	for (let t2 = 2; t2 + STANDS_WITHIN_S < cadenceRpm.length; t2++) {
		const before = cadenceRpm[t2 - 1];
		if (!(before >= TURNING_RPM2) || !(cadenceRpm[t2 - 2] >= TURNING_RPM2)) continue;
		if (!(cadenceRpm[t2] < FALLS_TO * before)) continue;
		let standing = t2;
		while (standing < t2 + STANDS_WITHIN_S && cadenceRpm[standing] > 0) standing++;
		if (cadenceRpm[standing] !== 0) continue;
		stops++;
		if (cadenceRpm[t2] > 0) between++;
	}
	return stops >= LEAST_STOPS && between <= LARGEST_SHARE * stops;
}

// src/lib/drivetrain/distanceTellsMore.ts
var CALMER = 0.7;
var LEAST_SECONDS = 300;
var LAGS_S2 = [-2, -1, 0, 1, 2];
var LEAST_STEP_M = 1.5;
var CUT = 0.08;
var TURNING_RPM3 = 40;
function distanceTellsMore(signals, recordedM) {
	const bySpeed = ratioChange(signals, signals.grid.speedMps, [signals.lagS]);
	const steps = recordedM.map((metres, t2) => (t2 > 0 ? metres - recordedM[t2 - 1] : NaN));
	const byDistance = ratioChange(signals, steps, LAGS_S2);
	return { bySpeed, byDistance, more: byDistance < CALMER * bySpeed };
}
function ratioChange(signals, wayM, lagsS) {
	const { cadenceRpm, seconds } = signals.grid;
	let least2 = NaN;
	for (const lagS of lagsS) {
		let sum = 0;
		let count = 0;
		let before = NaN;
		for (let t2 = 3; t2 + 3 < seconds; t2++) {
			const way = wayM[t2 + lagS];
			const turning2 = signals.pressing[t2] && cadenceRpm[t2] >= TURNING_RPM3 && way >= LEAST_STEP_M;
			const now = turning2 ? Math.log(cadenceRpm[t2] / way) : NaN;
			const change = Math.abs(now - before);
			before = now;
			if (!(change >= 0)) continue;
			sum += Math.min(change, CUT);
			count++;
		}
		if (count < LEAST_SECONDS) continue;
		const mean3 = sum / count;
		if (!(mean3 >= least2)) least2 = mean3;
	}
	return least2;
}

// src/lib/drivetrain/development.ts
function development(chainring, sprocket, circumferenceM) {
	return chainring > 0 && sprocket > 0 ? (chainring / sprocket) * circumferenceM : NaN;
}

// src/lib/drivetrain/compareGears.ts
var SAME_GEAR = 0.02;
function compareGears(stated, learned) {
	const pairs = stated.chainrings.flatMap((chainring) =>
		stated.cassette.map((sprocket) => ({
			label: `${chainring}/${sprocket}`,
			developmentM: development(chainring, sprocket, stated.circumferenceM)
		}))
	);
	const gears = learned.map((gear) => {
		let nearest2 = { label: '', off: NaN };
		for (const { label, developmentM } of pairs) {
			const off = gear.developmentM / developmentM - 1;
			if (!(Math.abs(off) >= Math.abs(nearest2.off))) nearest2 = { label, off };
		}
		return { ...gear, off: nearest2.off, label: Math.abs(nearest2.off) <= SAME_GEAR ? nearest2.label : null };
	});
	const total = gears.reduce((sum, { seconds }) => sum + seconds, 0);
	const known2 = gears.reduce((sum, { label, seconds }) => sum + (label === null ? 0 : seconds), 0);
	return { gears, explained: total > 0 ? known2 / total : NaN };
}

// src/lib/drivetrain/gearCorrection.ts
var EXPLAINED = 0.95;
var GAIN = 0.05;
var EQUAL_MISFIT = 0.02;
var LEAST_SECONDS2 = 1800;
function gearCorrection(stated, learned) {
	const seconds = learned.reduce((sum, gear) => sum + gear.seconds, 0);
	const explainedBefore = compareGears(stated, learned).explained;
	if (seconds < LEAST_SECONDS2 || !(explainedBefore < EXPLAINED)) return null;
	let best = null;
	for (const { change, stated: changed } of candidates(stated)) {
		const { gears, explained } = compareGears(changed, learned);
		if (explained - explainedBefore < GAIN) continue;
		const misfit2 = misfitOf(gears);
		const margin = best && best.correction.change.kind !== change.kind ? EQUAL_MISFIT : 0;
		if (best && misfit2 >= best.misfit - margin) continue;
		best = {
			correction: { change, stated: changed, explainedBefore, explainedAfter: explained },
			misfit: misfit2
		};
	}
	return best?.correction ?? null;
}
function misfitOf(gears) {
	const total = gears.reduce((sum, { seconds }) => sum + seconds, 0);
	const misfit2 = gears.reduce(
		(sum, { off, seconds }) => sum + seconds * Math.min(1, (off / SAME_GEAR) ** 2),
		0
	);
	return misfit2 / total;
}
function* candidates(stated) {
	const fromM = stated.circumferenceM;
	for (let step = 1; step <= 24; step++)
		for (const sign of [1, -1]) {
			const toM = Math.round(fromM * (1 + sign * step * 5e-3) * 1e3) / 1e3;
			yield { change: { kind: 'circumference', fromM, toM }, stated: { ...stated, circumferenceM: toM } };
		}
	for (const [kind, name, reach] of [
		['sprocket', 'cassette', 6],
		['chainring', 'chainrings', 12]
	])
		for (const fromTeeth of stated[name])
			for (let step = 1; step <= reach; step++)
				for (const toTeeth of [fromTeeth + step, fromTeeth - step]) {
					if (toTeeth < 9 || stated[name].includes(toTeeth)) continue;
					const teeth = stated[name].map((one) => (one === fromTeeth ? toTeeth : one)).sort((a, b) => a - b);
					yield { change: { kind, fromTeeth, toTeeth }, stated: { ...stated, [name]: teeth } };
				}
}

// src/lib/drivetrain/learnedCircumference.ts
var STATED_FITS = 0.85;
var LEAST_SECONDS3 = 60;
var LEAST_GEARS = 3;
var NORMAL_90 = 1.645;
var READING = 2e-3;
function learnedCircumference(gears, stated) {
	const known2 = teethOf(gears, stated);
	const used = gears
		.map(({ developmentM, seconds }, i) => ({ developmentM, seconds, ratio: known2[i] }))
		.filter(({ ratio: ratio2, seconds }) => ratio2 > 0 && seconds >= LEAST_SECONDS3);
	if (used.length < LEAST_GEARS) return null;
	const values = used.map(({ developmentM, ratio: ratio2 }) => Math.log(developmentM / ratio2));
	const total = used.reduce((sum, { seconds }) => sum + seconds, 0);
	const mean3 = used.reduce((sum, { seconds }, i) => sum + (seconds / total) * values[i], 0);
	const effective = total ** 2 / used.reduce((sum, { seconds }) => sum + seconds ** 2, 0);
	const variance = used.reduce(
		(sum, { seconds }, i) => sum + (seconds / total) * (values[i] - mean3) ** 2,
		0
	);
	const sd = Math.hypot(Math.sqrt(variance / Math.max(1, effective - 1)), READING);
	return {
		circumferenceM: Math.exp(mean3),
		lowerM: Math.exp(mean3 - NORMAL_90 * sd),
		upperM: Math.exp(mean3 + NORMAL_90 * sd),
		gears: used.length
	};
}
function teethOf(gears, stated) {
	const compared = stated && compareGears(stated, gears);
	if (stated && compared && compared.explained >= STATED_FITS) {
		return compared.gears.map(({ label, developmentM, off }) =>
			label === null ? NaN : developmentM / (1 + off) / stated.circumferenceM
		);
	}
	return gears.map(({ chainring, sprocket }) =>
		chainring === null || sprocket === null ? NaN : chainring / sprocket
	);
}

// src/lib/drivetrain/looksLikeMotor.ts
var LEAST_MASS_KG = 60;
var GRAVITY = 9.81;
var STARTS_BELOW_MPS = 2;
var STARTED_FROM_MPS = 5.5;
var START_WITHIN_S = 12;
var CLIMB_S = 60;
var LEAST_CLIMB_M = 6;
var SHARE = 0.6;
var LEAST_CASES = 6;
var MOST_OF_THEM = 0.7;
function looksLikeMotor(grid, altitudeM) {
	const { speedMps, powerW, seconds } = grid;
	let cases = 0;
	let short = 0;
	const judge = (givenJ, neededJ) => {
		if (!(givenJ >= 0) || !(neededJ > 0)) return;
		cases++;
		if (givenJ < SHARE * neededJ) short++;
	};
	for (let t2 = 1; t2 + START_WITHIN_S < seconds; t2++) {
		if (!(speedMps[t2 - 1] < STARTS_BELOW_MPS) || !(speedMps[t2] >= STARTS_BELOW_MPS)) continue;
		let to = t2;
		while (to < t2 + START_WITHIN_S && speedMps[to] < STARTED_FROM_MPS) to++;
		if (!(speedMps[to] >= STARTED_FROM_MPS)) continue;
		const fallM = Math.max(0, altitudeM[t2 - 1] - altitudeM[to]) || 0;
		const gainJ = 0.5 * LEAST_MASS_KG * (speedMps[to] ** 2 - speedMps[t2 - 1] ** 2);
		judge(workJ(powerW, t2, to), gainJ - LEAST_MASS_KG * GRAVITY * fallM);
		t2 = to;
	}
	for (let t2 = 0; t2 + CLIMB_S < seconds; t2 += CLIMB_S) {
		const climbM = altitudeM[t2 + CLIMB_S] - altitudeM[t2];
		if (climbM < LEAST_CLIMB_M || !(speedMps[t2 + CLIMB_S] > STARTS_BELOW_MPS)) continue;
		const slowedJ = 0.5 * LEAST_MASS_KG * Math.max(0, speedMps[t2] ** 2 - speedMps[t2 + CLIMB_S] ** 2);
		judge(workJ(powerW, t2, t2 + CLIMB_S), LEAST_MASS_KG * GRAVITY * climbM - slowedJ);
	}
	return cases >= LEAST_CASES && short >= MOST_OF_THEM * cases;
}
function workJ(powerW, from, to) {
	let sum = 0;
	for (let t2 = from; t2 <= to; t2++) sum += powerW[t2];
	return sum;
}

// src/lib/drivetrain/looksLikeTrainer.ts
var WINDOW_S = 30;
var LEAST_WINDOWS = 20;
var ROLLING_MPS3 = 2;
var PRESSING_W2 = 40;
var LEAST_RANGE = 1.25;
var LARGEST_SCATTER = 0.05;
var LEAST_EXPONENT = 0.2;
function looksLikeTrainer(grid) {
	const lnSpeed = [];
	const lnPower = [];
	for (let from = 0; from + WINDOW_S <= grid.seconds; from += WINDOW_S) {
		let mps = 0;
		let watts = 0;
		for (let t2 = from; t2 < from + WINDOW_S; t2++) {
			mps += grid.speedMps[t2] / WINDOW_S;
			watts += grid.powerW[t2] / WINDOW_S;
		}
		if (!(mps >= ROLLING_MPS3) || !(watts >= PRESSING_W2)) continue;
		lnSpeed.push(Math.log(mps));
		lnPower.push(Math.log(watts));
	}
	if (lnSpeed.length < LEAST_WINDOWS) return false;
	if (quantile(lnPower, 0.8) - quantile(lnPower, 0.2) < Math.log(LEAST_RANGE)) return false;
	const { slope, intercept } = line(lnPower, lnSpeed);
	const off = lnSpeed.map((value, i) => Math.abs(value - intercept - slope * lnPower[i]));
	return slope >= LEAST_EXPONENT && quantile(off, 0.68) <= LARGEST_SCATTER;
}
function line(x, y) {
	const meanX = x.reduce((sum, value) => sum + value, 0) / x.length;
	const meanY = y.reduce((sum, value) => sum + value, 0) / y.length;
	let xy = 0;
	let xx = 0;
	for (let i = 0; i < x.length; i++) {
		xy += (x[i] - meanX) * (y[i] - meanY);
		xx += (x[i] - meanX) ** 2;
	}
	const slope = xx > 0 ? xy / xx : 0;
	return { slope, intercept: meanY - slope * meanX };
}

// src/lib/drivetrain/speedTellsPosition.ts
var EARTH_RADIUS_M = 6371e3;
var WINDOW_S2 = 120;
var LEAST_WINDOWS2 = 15;
var LEAST_WAY_M = 200;
var SAME_WAY = 5e-4;
function speedTellsPosition(grid, latitudeDeg, longitudeDeg) {
	const off = [];
	for (let from = 0; from + WINDOW_S2 < grid.seconds; from += WINDOW_S2) {
		let trackM = 0;
		for (let t2 = from; t2 < from + WINDOW_S2; t2++)
			trackM += metresBetween(latitudeDeg[t2], longitudeDeg[t2], latitudeDeg[t2 + 1], longitudeDeg[t2 + 1]);
		const wayM = grid.distanceM[from + WINDOW_S2] - grid.distanceM[from];
		if (!(trackM >= LEAST_WAY_M) || !(wayM >= LEAST_WAY_M)) continue;
		off.push(Math.abs(wayM / trackM - 1));
	}
	return off.length >= LEAST_WINDOWS2 && quantile(off, 0.9) <= SAME_WAY;
}
function metresBetween(latitude, longitude, nextLatitude, nextLongitude) {
	const perDeg = (Math.PI / 180) * EARTH_RADIUS_M;
	const north = (nextLatitude - latitude) * perDeg;
	const east = (nextLongitude - longitude) * perDeg * Math.cos((latitude * Math.PI) / 180);
	return Math.hypot(north, east);
}

// src/lib/drivetrain/toSeconds.ts
function toSeconds(channel, seconds) {
	const sum = new Float64Array(seconds);
	const count = new Float64Array(seconds);
	if (channel) {
		const { timeS, value } = channel;
		for (let i = 0; i < timeS.length; i++) {
			const second = Math.floor(timeS[i] + 1e-6);
			if (second < 0 || second >= seconds || Number.isNaN(value[i])) continue;
			sum[second] += value[i];
			count[second]++;
		}
	}
	for (let second = 0; second < seconds; second++) sum[second] /= count[second];
	return sum;
}

// src/lib/drivetrain/rideLearning.ts
function rideLearning(ride, signals, named, bike) {
	const { grid } = signals;
	const at2 = (name) => toSeconds(ride.channels[name], grid.seconds);
	const { chainrings, cassette, circumferenceM } = bike;
	const stated = chainrings && cassette && circumferenceM ? { chainrings, cassette, circumferenceM } : null;
	const fromPositions = bike.speedSensor ? bike.speedSensor === 'gps' : ride.speedSource === 'position';
	const atOneHertz = !ride.channels.wheelRpm;
	return {
		speedLagS: signals.lagS,
		ratioScatter: signals.noise,
		cadenceByTurn: atOneHertz && !ride.irregular && cadenceByTurn(grid.cadenceRpm),
		statedCircumferenceM: circumferenceM ?? null,
		circumference: learnedCircumference(named.gears, stated),
		// speed from positions is off by some percent itself: it corrects nothing
		correction: stated && !fromPositions ? gearCorrection(stated, named.gears) : null,
		speedSource: ride.speedSource,
		speedTellsPosition:
			ride.channels.latitudeDeg !== void 0 &&
			speedTellsPosition(grid, at2('latitudeDeg'), at2('longitudeDeg')),
		distanceTellsMore:
			atOneHertz && ride.channels.speedMps !== void 0 && distanceTellsMore(signals, at2('distanceM')).more,
		looksLikeTrainer: looksLikeTrainer(grid),
		looksLikeMotor: looksLikeMotor(grid, at2('altitudeM'))
	};
}

// src/lib/drivetrain/secondGrid.ts
var FILL_LIMIT_S = 10;
function fillShortGaps(values) {
	let last = -1;
	for (let i = 0; i < values.length; i++) {
		if (Number.isNaN(values[i])) continue;
		if (last >= 0 && i - last > 1 && i - last <= FILL_LIMIT_S) {
			for (let k = last + 1; k < i; k++) {
				values[k] = values[last] + ((values[i] - values[last]) * (k - last)) / (i - last);
			}
		}
		last = i;
	}
	return values;
}
function speedFromDistance2(distanceM) {
	const speedMps = new Float64Array(distanceM.length).fill(NaN);
	for (let i = 1; i < distanceM.length; i++) {
		const step = distanceM[i] - distanceM[i - 1];
		if (step >= 0 && step < 40) speedMps[i] = step;
	}
	return speedMps;
}
function distanceOrSum(recordedM, speedMps) {
	const hasRecorded = recordedM.some((value) => value > 0);
	const distanceM = new Float64Array(speedMps.length);
	let running = 0;
	for (let i = 0; i < speedMps.length; i++) {
		if (hasRecorded) {
			if (recordedM[i] > running) running = recordedM[i];
		} else if (speedMps[i] > 0) running += speedMps[i];
		distanceM[i] = running;
	}
	return distanceM;
}
function secondGrid(ride, circumferenceM) {
	const seconds = Math.floor(ride.durationS + 1e-6) + 1;
	const channels = ride.channels;
	const recordedM = fillShortGaps(toSeconds(channels.distanceM, seconds));
	let speedMps;
	if (channels.speedMps) speedMps = toSeconds(channels.speedMps, seconds);
	else if (channels.wheelRpm) {
		speedMps = toSeconds(channels.wheelRpm, seconds).map((rpm) => (rpm * circumferenceM) / 60);
	} else speedMps = speedFromDistance2(recordedM);
	fillShortGaps(speedMps);
	const cadenceRpm = toSeconds(channels.cadenceRpm, seconds);
	let powerW = toSeconds(channels.powerW, seconds);
	if (!channels.powerW && channels.crankTorqueNm) {
		powerW = toSeconds(channels.crankTorqueNm, seconds).map(
			(torqueNm, i) => (torqueNm * 2 * Math.PI * cadenceRpm[i]) / 60
		);
	}
	const gears = recordedGears(ride, seconds);
	const distanceM = distanceOrSum(recordedM, speedMps);
	return { seconds, speedMps, distanceM, cadenceRpm, powerW, irregular: ride.irregular, ...gears };
}
function recordedGears(ride, seconds) {
	const gearCode = new Int16Array(seconds).fill(-1);
	const gearCodes = [];
	const shiftS = [];
	const codes = /* @__PURE__ */ new Map();
	ride.gearEvents.forEach((event, i) => {
		const key = [event.frontIndex, event.frontTeeth, event.rearIndex, event.rearTeeth].join('/');
		if (!codes.has(key)) {
			codes.set(key, gearCodes.length);
			gearCodes.push({ frontTeeth: event.frontTeeth, rearTeeth: event.rearTeeth });
		}
		const from = Math.max(0, Math.floor(event.timeS));
		const next = ride.gearEvents[i + 1]?.timeS ?? seconds;
		gearCode.fill(codes.get(key), from, Math.max(from, Math.min(seconds, Math.floor(next))));
		if (i > 0 && key !== keyOf(ride.gearEvents[i - 1])) shiftS.push(from);
	});
	return { gearCode, gearCodes, shiftS };
}
function keyOf(event) {
	return [event.frontIndex, event.frontTeeth, event.rearIndex, event.rearTeeth].join('/');
}

// src/lib/slip/analysis.ts
var REFERENCE_SLIP_CRANK_DEG = 90;
var DRIVE_STATES = ['not observed', 'stopped', 'coasting', 'picking up', 'driving', 'shifting', 'slip'];

// src/lib/drivetrain/hubTorque.ts
var LOWEST_CADENCE_FOR_TORQUE_RPM = 30;
var DRIVETRAIN_EFFICIENCY = 0.97;
function hubTorque(powerW, cadenceRpm, ratio2, powerAt = 'crank') {
	if (!(cadenceRpm >= LOWEST_CADENCE_FOR_TORQUE_RPM) || !(ratio2 > 0) || !(powerW >= 0)) return NaN;
	const crankNm = (60 * powerW) / (2 * Math.PI * cadenceRpm);
	return (crankNm / ratio2) * (powerAt === 'hub' ? 1 : DRIVETRAIN_EFFICIENCY);
}

// src/lib/slip/loggerOverrun.ts
var AHEAD = 0.025;
var LEAD_IN = 0.015;
var LEAD_IN_SCATTERS = 3;
var CAUGHT = 0.8;
var LEFT_AFTER_CATCH = 0.05;
var RELATIVE_DOUBT = 0.06;
function loggerOverrun({ timeS, crankRpm, wheelRpm }, before, onset, ratio2, scatter, longestS) {
	const lead = (i) => crankRpm[i] - wheelRpm[i] / ratio2;
	const gained = (i) => 6 * lead(i) * (timeS[i + 1] - timeS[i]);
	let from = onset;
	const leads = Math.max(LEAD_IN, LEAD_IN_SCATTERS * scatter);
	while (from - 1 > before && lead(from - 1) > leads * crankRpm[from - 1]) from--;
	let total = 0;
	for (let i = from; i < onset; i++) total += gained(i);
	let to = onset;
	let greatest2 = 0;
	let caughtDeg = total;
	let lastDeg = 0;
	let caught = onset;
	while (lead(to) > AHEAD * (wheelRpm[to] / ratio2)) {
		if (to + 1 >= timeS.length || timeS[to] - timeS[onset] >= longestS) return null;
		total += gained(to);
		if (lead(to) >= CAUGHT * greatest2) {
			greatest2 = Math.max(greatest2, lead(to));
			caughtDeg = total;
			lastDeg = gained(to);
			caught = to;
		}
		to++;
	}
	const clean = to <= caught + 2 && !(lead(caught + 2) > LEFT_AFTER_CATCH * greatest2);
	const crankDeg = clean ? total : caughtDeg;
	const doubtDeg = 1.645 * 6 * crankRpm[onset] * scatter * (timeS[to] - timeS[from]) + RELATIVE_DOUBT * total;
	return {
		from,
		to,
		crankDeg,
		lowerDeg: Math.max(0, caughtDeg - lastDeg - doubtDeg),
		upperDeg: total + doubtDeg,
		lead: greatest2 / (wheelRpm[caught] / ratio2)
	};
}

// src/lib/slip/findLoggerSlips.ts
var BEFORE_S = 0.4;
var LONGEST_S = 2.5;
var LEAST_RPM = 30;
var RISES = 0.01;
var AHEAD2 = 0.05;
var LONG_S = 0.5;
var LONG_LEAD = 0.5;
var LEAST_DEG = 5;
var LEAST_LOST = 0.25;
var LEAST_TORQUE_NM = 3;
var ENGAGED_WITHIN = 0.04;
var ENGAGED_SAMPLES = 3;
var SCATTER_SAMPLES = 10;
var BROKEN_FROM_NM = 8;
var BROKEN_SHARE = 0.3;
var BACK_WITHIN = 0.03;
function findLoggerSlips(ride) {
	const crank = ride.channels.cadenceRpm;
	const wheel = ride.channels.wheelRpm;
	if (!crank || !wheel || crank.timeS !== wheel.timeS) return [];
	const torque = ride.channels.crankTorqueNm?.value ?? new Float64Array(crank.timeS.length).fill(NaN);
	const { timeS } = crank;
	const slips = [];
	for (let i = 1; i < timeS.length; i++) {
		const from = firstWithin(timeS, i, BEFORE_S);
		if (i - from < 3 || !(crank.value[i] >= LEAST_RPM)) continue;
		if (!(crank.value[i] > crank.value[i - 1] * (1 + RISES))) continue;
		const ratio2 = ratioOf(crank.value, wheel.value, from, i);
		if (!(crank.value[i] > (wheel.value[i] / ratio2) * (1 + AHEAD2))) continue;
		const slip = follow(timeS, crank.value, wheel.value, torque, from, i, ratio2);
		if (!slip) continue;
		slips.push(slip);
		while (i + 1 < timeS.length && timeS[i + 1] <= slip.endS) i++;
	}
	return slips;
}
function follow(timeS, crank, wheel, torque, from, onset, ratio2) {
	const scatter = ratioScatter2(crank, wheel, Math.max(from, onset - SCATTER_SAMPLES), onset, ratio2);
	const size = loggerOverrun(
		{ timeS, crankRpm: crank, wheelRpm: wheel },
		from,
		onset,
		ratio2,
		scatter,
		LONGEST_S
	);
	if (!size || size.crankDeg < LEAST_DEG) return null;
	const { to: end } = size;
	if (timeS[end] - timeS[size.from] > LONG_S && size.lead < LONG_LEAD) return null;
	for (let i = Math.max(from, size.from - ENGAGED_SAMPLES); i < size.from; i++) {
		if (Math.abs(wheel[i] / crank[i] / ratio2 - 1) > ENGAGED_WITHIN) return null;
	}
	const meanTorqueNm = meanOf(torque, firstWithin(timeS, onset - 1, 60 / crank[onset - 1]) + 1, onset);
	if (meanTorqueNm < LEAST_TORQUE_NM) return null;
	if (!breaksOff(torque, size.from, end) && keepsTorque(timeS, torque, onset, end, crank[onset - 1]))
		return null;
	const after = ratioOf(crank, wheel, end, Math.min(timeS.length, end + (onset - from)));
	if (Math.log(after / ratio2) < -BACK_WITHIN) return null;
	return {
		startS: timeS[size.from],
		endS: timeS[end],
		overrunCrankDeg: size.crankDeg,
		ratio: ratio2,
		torqueBeforeNm: greatest(torque, from, onset),
		meanTorqueNm,
		torqueDuringNm: least(torque, onset, end),
		lowerDeg: size.lowerDeg,
		upperDeg: size.upperDeg
	};
}
function breaksOff(torque, onset, end) {
	const before = meanOf(torque, onset - 2, onset);
	return before >= BROKEN_FROM_NM && median(torque.subarray(onset, end)) < BROKEN_SHARE * before;
}
function keepsTorque(timeS, torque, onset, end, rpm) {
	const halfTurnS = 30 / rpm;
	const earlier = firstWithin(timeS, onset, halfTurnS);
	const expected = meanOf(torque, earlier, earlier + (end - onset));
	const during = meanOf(torque, onset, end);
	if (Number.isNaN(expected + during)) return false;
	return during > (1 - LEAST_LOST) * expected;
}
function meanOf(values, from, to) {
	let sum = 0;
	for (let i = Math.max(0, from); i < to; i++) sum += values[i];
	return sum / (to - Math.max(0, from));
}
function firstWithin(timeS, i, reachS) {
	let from = i;
	while (from > 0 && timeS[i] - timeS[from - 1] <= reachS) from--;
	return from;
}
function ratioOf(crank, wheel, from, to) {
	const ratios = [];
	for (let i = from; i < to; i++) if (crank[i] >= LEAST_RPM) ratios.push(wheel[i] / crank[i]);
	return ratios.length >= 3 ? median(ratios) : NaN;
}
function ratioScatter2(crank, wheel, from, to, ratio2) {
	let sum = 0;
	for (let i = from; i < to; i++) sum += Math.abs(wheel[i] / crank[i] / ratio2 - 1);
	return (1.2533 * sum) / Math.max(1, to - from);
}
function greatest(values, from, to) {
	let out = -Infinity;
	for (let i = from; i < to; i++) if (values[i] > out) out = values[i];
	return out;
}
function least(values, from, to) {
	let out = Infinity;
	for (let i = from; i < to; i++) if (values[i] < out) out = values[i];
	return out;
}

// src/lib/slip/analyseLoggerRide.ts
var PRESSING_W3 = 30;
var SMALLEST_SEEN_DEG = 12;
var TORQUE_ACCURACY = 0.1;
function isLoggerRide(ride) {
	const { cadenceRpm, wheelRpm } = ride.channels;
	return cadenceRpm !== void 0 && wheelRpm !== void 0 && cadenceRpm.timeS.length > 5 * ride.durationS;
}
function loggerEvents(ride, context, gears, bike) {
	return findLoggerSlips(ride).map((slip) => {
		const gear = nearestGear(gears, slip.ratio);
		const ratio2 = gear?.ratio ?? slip.ratio;
		const second = Math.min(context.signals.grid.seconds - 1, Math.floor(slip.startS));
		return {
			startS: slip.startS,
			endS: slip.endS,
			kind: 'slip',
			overrunCrankDeg: overrunOf(slip),
			overrunHubDeg: slip.overrunCrankDeg * slip.ratio,
			gear,
			hubTorqueNm: meanTorque(slip, ratio2, bike.powerAt ?? 'crank'),
			powerLost: Number.isFinite(slip.torqueBeforeNm) ? strengthOf(slip) : null,
			// too few logger rides to calibrate on: the share of torque that was lost stands for it
			strength: strengthOf(slip),
			atM: context.signals.grid.distanceM[second],
			observed: true,
			reasons: reasonsFor(slip)
		};
	});
}
function strengthOf(slip) {
	if (!Number.isFinite(slip.torqueBeforeNm)) return 0.5;
	return Math.max(0, Math.min(1, 1 - slip.torqueDuringNm / slip.torqueBeforeNm));
}
function overrunOf(slip) {
	return {
		value: slip.overrunCrankDeg,
		lower: slip.lowerDeg,
		upper: slip.upperDeg
	};
}
function loggerDetectionLimit(context) {
	const { grid } = context.signals;
	return grid.cadenceRpm.map((rpm, t2) =>
		rpm >= 30 && grid.powerW[t2] >= PRESSING_W3 && grid.speedMps[t2] > 1 ? SMALLEST_SEEN_DEG : NaN
	);
}
function nearestGear(gears, ratio2) {
	let best = null;
	for (const gear of gears) {
		if (!best || Math.abs(Math.log(gear.ratio / ratio2)) < Math.abs(Math.log(best.ratio / ratio2)))
			best = gear;
	}
	return best && Math.abs(Math.log(best.ratio / ratio2)) < 0.04 ? best : null;
}
function meanTorque(slip, ratio2, powerAt) {
	const { meanTorqueNm } = slip;
	if (!(meanTorqueNm >= 0)) return null;
	const value = hubTorque(2 * Math.PI * meanTorqueNm, 60, ratio2, powerAt);
	return { value, lower: (1 - TORQUE_ACCURACY) * value, upper: (1 + TORQUE_ACCURACY) * value };
}
function reasonsFor(slip) {
	const lasted = ((slip.endS - slip.startS) * 1e3).toFixed(0);
	const reasons = [
		`For: the crank gained ${slip.overrunCrankDeg.toFixed(0)} degrees on the wheel within ${lasted} ms, and the same ratio was back after it.`
	];
	if (Number.isFinite(slip.torqueBeforeNm)) {
		reasons.push(
			`For: instantaneous crank torque broke off from ${slip.torqueBeforeNm.toFixed(0)} to ${slip.torqueDuringNm.toFixed(0)} Nm.`
		);
	} else reasons.push('Against: no torque was recorded.');
	return reasons;
}

// src/lib/slip/analysisVersion.ts
var ANALYSIS_VERSION = 2;

// src/lib/slip/findCandidates.ts
var LONGEST_S2 = 3;
var LEAST_CAREFUL_DEG = 16;
var LEAST_GENEROUS_DEG = 50;
var TURNING_RPM4 = 20;
function findCandidates(signals, base) {
	const { seconds, cadenceRpm } = signals.grid;
	const strength = new Float64Array(seconds);
	const found = new Array(seconds);
	for (let from = 0; from < seconds; from++) {
		if (!(cadenceRpm[from] >= TURNING_RPM4) || !(signals.speedMps[from] > 0.3)) continue;
		const before = base.justBefore[from];
		let best;
		let bestStrength = 0;
		for (let to = from; to < Math.min(seconds, from + LONGEST_S2); to++) {
			if (!(cadenceRpm[to] >= TURNING_RPM4) || !(signals.speedMps[to] > 0.3)) break;
			const after = base.justAfter[to];
			const high = higherOf(before, after);
			const low = lowerOf(before, base.after3[to]);
			if (Number.isNaN(high)) continue;
			const carefulDeg = excessDeg(signals, from, to, high);
			const generousDeg = low === high ? carefulDeg : excessDeg(signals, from, to, low);
			const now = Math.max(carefulDeg, 0.25 * generousDeg);
			if (now > bestStrength) {
				bestStrength = now;
				best = { from, to, carefulDeg, generousDeg };
			}
		}
		if (!best) continue;
		if (best.carefulDeg < LEAST_CAREFUL_DEG && best.generousDeg < LEAST_GENEROUS_DEG) continue;
		strength[from] = bestStrength;
		found[from] = best;
	}
	return strongest(found, strength);
}
function excessDeg(signals, from, to, logRatio) {
	const turnsPerMetre = Math.exp(logRatio);
	let sum = 0;
	for (let t2 = from; t2 <= to; t2++) {
		sum += 6 * (signals.grid.cadenceRpm[t2] - 60 * signals.speedMps[t2] * turnsPerMetre);
	}
	return sum;
}
function higherOf(a, b) {
	return a > b || Number.isNaN(b) ? a : b;
}
function lowerOf(a, b) {
	return a < b || Number.isNaN(b) ? a : b;
}
function strongest(found, strength) {
	const kept = [];
	for (let t2 = 0; t2 < found.length; t2++) {
		const candidate = found[t2];
		if (!candidate) continue;
		let beaten = false;
		for (let k = Math.max(0, t2 - 1); k <= Math.min(found.length - 1, t2 + 1) && !beaten; k++) {
			beaten = strength[k] > strength[t2] || (k < t2 && strength[k] === strength[t2]);
		}
		if (!beaten) kept.push(candidate);
	}
	return kept;
}

// src/lib/slip/explainByGears.ts
var AROUND_S = 5;
var CHANGE = 3.5;
var CHANGE_RECORDED = 1.5;
var CHANGE_UNRECORDED = 5.5;
var MOST_MISFIT = 14;
var ROUNDING_RPM = 0.29;
var LEAST_SD = 6e-3;
var SAME_GEAR2 = 8e-3;
function explainByGears(context, placed) {
	const from = Math.max(0, placed.from - AROUND_S);
	const to = Math.min(context.signals.grid.seconds - 1, placed.to + AROUND_S);
	const gears = gearsNear(context, placed, from, to);
	const none = cheapest(context, placed, gears, from, to, false);
	const slip = cheapest(context, placed, gears, from, to, true);
	let excessDeg2 = 0;
	const { cadenceRpm } = context.signals.grid;
	for (let t2 = placed.from; t2 <= placed.to; t2++) {
		const high = Math.max(gears[slip.path[t2 - from]], gears[slip.path[Math.max(0, t2 - from - 1)]]);
		const gain = 6 * (cadenceRpm[t2] - 60 * context.signals.speedMps[t2] * Math.exp(high));
		if (gain > -Infinity) excessDeg2 += gain;
	}
	let changes = 0;
	for (let t2 = Math.max(from + 1, placed.from - 1); t2 <= Math.min(to, placed.to + 2); t2++) {
		if (none.path[t2 - from] !== none.path[t2 - from - 1]) changes++;
	}
	return { gearsOnly: none.cost, withSlip: slip.cost, excessDeg: excessDeg2, changes };
}
function gearsNear(context, placed, from, to) {
	let low = Infinity;
	let high = -Infinity;
	for (let t2 = from; t2 <= to; t2++) {
		const ratio2 = context.signals.logRatio[t2];
		if (ratio2 < low) low = ratio2;
		if (ratio2 > high) high = ratio2;
	}
	const own = [context.base.justBefore[placed.from], context.base.justAfter[placed.to], placed.high];
	const near = own.filter((ratio2) => !Number.isNaN(ratio2));
	for (const ratio2 of context.gearRatios) if (ratio2 > low - 0.12 && ratio2 < high + 0.05) near.push(ratio2);
	near.sort((a, b) => a - b);
	return Float64Array.from(near.filter((ratio2, i) => i === 0 || ratio2 - near[i - 1] > SAME_GEAR2));
}
function cheapest(context, placed, gears, from, to, mayRunAhead) {
	const count = gears.length;
	const seconds = to - from + 1;
	const { logRatio, pressing, grid } = context.signals;
	const back = new Uint8Array(seconds * count);
	let cost = new Float64Array(count);
	let next = new Float64Array(count);
	for (let t2 = from; t2 <= to; t2++) {
		const ratio2 = logRatio[t2];
		const known2 = !Number.isNaN(ratio2);
		const sd = Math.hypot(0.9 * context.noise[t2], ROUNDING_RPM / grid.cadenceRpm[t2], LEAST_SD);
		const ahead = mayRunAhead && t2 >= placed.from && t2 <= placed.to;
		const change = changeCost(context, t2);
		for (let g = 0; g < count; g++) {
			let best = Infinity;
			let origin = g;
			for (let other = 0; other < count; other++) {
				let here = cost[other];
				if (t2 === from && other !== g) continue;
				if (other !== g) here += change;
				if (here >= best) continue;
				if (known2)
					here += misfit(
						ratio2,
						gears[Math.min(g, other)],
						gears[Math.max(g, other)],
						sd,
						pressing[t2] === 1,
						ahead
					);
				if (here < best) {
					best = here;
					origin = other;
				}
			}
			next[g] = best;
			back[(t2 - from) * count + g] = origin;
		}
		[cost, next] = [next, cost];
	}
	let gear = 0;
	for (let g = 1; g < count; g++) if (cost[g] < cost[gear]) gear = g;
	const total = cost[gear];
	const path = new Uint8Array(seconds);
	for (let t2 = seconds - 1; t2 >= 0; t2--) {
		path[t2] = gear;
		gear = back[t2 * count + gear];
	}
	return { cost: total, path };
}
function misfit(ratio2, low, high, sd, pressing, ahead) {
	let off = 0;
	if (ratio2 > high) off = ahead ? 0 : ratio2 - high;
	else if (ratio2 < low && pressing) off = low - ratio2;
	const z = off / sd;
	return Math.min(MOST_MISFIT, z < 3 ? 0.5 * z * z : 3 * z - 4.5);
}
function changeCost(context, t2) {
	const { shiftS, gearCode } = context.signals.grid;
	if (shiftS.length < 5 || gearCode[t2] < 0) return CHANGE;
	let low = 0;
	let high = shiftS.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (shiftS[middle] < t2 - 4) low = middle + 1;
		else high = middle;
	}
	return shiftS[low] <= t2 + 1 ? CHANGE_RECORDED : CHANGE_UNRECORDED;
}

// src/lib/slip/gearFeatures.ts
var GEAR_FEATURES = [
	'step of ratio',
	'size of step',
	'step of long ratio',
	'recorded shifts known',
	'seconds since recorded shift',
	'seconds until recorded shift',
	'recorded shifts near',
	'recorded ratio now against engaged',
	'recorded ratio earlier against engaged',
	'deg against recorded ratios',
	'distance of peak from another gear',
	'seconds at peak ratio',
	'distance of engaged from a gear',
	'distance of next second from a gear',
	'distance of second before from a gear',
	'deg against followed gears',
	'followed gears change near',
	'followed gears change by',
	'gears alone against slip',
	'cost of gears alone',
	'cost with slip',
	'deg beyond gears',
	'changes of gear that explain'
];
var CAP_S = 15;
function gearFeatures(context, placed, out) {
	const { signals, base, recordedRatios, path, ratios } = context;
	const { from, to, peak, high } = placed;
	const { gearCode, shiftS } = signals.grid;
	const step = base.after3[to] - base.before3[from];
	out.push(step, Math.abs(step), base.after7[to] - base.before7[from]);
	const known2 = gearCode[peak] >= 0 && shiftS.length >= 5;
	out.push(known2 ? 1 : 0);
	if (known2) {
		const next = firstAfter(shiftS, from);
		const near = shiftS.filter((t2) => t2 >= from - 5 && t2 <= to + 3).length;
		out.push(
			Math.min(CAP_S, from - (shiftS[next - 1] ?? -CAP_S)),
			Math.min(CAP_S, (shiftS[next] ?? Infinity) - from),
			near
		);
		const now = recordedRatio(recordedRatios, gearCode, to);
		const earlier2 = recordedRatio(recordedRatios, gearCode, from - 4);
		const highest = Math.max(high, now || high, earlier2 || high);
		out.push(now - high, earlier2 - high, excessDeg(signals, from, to, highest));
	} else out.push(NaN, NaN, NaN, NaN, NaN, NaN);
	const peakRatio = signals.logRatio[peak];
	const { gearRatios } = context;
	out.push(
		Math.min(1, gearDistance(gearRatios, peakRatio, high + 0.025)),
		dwell(signals.logRatio, peak),
		Math.min(1, gearDistance(gearRatios, high, -Infinity)),
		Math.min(1, gearDistance(gearRatios, at(signals.logRatio, peak + 1), -Infinity)),
		Math.min(1, gearDistance(gearRatios, at(signals.logRatio, peak - 1), -Infinity))
	);
	let followed = -Infinity;
	let lowest = Infinity;
	for (let t2 = Math.max(0, from - 1); t2 <= Math.min(path.length - 1, to + 1); t2++) {
		const ratio2 = path[t2] >= 0 ? ratios[path[t2]].logRatio : high;
		followed = Math.max(followed, ratio2);
		lowest = Math.min(lowest, ratio2);
	}
	out.push(excessDeg(signals, from, to, Math.max(high, followed)), followed - lowest > 0.02 ? 1 : 0);
	const earlier = at(path, from - 4);
	const later = at(path, to + 4);
	const explained = explainByGears(context, placed);
	out.push(earlier >= 0 && later >= 0 ? ratios[later].logRatio - ratios[earlier].logRatio : NaN);
	out.push(
		explained.gearsOnly - explained.withSlip,
		explained.gearsOnly,
		explained.withSlip,
		explained.excessDeg,
		explained.changes
	);
}
function gearDistance(gearRatios, ratio2, above) {
	let nearest2 = Infinity;
	for (const gear of gearRatios) if (gear > above) nearest2 = Math.min(nearest2, Math.abs(gear - ratio2));
	return nearest2;
}
function recordedRatio(recordedRatios, gearCode, t2) {
	const code2 = at(gearCode, t2);
	return code2 >= 0 ? recordedRatios[code2] : NaN;
}
function firstAfter(shiftS, t2) {
	let low = 0;
	let high = shiftS.length;
	while (low < high) {
		const middle = (low + high) >> 1;
		if (shiftS[middle] <= t2) low = middle + 1;
		else high = middle;
	}
	return low;
}
function dwell(logRatio, peak) {
	let seconds = 1;
	while (seconds < 8 && Math.abs(at(logRatio, peak - seconds) - logRatio[peak]) < 0.02) seconds++;
	const back = seconds - 1;
	seconds = 1;
	while (seconds < 8 && Math.abs(at(logRatio, peak + seconds) - logRatio[peak]) < 0.02) seconds++;
	return back + seconds;
}

// src/lib/slip/motionFeatures.ts
var MOTION_FEATURES = [
	'cadence before rpm',
	'cadence after rpm',
	'engaged cadence at peak rpm',
	'deg against cadence around',
	'deg against higher cadence side',
	'cadence step in rpm',
	'cadence step out rpm',
	'deepest speed dip',
	'dip at peak',
	'dip at peak, clock of the file',
	'speed change before',
	'speed change during',
	'speed change after',
	'speed lost against before',
	'speed scatter',
	'speed mps',
	'seconds of held cadence',
	'seconds of held speed',
	'held power near',
	'cadence change over five seconds before'
];
function motionFeatures(context, placed, out) {
	const { signals } = context;
	const { cadenceRpm, powerW } = signals.grid;
	const raw = signals.grid.speedMps;
	const speed = signals.speedMps;
	const { from, to, peak, high } = placed;
	const before = median([1, 2, 3].map((k) => turning(cadenceRpm, from - k)));
	const after = median([1, 2, 3].map((k) => turning(cadenceRpm, to + k)));
	let around = 0;
	let higher = 0;
	for (let t2 = from; t2 <= to; t2++) {
		around += 6 * (cadenceRpm[t2] - mean(before, after));
		higher += 6 * (cadenceRpm[t2] - Math.max(before || after, after || before));
	}
	out.push(before, after, 60 * speed[peak] * Math.exp(high), around, higher);
	out.push(cadenceRpm[peak] - at(cadenceRpm, peak - 1), cadenceRpm[peak] - at(cadenceRpm, peak + 1));
	let deepest = 0;
	for (let t2 = from - 1; t2 <= to + 1; t2++) deepest = Math.min(deepest, dip(raw, t2 + signals.lagS) || 0);
	out.push(deepest, dip(raw, peak + signals.lagS), dip(raw, peak));
	const changeBefore = (at(speed, from - 1) - at(speed, from - 4)) / 3;
	const changeDuring = (at(speed, to + 1) - at(speed, from - 1)) / (to - from + 2);
	const changeAfter = (at(speed, to + 5) - at(speed, to + 2)) / 3;
	out.push(changeBefore, changeDuring, changeAfter, changeDuring - mean(changeBefore, changeAfter));
	const bends = [];
	for (let t2 = peak - 12; t2 <= peak + 12; t2++) bends.push(Math.abs(dip(raw, t2)));
	out.push(median(bends), speed[peak]);
	out.push(held(cadenceRpm, from - 1), held(raw, from - 1 + signals.lagS));
	let heldPower = 0;
	for (let t2 = from - 1; t2 <= to + 3; t2++) heldPower += at(powerW, t2) === at(powerW, t2 - 1) ? 1 : 0;
	out.push(heldPower);
	out.push(at(cadenceRpm, from - 1) - at(cadenceRpm, from - 6));
}
function dip(speed, t2) {
	const around = (at(speed, t2 - 1) + at(speed, t2 + 1)) / 2;
	return around > 0.5 ? (at(speed, t2) - around) / around : NaN;
}
function turning(cadenceRpm, t2) {
	const rpm = at(cadenceRpm, t2);
	return rpm >= 25 ? rpm : NaN;
}
function mean(a, b) {
	return Number.isNaN(a) ? b : Number.isNaN(b) ? a : (a + b) / 2;
}
function held(values, t2) {
	let seconds = 0;
	while (seconds < 8 && at(values, t2 - seconds) === at(values, t2 - seconds - 1)) seconds++;
	return seconds;
}

// src/lib/slip/powerFeatures.ts
var FROM = -3;
var TO = 5;
var POWER_FEATURES = [
	'power before W',
	'power before of usual',
	'power after of before',
	...Array.from({ length: TO - FROM + 1 }, (_, i) => `power of before at ${i + FROM} s`),
	'least power of before',
	'second least power of before',
	'power lost in seconds',
	'power before scatter',
	'least power against after',
	'power two before of before',
	'torque kept at peak',
	'power at peak against seconds beside',
	'power after peak against seconds beside',
	'power noise',
	'power lost in power noise',
	'power lost at peak in power noise'
];
function powerFeatures(context, placed, out) {
	const { powerW, cadenceRpm } = context.signals.grid;
	const { from, to, peak } = placed;
	const before = medianOf(powerW, from - 6, from - 2);
	const after = medianOf(powerW, to + 3, to + 7);
	const reference = Math.max(25, before);
	out.push(before, before / context.usualPowerW, ratio(after, reference));
	for (let k = FROM; k <= TO; k++) out.push(ratio(at(powerW, peak + k), reference));
	let least2 = Infinity;
	let second = Infinity;
	let lost = 0;
	for (let t2 = from - 1; t2 <= to + 3; t2++) {
		const share = ratio(at(powerW, t2), reference);
		if (share < least2) {
			second = least2;
			least2 = share;
		} else if (share < second) second = share;
		if (share < 1) lost += 1 - share;
	}
	out.push(finite(least2), finite(second), lost);
	const early = [0, 1, 2, 3, 4].map((k) => Math.abs(at(powerW, from - 2 - k) - before));
	out.push(median(early) / reference);
	out.push(ratio(least2 * reference, Math.max(25, after)));
	out.push(ratio(at(powerW, from - 2), reference));
	const torqueBefore2 = before / medianOf(cadenceRpm, from - 6, from - 2);
	out.push(ratio(at(powerW, peak) / at(cadenceRpm, peak), torqueBefore2));
	const beside = (t2) => Math.max(25, (at(powerW, t2 - 1) + at(powerW, t2 + 1)) / 2);
	out.push(ratio(at(powerW, peak), beside(peak)), ratio(at(powerW, peak + 1), beside(peak + 1)));
	const powerNoise = context.powerNoise[peak];
	out.push(
		powerNoise,
		(1 - finite(least2)) / powerNoise,
		(1 - ratio(at(powerW, peak), reference)) / powerNoise
	);
}
function ratio(value, reference) {
	return Math.min(4, value / reference);
}
function finite(value) {
	return Number.isFinite(value) ? value : NaN;
}
function medianOf(values, from, to) {
	return median(values.subarray(Math.max(0, from), Math.max(0, to + 1)));
}

// src/lib/slip/candidateFeatures.ts
var SIZE_FEATURES = [
	'careful deg',
	'generous deg',
	'deg against long before',
	'deg against long after',
	'deg against before',
	'deg against after',
	'deg against just before',
	'deg against just after',
	'deg at peak',
	'share of deg at peak',
	'deg in five seconds around peak',
	'seconds',
	'careful deg in local noise',
	'local noise',
	'irregular recording',
	'missing records near',
	'seconds since rest',
	'seconds until rest',
	'since rest before onset'
];
var PROFILE_FROM = -4;
var PROFILE_TO = 6;
var PROFILE_FEATURES = Array.from(
	{ length: PROFILE_TO - PROFILE_FROM + 1 },
	(_, i) => `ratio excess at ${i + PROFILE_FROM} s`
);
var FEATURE_NAMES = [
	...SIZE_FEATURES,
	...PROFILE_FEATURES,
	...POWER_FEATURES,
	...MOTION_FEATURES,
	...GEAR_FEATURES
];
function placeCandidate(context, candidate) {
	const { justBefore, justAfter, after3 } = context.base;
	const high = higherOf(justBefore[candidate.from], justAfter[candidate.to]);
	const low = lowerOf(justBefore[candidate.from], after3[candidate.to]);
	let peak = candidate.from;
	for (let t2 = candidate.from; t2 <= candidate.to; t2++) {
		if (excessDeg(context.signals, t2, t2, high) > excessDeg(context.signals, peak, peak, high)) peak = t2;
	}
	return { ...candidate, peak, high, low };
}
function candidateFeatures(context, placed) {
	const { signals, base, noise } = context;
	const { from, to, peak, high } = placed;
	const { cadenceRpm } = signals.grid;
	const noiseDeg = 6 * cadenceRpm[peak] * Math.max(6e-3, noise[peak]) * Math.sqrt(to - from + 1);
	let missing = 0;
	for (let t2 = from - 3; t2 <= to + 4; t2++) missing += Number.isNaN(at(cadenceRpm, t2)) ? 1 : 0;
	const out = [
		placed.carefulDeg,
		placed.generousDeg,
		excessDeg(signals, from, to, base.before7[from]),
		excessDeg(signals, from, to, base.after7[to]),
		excessDeg(signals, from, to, base.before3[from]),
		excessDeg(signals, from, to, base.after3[to]),
		excessDeg(signals, from, to, base.justBefore[from]),
		excessDeg(signals, from, to, base.justAfter[to]),
		excessDeg(signals, peak, peak, high),
		excessDeg(signals, peak, peak, high) / Math.max(10, Math.abs(placed.carefulDeg)),
		excessAround(context, peak, high),
		to - from + 1,
		placed.carefulDeg / noiseDeg,
		noise[peak],
		signals.grid.irregular ? 1 : 0,
		missing,
		at(context.sinceRest, peak),
		at(context.untilRest, to),
		at(context.sinceRest, from - 1)
	];
	for (let k = PROFILE_FROM; k <= PROFILE_TO; k++) out.push(ratioExcess(context, peak + k, high));
	powerFeatures(context, placed, out);
	motionFeatures(context, placed, out);
	gearFeatures(context, placed, out);
	return Float64Array.from(out);
}
function excessAround(context, peak, high) {
	let sum = 0;
	for (let t2 = peak - 2; t2 <= peak + 2; t2++) {
		if (at(context.signals.logRatio, t2) > -Infinity) sum += excessDeg(context.signals, t2, t2, high);
	}
	return sum;
}
function ratioExcess(context, t2, base) {
	const rpm = at(context.signals.grid.cadenceRpm, t2);
	if (rpm < 25) return -2;
	const ratio2 = at(context.signals.logRatio, t2);
	return Math.max(-1.5, Math.min(1.5, ratio2 - base));
}
function at(values, t2) {
	return t2 >= 0 && t2 < values.length ? values[t2] : NaN;
}

// src/lib/slip/isDroppedChain.ts
var LEAST_DEG2 = 400;
var LOOKED_AT_S = 5;
var LEAST_IDLE_S = 2;
var TURNS_RPM = 30;
var NO_LOAD_W = 15;
var STANDS_MPS = 0.5;
var STANDS_WITHIN_S2 = 120;
function isDroppedChain(context, placed, overrunDeg) {
	if (!(overrunDeg >= LEAST_DEG2)) return false;
	const { pressing, grid } = context.signals;
	let idle = 0;
	for (let t2 = placed.to + 1; t2 <= placed.to + LOOKED_AT_S; t2++) {
		if (at(grid.cadenceRpm, t2) >= TURNS_RPM && at(grid.powerW, t2) <= NO_LOAD_W) idle++;
	}
	if (idle < LEAST_IDLE_S) return false;
	for (let t2 = placed.to + 1; t2 <= placed.to + STANDS_WITHIN_S2 && t2 < grid.seconds; t2++) {
		if (pressing[t2]) return false;
		if (grid.speedMps[t2] < STANDS_MPS) return true;
	}
	return false;
}

// src/lib/slip/isFailedPickUp.ts
var FREE_SHARE = 0.9;
function isFailedPickUp(context, placed, from) {
	const { pressing, grid, speedMps } = context.signals;
	const before = from - 1;
	if (before < 0 || pressing[before] || Number.isNaN(grid.cadenceRpm[before])) return false;
	const engagedRpm = 60 * speedMps[before] * Math.exp(placed.high);
	const turnsWithWheel = grid.cadenceRpm[before] >= FREE_SHARE * engagedRpm;
	return !(turnsWithWheel && at(pressing, before - 1) === 1);
}

// src/lib/slip/isTyreSpin.ts
var LEAST_HUB_TORQUE_NM = 30;
var FASTEST_MPS2 = 6;
var KEPT_SHARE = 0.65;
function isTyreSpin(context, placed, hubTorqueNm) {
	if (hubTorqueNm === null || !(hubTorqueNm >= LEAST_HUB_TORQUE_NM)) return false;
	const { grid, speedMps } = context.signals;
	if (!(speedMps[placed.peak] <= FASTEST_MPS2)) return false;
	let before = 0;
	for (let k = 2; k <= 4; k++) before += at(grid.powerW, placed.from - k) / 3;
	for (let t2 = placed.from - 1; t2 <= placed.to + 2; t2++) {
		if (!(at(grid.powerW, t2) >= KEPT_SHARE * before)) return false;
	}
	return true;
}

// src/lib/slip/onsetTorques.ts
var ENGAGED_S = 3;
function onsetGear(context, second) {
	return context.named.gears[at(context.path, Math.max(0, second - 1))] ?? null;
}
function onsetTorques(context, second, powerAt) {
	const values = [];
	const gear = onsetGear(context, second);
	if (!gear || !(at(context.sinceRest, second - 1) >= 1)) return values;
	const { grid, pressing } = context.signals;
	for (let t2 = second - 1; t2 >= 0 && t2 >= second - ENGAGED_S && pressing[t2]; t2--) {
		const torque = hubTorque(grid.powerW[t2], grid.cadenceRpm[t2], gear.ratio, powerAt);
		if (torque >= 0) values.push(torque);
	}
	return values;
}
function onsetTorque(context, second, powerAt) {
	const gear = onsetGear(context, second);
	if (!gear || !(at(context.sinceRest, second - 1) >= 1)) return NaN;
	const { grid, pressing } = context.signals;
	let sum = 0;
	let count = 0;
	for (let t2 = second - 1; t2 >= 0 && t2 >= second - ENGAGED_S && pressing[t2]; t2--) {
		const torque = hubTorque(grid.powerW[t2], grid.cadenceRpm[t2], gear.ratio, powerAt);
		if (!(torque >= 0)) continue;
		sum += torque;
		count++;
	}
	return sum / count;
}

// src/lib/slip/overrunSize.ts
var NORMAL_902 = 1.645;
var SIZE_SCATTER = 0.17;
var BELONGS_SD = 1.5;
var REACH_S = 2;
var SAME_GEAR3 = 0.025;
var LEAST_NOISE_DEG = 4;
var ROUNDING_RPM2 = 0.3;
function overrunSize(context, placed, byTurn) {
	const { signals, noise } = context;
	const { peak, low } = placed;
	const rpm = signals.grid.cadenceRpm[peak];
	const reference = referenceRatio(context, placed);
	const noiseDeg = Math.max(LEAST_NOISE_DEG, 6 * rpm * noise[peak]);
	const belongs = (t2) => excessDeg(signals, t2, t2, reference) > BELONGS_SD * noiseDeg;
	let from = peak;
	let to = peak;
	while (from > Math.max(0, peak - REACH_S) && belongs(from - 1)) from--;
	while (to < Math.min(signals.grid.seconds - 1, peak + REACH_S) && belongs(to + 1)) to++;
	const value = Math.max(excessDeg(signals, from, to, reference), 0.25 * placed.carefulDeg, 1);
	const seconds = to - from + 1;
	const scatterDeg = noiseDeg * Math.sqrt(seconds + 1);
	const roundingDeg = 6 * ROUNDING_RPM2 * Math.sqrt(seconds);
	const doubtDeg = 0.3 * Math.abs(excessDeg(signals, from, to, low) - value) || 0;
	const sd = Math.hypot(SIZE_SCATTER, roundingDeg / value, scatterDeg / value, doubtDeg / value);
	const least2 = byTurn ? ofTurns(context, from, to, reference) : value;
	return {
		crankDeg: {
			value,
			lower: Math.min(value, least2) * Math.exp(-NORMAL_902 * sd),
			upper: value * Math.exp(NORMAL_902 * sd)
		},
		from,
		to,
		reference
	};
}
function referenceRatio(context, placed) {
	const before = at(context.base.before7, placed.from);
	const after = at(context.base.after7, placed.to);
	return Math.abs(before - after) < SAME_GEAR3 ? (before + after) / 2 : placed.high;
}
function ofTurns(context, from, to, reference) {
	const { signals } = context;
	let sum = 0;
	for (let t2 = from; t2 <= to; t2++) {
		const engagedRpm = 60 * signals.speedMps[t2] * Math.exp(reference);
		const share = engagedRpm / signals.grid.cadenceRpm[t2];
		sum += share < 1 ? 360 * (1 - share) : 0;
	}
	return sum;
}

// src/lib/slip/reasonsFor.ts
function reasonsFor2(context, placed, facts) {
	const { signals, base } = context;
	const { from, to, peak, high } = placed;
	const { crankDeg, powerLost } = facts;
	const reasons = [];
	const rpm = signals.grid.cadenceRpm[peak];
	const engaged = 60 * signals.speedMps[peak] * Math.exp(high);
	reasons.push(
		`For: the crank turned at ${rpm.toFixed(0)} rpm where the wheel needed ${engaged.toFixed(0)} rpm, ${crankDeg.value.toFixed(0)} degrees more in ${to - from + 1} s.`
	);
	if (powerLost === null) reasons.push('Against: no power was recorded, so a loss of drive cannot be seen.');
	else if (powerLost >= 0.3)
		reasons.push(`For: ${(100 * powerLost).toFixed(0)} % of the power was lost with it.`);
	else reasons.push(`Against: only ${(100 * powerLost).toFixed(0)} % of the power was lost with it.`);
	const step = base.after3[to] - base.before3[from];
	if (Math.abs(step) < 0.02) reasons.push('For: the same gear was in before and after.');
	else if (Math.abs(step) >= 0.02) {
		reasons.push(
			`Against: the gear changed by ${(100 * Math.abs(step)).toFixed(0)} % at about the same time.`
		);
	}
	const noiseDeg = 6 * rpm * context.noise[peak];
	if (crankDeg.value < 4 * noiseDeg) {
		reasons.push(`Against: this recording scatters by about ${noiseDeg.toFixed(0)} degrees a second.`);
	}
	if (at(context.sinceRest, facts.from - 1) <= 2)
		reasons.push('Against: pedalling had only just begun again.');
	const nearShift = signals.grid.shiftS.find((t2) => t2 >= from - 3 && t2 <= to + 1);
	if (nearShift !== void 0) {
		reasons.push(
			`Against: a shift was recorded ${Math.abs(nearShift - from)} s ${nearShift <= from ? 'before' : 'after'} it.`
		);
	}
	if (facts.byTurn) {
		reasons.push(
			`On its size: this sensor measures turn by turn, and one short turn may stand for a whole second: it may have been as little as ${crankDeg.lower.toFixed(0)} degrees.`
		);
	}
	const more = WORDS_OF_KIND[facts.kind];
	if (more) reasons.push(more);
	return reasons;
}
var WORDS_OF_KIND = {
	'possible dropped chain':
		'For a chain that is off: the crank went on turning without load and nobody drove again until the wheel stood.',
	'possible tyre spin':
		'For a tyre that spun: the speed is not that of the driven wheel, the torque was high, and most of the power went on.'
};

// src/lib/slip/describeEvent.ts
var TORQUE_ACCURACY2 = 0.03;
function describeEvent(context, placed, strength, isObserved2, facts) {
	const { grid } = context.signals;
	const from = onsetSecond(context, placed);
	const gear = onsetGear(context, from);
	const { crankDeg } = overrunSize(context, placed, facts.byTurn);
	const before = powerMean(context, from - 4, from - 1);
	const least2 = Math.min(
		...[0, 1, 2, 3].map((k) => at(grid.powerW, from + k)).filter((watts) => watts >= 0)
	);
	const powerLost = before > 0 && Number.isFinite(least2) ? clamp(1 - least2 / before) : null;
	const hubTorqueNm = torqueBefore(context, from, facts.powerAt);
	const kind = kindOf2(context, placed, from, crankDeg.value, hubTorqueNm?.value ?? null, facts);
	return {
		startS: from,
		endS: placed.to + 1,
		kind,
		overrunCrankDeg: crankDeg,
		overrunHubDeg: crankDeg.value * (gear?.ratio ?? 1),
		gear,
		hubTorqueNm,
		powerLost,
		strength,
		atM: grid.distanceM[from],
		// the power that is lost with a slip would make its own second look unobserved
		observed:
			isObserved2(placed.from) || (!context.signals.pressing[placed.from] && isObserved2(placed.from - 1)),
		reasons: reasonsFor2(context, placed, { from, kind, crankDeg, powerLost, byTurn: facts.byTurn })
	};
}
function kindOf2(context, placed, from, overrunDeg, hubTorqueNm, { followsHub }) {
	if (isDroppedChain(context, placed, overrunDeg)) return 'possible dropped chain';
	if (isFailedPickUp(context, placed, from)) return 'failed pick-up';
	if (!followsHub && isTyreSpin(context, placed, hubTorqueNm)) return 'possible tyre spin';
	return 'slip';
}
function onsetSecond(context, { from, peak, high }) {
	const quarter = 0.25 * excessDeg(context.signals, peak, peak, high);
	let onset = from;
	while (onset < peak && excessDeg(context.signals, onset, onset, high) < quarter) onset++;
	return onset;
}
function torqueBefore(context, from, powerAt) {
	const values = onsetTorques(context, from, powerAt);
	if (values.length === 0) return null;
	const value = values.reduce((sum, torque) => sum + torque, 0) / values.length;
	const spread =
		values.length > 1
			? Math.sqrt(values.reduce((s2, x) => s2 + (x - value) ** 2, 0) / (values.length - 1))
			: 0.15 * value;
	const sd = Math.hypot(spread / Math.sqrt(values.length), TORQUE_ACCURACY2 * value);
	return { value, lower: Math.max(0, value - NORMAL_902 * sd), upper: value + NORMAL_902 * sd };
}
function powerMean(context, from, to) {
	let sum = 0;
	let count = 0;
	for (let t2 = from; t2 <= to; t2++) {
		const watts = at(context.signals.grid.powerW, t2);
		if (watts > 0) {
			sum += watts;
			count++;
		}
	}
	return count > 0 ? sum / count : NaN;
}
function clamp(share) {
	return Math.max(0, Math.min(1, share));
}

// src/lib/slip/model/observed.json
var observed_default = {
	names: [
		'ratio noise around',
		'power noise around',
		'cadence around rpm',
		'power around W',
		'power around of usual',
		'seconds pressing before',
		'share of pressing around',
		'step of ratio across',
		'scatter of ratio before',
		'shifts recorded around',
		'records missing around',
		'power follows slowly',
		'cadence follows slowly',
		'ratio scatter of the ride',
		'speed around mps',
		'distance of ratio from a gear'
	],
	bias: 0.1906880819919598,
	trees: [
		[
			[7, 0.1405, 0, 1, 2],
			[0, 0.02801, 0, 3, 4],
			[7, 0.1885, 0, 5, 6],
			[5, 5, 0, 7, 8],
			[13, 0.01704, 0, 9, 10],
			[14, 8.443, 0, 11, 12],
			[-0.191],
			[-1111e-6],
			[0.07495],
			[-0.04644],
			[-0.06612],
			[-0.0936],
			[-0.06612]
		],
		[
			[7, 0.02665, 0, 1, 2],
			[13, 0.01704, 0, 3, 4],
			[7, 0.1885, 0, 5, 6],
			[12, -0.02354, 0, 7, 8],
			[13, 0.02188, 0, 9, 10],
			[6, 0.8889, 0, 11, 12],
			[-0.1711],
			[0.08916],
			[0.03313],
			[-6441e-6],
			[-0.01136],
			[-0.104],
			[-0.01136]
		],
		[
			[7, 0.01939, 0, 1, 2],
			[0, 0.02801, 0, 3, 4],
			[7, 0.1677, 0, 5, 6],
			[11, 0.2258, 0, 7, 8],
			[14, 5.658, 0, 9, 10],
			[0, 0.02184, 1, 11, 12],
			[7, 0.1885, 0, 13, 14],
			[0.09141],
			[0.03673],
			[-4664e-6],
			[-4664e-6],
			[-4664e-6],
			[-0.08386],
			[-0.09078],
			[-0.1553]
		],
		[
			[0, 0.02655, 0, 1, 2],
			[7, 0.04571, 0, 3, 4],
			[13, 0.02188, 0, 5, 6],
			[6, 0.8889, 0, 7, 8],
			[7, 0.1885, 0, 9, 10],
			[15, 0.0541, 0, 11, 12],
			[-0.1458],
			[0.01555],
			[0.07926],
			[-0.01271],
			[-0.03783],
			[-0.03783],
			[-0.1095]
		],
		[
			[5, 5, 0, 1, 2],
			[15, 0.01115, 0, 3, 4],
			[7, 0.01755, 0, 5, 6],
			[7, 0.01395, 0, 7, 8],
			[-0.1474],
			[0, 0.02596, 0, 9, 10],
			[7, 0.1405, 0, 11, 12],
			[-0.02092],
			[-0.1045],
			[0.07755],
			[0.0216],
			[3381e-6],
			[-0.08681]
		],
		[
			[13, 0.01704, 0, 1, 2],
			[15, 0.1602, 0, 3, 4],
			[13, 0.02188, 0, 5, 6],
			[12, -0.02354, 0, 7, 8],
			[-0.04112],
			[15, 0.0541, 0, 9, 10],
			[12, -8996e-6, 0, 11, 12],
			[0.03963],
			[-6427e-6],
			[-0.04112],
			[-0.08054],
			[-0.08439],
			[-0.1428]
		],
		[
			[0, 0.02899, 0, 1, 2],
			[6, 0.8889, 0, 3, 4],
			[14, 5.326, 0, 5, 6],
			[14, 6.565, 0, 7, 8],
			[0, 0.01969, 0, 9, 10],
			[12, -0.277, 1, 11, 12],
			[8, 0.04753, 0, 13, 14],
			[-0.03935],
			[-4277e-7],
			[0.05473],
			[7019e-7],
			[-0.03935],
			[-0.1262],
			[-0.04288],
			[-0.1043]
		],
		[
			[7, 0.1405, 0, 1, 2],
			[0, 0.02801, 0, 3, 4],
			[7, 0.1885, 0, 5, 6],
			[7, 0.01626, 0, 7, 8],
			[14, 5.326, 0, 9, 10],
			[15, 0.01641, 0, 11, 12],
			[-0.1214],
			[0.05796],
			[358e-5],
			[-0.04362],
			[-0.02688],
			[-0.04362],
			[-0.06678]
		],
		[
			[7, 0.1405, 0, 1, 2],
			[0, 0.02184, 0, 3, 4],
			[7, 0.2114, 0, 5, 6],
			[11, 0.2258, 0, 7, 8],
			[0, 0.03284, 0, 9, 10],
			[1, 0.08392, 0, 11, 12],
			[-0.116],
			[0.0559],
			[4181e-6],
			[-0.01051],
			[-0.04073],
			[-0.04073],
			[-0.0724]
		],
		[
			[5, 5, 0, 1, 2],
			[15, 0.01115, 0, 3, 4],
			[12, -0.02354, 0, 5, 6],
			[5, 2, 0, 7, 8],
			[-0.1191],
			[13, 0.01704, 0, 9, 10],
			[13, 8893e-6, 0, 11, 12],
			[-0.07405],
			[-161e-5],
			[0.03434],
			[-451e-5],
			[-451e-5],
			[-0.04912]
		],
		[
			[5, 5, 0, 1, 2],
			[15, 0.01042, 0, 3, 4],
			[15, 0.01641, 0, 5, 6],
			[5, 2, 0, 7, 8],
			[5, 3, 0, 9, 10],
			[8, 0.01047, 0, 11, 12],
			[2, 76.81, 0, 13, 14],
			[-0.06527],
			[-2045e-6],
			[-0.1174],
			[-0.0807],
			[0.04011],
			[7794e-6],
			[-0.05061],
			[-1567e-6]
		],
		[
			[5, 5, 0, 1, 2],
			[14, 7.849, 0, 3, 4],
			[7, 0.01755, 0, 5, 6],
			[12, -0.1946, 0, 7, 8],
			[8, 3604e-6, 0, 9, 10],
			[0, 0.02596, 0, 11, 12],
			[0, 0.01585, 0, 13, 14],
			[-0.05618],
			[-0.1082],
			[0.02724],
			[-0.0596],
			[0.05398],
			[0.01216],
			[0.01216],
			[-0.03687]
		],
		[
			[5, 5, 0, 1, 2],
			[7, 0.05311, 0, 3, 4],
			[7, 0.04571, 0, 5, 6],
			[14, 7.849, 0, 7, 8],
			[-0.1021],
			[0, 0.02655, 0, 9, 10],
			[0, 0.01612, 0, 11, 12],
			[-0.0624],
			[0.01371],
			[0.04618],
			[3256e-6],
			[3256e-6],
			[-0.04608]
		],
		[
			[5, 5, 0, 1, 2],
			[5, 3, 0, 3, 4],
			[0, 0.02184, 0, 5, 6],
			[11, -0.316, 0, 7, 8],
			[8, 0.01141, 0, 9, 10],
			[11, 0.2258, 0, 11, 12],
			[0, 0.03284, 0, 13, 14],
			[-0.03742],
			[-0.09205],
			[2565e-6],
			[-0.04949],
			[0.03941],
			[1734e-6],
			[-0.01218],
			[-0.06281]
		],
		[
			[7, 0.1529, 0, 1, 2],
			[0, 0.02899, 0, 3, 4],
			[7, 0.2114, 0, 5, 6],
			[5, 12, 0, 7, 8],
			[14, 3.752, 0, 9, 10],
			[8, 1775e-6, 0, 11, 12],
			[-0.09196],
			[-6665e-6],
			[0.03141],
			[-0.03487],
			[-0.0248],
			[-0.03487],
			[-0.05397]
		],
		[
			[7, 0.07529, 0, 1, 2],
			[0, 0.02655, 0, 3, 4],
			[7, 0.1885, 0, 5, 6],
			[11, 0.2258, 0, 7, 8],
			[14, 3.752, 0, 9, 10],
			[6, 0.8889, 0, 11, 12],
			[-0.08394],
			[0.04382],
			[7676e-6],
			[-0.01542],
			[-0.01292],
			[-0.05478],
			[-0.01542]
		],
		[
			[5, 5, 0, 1, 2],
			[15, 0.01115, 0, 3, 4],
			[7, 0.01626, 0, 5, 6],
			[14, 6.364, 0, 7, 8],
			[5, 3, 0, 9, 10],
			[0, 0.02596, 0, 11, 12],
			[1, 0.07166, 0, 13, 14],
			[-0.05362],
			[0.01326],
			[-0.08825],
			[-0.05493],
			[0.03947],
			[8311e-6],
			[8311e-6],
			[-0.02632]
		],
		[
			[12, -0.02354, 0, 1, 2],
			[15, 0.01641, 0, 3, 4],
			[13, 8893e-6, 0, 5, 6],
			[13, 0.01704, 0, 7, 8],
			[13, 0.01363, 0, 9, 10],
			[15, 6116e-6, 0, 11, 12],
			[4, 1.395, 1, 13, 14],
			[0.03453],
			[2894e-6],
			[2894e-6],
			[-0.02217],
			[-0.02217],
			[-0.02217],
			[-0.06661],
			[-0.04155]
		],
		[
			[5, 3, 0, 1, 2],
			[15, 0.01042, 0, 3, 4],
			[0, 0.02184, 0, 5, 6],
			[14, 3.894, 0, 7, 8],
			[12, -0.1914, 1, 9, 10],
			[12, -0.02354, 0, 11, 12],
			[14, 5.658, 0, 13, 14],
			[-0.05296],
			[1034e-6],
			[-0.05296],
			[-0.09687],
			[0.02741],
			[-772e-6],
			[-0.04453],
			[-1424e-6]
		],
		[
			[0, 0.02899, 0, 1, 2],
			[14, 6.565, 0, 3, 4],
			[14, 4.022, 0, 5, 6],
			[1, 0.0805, 0, 7, 8],
			[11, 0.2258, 0, 9, 10],
			[12, -0.1786, 1, 11, 12],
			[8, 0.03806, 0, 13, 14],
			[0.02535],
			[-0.02133],
			[0.03353],
			[-7686e-6],
			[-0.03247],
			[-0.09295],
			[-0.02133],
			[-0.07822]
		],
		[
			[7, 0.07529, 0, 1, 2],
			[12, -0.02354, 1, 3, 4],
			[7, 0.1885, 0, 5, 6],
			[11, 0.2258, 0, 7, 8],
			[14, 6.885, 0, 9, 10],
			[0, 0.01515, 0, 11, 12],
			[-0.07098],
			[0.03711],
			[4993e-6],
			[-0.01312],
			[4993e-6],
			[-0.01312],
			[-0.03357]
		],
		[
			[7, 0.1405, 0, 1, 2],
			[5, 13, 0, 3, 4],
			[7, 0.2114, 0, 5, 6],
			[7, 3546e-6, 0, 7, 8],
			[11, -0.02599, 0, 9, 10],
			[3, 209.9, 1, 11, 12],
			[3, 257.3, 1, 13, 14],
			[0.02364],
			[-0.02438],
			[0.0315],
			[-0.01248],
			[-0.04197],
			[-0.02438],
			[-0.07507],
			[-0.04857]
		],
		[
			[5, 5, 0, 1, 2],
			[14, 7.849, 0, 3, 4],
			[14, 6.565, 0, 5, 6],
			[12, -0.1946, 1, 7, 8],
			[4, 0.9528, 1, 9, 10],
			[1, 0.0805, 0, 11, 12],
			[7, 0.1158, 1, 13, 14],
			[-0.02917],
			[-0.06996],
			[-0.02059],
			[0.01179],
			[0.01838],
			[-0.02843],
			[0.03074],
			[-0.01999]
		],
		[
			[7, 0.04571, 0, 1, 2],
			[12, -0.02354, 1, 3, 4],
			[5, 50, 0, 5, 6],
			[2, 81.87, 0, 7, 8],
			[14, 7.069, 0, 9, 10],
			[8, 0.1015, 0, 11, 12],
			[7, 0.1405, 0, 13, 14],
			[672e-5],
			[0.03779],
			[-8259e-6],
			[672e-5],
			[-0.035],
			[-0.08727],
			[-8259e-6],
			[-0.04109]
		],
		[
			[5, 3, 0, 1, 2],
			[15, 0.01042, 0, 3, 4],
			[14, 6.565, 0, 5, 6],
			[14, 5.094, 0, 7, 8],
			[12, -0.1914, 1, 9, 10],
			[4, 0.8279, 1, 11, 12],
			[2, 92.94, 0, 13, 14],
			[-0.03907],
			[8579e-6],
			[-0.04117],
			[-0.08245],
			[-0.0669],
			[-3492e-6],
			[0.02333],
			[-0.02572]
		],
		[
			[7, 0.1885, 0, 1, 2],
			[0, 0.02184, 0, 3, 4],
			[3, 257.3, 1, 5, 6],
			[11, 0.2258, 0, 7, 8],
			[14, 5.658, 0, 9, 10],
			[8, 4551e-6, 0, 11, 12],
			[-0.02658],
			[0.02394],
			[-1403e-6],
			[-0.02658],
			[-1403e-6],
			[-0.04398],
			[-0.0714]
		],
		[
			[5, 3, 0, 1, 2],
			[11, -0.316, 1, 3, 4],
			[0, 0.03284, 0, 5, 6],
			[2, 75.06, 1, 7, 8],
			[8, 331e-5, 0, 9, 10],
			[11, 0.2258, 0, 11, 12],
			[8, 4915e-6, 0, 13, 14],
			[-0.02549],
			[0.01381],
			[-0.03349],
			[-0.06936],
			[0.01428],
			[-0.01591],
			[-0.01591],
			[-0.0489]
		],
		[
			[7, 0.06732, 0, 1, 2],
			[11, 0.2258, 0, 3, 4],
			[13, 0.01481, 0, 5, 6],
			[13, 0.01691, 0, 7, 8],
			[4, 1.211, 1, 9, 10],
			[3, 228.7, 1, 11, 12],
			[6, 0.8889, 0, 13, 14],
			[0.02871],
			[4017e-6],
			[-9049e-6],
			[4017e-6],
			[-0.02295],
			[-9049e-6],
			[-0.06531],
			[-0.03498]
		],
		[
			[14, 6.565, 0, 1, 2],
			[12, -0.02354, 1, 3, 4],
			[15, 0.03504, 0, 5, 6],
			[13, 0.01691, 0, 7, 8],
			[14, 5.094, 0, 9, 10],
			[0, 0.01889, 0, 11, 12],
			[13, 0.01363, 0, 13, 14],
			[7755e-6],
			[-0.02979],
			[-0.06851],
			[-0.02979],
			[0.03206],
			[6853e-6],
			[6853e-6],
			[-0.03531]
		],
		[
			[7, 0.2114, 0, 1, 2],
			[2, 81.87, 0, 3, 4],
			[0, 0.02899, 0, 5, 6],
			[0, 0.02801, 0, 7, 8],
			[2, 91.72, 1, 9, 10],
			[15, 0.0541, 0, 11, 12],
			[-0.06682],
			[-3063e-6],
			[-0.02474],
			[0.02552],
			[-0.02474],
			[-0.02474],
			[-0.0442]
		],
		[
			[7, 0.01626, 0, 1, 2],
			[11, 0.2258, 0, 3, 4],
			[1, 0.1345, 0, 5, 6],
			[12, -0.02354, 0, 7, 8],
			[14, 8.142, 0, 9, 10],
			[8, 1775e-6, 0, 11, 12],
			[13, 0.01295, 0, 13, 14],
			[0.03574],
			[0.0106],
			[-2447e-6],
			[633e-5],
			[-2447e-6],
			[-0.0168],
			[-0.02289],
			[-0.05394]
		],
		[
			[0, 0.02899, 0, 1, 2],
			[9, 0.1538, 0, 3, 4],
			[15, 0.01484, 0, 5, 6],
			[2, 92.94, 1, 7, 8],
			[3, 197.2, 0, 9, 10],
			[13, 0.02188, 0, 11, 12],
			[13, 0.01295, 0, 13, 14],
			[9652e-6],
			[-3574e-6],
			[-0.01351],
			[-0.01351],
			[-0.01351],
			[-0.02769],
			[-0.03084],
			[-0.05357]
		],
		[
			[5, 5, 0, 1, 2],
			[14, 7.849, 0, 3, 4],
			[14, 6.565, 0, 5, 6],
			[12, -0.1946, 1, 7, 8],
			[-1527e-6],
			[9, 0.1538, 0, 9, 10],
			[0, 0.02655, 0, 11, 12],
			[-0.01488],
			[-0.05069],
			[-4621e-6],
			[-0.07729],
			[0.01779],
			[-0.01435]
		],
		[
			[14, 6.565, 0, 1, 2],
			[1, 0.0753, 0, 3, 4],
			[11, 0.2258, 0, 5, 6],
			[11, -0.02599, 0, 7, 8],
			[14, 2.818, 0, 9, 10],
			[1, 0.1015, 1, 11, 12],
			[4, 1.321, 1, 13, 14],
			[0.03625],
			[-4239e-6],
			[-0.06481],
			[-0.0176],
			[0.02692],
			[2362e-6],
			[-0.02608],
			[2362e-6]
		],
		[
			[7, 0.07529, 0, 1, 2],
			[2, 81.87, 0, 3, 4],
			[2, 88.56, 0, 5, 6],
			[8, 5737e-6, 0, 7, 8],
			[2, 92.94, 1, 9, 10],
			[2, 86.18, 0, 11, 12],
			[7, 0.1082, 0, 13, 14],
			[3743e-6],
			[-7685e-6],
			[0.02976],
			[-7685e-6],
			[-0.01815],
			[-7685e-6],
			[-0.01811],
			[-0.06342]
		],
		[
			[7, 0.257, 0, 1, 2],
			[2, 92.94, 1, 3, 4],
			[15, 0.01641, 0, 5, 6],
			[2, 81.87, 0, 7, 8],
			[5, 58, 0, 9, 10],
			[-0.02275],
			[4, 1.143, 1, 11, 12],
			[-8672e-6],
			[0.01794],
			[-0.02275],
			[-5782e-6],
			[-0.06234],
			[-0.03869]
		],
		[
			[5, 3, 0, 1, 2],
			[15, 0.01042, 0, 3, 4],
			[4, 0.6638, 1, 5, 6],
			[5, 0, 0, 7, 8],
			[4, 1.227, 0, 9, 10],
			[13, 0.01295, 0, 11, 12],
			[13, 7379e-6, 0, 13, 14],
			[-0.02137],
			[0.01666],
			[-0.05145],
			[-0.02536],
			[-0.0235],
			[-0.06659],
			[0.04024],
			[7744e-7]
		],
		[
			[14, 6.565, 0, 1, 2],
			[9, 0.1538, 0, 3, 4],
			[2, 89.11, 0, 5, 6],
			[1, 0.0805, 0, 7, 8],
			[14, 4.968, 0, 9, 10],
			[2, 76.81, 0, 11, 12],
			[11, 0.2258, 1, 13, 14],
			[0.01321],
			[-0.01606],
			[-0.03405],
			[-0.07427],
			[-0.01827],
			[0.02479],
			[-1097e-6],
			[-0.07591]
		],
		[
			[8, 0.1015, 0, 1, 2],
			[13, 7379e-6, 0, 3, 4],
			[7, 0.02387, 0, 5, 6],
			[7, 0.1082, 1, 7, 8],
			[7, 0.1405, 0, 9, 10],
			[-0.01978],
			[1, 0.09371, 1, 11, 12],
			[0.05692],
			[0.01737],
			[1633e-6],
			[-0.01978],
			[-0.03848],
			[-0.06636]
		],
		[
			[12, -0.02354, 1, 1, 2],
			[13, 0.01481, 0, 3, 4],
			[13, 0.03124, 0, 5, 6],
			[5, 2, 0, 7, 8],
			[12, -0.1786, 1, 9, 10],
			[3, 110.6, 1, 11, 12],
			[-0.08446],
			[-2702e-7],
			[0.01247],
			[-4185e-6],
			[-0.01006],
			[-0.04841],
			[-0.01006]
		]
	],
	sizeSlope: 1.243,
	leastLogOdds: 0.05
};

// src/lib/slip/model/treeModel.ts
var flattened = /* @__PURE__ */ new WeakMap();
function treeLogOdds(model, row) {
	let flat = flattened.get(model.trees);
	if (!flat) flattened.set(model.trees, (flat = flatten(model.trees)));
	const { roots, feature, value, left, right, missing } = flat;
	let sum = model.bias;
	for (let k = 0; k < roots.length; k++) {
		let node = roots[k];
		while (feature[node] >= 0) {
			const x = row[feature[node]];
			node = x <= value[node] ? left[node] : x > value[node] ? right[node] : missing[node];
		}
		sum += value[node];
	}
	return sum;
}
function flatten(trees) {
	const total = trees.reduce((sum, tree) => sum + tree.length, 0);
	const flat = {
		roots: new Int32Array(trees.length),
		feature: new Int16Array(total).fill(-1),
		value: new Float64Array(total),
		left: new Int32Array(total),
		right: new Int32Array(total),
		missing: new Int32Array(total)
	};
	let start = 0;
	trees.forEach((tree, k) => {
		flat.roots[k] = start;
		tree.forEach((node, i) => {
			const at2 = start + i;
			if (node.length === 1) {
				flat.value[at2] = node[0];
				return;
			}
			flat.feature[at2] = node[0];
			flat.value[at2] = node[1];
			flat.left[at2] = start + node[3];
			flat.right[at2] = start + node[4];
			flat.missing[at2] = node[2] === 1 ? flat.left[at2] : flat.right[at2];
		});
		start += tree.length;
	});
	return flat;
}

// src/lib/slip/observationLimits.ts
var TURNING_LEAST_RPM = 30;

// src/lib/slip/sideMean.ts
function sideMean(values, reachS, gapS) {
	const length = values.length;
	const sum = new Float64Array(length + 1);
	const count = new Int32Array(length + 1);
	for (let t2 = 0; t2 < length; t2++) {
		const known2 = !Number.isNaN(values[t2]);
		sum[t2 + 1] = sum[t2] + (known2 ? values[t2] : 0);
		count[t2 + 1] = count[t2] + (known2 ? 1 : 0);
	}
	const out = new Float64Array(length);
	for (let t2 = 0; t2 < length; t2++) {
		const from = Math.max(0, t2 - reachS);
		const to = Math.min(length, t2 + reachS + 1);
		let total = sum[to] - sum[from];
		let known2 = count[to] - count[from];
		if (gapS > 0) {
			const gapFrom = Math.max(0, t2 - gapS);
			const gapTo = Math.min(length, t2 + gapS + 1);
			total -= sum[gapTo] - sum[gapFrom];
			known2 -= count[gapTo] - count[gapFrom];
		}
		out[t2] = total / known2;
	}
	return out;
}

// src/lib/slip/observationFeatures.ts
var REACH_S2 = 30;
var NEAR_S2 = 12;
var GAP_S = 3;
var RATIO_CUT = 0.08;
var POWER_CUT = 0.8;
function observationFeatures(context) {
	const { signals, sinceRest, base } = context;
	const { grid, pressing, logRatio, speedMps } = signals;
	const { seconds, powerW, cadenceRpm } = grid;
	const pressed = (values) => values.map((value, t2) => (pressing[t2] ? value : NaN));
	const step = (values, cut, relative) =>
		values.map((value, t2) => {
			if (t2 === 0 || !pressing[t2] || !pressing[t2 - 1]) return NaN;
			const change = Math.abs(value - values[t2 - 1]);
			return Math.min(cut, relative ? change / Math.max(40, value, values[t2 - 1]) : change);
		});
	const usualPower = sideMean(pressed(powerW), REACH_S2, GAP_S);
	const { response } = context;
	const shifts = new Float64Array(seconds);
	for (const t2 of grid.shiftS) if (t2 < seconds) shifts[t2] = 1;
	const missing = cadenceRpm.map((rpm) => (Number.isNaN(rpm) ? 1 : 0));
	const turning2 = cadenceRpm.map((rpm, t2) => (rpm >= TURNING_LEAST_RPM && pressing[t2] ? 1 : 0));
	const acrossStep = new Float64Array(seconds).fill(NaN);
	const scatterBefore = new Float64Array(seconds).fill(NaN);
	const gearDistance2 = new Float64Array(seconds).fill(NaN);
	const before = new Float64Array(seconds);
	for (let t2 = 0; t2 < seconds; t2++) {
		const later = base.after3[Math.min(seconds - 1, t2 + GAP_S)];
		acrossStep[t2] = Math.abs(later - base.before3[t2]);
		scatterBefore[t2] = Math.abs(base.before3[t2] - base.before7[t2]);
		const gear = context.ratios[context.path[t2]];
		if (gear) gearDistance2[t2] = Math.min(0.2, Math.abs(base.before7[t2] - gear.logRatio));
		before[t2] = t2 > 0 ? sinceRest[t2 - 1] : 0;
	}
	return [
		sideMean(step(logRatio, RATIO_CUT, false), REACH_S2, GAP_S),
		sideMean(step(powerW, POWER_CUT, true), REACH_S2, GAP_S),
		sideMean(pressed(cadenceRpm), NEAR_S2, GAP_S),
		usualPower,
		usualPower.map((watts) => watts / context.usualPowerW),
		before,
		sideMean(turning2, NEAR_S2, GAP_S),
		acrossStep,
		scatterBefore,
		sideMean(shifts, 6, 0),
		sideMean(missing, NEAR_S2, 0),
		new Float64Array(seconds).fill(response.power),
		new Float64Array(seconds).fill(response.cadence),
		new Float64Array(seconds).fill(signals.noise),
		sideMean(speedMps, NEAR_S2, GAP_S),
		gearDistance2
	];
}

// src/lib/slip/reportLimits.ts
var LEAST_REPORTED_DEG = 46;
var SAME_SLIP_S = 3;
var LEAST_LOG_ODDS = 2;

// src/lib/slip/rideResponse.ts
var SLOW_CORRELATION = 0.3;
var SLOW_HELD = 0.45;
function isPowerSlow(response) {
	return response.power > SLOW_CORRELATION || response.powerHeld > SLOW_HELD;
}
function rideResponse(signals) {
	return {
		power: changeCorrelation(signals.grid.powerW, signals.pressing),
		cadence: changeCorrelation(signals.grid.cadenceRpm, signals.pressing),
		powerHeld: heldShare(signals.grid.powerW, signals.pressing)
	};
}
function changeCorrelation(values, pressing) {
	let products = 0;
	let squares = 0;
	let count = 0;
	for (let t2 = 2; t2 < values.length; t2++) {
		if (!pressing[t2] || !pressing[t2 - 1] || !pressing[t2 - 2]) continue;
		const change = values[t2] - values[t2 - 1];
		const earlier = values[t2 - 1] - values[t2 - 2];
		const product = change * earlier;
		if (Number.isNaN(product)) continue;
		products += product;
		squares += 0.5 * (change * change + earlier * earlier);
		count++;
	}
	return count > 200 ? products / squares : NaN;
}
function heldShare(values, pressing) {
	let same = 0;
	let count = 0;
	for (let t2 = 1; t2 < values.length; t2++) {
		if (!pressing[t2] || !pressing[t2 - 1] || Number.isNaN(values[t2])) continue;
		count++;
		if (values[t2] === values[t2 - 1]) same++;
	}
	return count > 200 ? same / count : NaN;
}

// src/lib/slip/detectionLimit.ts
var LARGEST_DEG = 400;
function detectionLimit(context) {
	const out = new Float64Array(context.signals.grid.seconds).fill(NaN);
	if (isPowerSlow(context.response)) return out;
	const model = observed_default;
	const { pressing, grid } = context.signals;
	const columns = observationFeatures(context);
	const row = new Float64Array(columns.length);
	for (let t2 = 0; t2 < grid.seconds; t2++) {
		if (!pressing[t2] || Number.isNaN(grid.powerW[t2])) continue;
		for (let k = 0; k < row.length; k++) row[k] = columns[k][t2];
		const short = model.leastLogOdds - treeLogOdds(model, row);
		const limitDeg = REFERENCE_SLIP_CRANK_DEG * Math.exp(short / model.sizeSlope);
		if (limitDeg <= LARGEST_DEG) out[t2] = Math.max(LEAST_REPORTED_DEG, limitDeg);
	}
	return out;
}

// src/lib/drivetrain/engagedCadence.ts
function engagedCadence(speedMps, developmentM) {
	return developmentM > 0 ? (60 * speedMps) / developmentM : NaN;
}

// src/lib/slip/driveTraces.ts
var code = (state) => DRIVE_STATES.indexOf(state);
var NOT_OBSERVED = code('not observed');
var STOPPED = code('stopped');
var COASTING = code('coasting');
var PICKING_UP = code('picking up');
var DRIVING = code('driving');
var SHIFTING = code('shifting');
var SLIP = code('slip');
function driveStates(context, events) {
	const { signals, path, sinceRest } = context;
	const { grid, pressing, speedMps } = signals;
	const states = new Uint8Array(grid.seconds);
	for (let t2 = 0; t2 < grid.seconds; t2++) {
		let state = DRIVING;
		if (Number.isNaN(grid.cadenceRpm[t2]) || Number.isNaN(speedMps[t2])) state = NOT_OBSERVED;
		else if (speedMps[t2] < 0.5) state = STOPPED;
		else if (!pressing[t2]) state = COASTING;
		else if (sinceRest[t2] <= 2) state = PICKING_UP;
		else if (t2 > 0 && path[t2] !== path[t2 - 1]) state = SHIFTING;
		states[t2] = state;
	}
	for (const event of events) states.fill(SLIP, event.from, event.to + 1);
	return states;
}
function driveTraces(context, gears, states, detectionLimitCrankDeg, powerAt) {
	const { grid, speedMps } = context.signals;
	const engagedCadenceRpm = new Float64Array(grid.seconds).fill(NaN);
	const gainedHubDeg = new Float64Array(grid.seconds);
	const hubTorqueNm = new Float64Array(grid.seconds).fill(NaN);
	let gained = 0;
	let inGear = context.path[0];
	for (let t2 = 0; t2 < grid.seconds; t2++) {
		if (states[t2] !== SLIP) inGear = context.path[t2];
		const gear = gears[inGear];
		if (gear) {
			engagedCadenceRpm[t2] = engagedCadence(speedMps[t2], gear.developmentM);
			hubTorqueNm[t2] = hubTorque(grid.powerW[t2], grid.cadenceRpm[t2], gear.ratio, powerAt);
			const gain = 6 * (grid.cadenceRpm[t2] - engagedCadenceRpm[t2]) * gear.ratio;
			const state = states[t2];
			if ((state === SLIP || state === COASTING || state === PICKING_UP) && gain === gain) {
				gained += state === SLIP ? Math.max(0, gain) : Math.min(0, gain);
			}
		}
		gainedHubDeg[t2] = gained;
	}
	return {
		speedMps: grid.speedMps,
		cadenceRpm: grid.cadenceRpm,
		powerW: grid.powerW,
		distanceM: grid.distanceM,
		engagedCadenceRpm,
		gainedHubDeg,
		hubTorqueNm,
		state: states,
		detectionLimitCrankDeg
	};
}

// src/lib/slip/nameChainSkips.ts
var LEAST_EVENTS = 4;
var LARGEST_SHARE2 = 0.4;
var MOST_TEETH = 2;
var LARGEST_LOSS = 0.9;
function nameChainSkips(events, gears) {
	const slips = events.filter((event) => event.kind === 'slip');
	const sprocket = slips[0]?.gear?.sprocket ?? null;
	const same =
		sprocket !== null &&
		slips.length >= LEAST_EVENTS &&
		shareOf(sprocket, gears) <= LARGEST_SHARE2 &&
		slips.every((event) => event.gear?.sprocket === sprocket && isTeeth(event));
	if (!same) return [...events];
	return events.map((event) =>
		event.kind === 'slip'
			? { ...event, kind: 'possible chain skip', reasons: [...event.reasons, reasonOf(sprocket)] }
			: event
	);
}
function isTeeth({ overrunCrankDeg, gear, powerLost }) {
	if (!gear?.chainring || !(powerLost === null || powerLost <= LARGEST_LOSS)) return false;
	const toothDeg = 360 / gear.chainring;
	for (let teeth = 1; teeth <= MOST_TEETH; teeth++) {
		if (overrunCrankDeg.lower <= teeth * toothDeg && teeth * toothDeg <= overrunCrankDeg.upper) return true;
	}
	return false;
}
function shareOf(sprocket, gears) {
	const all = gears.reduce((sum, gear) => sum + gear.seconds, 0);
	const here = gears.reduce((sum, gear) => sum + (gear.sprocket === sprocket ? gear.seconds : 0), 0);
	return all > 0 ? here / all : 1;
}
function reasonOf(sprocket) {
	return `For a chain that skips: every such event of this ride lies in the sprocket of ${sprocket}, and each is as large as one or two teeth.`;
}

// src/lib/slip/observedStretches.ts
function observedStretches(grid, detectionLimitCrankDeg) {
	const stretches = [];
	let from = -1;
	for (let t2 = 0; t2 <= grid.seconds; t2++) {
		const seen = t2 < grid.seconds && detectionLimitCrankDeg[t2] <= REFERENCE_SLIP_CRANK_DEG;
		if (seen && from < 0) from = t2;
		if (!seen && from >= 0) {
			const last = Math.min(grid.seconds - 1, t2);
			stretches.push({ startS: from, endS: t2, startM: grid.distanceM[from], endM: grid.distanceM[last] });
			from = -1;
		}
	}
	return stretches;
}

// src/lib/drivetrain/followRatios.ts
var SHIFT_COST = 5;
var RECORDED_SHIFT_COST = 2;
var MISFIT_COST = 6;
function followRatios(signals, ratios) {
	const { seconds, shiftS } = signals.grid;
	const gears = ratios.length;
	const path = new Int16Array(seconds).fill(-1);
	if (gears === 0) return path;
	const nearShift = new Uint8Array(seconds);
	for (const at2 of shiftS) nearShift.fill(1, Math.max(0, at2 - 1), Math.min(seconds, at2 + 4));
	const width = Math.max(0.012, 1.2 * signals.noise);
	const from = new Uint8Array(seconds * gears);
	let cost = new Float64Array(gears);
	let next = new Float64Array(gears);
	for (let t2 = 0; t2 < seconds; t2++) {
		let cheapest2 = 0;
		for (let g = 1; g < gears; g++) if (cost[g] < cost[cheapest2]) cheapest2 = g;
		const change = cost[cheapest2] + (nearShift[t2] ? RECORDED_SHIFT_COST : SHIFT_COST);
		const known2 = signals.pressing[t2] === 1;
		for (let g = 0; g < gears; g++) {
			const stays = cost[g] <= change;
			let here = stays ? cost[g] : change;
			from[t2 * gears + g] = stays ? g : cheapest2;
			if (known2) {
				const off = (signals.logRatio[t2] - ratios[g].logRatio) / width;
				here += Math.min(MISFIT_COST, 0.5 * off * off);
			}
			next[g] = here;
		}
		[cost, next] = [next, cost];
	}
	let gear = 0;
	for (let g = 1; g < gears; g++) if (cost[g] < cost[gear]) gear = g;
	for (let t2 = seconds - 1; t2 >= 0; t2--) {
		path[t2] = gear;
		gear = from[t2 * gears + gear];
	}
	return path;
}

// src/lib/drivetrain/learnRatios.ts
var LOWEST = Math.log(1 / 14);
var HIGHEST = Math.log(1 / 0.9);
var BIN = 4e-3;
var CLOSEST = 0.03;
var LEAST_SHARE = 4e-3;
var LEAST_SECONDS4 = 12;
function learnRatios(signals) {
	const bins = Math.ceil((HIGHEST - LOWEST) / BIN);
	const counts = new Float64Array(bins);
	const { logRatio, pressing } = signals;
	const steady = Math.max(0.02, 2.5 * signals.noise);
	let total = 0;
	for (let t2 = 1; t2 + 1 < logRatio.length; t2++) {
		if (!pressing[t2]) continue;
		const near = middleOf2(logRatio[t2 - 1], logRatio[t2], logRatio[t2 + 1]);
		if (Math.abs(logRatio[t2 - 1] - near) > steady || Math.abs(logRatio[t2 + 1] - near) > steady) continue;
		const bin = Math.floor((logRatio[t2] - LOWEST) / BIN);
		if (bin >= 0 && bin < bins) {
			counts[bin]++;
			total++;
		}
	}
	const smooth = smoothed(counts, Math.max(7e-3, Math.min(0.014, 0.6 * signals.noise)) / BIN);
	return peaks(smooth, counts, total);
}
function middleOf2(a, b, c) {
	if (Number.isNaN(a + c)) return b;
	return a + b + c - Math.max(a, b, c) - Math.min(a, b, c);
}
function smoothed(counts, widthBins) {
	const reach = Math.ceil(3 * widthBins);
	const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) =>
		Math.exp(-0.5 * ((i - reach) / widthBins) ** 2)
	);
	const out = new Float64Array(counts.length);
	for (let i = 0; i < counts.length; i++) {
		if (counts[i] === 0) continue;
		for (let k = 0; k < kernel.length; k++) {
			const to = i + k - reach;
			if (to >= 0 && to < out.length) out[to] += counts[i] * kernel[k];
		}
	}
	return out;
}
function peaks(smooth, counts, total) {
	const order = [];
	for (let i = 1; i + 1 < smooth.length; i++) {
		if (smooth[i] > smooth[i - 1] && smooth[i] >= smooth[i + 1]) order.push(i);
	}
	order.sort((a, b) => smooth[b] - smooth[a]);
	const apart = CLOSEST / BIN;
	const reach = Math.floor(0.02 / BIN);
	const kept = [];
	const found = [];
	for (const i of order) {
		if (kept.some((other) => Math.abs(other - i) < apart)) continue;
		let seconds = 0;
		for (let k = Math.max(0, i - reach); k <= Math.min(counts.length - 1, i + reach); k++)
			seconds += counts[k];
		if (seconds < Math.max(LEAST_SECONDS4, LEAST_SHARE * total)) continue;
		kept.push(i);
		found.push({ logRatio: LOWEST + (i + 0.5) * BIN, seconds, gearCode: -1 });
	}
	return found.sort((a, b) => a.logRatio - b.logRatio);
}

// src/lib/drivetrain/learnRecordedRatios.ts
var SETTLE_S = 4;
var LEAST_SECONDS5 = 8;
function learnRecordedRatios(signals) {
	const { gearCode, gearCodes } = signals.grid;
	const samples = gearCodes.map(() => []);
	let since = 0;
	for (let t2 = 1; t2 < gearCode.length; t2++) {
		since = gearCode[t2] === gearCode[t2 - 1] ? since + 1 : 0;
		if (since < SETTLE_S || gearCode[t2] < 0 || !signals.pressing[t2]) continue;
		if (gearCode[Math.min(gearCode.length - 1, t2 + 1)] !== gearCode[t2]) continue;
		samples[gearCode[t2]].push(signals.logRatio[t2]);
	}
	return Float64Array.from(samples, (values) => (values.length >= LEAST_SECONDS5 ? median(values) : NaN));
}

// src/lib/slip/baselines.ts
var REACH_S3 = 14;
var JUST_BEFORE_S = 6;
var JUST_AFTER_S = 4;
function baselines(signals) {
	const { logRatio, pressing } = signals;
	const at2 = [];
	const turning2 = [];
	for (let t2 = 0; t2 < logRatio.length; t2++) {
		if (pressing[t2]) at2.push(t2);
		if (!Number.isNaN(logRatio[t2])) turning2.push(t2);
	}
	return {
		before3: sideMedians(logRatio, at2, 3, -1, REACH_S3),
		before7: sideMedians(logRatio, at2, 7, -1, REACH_S3),
		after3: sideMedians(logRatio, at2, 3, 1, REACH_S3),
		after7: sideMedians(logRatio, at2, 7, 1, REACH_S3),
		justBefore: sideMedians(logRatio, at2, 3, -1, JUST_BEFORE_S),
		justAfter: sideMedians(logRatio, turning2, 3, 1, JUST_AFTER_S)
	};
}
function sideMedians(logRatio, at2, count, side, reachS) {
	const seconds = logRatio.length;
	const out = new Float64Array(seconds).fill(NaN);
	const window = new Float64Array(count);
	let next = 0;
	for (let t2 = 0; t2 < seconds; t2++) {
		while (next < at2.length && at2[next] < t2) next++;
		let index = side < 0 ? next - 1 : next;
		if (side > 0 && at2[index] === t2) index++;
		let filled = 0;
		while (filled < count && index >= 0 && index < at2.length && Math.abs(at2[index] - t2) <= reachS) {
			insert(window, filled++, logRatio[at2[index]]);
			index += side;
		}
		if (filled > 0)
			out[t2] = filled % 2 ? window[filled >> 1] : (window[filled / 2 - 1] + window[filled / 2]) / 2;
	}
	return out;
}
function insert(sorted, length, value) {
	let i = length;
	while (i > 0 && sorted[i - 1] > value) {
		sorted[i] = sorted[i - 1];
		i--;
	}
	sorted[i] = value;
}

// src/lib/slip/localNoise.ts
var REACH_S4 = 30;
var LEAST_STEPS = 12;
var MEAN_STEP_TO_SD = 0.886;
var CUT2 = 0.06;
function localNoise(signals) {
	const { seconds } = signals.grid;
	const sum = new Float64Array(seconds + 1);
	const count = new Float64Array(seconds + 1);
	for (let t2 = 0; t2 < seconds; t2++) {
		sum[t2 + 1] = sum[t2];
		count[t2 + 1] = count[t2];
		if (t2 > 0 && signals.pressing[t2] && signals.pressing[t2 - 1]) {
			sum[t2 + 1] += Math.min(CUT2, Math.abs(signals.logRatio[t2] - signals.logRatio[t2 - 1]));
			count[t2 + 1]++;
		}
	}
	const out = new Float64Array(seconds);
	for (let t2 = 0; t2 < seconds; t2++) {
		const from = Math.max(0, t2 - REACH_S4);
		const to = Math.min(seconds, t2 + REACH_S4 + 1);
		const steps = count[to] - count[from];
		out[t2] = steps < LEAST_STEPS ? signals.noise : (MEAN_STEP_TO_SD * (sum[to] - sum[from])) / steps;
	}
	return out;
}

// src/lib/slip/localPowerNoise.ts
var REACH_S5 = 30;
var LEAST_STEPS2 = 12;
var CUT3 = 0.8;
var USUAL = 0.15;
var LEAST = 0.03;
function localPowerNoise(signals) {
	const { seconds, powerW } = signals.grid;
	const sum = new Float64Array(seconds + 1);
	const count = new Float64Array(seconds + 1);
	for (let t2 = 0; t2 < seconds; t2++) {
		sum[t2 + 1] = sum[t2];
		count[t2 + 1] = count[t2];
		if (t2 === 0 || !signals.pressing[t2] || !signals.pressing[t2 - 1]) continue;
		const change = Math.abs(powerW[t2] - powerW[t2 - 1]) / Math.max(40, powerW[t2], powerW[t2 - 1]);
		if (!(change >= 0)) continue;
		sum[t2 + 1] += Math.min(CUT3, change);
		count[t2 + 1]++;
	}
	const out = new Float64Array(seconds);
	for (let t2 = 0; t2 < seconds; t2++) {
		const from = Math.max(0, t2 - REACH_S5);
		const to = Math.min(seconds, t2 + REACH_S5 + 1);
		const steps = count[to] - count[from];
		out[t2] = steps < LEAST_STEPS2 ? USUAL : Math.max(LEAST, (sum[to] - sum[from]) / steps);
	}
	return out;
}

// src/lib/slip/rideContext.ts
var LONGEST_S3 = 60;
function rideContext(signals, bike = {}) {
	const base = baselines(signals);
	const ratios = learnRatios(signals);
	const recordedRatios = learnRecordedRatios(signals);
	const named = nameGears(ratios, bike);
	const candidates2 = findCandidates(signals, base);
	const { powerW } = signals.grid;
	return {
		signals,
		base,
		ratios,
		path: followRatios(signals, ratios),
		recordedRatios,
		named,
		gearRatios: knownRatios(ratios, recordedRatios, named, bike),
		noise: localNoise(signals),
		powerNoise: localPowerNoise(signals),
		candidates: candidates2,
		sinceRest: restDistance(signals.pressing, 1),
		untilRest: restDistance(signals.pressing, -1),
		response: rideResponse(signals),
		usualPowerW: median(powerW.filter((watts, t2) => signals.pressing[t2] && watts > 0))
	};
}
function restDistance(pressing, step) {
	const out = new Uint8Array(pressing.length);
	let count = 0;
	for (let i = 0; i < pressing.length; i++) {
		const t2 = step > 0 ? i : pressing.length - 1 - i;
		count = pressing[t2] ? Math.min(LONGEST_S3, count + 1) : 0;
		out[t2] = count;
	}
	return out;
}
function knownRatios(ratios, recordedRatios, named, bike) {
	const all = ratios.map((ratio2) => ratio2.logRatio);
	all.push(...recordedRatios.filter((ratio2) => !Number.isNaN(ratio2)));
	if (named.fitted) {
		for (const chainring of bike.chainrings ?? []) {
			for (const sprocket of bike.cassette ?? []) {
				all.push(-Math.log((chainring / sprocket) * named.circumferenceM));
			}
		}
	}
	return Float64Array.from(all).sort();
}

// src/lib/slip/hubTorqueBins.ts
var HUB_TORQUE_EDGES_NM = [0, 4, 8, 12, 16, 20, 25, 30, 40, 60];
function hubTorqueBin(torqueNm) {
	if (!(torqueNm >= 0)) return -1;
	let bin = HUB_TORQUE_EDGES_NM.length - 1;
	while (torqueNm < HUB_TORQUE_EDGES_NM[bin]) bin--;
	return bin;
}

// src/lib/slip/matchRiderMarks.ts
var LONGEST_MARK_DELAY_S = 15;

// src/lib/slip/markExposures.ts
function markExposures(marksS, driven, seen) {
	return marksS.map((timeS) => {
		let under = 0;
		let both = 0;
		const last = Math.min(driven.length - 1, Math.floor(timeS));
		for (let t2 = Math.max(0, Math.ceil(timeS - LONGEST_MARK_DELAY_S)); t2 <= last; t2++) {
			under += driven[t2];
			both += driven[t2] && seen[t2];
		}
		return { timeS, observed: under > 0 && both >= under / 2 };
	});
}

// src/lib/slip/rideExposure.ts
var UNDER_DRIVE = /* @__PURE__ */ new Set(['driving', 'shifting', 'picking up', 'slip']);
var DRIVEN = Uint8Array.from(DRIVE_STATES, (state) => (UNDER_DRIVE.has(state) ? 1 : 0));
var NOT_OBSERVED2 = DRIVE_STATES.indexOf('not observed');
function rideExposure(context, states, observed, marksS, powerAt) {
	const { grid } = context.signals;
	const driven = new Uint8Array(states.length);
	for (let t2 = 0; t2 < states.length; t2++) driven[t2] = DRIVEN[states[t2]];
	const seen = new Uint8Array(grid.seconds);
	for (const { startS, endS } of observed) seen.fill(1, startS, endS);
	const cells = /* @__PURE__ */ new Map();
	const hours = [];
	for (let t2 = 0; t2 < grid.seconds; t2++) {
		if (!driven[t2] && !seen[t2]) continue;
		const gear = onsetGear(context, t2);
		const bin = hubTorqueBin(onsetTorque(context, t2, powerAt));
		const key = (gear ? context.named.gears.indexOf(gear) + 1 : 0) * BINS + bin + 1;
		let cell = cells.get(key);
		if (!cell) cells.set(key, (cell = { place: placeOf(gear, bin), sums: nothing() }));
		addSecond(cell.sums, context, states, t2, driven[t2], seen[t2]);
		addSecond((hours[Math.floor(t2 / 3600)] ??= nothing()), context, states, t2, driven[t2], seen[t2]);
	}
	return {
		cells: [...cells.values()].map(({ place, sums }) => ({ ...place, ...sums })).sort(inOrder),
		// hours in which nothing was driven or observed were skipped above
		hours: Object.entries(hours).map(([hour, sums]) => ({ hour: Number(hour), ...sums })),
		marks: markExposures(marksS, driven, seen)
	};
}
var BINS = HUB_TORQUE_EDGES_NM.length + 1;
function placeOf(gear, bin) {
	return {
		torqueFromNm: bin < 0 ? null : HUB_TORQUE_EDGES_NM[bin],
		torqueToNm: bin < 0 ? null : (HUB_TORQUE_EDGES_NM[bin + 1] ?? null),
		gear: gear?.label ?? null,
		ratio: gear?.ratio ?? null
	};
}
function addSecond(sums, context, states, t2, driven, seen) {
	const { distanceM, cadenceRpm, seconds } = context.signals.grid;
	const metres = t2 + 1 < seconds ? distanceM[t2 + 1] - distanceM[t2] : 0;
	sums.observedM += seen * metres;
	sums.observedS += seen;
	if (!driven) return;
	const turns = cadenceRpm[t2] > 0 ? cadenceRpm[t2] / 60 : 0;
	const begins = context.sinceRest[t2] === 1 && t2 > 0 && states[t2 - 1] !== NOT_OBSERVED2 ? 1 : 0;
	sums.drivenM += metres;
	sums.drivenS++;
	sums.drivenTurns += turns;
	sums.observedTurns += seen * turns;
	sums.pickUps += begins;
	sums.observedPickUps += seen * begins;
}
function nothing() {
	return {
		drivenM: 0,
		drivenS: 0,
		observedM: 0,
		observedS: 0,
		drivenTurns: 0,
		observedTurns: 0,
		pickUps: 0,
		observedPickUps: 0
	};
}
function inOrder(a, b) {
	const torque = (a.torqueFromNm ?? Infinity) - (b.torqueFromNm ?? Infinity);
	if (torque < 0 || torque > 0) return torque;
	return (a.ratio ?? 0) - (b.ratio ?? 0);
}

// src/lib/slip/speedFollowsHub.ts
function speedFollowsHub(ride, bike) {
	if (bike.speedSensor) return bike.speedSensor === 'rear';
	return ride.speedSource !== 'position';
}

// src/lib/slip/rideWarnings.ts
function rideWarnings(ride, context, bike, named, learning) {
	const warnings = [];
	const warn = (code2, sentence, detail = '') => warnings.push({ code: code2, sentence, detail });
	if (ride.trainer) {
		warn('trainer', 'This was ridden on a trainer: nothing of it counts as observed distance.');
	}
	if (ride.motorAssisted) {
		warn('motor', 'A motor helps on this bike: nothing of this ride counts as observed distance.');
	}
	if (Number.isNaN(context.usualPowerW)) {
		warn(
			'no-power',
			'No power was recorded: a jump of the cadence alone is a weak sign, so nothing counts as observed.'
		);
	}
	if (isPowerSlow(context.response)) {
		warn(
			'slow-power',
			'The power meter reacts too slowly to show that drive was lost: what is found stands, but nothing counts as observed.',
			`correlation of changes ${context.response.power.toFixed(2)}, values held ${(100 * context.response.powerHeld).toFixed(0)} %`
		);
	}
	if (ride.irregular) {
		warn('irregular', 'The device left out samples: a slip between two of them leaves no trace.');
	}
	if (!speedFollowsHub(ride, bike) && bike.speedSensor !== 'front') {
		warn(
			'speed-from-position',
			'Speed comes from satellite positions: a spinning tyre cannot be told from a slip, so nothing counts as observed.'
		);
	}
	if (bike.speedSensor === 'front') {
		warn(
			'front-speed',
			'Speed comes from the front wheel: a spinning rear tyre looks like a slip, so nothing counts as observed.'
		);
	}
	if (bike.chainrings && bike.cassette && !named.fitted) {
		warn('gears-do-not-fit', 'The stated chainrings and sprockets do not explain this ride: check the bike.');
	} else if (learning.circumference && isOff(learning.circumference, bike.circumferenceM)) {
		const { circumferenceM, lowerM, upperM } = learning.circumference;
		warn(
			'circumference',
			`The ride fits a wheel circumference of ${circumferenceM.toFixed(3)} m (90 % limits ${lowerM.toFixed(3)} to ${upperM.toFixed(3)} m) better than the stated ${bike.circumferenceM.toFixed(3)} m.`
		);
	}
	for (const { code: code2, sentence } of lookAlikes(ride, bike, learning)) warn(code2, sentence);
	return warnings;
}
function isOff(learned, statedM) {
	if (!statedM) return false;
	const within = learned.lowerM <= statedM && statedM <= learned.upperM;
	return !within && Math.abs(learned.circumferenceM / statedM - 1) > 0.01;
}
function lookAlikes(ride, bike, learning) {
	const found = [];
	if (learning.looksLikeTrainer && ride.trainer === null) {
		found.push({
			code: 'looks-like-trainer',
			sentence: 'This looks like a ride on a trainer: the speed follows the power alone. Was it?'
		});
	}
	if (learning.looksLikeMotor && ride.motorAssisted === null) {
		found.push({
			code: 'looks-like-motor',
			sentence:
				'This looks like a ride with a motor: speed and height were gained with less power than their mass needs. Was it?'
		});
	}
	if (learning.speedTellsPosition && ride.speedSource !== 'position' && bike.speedSensor !== 'gps') {
		found.push({
			code: 'speed-tells-position',
			sentence:
				'The distance agrees with the satellite track as if it came from it: check where the speed was measured.'
		});
	}
	if (learning.distanceTellsMore) {
		found.push({
			code: 'distance-tells-more',
			sentence:
				'The recorded distance fits the cadence better than the recorded speed does: the device smooths or holds its speed. Slips are harder to see in it.'
		});
	}
	return found;
}

// src/lib/slip/model/scorer.json
var scorer_default = {
	names: [
		'careful deg',
		'generous deg',
		'deg against long before',
		'deg against long after',
		'deg against before',
		'deg against after',
		'deg against just before',
		'deg against just after',
		'deg at peak',
		'share of deg at peak',
		'deg in five seconds around peak',
		'seconds',
		'careful deg in local noise',
		'local noise',
		'irregular recording',
		'missing records near',
		'seconds since rest',
		'seconds until rest',
		'since rest before onset',
		'ratio excess at -4 s',
		'ratio excess at -3 s',
		'ratio excess at -2 s',
		'ratio excess at -1 s',
		'ratio excess at 0 s',
		'ratio excess at 1 s',
		'ratio excess at 2 s',
		'ratio excess at 3 s',
		'ratio excess at 4 s',
		'ratio excess at 5 s',
		'ratio excess at 6 s',
		'power before W',
		'power before of usual',
		'power after of before',
		'power of before at -3 s',
		'power of before at -2 s',
		'power of before at -1 s',
		'power of before at 0 s',
		'power of before at 1 s',
		'power of before at 2 s',
		'power of before at 3 s',
		'power of before at 4 s',
		'power of before at 5 s',
		'least power of before',
		'second least power of before',
		'power lost in seconds',
		'power before scatter',
		'least power against after',
		'power two before of before',
		'torque kept at peak',
		'power at peak against seconds beside',
		'power after peak against seconds beside',
		'power noise',
		'power lost in power noise',
		'power lost at peak in power noise',
		'cadence before rpm',
		'cadence after rpm',
		'engaged cadence at peak rpm',
		'deg against cadence around',
		'deg against higher cadence side',
		'cadence step in rpm',
		'cadence step out rpm',
		'deepest speed dip',
		'dip at peak',
		'dip at peak, clock of the file',
		'speed change before',
		'speed change during',
		'speed change after',
		'speed lost against before',
		'speed scatter',
		'speed mps',
		'seconds of held cadence',
		'seconds of held speed',
		'held power near',
		'cadence change over five seconds before',
		'step of ratio',
		'size of step',
		'step of long ratio',
		'recorded shifts known',
		'seconds since recorded shift',
		'seconds until recorded shift',
		'recorded shifts near',
		'recorded ratio now against engaged',
		'recorded ratio earlier against engaged',
		'deg against recorded ratios',
		'distance of peak from another gear',
		'seconds at peak ratio',
		'distance of engaged from a gear',
		'distance of next second from a gear',
		'distance of second before from a gear',
		'deg against followed gears',
		'followed gears change near',
		'followed gears change by',
		'gears alone against slip',
		'cost of gears alone',
		'cost with slip',
		'deg beyond gears',
		'changes of gear that explain'
	],
	bias: -1.7277680656274172,
	trees: [
		[
			[60, 6, 1, 1, 2],
			[58, 42, 1, 3, 4],
			[59, 6, 0, 5, 6],
			[60, 4, 1, 7, 8],
			[89, 62.41, 0, 9, 10],
			[68, 3925e-6, 0, 11, 12],
			[48, 0.9243, 0, 13, 14],
			[68, 4185e-6, 0, 15, 16],
			[13, 0.01734, 0, 17, 18],
			[59, 7, 0, 19, 20],
			[68, 8244e-6, 0, 21, 22],
			[55, 73, 1, 23, 24],
			[58, 54, 1, 25, 26],
			[42, 0.8155, 0, 27, 28],
			[89, 39.14, 0, 29, 30],
			[93, 11.3, 0, 31, 32],
			[23, 0.08997, 0, 33, 34],
			[65, -0.0556, 0, 35, 36],
			[13, 0.024, 0, 37, 38],
			[60, 4, 1, 39, 40],
			[53, 0.5122, 1, 41, 42],
			[48, 0.9243, 0, 43, 44],
			[53, 2.327, 1, 45, 46],
			[65, -0.06075, 0, 47, 48],
			[23, 0.0619, 0, 49, 50],
			[59, 2, 0, 51, 52],
			[89, 87.85, 0, 53, 54],
			[89, 43.26, 0, 55, 56],
			[58, 198, 1, 57, 58],
			[48, 1.715, 0, 59, 60],
			[22, 0.1592, 1, 61, 62],
			[-0.06711],
			[-0.03505],
			[-0.07426],
			[-0.06626],
			[0.01178],
			[0.1613],
			[-0.02307],
			[-0.06676],
			[-0.06591],
			[-0.01698],
			[-0.03598],
			[0.0401],
			[0.3215],
			[0.0651],
			[0.0401],
			[0.1255],
			[-0.06087],
			[0.1182],
			[8007e-6],
			[0.3272],
			[-0.06939],
			[-0.01914],
			[-0.01401],
			[0.1967],
			[0.304],
			[0.3953],
			[0.236],
			[0.236],
			[0.06931],
			[-0.02755],
			[0.2225],
			[0.1021]
		],
		[
			[60, 6, 1, 1, 2],
			[92, 6.875, 0, 3, 4],
			[59, 5, 0, 5, 6],
			[59, 8, 0, 7, 8],
			[58, 24, 1, 9, 10],
			[24, -0.0167, 1, 11, 12],
			[6, 51.19, 1, 13, 14],
			[36, 0.7632, 0, 15, 16],
			[36, 0.8952, 0, 17, 18],
			[60, 3, 1, 19, 20],
			[53, 0.5122, 1, 21, 22],
			[58, 72, 1, 23, 24],
			[92, 6.511, 0, 25, 26],
			[92, 5.819, 0, 27, 28],
			[52, 1.465, 1, 29, 30],
			[59, 6, 0, 31, 32],
			[96, 1, 0, 33, 34],
			[5, 54, 1, 35, 36],
			[58, 42, 1, 37, 38],
			[62, -0.01598, 1, 39, 40],
			[62, -9606e-6, 0, 41, 42],
			[13, 0.02037, 0, 43, 44],
			[59, 4, 0, 45, 46],
			[17, 24, 0, 47, 48],
			[83, 77.29, 1, 49, 50],
			[58, 54, 1, 51, 52],
			[58, 12, 0, 53, 54],
			[76, -0.06543, 0, 55, 56],
			[6, 49.43, 0, 57, 58],
			[0, 192.6, 0, 59, 60],
			[5, 42.02, 1, 61, 62],
			[-0.06312],
			[-0.03177],
			[-0.0737],
			[-0.06632],
			[-0.03957],
			[-0.03177],
			[-0.06768],
			[-0.04664],
			[-0.03177],
			[-0.03177],
			[-0.03177],
			[0.07293],
			[0.1111],
			[-0.02733],
			[0.1352],
			[0.2851],
			[-0.07122],
			[-0.04293],
			[-0.03447],
			[0.1941],
			[-0.0609],
			[0.02084],
			[0.09698],
			[0.2765],
			[0.0593],
			[-0.03598],
			[0.2395],
			[0.0593],
			[0.1606],
			[0.0364],
			[0.1944],
			[0.2743]
		],
		[
			[58, 42, 1, 1, 2],
			[89, 45.41, 0, 3, 4],
			[89, 51.09, 0, 5, 6],
			[61, -7578e-6, 0, 7, 8],
			[61, -0.0122, 0, 9, 10],
			[23, 0.07277, 1, 11, 12],
			[21, 0.02381, 1, 13, 14],
			[23, 0.07277, 1, 15, 16],
			[89, 35.83, 0, 17, 18],
			[58, 18, 1, 19, 20],
			[16, 6, 0, 21, 22],
			[23, 0.0546, 1, 23, 24],
			[31, 0.5556, 1, 25, 26],
			[42, 0.7903, 0, 27, 28],
			[48, 0.7906, 0, 29, 30],
			[42, 0.7097, 0, 31, 32],
			[61, -0.02459, 0, 33, 34],
			[95, 45.39, 0, 35, 36],
			[58, 0, 0, 37, 38],
			[23, 0.1121, 0, 39, 40],
			[13, 0.02348, 0, 41, 42],
			[58, 18, 0, 43, 44],
			[13, 0.0245, 0, 45, 46],
			[48, 0.7147, 0, 47, 48],
			[13, 0.02078, 0, 49, 50],
			[16, 8, 0, 51, 52],
			[21, 0.03116, 1, 53, 54],
			[31, 0.3548, 0, 55, 56],
			[5, 236.8, 0, 57, 58],
			[16, 9, 0, 59, 60],
			[80, 1, 0, 61, 62],
			[-0.06679],
			[-0.07312],
			[-0.06533],
			[-0.0599],
			[-0.0599],
			[-0.05229],
			[-0.04881],
			[-0.04733],
			[-0.04733],
			[-0.04536],
			[0.03415],
			[-0.04733],
			[0.03415],
			[0.0959],
			[0.2194],
			[0.03415],
			[-0.0403],
			[-0.06697],
			[0.06153],
			[-0.05466],
			[-0.06045],
			[-7252e-6],
			[0.0903],
			[-0.03902],
			[0.1639],
			[0.2285],
			[0.1425],
			[0.0903],
			[0.0903],
			[0.1418],
			[0.0903],
			[0.0903]
		],
		[
			[8, 49.57, 0, 1, 2],
			[8, 39.1, 0, 3, 4],
			[58, 24, 1, 5, 6],
			[68, 4185e-6, 0, 7, 8],
			[68, 565e-5, 0, 9, 10],
			[61, -0.02459, 0, 11, 12],
			[9, 0.473, 0, 13, 14],
			[8, 25.09, 0, 15, 16],
			[48, 0.8073, 0, 17, 18],
			[17, 3, 0, 19, 20],
			[68, 0.01002, 0, 21, 22],
			[82, -0.1319, 0, 23, 24],
			[7, 117.6, 0, 25, 26],
			[36, 0.9431, 1, 27, 28],
			[68, 0.01205, 0, 29, 30],
			[20, 0.05716, 1, 31, 32],
			[48, 1.004, 0, 33, 34],
			[8, 28.3, 0, 35, 36],
			[82, 281e-5, 0, 37, 38],
			[58, 18, 1, 39, 40],
			[9, 0.4448, 0, 41, 42],
			[82, 0.01525, 0, 43, 44],
			[82, -1057e-6, 0, 45, 46],
			[9, 0.634, 0, 47, 48],
			[61, -0.07988, 0, 49, 50],
			[17, 3, 0, 51, 52],
			[58, 18, 0, 53, 54],
			[9, 0.4085, 0, 55, 56],
			[38, 4, 0, 57, 58],
			[30, 51, 1, 59, 60],
			[82, 0.05088, 0, 61, 62],
			[-0.06021],
			[-0.04675],
			[-0.03509],
			[-0.04013],
			[-0.06515],
			[-0.03762],
			[-0.06767],
			[-0.07244],
			[-0.03509],
			[0.01661],
			[-0.03509],
			[0.01661],
			[0.01661],
			[-0.03509],
			[-0.03126],
			[-0.03509],
			[0.01661],
			[0.0172],
			[0.01661],
			[0.01661],
			[0.0172],
			[0.1455],
			[0.0172],
			[0.04],
			[0.01661],
			[0.02131],
			[0.01661],
			[0.01661],
			[0.03081],
			[0.1899],
			[0.1473],
			[0.01661]
		],
		[
			[92, 6.511, 0, 1, 2],
			[96, 1, 0, 3, 4],
			[57, 39, 1, 5, 6],
			[19, 1e9, 0, 7, 8],
			[36, 0.8803, 0, 9, 10],
			[57, 30, 0, 11, 12],
			[53, -4.862, 1, 13, 14],
			[22, 1e9, 0, 15, 16],
			[5, 42.02, 1, 17, 18],
			[5, 35.83, 1, 19, 20],
			[11, 2, 0, 21, 22],
			[36, 0.85, 0, 23, 24],
			[36, 0.8952, 1, 25, 26],
			[65, 0.1559, 0, 27, 28],
			[65, -0.1887, 1, 29, 30],
			[36, 0.8307, 0, 31, 32],
			[92, 0.7593, 0, 33, 34],
			[36, 0.8656, 1, 35, 36],
			[65, 0.113, 0, 37, 38],
			[96, 2, 0, 39, 40],
			[55, 72, 1, 41, 42],
			[57, 60, 0, 43, 44],
			[57, 69, 1, 45, 46],
			[50, 0.5231, 1, 47, 48],
			[92, 11.56, 0, 49, 50],
			[17, 0, 0, 51, 52],
			[94, 2.628, 0, 53, 54],
			[88, 0.02302, 1, 55, 56],
			[11, 1, 0, 57, 58],
			[4, 129.7, 1, 59, 60],
			[13, 0.02599, 0, 61, 62],
			[-0.06051],
			[-0.0706],
			[-0.05257],
			[0.02144],
			[-0.02184],
			[-0.06453],
			[0.02144],
			[-0.0491],
			[-7668e-6],
			[-3095e-6],
			[0.01334],
			[0.02144],
			[-0.04796],
			[-7668e-6],
			[-0.06382],
			[-0.04128],
			[0.02144],
			[0.02144],
			[0.02144],
			[0.02144],
			[0.04486],
			[0.07458],
			[0.04486],
			[0.02144],
			[0.07458],
			[0.07458],
			[0.07458],
			[0.07458],
			[0.1096],
			[0.1096],
			[0.1645],
			[0.1096]
		],
		[
			[58, 42, 1, 1, 2],
			[59, 5, 0, 3, 4],
			[59, 7, 0, 5, 6],
			[96, 1, 0, 7, 8],
			[58, 18, 1, 9, 10],
			[96, 1, 0, 11, 12],
			[30, 77, 1, 13, 14],
			[42, 0.7903, 0, 15, 16],
			[58, 24, 1, 17, 18],
			[89, 45.41, 0, 19, 20],
			[96, 1, 0, 21, 22],
			[89, 62.41, 0, 23, 24],
			[94, 6.265, 0, 25, 26],
			[89, 43.26, 0, 27, 28],
			[42, 0.8265, 0, 29, 30],
			[58, 18, 1, 31, 32],
			[89, 325.3, 0, 33, 34],
			[59, 3, 0, 35, 36],
			[94, 4.468, 0, 37, 38],
			[38, 0.9257, 0, 39, 40],
			[30, 130, 1, 41, 42],
			[42, 0.7753, 1, 43, 44],
			[52, 2.132, 1, 45, 46],
			[89, 37.38, 0, 47, 48],
			[84, 0.04874, 1, 49, 50],
			[16, 7, 0, 51, 52],
			[35, 0.8841, 0, 53, 54],
			[82, 0.02338, 0, 55, 56],
			[82, 0.05088, 0, 57, 58],
			[28, -0.1944, 0, 59, 60],
			[7, 182.5, 0, 61, 62],
			[-0.0687],
			[-0.05371],
			[-0.07165],
			[-0.06893],
			[-0.06468],
			[-0.03739],
			[0.08143],
			[-0.02894],
			[-0.03306],
			[-0.06219],
			[-0.03306],
			[0.05667],
			[0.04983],
			[-0.04548],
			[0.04388],
			[0.1584],
			[-0.06617],
			[-0.04334],
			[-0.02983],
			[0.04177],
			[-0.02389],
			[0.1424],
			[0.04402],
			[-0.02957],
			[-0.01756],
			[-0.05822],
			[0.1294],
			[8628e-7],
			[0.1049],
			[0.1573],
			[0.09574],
			[6293e-6]
		],
		[
			[59, 7, 0, 1, 2],
			[68, 4902e-6, 0, 3, 4],
			[37, 1.264, 0, 5, 6],
			[89, 35.83, 0, 7, 8],
			[83, 71.61, 1, 9, 10],
			[89, 43.26, 0, 11, 12],
			[89, 51.09, 0, 13, 14],
			[83, 39.56, 1, 15, 16],
			[53, 1.217, 1, 17, 18],
			[53, 1.074, 1, 19, 20],
			[68, 0.01446, 0, 21, 22],
			[83, 39.56, 1, 23, 24],
			[42, 0.88, 0, 25, 26],
			[38, 2.542, 0, 27, 28],
			[24, 0.03509, 1, 29, 30],
			[53, 1.683, 1, 31, 32],
			[21, 8436e-6, 0, 33, 34],
			[59, 4, 0, 35, 36],
			[24, -0.1516, 1, 37, 38],
			[83, 44.01, 1, 39, 40],
			[59, 4, 0, 41, 42],
			[72, 1, 0, 43, 44],
			[83, 198.8, 0, 45, 46],
			[68, 3357e-6, 0, 47, 48],
			[25, 0.03804, 0, 49, 50],
			[68, 0.01968, 0, 51, 52],
			[49, 0.9285, 1, 53, 54],
			[83, 55.01, 1, 55, 56],
			[37, 1.364, 0, 57, 58],
			[68, 0.01396, 0, 59, 60],
			[53, -8.174, 0, 61, 62],
			[-0.0573],
			[-0.01455],
			[0.01774],
			[-0.01431],
			[0.01774],
			[0.06931],
			[0.06931],
			[0.1473],
			[-0.06957],
			[-0.06206],
			[-0.06127],
			[-0.03455],
			[0.055],
			[-0.03455],
			[-0.03455],
			[5139e-6],
			[0.06433],
			[0.04073],
			[0.08794],
			[0.06433],
			[0.1407],
			[0.1125],
			[0.1125],
			[0.08794],
			[-0.03542],
			[-0.0194],
			[-0.0194],
			[-0.0636],
			[0.04073],
			[-8156e-6],
			[-0.0194],
			[0.01529]
		],
		[
			[58, 42, 1, 1, 2],
			[96, 1, 0, 3, 4],
			[48, 0.8613, 0, 5, 6],
			[68, 3657e-6, 0, 7, 8],
			[61, -0.01083, 0, 9, 10],
			[75, 0.1549, 0, 11, 12],
			[96, 1, 0, 13, 14],
			[75, 0.01331, 0, 15, 16],
			[83, 39.56, 1, 17, 18],
			[58, 18, 1, 19, 20],
			[75, 0.03347, 0, 21, 22],
			[85, 2, 0, 23, 24],
			[96, 1, 0, 25, 26],
			[83, 62.42, 1, 27, 28],
			[75, 0.1239, 0, 29, 30],
			[46, 0.8049, 1, 31, 32],
			[48, 0.7735, 0, 33, 34],
			[48, 0.8073, 1, 35, 36],
			[58, 6, 0, 37, 38],
			[48, 0.8833, 0, 39, 40],
			[13, 0.02348, 0, 41, 42],
			[36, 1.262, 1, 43, 44],
			[20, -0.1052, 0, 45, 46],
			[46, 0.8265, 1, 47, 48],
			[82, -0.1204, 0, 49, 50],
			[4, 174.2, 1, 51, 52],
			[85, 1, 0, 53, 54],
			[68, 8086e-7, 0, 55, 56],
			[21, 0.02721, 0, 57, 58],
			[68, 734e-5, 0, 59, 60],
			[85, 1, 0, 61, 62],
			[0.07798],
			[-0.05247],
			[-0.02904],
			[-0.06046],
			[-0.06358],
			[-0.06985],
			[-0.05657],
			[-0.01154],
			[-0.03772],
			[-0.05908],
			[5143e-6],
			[-0.0441],
			[0.148],
			[8851e-6],
			[5143e-6],
			[0.02911],
			[0.1288],
			[0.08026],
			[0.04355],
			[0.04355],
			[0.04355],
			[0.04355],
			[0.04514],
			[0.04355],
			[-9497e-6],
			[-0.06114],
			[0.04355],
			[-9497e-6],
			[0.04355],
			[8121e-6],
			[-0.02954],
			[-0.06861]
		],
		[
			[5, 59.06, 1, 1, 2],
			[9, 0.8132, 0, 3, 4],
			[68, 8895e-6, 0, 5, 6],
			[68, 4632e-6, 0, 7, 8],
			[61, -0.01083, 0, 9, 10],
			[9, 0.473, 0, 11, 12],
			[83, 77.29, 1, 13, 14],
			[5, 46.4, 1, 15, 16],
			[83, 44.01, 1, 17, 18],
			[62, -0.01996, 1, 19, 20],
			[5, 30, 1, 21, 22],
			[9, 0.4448, 0, 23, 24],
			[57, 42, 0, 25, 26],
			[9, 0.6981, 0, 27, 28],
			[57, 60, 0, 29, 30],
			[20, 0.0348, 1, 31, 32],
			[57, 39, 0, 33, 34],
			[5, -47.92, 0, 35, 36],
			[61, -0.01773, 0, 37, 38],
			[93, 18.94, 0, 39, 40],
			[5, 44.1, 1, 41, 42],
			[43, 0.8824, 0, 43, 44],
			[68, 3657e-6, 0, 45, 46],
			[85, 1, 0, 47, 48],
			[75, 0.01219, 0, 49, 50],
			[61, -0.06173, 0, 51, 52],
			[75, 0.1849, 0, 53, 54],
			[93, 27.09, 0, 55, 56],
			[62, -0.01598, 1, 57, 58],
			[62, -7143e-6, 1, 59, 60],
			[9, 0.473, 0, 61, 62],
			[-0.057],
			[0.04551],
			[-0.04254],
			[0.08216],
			[-0.06071],
			[-0.06859],
			[-0.05671],
			[-9801e-6],
			[-0.06699],
			[-0.04994],
			[-0.04865],
			[-8864e-6],
			[6897e-6],
			[-8864e-6],
			[0.1482],
			[0.05355],
			[-0.03275],
			[-0.06711],
			[0.05757],
			[-0.03059],
			[-0.05838],
			[-728e-6],
			[0.1165],
			[0.03817],
			[-0.06405],
			[-0.02614],
			[-0.04388],
			[-2453e-6],
			[-2453e-6],
			[0.01809],
			[0.03824],
			[0.107]
		],
		[
			[60, 5, 1, 1, 2],
			[92, 6.875, 0, 3, 4],
			[59, 0, 0, 5, 6],
			[59, 8, 0, 7, 8],
			[61, -0.0152, 0, 9, 10],
			[58, 54, 1, 11, 12],
			[42, 0.8155, 0, 13, 14],
			[35, 0.8218, 0, 15, 16],
			[38, 0.9596, 0, 17, 18],
			[58, 54, 1, 19, 20],
			[85, 2, 0, 21, 22],
			[60, 8, 0, 23, 24],
			[75, 0.02524, 0, 25, 26],
			[75, 0.1849, 0, 27, 28],
			[92, 6.511, 0, 29, 30],
			[61, -6452e-6, 0, 31, 32],
			[60, -7, 1, 33, 34],
			[75, 0.13, 0, 35, 36],
			[38, 1.512, 0, 37, 38],
			[58, 24, 1, 39, 40],
			[35, 1.227, 0, 41, 42],
			[43, 1.112, 0, 43, 44],
			[7, 564.9, 1, 45, 46],
			[22, 0.04376, 0, 47, 48],
			[6, 627.9, 1, 49, 50],
			[21, 0.02074, 1, 51, 52],
			[83, 97.92, 1, 53, 54],
			[21, 0.02381, 1, 55, 56],
			[59, 11, 1, 57, 58],
			[59, 10, 0, 59, 60],
			[58, 174, 1, 61, 62],
			[-0.06059],
			[-0.03675],
			[-0.05058],
			[-0.068],
			[-0.03675],
			[-0.04979],
			[-0.03675],
			[-0.06201],
			[-0.03675],
			[-0.02723],
			[0.02183],
			[-0.03675],
			[0.1207],
			[0.06117],
			[0.02183],
			[0.02183],
			[-0.05927],
			[0.04925],
			[-0.06709],
			[7165e-6],
			[0.1207],
			[-0.03391],
			[-0.04576],
			[0.06659],
			[0.1173],
			[0.06649],
			[0.06649],
			[0.06649],
			[-0.04649],
			[0.02403],
			[0.06649],
			[0.02403]
		],
		[
			[60, 5, 1, 1, 2],
			[58, 42, 1, 3, 4],
			[25, -0.2067, 0, 5, 6],
			[61, -7578e-6, 0, 7, 8],
			[9, 0.473, 0, 9, 10],
			[58, 90, 1, 11, 12],
			[8, 39.1, 0, 13, 14],
			[12, 4.099, 0, 15, 16],
			[8, 25.09, 0, 17, 18],
			[49, 0.902, 0, 19, 20],
			[12, 4.099, 0, 21, 22],
			[20, 1e9, 0, 23, 24],
			[8, 100.1, 0, 25, 26],
			[61, -0.01016, 0, 27, 28],
			[9, 0.473, 0, 29, 30],
			[42, 0.6889, 0, 31, 32],
			[61, -0.02141, 0, 33, 34],
			[20, 0.05716, 1, 35, 36],
			[75, 0.01111, 0, 37, 38],
			[9, 0.4448, 0, 39, 40],
			[37, 0.8611, 0, 41, 42],
			[94, 1.504, 0, 43, 44],
			[16, 5, 0, 45, 46],
			[16, 7, 0, 47, 48],
			[27, 8167e-6, 1, 49, 50],
			[8, 67.11, 0, 51, 52],
			[21, 0.02074, 0, 53, 54],
			[61, -0.01773, 0, 55, 56],
			[12, 3.836, 0, 57, 58],
			[16, 8, 0, 59, 60],
			[67, -0.2528, 1, 61, 62],
			[-0.06149],
			[-0.06842],
			[-0.0591],
			[-0.05519],
			[-0.05519],
			[-0.02576],
			[0.09864],
			[-0.02576],
			[-0.04928],
			[7735e-6],
			[-0.05357],
			[-0.0679],
			[0.0291],
			[-0.04919],
			[0.0291],
			[0.124],
			[-0.0693],
			[-0.05071],
			[-0.04832],
			[0.06809],
			[-0.06375],
			[-0.02624],
			[0.0786],
			[-0.01398],
			[-0.051],
			[-0.01742],
			[0.01584],
			[0.03444],
			[0.03444],
			[0.03444],
			[0.03444],
			[0.09798]
		],
		[
			[60, 5, 1, 1, 2],
			[58, 42, 1, 3, 4],
			[87, 0.1451, 0, 5, 6],
			[36, 0.85, 0, 7, 8],
			[9, 0.473, 0, 9, 10],
			[8, 39.1, 0, 11, 12],
			[89, 240.8, 0, 13, 14],
			[60, 3, 1, 15, 16],
			[96, 1, 0, 17, 18],
			[36, 0.7895, 0, 19, 20],
			[96, 1, 0, 21, 22],
			[13, 0.01664, 0, 23, 24],
			[9, 0.4642, 0, 25, 26],
			[83, 97.92, 1, 27, 28],
			[87, 1702e-7, 1, 29, 30],
			[58, 24, 1, 31, 32],
			[13, 0.01999, 0, 33, 34],
			[83, 353, 1, 35, 36],
			[60, 3, 1, 37, 38],
			[9, 0.4353, 0, 39, 40],
			[87, 0.1451, 1, 41, 42],
			[87, 0.05114, 0, 43, 44],
			[75, 0.1549, 0, 45, 46],
			[87, 0.0101, 0, 47, 48],
			[96, 2, 0, 49, 50],
			[75, 0.13, 0, 51, 52],
			[13, 0.02754, 0, 53, 54],
			[50, 0.7879, 1, 55, 56],
			[50, 0.04831, 1, 57, 58],
			[58, 234, 1, 59, 60],
			[9, 0.4172, 0, 61, 62],
			[-0.05525],
			[-0.02178],
			[0.06433],
			[-0.03961],
			[-0.06626],
			[-0.05525],
			[-0.06004],
			[-0.05525],
			[-0.04799],
			[0.01587],
			[-0.06449],
			[-0.04948],
			[-0.05073],
			[0.02973],
			[0.09728],
			[-0.04077],
			[0.03124],
			[-2012e-6],
			[-0.04363],
			[-2262e-6],
			[0.03124],
			[0.03124],
			[0.09483],
			[0.03737],
			[-0.06744],
			[-0.04595],
			[-0.04203],
			[-0.01013],
			[-0.01013],
			[0.04219],
			[-149e-5],
			[0.1089]
		],
		[
			[60, 5, 1, 1, 2],
			[58, 42, 1, 3, 4],
			[25, -0.2067, 0, 5, 6],
			[68, 4185e-6, 0, 7, 8],
			[75, 0.01758, 0, 9, 10],
			[58, 90, 1, 11, 12],
			[58, 24, 0, 13, 14],
			[60, 3, 1, 15, 16],
			[83, 44.01, 1, 17, 18],
			[25, 0.02909, 0, 19, 20],
			[68, 4412e-6, 0, 21, 22],
			[16, 1, 0, 23, 24],
			[83, 90.71, 1, 25, 26],
			[67, -0.08325, 1, 27, 28],
			[42, 0.8036, 0, 29, 30],
			[43, 0.782, 0, 31, 32],
			[23, 0.04826, 0, 33, 34],
			[42, 0.6889, 1, 35, 36],
			[60, 4, 1, 37, 38],
			[68, 734e-5, 0, 39, 40],
			[89, 121.9, 0, 41, 42],
			[5, 17.82, 1, 43, 44],
			[83, 46.49, 1, 45, 46],
			[56, 101.3, 0, 47, 48],
			[68, 3003e-6, 0, 49, 50],
			[89, 137.9, 0, 51, 52],
			[21, 0.042, 1, 53, 54],
			[10, 38.49, 0, 55, 56],
			[83, 44.01, 1, 57, 58],
			[31, 0.4185, 0, 59, 60],
			[41, 1.107, 0, 61, 62],
			[-0.01268],
			[-0.05463],
			[-0.02338],
			[0.08223],
			[-0.06099],
			[-0.06734],
			[-0.05383],
			[0.05025],
			[0.1023],
			[-6917e-6],
			[-0.06213],
			[-0.0103],
			[-0.05308],
			[0.03569],
			[-0.05781],
			[-1734e-6],
			[-0.06854],
			[-9528e-6],
			[0.02143],
			[-0.054],
			[-0.04819],
			[0.01977],
			[0.09488],
			[0.01977],
			[-0.05589],
			[-0.02525],
			[5247e-6],
			[0.09938],
			[0.05786],
			[0.09538],
			[-8045e-6],
			[0.05277]
		],
		[
			[8, 42.59, 0, 1, 2],
			[8, 30.59, 0, 3, 4],
			[31, 0.5101, 1, 5, 6],
			[36, 0.8656, 0, 7, 8],
			[13, 0.01883, 0, 9, 10],
			[89, 43.26, 0, 11, 12],
			[63, -0.02692, 1, 13, 14],
			[72, 1, 0, 15, 16],
			[37, 0.8269, 0, 17, 18],
			[72, 0, 0, 19, 20],
			[36, 0.8656, 1, 21, 22],
			[2, 64.99, 1, 23, 24],
			[24, 0.04702, 0, 25, 26],
			[89, 161.5, 0, 27, 28],
			[72, 1, 0, 29, 30],
			[46, 0.75, 0, 31, 32],
			[25, 0.142, 1, 33, 34],
			[13, 0.01493, 0, 35, 36],
			[90, 0, 0, 37, 38],
			[53, -6.268, 1, 39, 40],
			[24, -0.0167, 1, 41, 42],
			[63, -0.01414, 1, 43, 44],
			[37, 0.7614, 0, 45, 46],
			[83, 46.49, 1, 47, 48],
			[56, 72.54, 0, 49, 50],
			[56, 73.27, 0, 51, 52],
			[83, 275.2, 1, 53, 54],
			[13, 0.02849, 0, 55, 56],
			[63, -0.1002, 1, 57, 58],
			[46, 0.8049, 1, 59, 60],
			[25, -0.05397, 1, 61, 62],
			[-0.04351],
			[-0.05502],
			[-0.05502],
			[-0.04351],
			[-0.05502],
			[-0.05677],
			[-0.0663],
			[-0.05974],
			[-0.02503],
			[-6555e-6],
			[-0.02503],
			[-6555e-6],
			[-0.03427],
			[-0.02503],
			[-0.03427],
			[-0.04351],
			[-6555e-6],
			[-6555e-6],
			[-6555e-6],
			[-6555e-6],
			[-6555e-6],
			[0.04991],
			[-6555e-6],
			[6292e-6],
			[-6555e-6],
			[-6555e-6],
			[0.01192],
			[0.0304],
			[0.08948],
			[0.0304],
			[0.0304],
			[0.0304]
		],
		[
			[60, 4, 1, 1, 2],
			[68, 4632e-6, 0, 3, 4],
			[25, -0.2067, 0, 5, 6],
			[7, 46.75, 1, 7, 8],
			[83, 62.42, 1, 9, 10],
			[83, 90.71, 1, 11, 12],
			[68, 8244e-6, 0, 13, 14],
			[20, 0.0348, 1, 15, 16],
			[9, 0.4448, 0, 17, 18],
			[36, 0.8307, 0, 19, 20],
			[43, 0.8266, 0, 21, 22],
			[68, 2258e-6, 0, 23, 24],
			[65, -0.224, 0, 25, 26],
			[9, 0.4547, 0, 27, 28],
			[83, 44.01, 1, 29, 30],
			[36, 0.6968, 0, 31, 32],
			[7, 21.57, 0, 33, 34],
			[0, -122.6, 0, 35, 36],
			[36, 0.9091, 0, 37, 38],
			[8, 26.09, 0, 39, 40],
			[89, 137.9, 0, 41, 42],
			[68, 0.01348, 0, 43, 44],
			[22, 0.02064, 0, 45, 46],
			[16, 1, 0, 47, 48],
			[8, 148.8, 0, 49, 50],
			[16, 18, 0, 51, 52],
			[9, 0.5068, 0, 53, 54],
			[31, 0.662, 0, 55, 56],
			[65, -0.224, 1, 57, 58],
			[89, 96.62, 0, 59, 60],
			[65, -0.1887, 0, 61, 62],
			[-15e-4],
			[-0.05619],
			[0.2483],
			[-0.0467],
			[0.05784],
			[-0.06152],
			[0.09743],
			[0.01091],
			[-0.05723],
			[-0.04409],
			[-0.06556],
			[-0.05723],
			[0.04651],
			[-0.01498],
			[-0.02759],
			[-0.04409],
			[-0.03325],
			[-0.02282],
			[-0.06161],
			[-0.02282],
			[-0.02282],
			[0.02246],
			[-0.01619],
			[0.07517],
			[-0.06445],
			[-0.01024],
			[-0.02337],
			[0.08129],
			[-0.04159],
			[0.02367],
			[0.02367],
			[0.07987]
		],
		[
			[92, 6.511, 0, 1, 2],
			[23, 0.08997, 1, 3, 4],
			[61, -0.0268, 0, 5, 6],
			[68, 3357e-6, 0, 7, 8],
			[61, -0.02047, 0, 9, 10],
			[57, 57, 1, 11, 12],
			[42, 0.8373, 0, 13, 14],
			[23, 0.05031, 1, 15, 16],
			[48, 0.6897, 0, 17, 18],
			[83, 71.61, 1, 19, 20],
			[31, 0.5556, 1, 21, 22],
			[92, 11.56, 0, 23, 24],
			[83, 97.92, 1, 25, 26],
			[72, 1, 0, 27, 28],
			[4, 200.1, 0, 29, 30],
			[36, 0.6968, 0, 31, 32],
			[55, 75, 1, 33, 34],
			[81, -7929e-6, 0, 35, 36],
			[22, -0.05716, 1, 37, 38],
			[31, 1.102, 1, 39, 40],
			[61, -0.04614, 0, 41, 42],
			[4, 42.33, 1, 43, 44],
			[55, 66, 1, 45, 46],
			[57, 33, 0, 47, 48],
			[61, -0.07988, 0, 49, 50],
			[48, 0.8073, 0, 51, 52],
			[36, 1.816, 0, 53, 54],
			[85, 2, 0, 55, 56],
			[83, 83.72, 1, 57, 58],
			[23, 0.0698, 0, 59, 60],
			[47, 2.04, 1, 61, 62],
			[4003e-6],
			[-0.05162],
			[-0.03714],
			[4003e-6],
			[-0.02216],
			[-0.05356],
			[-0.05573],
			[-0.0654],
			[-0.05472],
			[-0.03249],
			[-0.03197],
			[-0.01748],
			[-0.01748],
			[-0.01748],
			[-0.01255],
			[4003e-6],
			[4003e-6],
			[4003e-6],
			[4003e-6],
			[5406e-6],
			[0.0176],
			[0.011],
			[0.03739],
			[0.02419],
			[0.09122],
			[0.06058],
			[0.06058],
			[0.06058],
			[0.03739],
			[0.05357],
			[0.03739],
			[0.04455]
		],
		[
			[60, 4, 1, 1, 2],
			[24, 0.05307, 0, 3, 4],
			[59, 5, 0, 5, 6],
			[36, 0.8307, 0, 7, 8],
			[9, 0.473, 0, 9, 10],
			[24, -0.0167, 1, 11, 12],
			[42, 0.7753, 0, 13, 14],
			[61, -6452e-6, 0, 15, 16],
			[61, -7578e-6, 0, 17, 18],
			[36, 0.7327, 0, 19, 20],
			[61, -0.02564, 0, 21, 22],
			[83, 83.72, 1, 23, 24],
			[61, -0.02047, 0, 25, 26],
			[30, 69, 0, 27, 28],
			[49, 0.8912, 1, 29, 30],
			[59, 5, 0, 31, 32],
			[23, 0.03585, 0, 33, 34],
			[93, 18.94, 0, 35, 36],
			[12, 3.836, 0, 37, 38],
			[9, 0.4448, 0, 39, 40],
			[59, -3, 0, 41, 42],
			[59, 4, 1, 43, 44],
			[25, 0.03285, 0, 45, 46],
			[50, 0.5231, 1, 47, 48],
			[24, -2, 1, 49, 50],
			[83, 71.61, 1, 51, 52],
			[9, 0.4547, 0, 53, 54],
			[83, 37.83, 1, 55, 56],
			[21, 0.02074, 1, 57, 58],
			[28, -0.1565, 0, 59, 60],
			[59, 28, 0, 61, 62],
			[-0.05106],
			[-0.02216],
			[-0.02022],
			[0.08939],
			[-0.06515],
			[-0.05762],
			[-0.05693],
			[-0.05106],
			[-0.04515],
			[0.04051],
			[-0.04644],
			[-0.06104],
			[-0.05948],
			[-0.02167],
			[0.08921],
			[7394e-6],
			[-0.06491],
			[-0.04029],
			[-0.0253],
			[0.04449],
			[-0.04769],
			[0.0139],
			[0.0139],
			[0.07784],
			[0.05062],
			[0.05062],
			[0.08752],
			[0.05062],
			[0.02412],
			[0.05062],
			[0.0114],
			[-0.04865]
		],
		[
			[60, 4, 1, 1, 2],
			[59, 6, 0, 3, 4],
			[59, 5, 0, 5, 6],
			[92, 10.5, 0, 7, 8],
			[53, -0.3572, 1, 9, 10],
			[92, 6.875, 0, 11, 12],
			[46, 0.8265, 0, 13, 14],
			[46, 0.7786, 0, 15, 16],
			[59, 3, 0, 17, 18],
			[60, 0, 1, 19, 20],
			[92, 4.089, 0, 21, 22],
			[25, -0.2067, 0, 23, 24],
			[24, -0.07587, 1, 25, 26],
			[47, 0.3054, 0, 27, 28],
			[59, 28, 1, 29, 30],
			[30, 130, 0, 31, 32],
			[60, -7, 0, 33, 34],
			[35, 0.8397, 1, 35, 36],
			[43, 0.9016, 0, 37, 38],
			[75, 0.01111, 0, 39, 40],
			[92, 6.511, 0, 41, 42],
			[75, 0.1371, 0, 43, 44],
			[25, 0.02909, 0, 45, 46],
			[89, 325.3, 0, 47, 48],
			[48, 0.8486, 0, 49, 50],
			[3, 161.8, 1, 51, 52],
			[9, 0.4547, 0, 53, 54],
			[9, 0.7854, 0, 55, 56],
			[9, 0.5848, 0, 57, 58],
			[59, 9, 0, 59, 60],
			[53, 2.589, 0, 61, 62],
			[-0.06023],
			[-0.04698],
			[-0.06023],
			[-0.0658],
			[-7774e-6],
			[-0.04497],
			[0.1173],
			[-0.0373],
			[-0.03355],
			[-0.05946],
			[-0.04653],
			[-0.01289],
			[7136e-6],
			[-0.01289],
			[0.09143],
			[0.02877],
			[-0.06551],
			[-8532e-6],
			[-0.01688],
			[-0.05785],
			[-8532e-6],
			[-1772e-7],
			[-8532e-6],
			[0.07532],
			[0.04342],
			[0.04342],
			[0.04342],
			[0.08474],
			[-0.01222],
			[0.04342],
			[-0.06777],
			[0.02353]
		],
		[
			[58, 36, 1, 1, 2],
			[59, 5, 0, 3, 4],
			[92, 3.397, 0, 5, 6],
			[68, 4632e-6, 0, 7, 8],
			[48, 0.8366, 0, 9, 10],
			[59, 9, 0, 11, 12],
			[68, 0.0112, 0, 13, 14],
			[93, 10.35, 0, 15, 16],
			[92, 10.5, 0, 17, 18],
			[92, 6.137, 0, 19, 20],
			[92, 6.875, 0, 21, 22],
			[11, 2, 0, 23, 24],
			[48, 0.9924, 0, 25, 26],
			[42, 0.8265, 0, 27, 28],
			[92, 7.423, 0, 29, 30],
			[92, 7, 0, 31, 32],
			[59, 1, 0, 33, 34],
			[48, 0.8486, 0, 35, 36],
			[59, 2, 0, 37, 38],
			[68, 3357e-6, 0, 39, 40],
			[19, -0.4305, 0, 41, 42],
			[59, 16, 1, 43, 44],
			[58, -30, 0, 45, 46],
			[48, 0.8073, 0, 47, 48],
			[21, 1e9, 0, 49, 50],
			[55, 49, 1, 51, 52],
			[54, 73, 1, 53, 54],
			[48, 2.08, 0, 55, 56],
			[49, 0.9285, 1, 57, 58],
			[59, 12, 1, 59, 60],
			[21, 0.042, 0, 61, 62],
			[-0.05929],
			[1406e-6],
			[-0.04502],
			[0.02262],
			[-0.06035],
			[-0.06572],
			[-0.05294],
			[8909e-6],
			[0.03154],
			[-7772e-6],
			[0.03272],
			[0.09175],
			[-0.0555],
			[-0.032],
			[-0.03165],
			[-7772e-6],
			[0.01359],
			[-0.04876],
			[-0.05883],
			[0.01359],
			[-907e-5],
			[0.01359],
			[-0.04866],
			[-907e-5],
			[0.07796],
			[0.0461],
			[0.0461],
			[0.01359],
			[0.01359],
			[0.01359],
			[0.04885],
			[0.02389]
		],
		[
			[58, 36, 1, 1, 2],
			[96, 1, 0, 3, 4],
			[36, 0.8803, 0, 5, 6],
			[89, 39.14, 0, 7, 8],
			[61, -0.02244, 0, 9, 10],
			[3, 27.52, 1, 11, 12],
			[89, 54.43, 0, 13, 14],
			[61, -6452e-6, 0, 15, 16],
			[61, -0.0122, 0, 17, 18],
			[82, 0.02032, 0, 19, 20],
			[20, -0.05332, 1, 21, 22],
			[96, 1, 0, 23, 24],
			[25, -0.1411, 0, 25, 26],
			[96, 1, 0, 27, 28],
			[7, 198.7, 0, 29, 30],
			[82, -0.3115, 0, 31, 32],
			[26, 1e9, 0, 33, 34],
			[69, 3.03, 0, 35, 36],
			[58, 0, 0, 37, 38],
			[62, -0.03825, 0, 39, 40],
			[96, 3, 0, 41, 42],
			[36, 0.9091, 0, 43, 44],
			[67, -0.1167, 0, 45, 46],
			[55, 73, 1, 47, 48],
			[61, -0.01954, 0, 49, 50],
			[67, -0.06714, 0, 51, 52],
			[25, 0.0533, 1, 53, 54],
			[20, 1e9, 0, 55, 56],
			[36, 1.816, 0, 57, 58],
			[50, 0.8941, 1, 59, 60],
			[50, 0.8538, 1, 61, 62],
			[-0.05636],
			[-0.06272],
			[-0.05267],
			[-0.05031],
			[-0.0252],
			[-0.05031],
			[-0.01927],
			[0.04402],
			[-0.04996],
			[-0.01471],
			[-0.05492],
			[-0.01487],
			[0.01446],
			[-0.01122],
			[-0.01122],
			[0.07314],
			[0.02907],
			[0.02907],
			[0.02907],
			[0.06753],
			[0.02907],
			[0.02907],
			[0.07683],
			[0.02907],
			[-0.05586],
			[-1859e-6],
			[-1859e-6],
			[-0.04773],
			[0.02907],
			[0.02907],
			[0.02029],
			[-1859e-6]
		],
		[
			[60, 4, 1, 1, 2],
			[58, 42, 1, 3, 4],
			[87, 0.1451, 0, 5, 6],
			[48, 0.8216, 0, 7, 8],
			[92, 5.819, 0, 9, 10],
			[13, 0.025, 0, 11, 12],
			[92, 21.94, 0, 13, 14],
			[92, 10.5, 0, 15, 16],
			[46, 0.8049, 1, 17, 18],
			[9, 0.9769, 0, 19, 20],
			[9, 0.4448, 0, 21, 22],
			[9, 0.4642, 0, 23, 24],
			[60, 9, 0, 25, 26],
			[3, 177.2, 1, 27, 28],
			[3, 263.7, 1, 29, 30],
			[62, -7143e-6, 1, 31, 32],
			[58, 0, 1, 33, 34],
			[58, 12, 1, 35, 36],
			[83, 275.2, 1, 37, 38],
			[92, 2.965, 0, 39, 40],
			[55, 75, 1, 41, 42],
			[82, -0.1113, 0, 43, 44],
			[13, 0.02599, 0, 45, 46],
			[30, 135, 1, 47, 48],
			[46, 0.8265, 0, 49, 50],
			[73, 1e9, 0, 51, 52],
			[9, 0.5426, 0, 53, 54],
			[82, -0.2656, 0, 55, 56],
			[56, 88.11, 0, 57, 58],
			[46, 0.8361, 0, 59, 60],
			[67, -0.4987, 0, 61, 62],
			[-0.05062],
			[-0.03187],
			[-0.02127],
			[0.07218],
			[-0.05703],
			[-0.05062],
			[-0.06461],
			[-0.05945],
			[-0.05882],
			[-0.02907],
			[-0.0606],
			[-6004e-6],
			[0.02274],
			[-6004e-6],
			[0.07805],
			[-6004e-6],
			[0.02731],
			[0.02731],
			[0.0722],
			[0.02731],
			[-0.05233],
			[0.02731],
			[-0.02959],
			[0.02731],
			[-0.01703],
			[-0.06227],
			[-0.03864],
			[-8726e-6],
			[0.01249],
			[-8726e-6],
			[-8726e-6],
			[0.07932]
		],
		[
			[60, 4, 1, 1, 2],
			[68, 4632e-6, 0, 3, 4],
			[24, -0.1516, 1, 5, 6],
			[24, 0.02714, 1, 7, 8],
			[12, 4.099, 0, 9, 10],
			[56, 88.11, 0, 11, 12],
			[46, 0.8049, 0, 13, 14],
			[46, 0.75, 1, 15, 16],
			[85, 2, 0, 17, 18],
			[82, -5696e-6, 0, 19, 20],
			[18, 5, 1, 21, 22],
			[82, -0.1867, 0, 23, 24],
			[12, 7.044, 0, 25, 26],
			[31, 0.5556, 0, 27, 28],
			[49, 0.8658, 1, 29, 30],
			[31, 0.7194, 1, 31, 32],
			[60, 3, 1, 33, 34],
			[37, 0.9712, 0, 35, 36],
			[60, -3, 0, 37, 38],
			[24, 0.04239, 1, 39, 40],
			[24, 0.09672, 1, 41, 42],
			[82, -0.3115, 0, 43, 44],
			[62, -0.02319, 1, 45, 46],
			[67, -0.4987, 0, 47, 48],
			[2, 474.2, 1, 49, 50],
			[87, 0.02075, 0, 51, 52],
			[46, 0.7011, 0, 53, 54],
			[82, 0.05088, 0, 55, 56],
			[68, 0.01205, 0, 57, 58],
			[2, 337.7, 0, 59, 60],
			[12, 3.617, 0, 61, 62],
			[-0.0295],
			[0.02165],
			[-0.05431],
			[-0.0295],
			[0.08353],
			[3777e-8],
			[-3557e-6],
			[-0.06632],
			[-0.05631],
			[-0.04746],
			[-0.06388],
			[-0.04746],
			[0.01084],
			[-0.04746],
			[-0.04332],
			[0.01836],
			[-0.04567],
			[0.06564],
			[-0.05587],
			[144e-5],
			[0.01368],
			[-0.04428],
			[0.07071],
			[0.01452],
			[0.04765],
			[0.02857],
			[0.0732],
			[0.02857],
			[0.02857],
			[5834e-6],
			[-0.04812],
			[1675e-6]
		],
		[
			[58, 30, 0, 1, 2],
			[96, 1, 0, 3, 4],
			[75, 0.1549, 0, 5, 6],
			[83, 39.56, 1, 7, 8],
			[61, -0.01608, 0, 9, 10],
			[95, 47.03, 0, 11, 12],
			[83, 90.71, 1, 13, 14],
			[68, 3657e-6, 0, 15, 16],
			[58, 6, 0, 17, 18],
			[83, 44.01, 1, 19, 20],
			[20, -0.08593, 1, 21, 22],
			[68, 3657e-6, 0, 23, 24],
			[68, 0.01163, 0, 25, 26],
			[30, 135, 1, 27, 28],
			[80, 3, 0, 29, 30],
			[75, 0.145, 0, 31, 32],
			[22, -0.3116, 1, 33, 34],
			[8, 83.62, 0, 35, 36],
			[68, 8547e-6, 0, 37, 38],
			[22, 0.01444, 0, 39, 40],
			[61, -0.02928, 0, 41, 42],
			[37, 0.8611, 0, 43, 44],
			[7, 110.8, 0, 45, 46],
			[95, 30.5, 0, 47, 48],
			[83, 26.42, 1, 49, 50],
			[44, 0.264, 0, 51, 52],
			[83, 66.87, 1, 53, 54],
			[2, 150.6, 1, 55, 56],
			[96, 2, 0, 57, 58],
			[11, 2, 0, 59, 60],
			[95, 568.1, 0, 61, 62],
			[-0.04516],
			[-0.06395],
			[-0.04516],
			[-0.06155],
			[-0.04516],
			[-0.0153],
			[0.05627],
			[-0.02049],
			[-0.03948],
			[-0.05779],
			[-0.0308],
			[-9039e-6],
			[0.0143],
			[-9039e-6],
			[0.07877],
			[-9039e-6],
			[-0.04747],
			[1649e-6],
			[-0.05953],
			[-0.02312],
			[0.01891],
			[0.06421],
			[1649e-6],
			[0.04891],
			[-0.06743],
			[-0.04419],
			[-0.03185],
			[-0.01302],
			[0.07289],
			[0.01134],
			[-0.01302],
			[0.01134]
		],
		[
			[59, 6, 0, 1, 2],
			[92, 6.875, 0, 3, 4],
			[53, -1.401, 1, 5, 6],
			[53, 1.074, 1, 7, 8],
			[58, 18, 1, 9, 10],
			[9, 0.6478, 0, 11, 12],
			[42, 0.7445, 0, 13, 14],
			[12, 4.364, 0, 15, 16],
			[59, 2, 0, 17, 18],
			[59, 4, 0, 19, 20],
			[9, 0.4448, 0, 21, 22],
			[53, -8.174, 1, 23, 24],
			[8, 47.06, 0, 25, 26],
			[76, 0.2039, 0, 27, 28],
			[49, 0.9285, 1, 29, 30],
			[10, 284.2, 0, 31, 32],
			[59, -3, 0, 33, 34],
			[58, 24, 1, 35, 36],
			[92, 3.397, 0, 37, 38],
			[59, 2, 0, 39, 40],
			[65, 0.07645, 0, 41, 42],
			[53, 5.624, 1, 43, 44],
			[17, 3, 0, 45, 46],
			[65, 0.09267, 0, 47, 48],
			[9, 0.473, 0, 49, 50],
			[8, 39.1, 0, 51, 52],
			[59, 35, 0, 53, 54],
			[25, 0.0533, 1, 55, 56],
			[30, 139, 0, 57, 58],
			[8, 27.15, 0, 59, 60],
			[58, 198, 1, 61, 62],
			[-0.06165],
			[-0.0566],
			[-0.05167],
			[-0.0537],
			[-0.05167],
			[-0.03791],
			[-0.03424],
			[-0.02671],
			[-0.02671],
			[-0.02671],
			[0.0818],
			[-0.02671],
			[-0.02671],
			[-0.01401],
			[-0.01779],
			[0.06878],
			[-0.03517],
			[-0.05741],
			[-0.03517],
			[8957e-6],
			[-0.05036],
			[-0.01359],
			[0.01343],
			[-8977e-6],
			[0.07097],
			[0.03705],
			[0.03705],
			[0.03705],
			[0.02524],
			[0.03705],
			[0.01343],
			[0.01343]
		],
		[
			[60, 4, 1, 1, 2],
			[68, 4632e-6, 0, 3, 4],
			[72, 1, 0, 5, 6],
			[92, 3.226, 0, 7, 8],
			[92, 10.5, 0, 9, 10],
			[68, 0.01205, 0, 11, 12],
			[92, 11, 0, 13, 14],
			[48, 0.7735, 0, 15, 16],
			[58, 6, 1, 17, 18],
			[48, 0.6897, 0, 19, 20],
			[48, 0.8486, 0, 21, 22],
			[42, 0.7445, 1, 23, 24],
			[81, 0.08054, 0, 25, 26],
			[75, 0.02524, 0, 27, 28],
			[67, -0.08325, 0, 29, 30],
			[75, 0.1371, 0, 31, 32],
			[93, 11.3, 0, 33, 34],
			[42, 0.7445, 0, 35, 36],
			[9, 0.4448, 0, 37, 38],
			[92, 4.714, 0, 39, 40],
			[23, 0.09982, 0, 41, 42],
			[61, -0.06173, 0, 43, 44],
			[60, 0, 1, 45, 46],
			[75, 0.1683, 0, 47, 48],
			[58, 198, 1, 49, 50],
			[93, 13.36, 0, 51, 52],
			[92, 11.56, 0, 53, 54],
			[23, 0.1427, 0, 55, 56],
			[6, 145.9, 1, 57, 58],
			[58, 132, 1, 59, 60],
			[41, 0.6463, 1, 61, 62],
			[-457e-5],
			[-0.0272],
			[-0.05367],
			[-0.0272],
			[-457e-5],
			[-457e-5],
			[-457e-5],
			[0.0731],
			[-0.04927],
			[-0.03699],
			[-0.06155],
			[-0.05048],
			[-4175e-6],
			[0.06081],
			[-0.03699],
			[-0.01237],
			[0.06672],
			[0.03794],
			[0.02949],
			[-0.04679],
			[-963e-5],
			[0.0573],
			[-0.05109],
			[0.02108],
			[-0.05441],
			[-0.02821],
			[-0.06411],
			[-0.04473],
			[-0.02821],
			[0.01678],
			[-0.02821],
			[0.04493]
		],
		[
			[58, 24, 0, 1, 2],
			[96, 1, 0, 3, 4],
			[9, 0.4827, 0, 5, 6],
			[12, 3.617, 0, 7, 8],
			[9, 0.6981, 0, 9, 10],
			[9, 0.4448, 0, 11, 12],
			[12, 3.617, 0, 13, 14],
			[22, -0.06573, 1, 15, 16],
			[65, -0.161, 1, 17, 18],
			[96, 2, 0, 19, 20],
			[63, -0.03999, 1, 21, 22],
			[22, -0.03668, 0, 23, 24],
			[12, 4.364, 0, 25, 26],
			[73, 1e9, 0, 27, 28],
			[16, 4, 0, 29, 30],
			[23, 0.08997, 0, 31, 32],
			[83, 30.02, 1, 33, 34],
			[3, 370.2, 1, 35, 36],
			[9, 0.5848, 0, 37, 38],
			[58, -6, 0, 39, 40],
			[41, 1.107, 0, 41, 42],
			[24, 0.06025, 1, 43, 44],
			[24, -0.1019, 0, 45, 46],
			[88, 0.01464, 0, 47, 48],
			[35, 0.8397, 0, 49, 50],
			[94, 21.2, 0, 51, 52],
			[16, 8, 0, 53, 54],
			[96, 1, 0, 55, 56],
			[5, 32.98, 1, 57, 58],
			[89, 87.85, 0, 59, 60],
			[58, 174, 0, 61, 62],
			[-0.04926],
			[-0.04775],
			[-0.06261],
			[-0.04775],
			[-0.04775],
			[0.03043],
			[-0.04738],
			[5808e-6],
			[-0.05308],
			[-0.02424],
			[0.0184],
			[-0.03492],
			[-0.05216],
			[-0.01521],
			[-0.01521],
			[0.03442],
			[3339e-6],
			[-0.04371],
			[-0.04395],
			[-0.06205],
			[-0.0589],
			[-0.02518],
			[-0.02518],
			[0.04797],
			[-0.04305],
			[0.01498],
			[-0.02383],
			[0.02163],
			[0.02163],
			[0.03203],
			[0.06841],
			[0.02798]
		],
		[
			[59, 6, 0, 1, 2],
			[12, 4.099, 0, 3, 4],
			[53, 0.4134, 1, 5, 6],
			[48, 0.7735, 0, 7, 8],
			[58, 6, 1, 9, 10],
			[53, -6.268, 0, 11, 12],
			[46, 0.75, 1, 13, 14],
			[59, 2, 0, 15, 16],
			[35, 0.7409, 0, 17, 18],
			[59, 2, 0, 19, 20],
			[18, 5, 0, 21, 22],
			[59, 16, 1, 23, 24],
			[46, 0.8049, 0, 25, 26],
			[76, 0.2416, 0, 27, 28],
			[59, 28, 1, 29, 30],
			[20, 0.07871, 1, 31, 32],
			[12, 2.287, 0, 33, 34],
			[48, 1.083, 0, 35, 36],
			[62, -448e-5, 1, 37, 38],
			[5, 303.3, 1, 39, 40],
			[18, 18, 0, 41, 42],
			[82, 6755e-6, 0, 43, 44],
			[24, 0.05307, 0, 45, 46],
			[18, 1, 0, 47, 48],
			[2, 124.7, 1, 49, 50],
			[18, 6, 0, 51, 52],
			[58, 198, 0, 53, 54],
			[47, 0.3054, 0, 55, 56],
			[82, -0.1204, 0, 57, 58],
			[12, 3.234, 0, 59, 60],
			[53, 2.589, 0, 61, 62],
			[-0.04635],
			[-0.03132],
			[-0.03132],
			[-0.03132],
			[-0.04635],
			[-0.0557],
			[-0.06288],
			[-0.05362],
			[-0.03132],
			[-0.02466],
			[-0.03132],
			[0.04027],
			[-4087e-6],
			[-0.03132],
			[0.04005],
			[-0.02767],
			[-0.05933],
			[-0.03264],
			[-0.04386],
			[-0.01047],
			[5965e-6],
			[0.0224],
			[-5241e-6],
			[-0.01047],
			[0.04187],
			[0.07113],
			[0.05289],
			[0.04187],
			[0.0224],
			[0.04187],
			[0.0224],
			[0.0224]
		],
		[
			[59, 5, 0, 1, 2],
			[92, 6.875, 0, 3, 4],
			[30, 92, 1, 5, 6],
			[48, 0.7735, 0, 7, 8],
			[48, 0.872, 0, 9, 10],
			[9, 0.6981, 0, 11, 12],
			[49, 0.8658, 0, 13, 14],
			[72, 1, 0, 15, 16],
			[34, 0.7949, 0, 17, 18],
			[59, 0, 0, 19, 20],
			[9, 0.473, 0, 21, 22],
			[83, 83.72, 1, 23, 24],
			[83, 44.01, 1, 25, 26],
			[9, 0.4448, 0, 27, 28],
			[23, 0.06699, 0, 29, 30],
			[92, 3.397, 0, 31, 32],
			[8, 239.4, 0, 33, 34],
			[30, 163, 0, 35, 36],
			[24, 0.1893, 1, 37, 38],
			[9, 0.634, 0, 39, 40],
			[9, 0.4353, 0, 41, 42],
			[83, 230.4, 1, 43, 44],
			[9, 0.7383, 0, 45, 46],
			[49, 0.8912, 0, 47, 48],
			[78, 3, 0, 49, 50],
			[92, 6.137, 0, 51, 52],
			[78, 2, 0, 53, 54],
			[24, -0.05908, 0, 55, 56],
			[80, 2, 1, 57, 58],
			[92, 6.137, 0, 59, 60],
			[59, 28, 1, 61, 62],
			[-0.043],
			[-0.02861],
			[-0.04842],
			[-0.02861],
			[-0.05847],
			[-0.04842],
			[-0.05994],
			[-0.04842],
			[6685e-6],
			[-6645e-6],
			[-6645e-6],
			[0.0637],
			[-0.02861],
			[-6645e-6],
			[-0.01207],
			[-0.02861],
			[-0.03756],
			[-0.05713],
			[-0.03709],
			[6369e-6],
			[-0.03798],
			[0.02469],
			[0.02469],
			[0.0783],
			[0.04538],
			[0.04305],
			[0.07258],
			[0.04305],
			[-0.03538],
			[0.03477],
			[0.0374],
			[-0.02296]
		],
		[
			[59, 6, 0, 1, 2],
			[68, 4902e-6, 0, 3, 4],
			[36, 0.8803, 0, 5, 6],
			[85, 2, 0, 7, 8],
			[58, 54, 0, 9, 10],
			[76, 0.183, 0, 11, 12],
			[37, 0.875, 0, 13, 14],
			[58, 12, 1, 15, 16],
			[35, 0.8397, 0, 17, 18],
			[59, 3, 0, 19, 20],
			[11, 2, 0, 21, 22],
			[34, 0.3088, 0, 23, 24],
			[30, 135, 0, 25, 26],
			[3, 330.3, 0, 27, 28],
			[8, 39.1, 0, 29, 30],
			[59, 1, 0, 31, 32],
			[17, 1, 0, 33, 34],
			[94, 10.27, 0, 35, 36],
			[94, 9.085, 0, 37, 38],
			[2, 392.8, 1, 39, 40],
			[36, 0.8116, 0, 41, 42],
			[13, 0.025, 0, 43, 44],
			[89, 96.62, 0, 45, 46],
			[82, 0.0278, 0, 47, 48],
			[1, 313, 0, 49, 50],
			[8, 168, 0, 51, 52],
			[8, 83.62, 0, 53, 54],
			[50, 0.04831, 0, 55, 56],
			[37, 0.7296, 0, 57, 58],
			[24, -0.07587, 0, 59, 60],
			[3, 263.7, 0, 61, 62],
			[-0.01485],
			[1181e-6],
			[-0.01485],
			[0.05084],
			[-0.03385],
			[-0.01485],
			[-0.06509],
			[-0.04709],
			[-0.05893],
			[-0.03129],
			[0.01661],
			[-0.05008],
			[0.06658],
			[-0.01868],
			[-0.04641],
			[276e-5],
			[0.03037],
			[0.02446],
			[0.06516],
			[0.03131],
			[0.02446],
			[0.02446],
			[0.02446],
			[0.04486],
			[4961e-6],
			[0.02446],
			[0.0143],
			[4961e-6],
			[-0.02591],
			[-0.05004],
			[4961e-6],
			[-0.02591]
		],
		[
			[58, 24, 0, 1, 2],
			[96, 1, 0, 3, 4],
			[96, 1, 0, 5, 6],
			[83, 30.02, 1, 7, 8],
			[48, 0.9439, 0, 9, 10],
			[48, 0.8073, 0, 11, 12],
			[36, 0.8307, 0, 13, 14],
			[68, 3657e-6, 0, 15, 16],
			[84, 0.1521, 0, 17, 18],
			[68, 3357e-6, 0, 19, 20],
			[83, 44.01, 1, 21, 22],
			[83, 39.56, 0, 23, 24],
			[68, 8086e-7, 0, 25, 26],
			[83, 1.935, 0, 27, 28],
			[58, 198, 1, 29, 30],
			[94, 10.63, 0, 31, 32],
			[8, 47.06, 0, 33, 34],
			[57, 30, 0, 35, 36],
			[68, 0.02238, 0, 37, 38],
			[76, 0.2243, 0, 39, 40],
			[67, -0.3337, 0, 41, 42],
			[68, 7634e-6, 0, 43, 44],
			[34, 1.399, 1, 45, 46],
			[83, 26.42, 0, 47, 48],
			[68, 8895e-6, 0, 49, 50],
			[87, 0.02862, 0, 51, 52],
			[83, 58.59, 1, 53, 54],
			[30, 142, 0, 55, 56],
			[68, 0.01163, 0, 57, 58],
			[68, 0.0125, 0, 59, 60],
			[37, 0.6919, 0, 61, 62],
			[-0.04504],
			[-0.04339],
			[-0.06041],
			[-0.04339],
			[-0.04339],
			[-0.02342],
			[0.02164],
			[-0.02342],
			[0.06058],
			[-0.02095],
			[-0.02095],
			[-7058e-6],
			[-0.03197],
			[-0.05114],
			[-0.03197],
			[-0.02095],
			[-0.01228],
			[-0.01228],
			[0.03897],
			[5431e-6],
			[-0.01228],
			[-0.02194],
			[-0.05064],
			[-0.01228],
			[0.03471],
			[0.03471],
			[0.06291],
			[0.04623],
			[0.03471],
			[-0.02627],
			[0.03127],
			[-0.04024]
		],
		[
			[60, 4, 1, 1, 2],
			[68, 4632e-6, 0, 3, 4],
			[59, 0, 0, 5, 6],
			[3, 37.51, 1, 7, 8],
			[83, 46.49, 1, 9, 10],
			[65, -0.0725, 1, 11, 12],
			[21, 0.02381, 1, 13, 14],
			[20, 0.0348, 1, 15, 16],
			[59, 4, 0, 17, 18],
			[24, 0.09672, 1, 19, 20],
			[59, 4, 1, 21, 22],
			[55, 74, 1, 23, 24],
			[21, 0.01055, 1, 25, 26],
			[49, 0.8798, 1, 27, 28],
			[59, 12, 1, 29, 30],
			[55, 88, 0, 31, 32],
			[7, 14.1, 0, 33, 34],
			[5, 84.18, 0, 35, 36],
			[38, 1.512, 0, 37, 38],
			[53, 2.095, 1, 39, 40],
			[16, 9, 0, 41, 42],
			[83, 353, 0, 43, 44],
			[60, -3, 1, 45, 46],
			[3, 294.9, 1, 47, 48],
			[2, 118.8, 1, 49, 50],
			[74, -0.02985, 1, 51, 52],
			[83, 77.29, 1, 53, 54],
			[74, -0.1524, 1, 55, 56],
			[13, 0.02699, 0, 57, 58],
			[83, 58.59, 1, 59, 60],
			[6, 107.6, 1, 61, 62],
			[-0.0257],
			[-0.05853],
			[0.3086],
			[-0.04835],
			[0.01626],
			[-0.04165],
			[0.06196],
			[-0.03419],
			[-0.05951],
			[-0.04484],
			[-0.04928],
			[-0.03738],
			[-0.03738],
			[0.07121],
			[-0.03738],
			[0.03981],
			[-0.05799],
			[1723e-6],
			[-0.04473],
			[0.01715],
			[-0.03033],
			[0.06707],
			[-0.05552],
			[0.01355],
			[0.04192],
			[0.06627],
			[0.03242],
			[-0.02037],
			[-0.05853],
			[-0.01202],
			[-0.02143],
			[0.0356]
		],
		[
			[60, 4, 1, 1, 2],
			[59, 4, 0, 3, 4],
			[59, 0, 0, 5, 6],
			[46, 0.7651, 0, 7, 8],
			[37, 0.9384, 0, 9, 10],
			[65, -0.0725, 1, 11, 12],
			[46, 0.7915, 0, 13, 14],
			[35, 0.8397, 0, 15, 16],
			[60, -7, 0, 17, 18],
			[92, 4.089, 0, 19, 20],
			[60, 0, 0, 21, 22],
			[55, 74, 1, 23, 24],
			[92, 5.272, 0, 25, 26],
			[47, 0.6239, 0, 27, 28],
			[59, 28, 1, 29, 30],
			[39, 0.7225, 1, 31, 32],
			[60, -7, 0, 33, 34],
			[47, 1.012, 1, 35, 36],
			[60, 3, 1, 37, 38],
			[96, 2, 0, 39, 40],
			[18, 5, 0, 41, 42],
			[36, 0.9431, 0, 43, 44],
			[3, 30.1, 1, 45, 46],
			[3, 370.2, 1, 47, 48],
			[9, 0.5628, 0, 49, 50],
			[21, -0.04028, 0, 51, 52],
			[21, 0.02074, 1, 53, 54],
			[9, 0.7854, 0, 55, 56],
			[21, 0.02381, 1, 57, 58],
			[21, 0.01516, 1, 59, 60],
			[67, 0.04667, 1, 61, 62],
			[-0.05088],
			[-3315e-6],
			[0.07755],
			[-0.05088],
			[-0.05088],
			[-0.05088],
			[-0.06247],
			[-0.05088],
			[-7143e-6],
			[0.02382],
			[0.02382],
			[0.06788],
			[-0.01758],
			[-0.05126],
			[-0.04307],
			[-7143e-6],
			[-0.05643],
			[9368e-6],
			[0.02395],
			[-0.04879],
			[-1197e-6],
			[-0.06001],
			[0.06636],
			[-1197e-6],
			[0.01988],
			[0.02205],
			[0.05844],
			[0.01988],
			[0.01656],
			[-0.04607],
			[-0.08188],
			[-0.01543]
		],
		[
			[58, 24, 0, 1, 2],
			[96, 1, 0, 3, 4],
			[9, 0.473, 0, 5, 6],
			[93, 15.3, 0, 7, 8],
			[62, -0.01042, 1, 9, 10],
			[31, 0.7194, 0, 11, 12],
			[96, 1, 0, 13, 14],
			[68, 5917e-6, 0, 15, 16],
			[62, 0.02204, 1, 17, 18],
			[82, -0.1007, 0, 19, 20],
			[20, -0.1145, 1, 21, 22],
			[93, 36.71, 0, 23, 24],
			[35, 0.8551, 0, 25, 26],
			[89, 39.14, 0, 27, 28],
			[80, 2, 1, 29, 30],
			[93, 11.3, 0, 31, 32],
			[83, 36.2, 1, 33, 34],
			[68, 4412e-6, 0, 35, 36],
			[82, -0.0281, 0, 37, 38],
			[9, 0.7854, 0, 39, 40],
			[62, -0.03825, 1, 41, 42],
			[96, 2, 0, 43, 44],
			[78, 4, 0, 45, 46],
			[67, -0.3337, 0, 47, 48],
			[26, 0.02371, 1, 49, 50],
			[39, 0.8077, 0, 51, 52],
			[9, 0.4448, 0, 53, 54],
			[68, 2682e-6, 0, 55, 56],
			[68, 7033e-6, 0, 57, 58],
			[58, 198, 1, 59, 60],
			[78, 2, 0, 61, 62],
			[-0.04938],
			[-0.01298],
			[-0.06088],
			[-0.04182],
			[-5742e-6],
			[-0.03783],
			[0.1031],
			[664e-7],
			[-0.02137],
			[-0.01682],
			[-0.05216],
			[-0.03027],
			[-0.01682],
			[5945e-6],
			[-0.01682],
			[0.04431],
			[-0.02485],
			[-0.06057],
			[-0.04738],
			[0.06308],
			[-0.04324],
			[4692e-6],
			[-0.05299],
			[-0.01938],
			[-729e-5],
			[-0.04956],
			[0.04273],
			[-304e-5],
			[0.05283],
			[0.01477],
			[-0.06718],
			[-5995e-7]
		],
		[
			[60, 4, 1, 1, 2],
			[68, 4632e-6, 0, 3, 4],
			[72, 1, 0, 5, 6],
			[75, 0.1549, 0, 7, 8],
			[12, 4.099, 0, 9, 10],
			[49, 0.8912, 1, 11, 12],
			[16, 0, 0, 13, 14],
			[20, -0.04665, 0, 15, 16],
			[38, 0.8576, 0, 17, 18],
			[82, -0.01188, 0, 19, 20],
			[16, 7, 0, 21, 22],
			[75, 0.1549, 0, 23, 24],
			[96, 1, 0, 25, 26],
			[5, 391.2, 1, 27, 28],
			[75, 0.03716, 0, 29, 30],
			[49, 0.8495, 0, 31, 32],
			[57, 33, 1, 33, 34],
			[75, 0.1849, 0, 35, 36],
			[96, 3, 0, 37, 38],
			[53, 3.608, 1, 39, 40],
			[12, 3.234, 0, 41, 42],
			[82, -0.06788, 0, 43, 44],
			[57, 42, 0, 45, 46],
			[65, -0.224, 0, 47, 48],
			[82, -0.02366, 0, 49, 50],
			[23, 0.1257, 1, 51, 52],
			[10, 206.8, 0, 53, 54],
			[82, -0.2656, 0, 55, 56],
			[30, 163, 1, 57, 58],
			[60, 40, 0, 59, 60],
			[23, 0.2851, 0, 61, 62],
			[0.03645],
			[-0.03324],
			[-0.03494],
			[0.04208],
			[0.04232],
			[-0.0403],
			[-0.0594],
			[0.02275],
			[-0.0462],
			[-0.04047],
			[-0.06047],
			[-0.04652],
			[-4342e-6],
			[-0.04047],
			[-0.04047],
			[0.01515],
			[0.02795],
			[0.0586],
			[0.03056],
			[0.02795],
			[-0.03377],
			[0.01043],
			[0.02795],
			[-0.02391],
			[7413e-6],
			[-0.05854],
			[-0.04259],
			[0.05151],
			[0.01163],
			[-0.04752],
			[-0.04921],
			[-6483e-6]
		],
		[
			[92, 5.514, 0, 1, 2],
			[95, 62.74, 0, 3, 4],
			[46, 0.8049, 0, 5, 6],
			[26, 1e9, 0, 7, 8],
			[31, 0.5556, 0, 9, 10],
			[72, 1, 0, 11, 12],
			[36, 0.7895, 0, 13, 14],
			[46, 0.8049, 0, 15, 16],
			[55, 72, 1, 17, 18],
			[82, -0.1591, 0, 19, 20],
			[56, 69.58, 0, 21, 22],
			[36, 2.566, 0, 23, 24],
			[3, 81.08, 1, 25, 26],
			[72, 1, 0, 27, 28],
			[10, 206.8, 0, 29, 30],
			[92, 3.397, 0, 31, 32],
			[36, 0.7895, 0, 33, 34],
			[24, -8068e-7, 1, 35, 36],
			[52, 0.5909, 0, 37, 38],
			[20, -2, 1, 39, 40],
			[92, 1.463, 0, 41, 42],
			[82, -1875e-6, 0, 43, 44],
			[46, 0.75, 1, 45, 46],
			[67, -0.15, 1, 47, 48],
			[67, 0.07365, 0, 49, 50],
			[87, 0.03184, 0, 51, 52],
			[95, 378.7, 0, 53, 54],
			[25, 0.0533, 0, 55, 56],
			[81, -9586e-8, 0, 57, 58],
			[13, 0.02348, 0, 59, 60],
			[42, 0.4804, 1, 61, 62],
			[-0.04883],
			[-0.03038],
			[-0.05164],
			[-0.061],
			[-0.06416],
			[-0.03038],
			[-0.03259],
			[-0.03038],
			[-4234e-6],
			[-0.03038],
			[-0.03038],
			[-0.03038],
			[-0.01093],
			[-0.03038],
			[-4234e-6],
			[-0.02321],
			[0.03209],
			[0.0542],
			[0.01537],
			[0.01537],
			[0.01537],
			[0.01537],
			[0.01537],
			[0.03163],
			[0.01537],
			[5567e-6],
			[5567e-6],
			[5567e-6],
			[-14e-4],
			[-4234e-6],
			[5567e-6],
			[-4234e-6]
		],
		[
			[8, 31.96, 0, 1, 2],
			[43, 0.8504, 0, 3, 4],
			[9, 0.473, 0, 5, 6],
			[72, 0, 0, 7, 8],
			[12, 3.836, 0, 9, 10],
			[9, 0.3989, 0, 11, 12],
			[46, 0.8265, 1, 13, 14],
			[46, 0.7915, 1, 15, 16],
			[72, 1, 0, 17, 18],
			[10, -47.4, 0, 19, 20],
			[36, 0.9319, 0, 21, 22],
			[83, 353, 1, 23, 24],
			[30, 130, 0, 25, 26],
			[72, 1, 0, 27, 28],
			[63, -0.02907, 1, 29, 30],
			[56, 79.02, 0, 31, 32],
			[12, 3.836, 0, 33, 34],
			[13, 0.01598, 0, 35, 36],
			[21, 0.07907, 0, 37, 38],
			[33, 0.9263, 0, 39, 40],
			[5, -65.5, 0, 41, 42],
			[8, 22.22, 0, 43, 44],
			[24, -8068e-7, 0, 45, 46],
			[10, -370.8, 0, 47, 48],
			[65, -0.06075, 0, 49, 50],
			[83, 90.71, 1, 51, 52],
			[36, 0.7327, 1, 53, 54],
			[13, 0.02549, 0, 55, 56],
			[50, 0.5231, 1, 57, 58],
			[57, 87, 1, 59, 60],
			[23, 0.3163, 0, 61, 62],
			[-0.02523],
			[-0.01551],
			[-0.03897],
			[-0.02724],
			[-0.01551],
			[-0.03897],
			[-0.03897],
			[-0.01551],
			[-0.04618],
			[-0.05026],
			[-0.04618],
			[-0.05821],
			[-0.03897],
			[-0.03897],
			[-0.03897],
			[-0.04618],
			[-0.01366],
			[-0.01551],
			[0.07307],
			[-0.01366],
			[-0.01551],
			[-0.01551],
			[4191e-6],
			[-0.01551],
			[0.04928],
			[8208e-6],
			[8208e-6],
			[8208e-6],
			[-0.01551],
			[-0.01551],
			[559e-5],
			[-0.01013]
		],
		[
			[58, 18, 0, 1, 2],
			[96, 1, 0, 3, 4],
			[9, 0.473, 0, 5, 6],
			[69, 2.863, 0, 7, 8],
			[62, -0.01852, 1, 9, 10],
			[30, 130, 0, 11, 12],
			[42, 0.7903, 1, 13, 14],
			[83, 20.42, 1, 15, 16],
			[42, 0.8036, 0, 17, 18],
			[78, 4, 0, 19, 20],
			[9, 0.7383, 0, 21, 22],
			[83, 275.2, 1, 23, 24],
			[42, 0.7097, 1, 25, 26],
			[83, 39.56, 0, 27, 28],
			[39, 1.095, 0, 29, 30],
			[70, 2, 0, 31, 32],
			[62, -0.0485, 1, 33, 34],
			[39, 0.8266, 0, 35, 36],
			[34, 0.76, 0, 37, 38],
			[30, 246, 1, 39, 40],
			[9, 1.423, 0, 41, 42],
			[96, 2, 0, 43, 44],
			[65, -0.224, 0, 45, 46],
			[6, 4.755, 0, 47, 48],
			[78, 2, 0, 49, 50],
			[9, 0.3013, 0, 51, 52],
			[39, 1.779, 1, 53, 54],
			[30, 163, 1, 55, 56],
			[39, 0.3358, 0, 57, 58],
			[96, 1, 0, 59, 60],
			[5, 27.34, 1, 61, 62],
			[-0.04521],
			[-0.019],
			[-0.019],
			[0.03172],
			[-0.0504],
			[-0.03217],
			[-0.0504],
			[-0.05885],
			[-0.02198],
			[-0.02198],
			[-0.04926],
			[-0.02198],
			[-0.02198],
			[0.01212],
			[-0.02198],
			[0.05058],
			[-0.04132],
			[-0.06015],
			[-0.04132],
			[0.01314],
			[0.0301],
			[-0.02962],
			[-0.0528],
			[-0.0342],
			[0.01481],
			[0.01481],
			[0.02869],
			[0.048],
			[-0.04981],
			[-0.01016],
			[-0.04196],
			[0.01481]
		],
		[
			[59, 4, 0, 1, 2],
			[22, 0.04903, 0, 3, 4],
			[37, 0.875, 0, 5, 6],
			[61, -7578e-6, 0, 7, 8],
			[9, 0.4547, 0, 9, 10],
			[75, 0.1683, 0, 11, 12],
			[9, 0.6981, 0, 13, 14],
			[20, 0.07871, 1, 15, 16],
			[92, 3.5, 0, 17, 18],
			[59, -3, 0, 19, 20],
			[13, 0.02208, 0, 21, 22],
			[80, 2, 1, 23, 24],
			[6, 139.6, 1, 25, 26],
			[18, 5, 1, 27, 28],
			[50, 1.067, 0, 29, 30],
			[96, 3, 0, 31, 32],
			[13, 0.01883, 0, 33, 34],
			[20, 0.05716, 1, 35, 36],
			[24, -0.07587, 1, 37, 38],
			[34, 0.9735, 1, 39, 40],
			[95, 568.1, 0, 41, 42],
			[50, 0.3462, 1, 43, 44],
			[58, 90, 1, 45, 46],
			[58, 234, 1, 47, 48],
			[66, -0.2243, 0, 49, 50],
			[82, -0.0393, 0, 51, 52],
			[59, 16, 1, 53, 54],
			[75, 0.01919, 0, 55, 56],
			[96, 1, 0, 57, 58],
			[40, 1.092, 0, 59, 60],
			[92, 4.089, 0, 61, 62],
			[-0.05472],
			[-0.03735],
			[-0.03735],
			[-0.03738],
			[-0.03735],
			[-8817e-6],
			[-8817e-6],
			[0.04724],
			[-0.05363],
			[0.1106],
			[-0.05292],
			[-9343e-6],
			[3224e-6],
			[0.05775],
			[-0.04715],
			[-6717e-8],
			[0.05521],
			[0.03325],
			[0.03325],
			[0.01704],
			[0.06367],
			[0.01704],
			[0.01704],
			[0.05293],
			[-0.01027],
			[-0.04627],
			[-0.0408],
			[0.01079],
			[-0.03433],
			[0.01273],
			[7594e-6],
			[0.01704]
		],
		[
			[58, 24, 0, 1, 2],
			[46, 0.7786, 0, 3, 4],
			[46, 0.8049, 1, 5, 6],
			[16, 5, 0, 7, 8],
			[49, 0.8658, 0, 9, 10],
			[27, -0.1646, 0, 11, 12],
			[49, 0.8658, 0, 13, 14],
			[22, -0.1293, 1, 15, 16],
			[13, 0.024, 0, 17, 18],
			[82, 0.03992, 0, 19, 20],
			[12, 3.234, 0, 21, 22],
			[81, 0.0215, 0, 23, 24],
			[31, 0.5101, 0, 25, 26],
			[3, 263.7, 0, 27, 28],
			[58, 198, 1, 29, 30],
			[82, -0.1007, 0, 31, 32],
			[3, 81.08, 1, 33, 34],
			[58, 6, 0, 35, 36],
			[82, -0.01188, 0, 37, 38],
			[12, 2.948, 0, 39, 40],
			[13, 0.02549, 0, 41, 42],
			[81, -0.2113, 0, 43, 44],
			[13, 0.02849, 0, 45, 46],
			[12, 4.364, 0, 47, 48],
			[13, 0.02549, 0, 49, 50],
			[93, 17.1, 0, 51, 52],
			[76, 0.183, 0, 53, 54],
			[12, 5.068, 0, 55, 56],
			[36, 0.6546, 0, 57, 58],
			[12, 3.836, 0, 59, 60],
			[22, 0.07399, 1, 61, 62],
			[0.03582],
			[-0.02842],
			[-0.03545],
			[-0.03408],
			[-4978e-6],
			[0.04114],
			[-0.01433],
			[-0.03545],
			[-0.03545],
			[-0.03545],
			[-0.03545],
			[-0.0429],
			[-0.0494],
			[-0.05626],
			[-0.0429],
			[-0.0494],
			[2406e-6],
			[0.02094],
			[2406e-6],
			[2406e-6],
			[2406e-6],
			[6084e-6],
			[0.0457],
			[2406e-6],
			[2406e-6],
			[2406e-6],
			[2406e-6],
			[-0.01266],
			[-0.04221],
			[-0.01266],
			[-0.0831],
			[-0.01266]
		],
		[
			[60, 3, 0, 1, 2],
			[37, 0.8894, 0, 3, 4],
			[5, 39.83, 1, 5, 6],
			[95, 50.59, 0, 7, 8],
			[95, 83.92, 0, 9, 10],
			[87, 0.06229, 0, 11, 12],
			[9, 0.4923, 0, 13, 14],
			[39, 0.9524, 0, 15, 16],
			[9, 0.4448, 0, 17, 18],
			[20, 0.05716, 1, 19, 20],
			[60, 0, 0, 21, 22],
			[20, -0.06029, 1, 23, 24],
			[0, 42.39, 0, 25, 26],
			[9, 0.4085, 0, 27, 28],
			[42, 0.7278, 1, 29, 30],
			[26, 0.08307, 0, 31, 32],
			[76, 0.1187, 1, 33, 34],
			[8, 239.4, 0, 35, 36],
			[39, 0.3358, 0, 37, 38],
			[42, 0.7753, 0, 39, 40],
			[5, 21.02, 0, 41, 42],
			[11, 2, 0, 43, 44],
			[40, 1.138, 0, 45, 46],
			[31, 0.6303, 1, 47, 48],
			[9, 0.7602, 0, 49, 50],
			[26, 0.1379, 0, 51, 52],
			[95, 444.4, 0, 53, 54],
			[0, -52.15, 0, 55, 56],
			[64, -0.01233, 0, 57, 58],
			[65, -0.1422, 1, 59, 60],
			[49, 0.8658, 1, 61, 62],
			[-0.02804],
			[-0.0137],
			[-0.02804],
			[-0.0137],
			[-0.0137],
			[0.09726],
			[-0.0137],
			[0.0307],
			[-0.04449],
			[-0.05603],
			[-0.04188],
			[-0.04188],
			[-0.02804],
			[-0.04188],
			[-0.0318],
			[-0.02804],
			[-0.02936],
			[0.02413],
			[-0.05056],
			[-0.01637],
			[-0.04896],
			[-9195e-6],
			[-0.06373],
			[-8652e-6],
			[0.02392],
			[-0.05826],
			[3401e-6],
			[-0.03462],
			[0.02092],
			[0.04554],
			[0.02092],
			[-0.01143]
		],
		[
			[60, 3, 0, 1, 2],
			[92, 6.511, 0, 3, 4],
			[21, 0.02074, 1, 5, 6],
			[46, 0.75, 0, 7, 8],
			[60, 0, 0, 9, 10],
			[72, 1, 0, 11, 12],
			[8, 83.62, 0, 13, 14],
			[30, 126, 0, 15, 16],
			[36, 0.5442, 0, 17, 18],
			[65, 0.14, 0, 19, 20],
			[46, 0.7786, 0, 21, 22],
			[46, 0.75, 1, 23, 24],
			[92, 11, 0, 25, 26],
			[92, 8.574, 0, 27, 28],
			[9, 0.5848, 0, 29, 30],
			[8, 40.84, 0, 31, 32],
			[13, 0.01961, 0, 33, 34],
			[38, 0.5466, 1, 35, 36],
			[56, 33.45, 0, 37, 38],
			[46, 0.8156, 1, 39, 40],
			[8, 239.4, 0, 41, 42],
			[9, 0.473, 0, 43, 44],
			[9, 0.473, 0, 45, 46],
			[74, 0.1339, 0, 47, 48],
			[4, 222.9, 0, 49, 50],
			[31, 1.089, 1, 51, 52],
			[74, 0.2415, 1, 53, 54],
			[82, -0.1867, 0, 55, 56],
			[65, -0.0185, 0, 57, 58],
			[74, 0.03092, 0, 59, 60],
			[9, 0.9261, 0, 61, 62],
			[-0.04261],
			[-0.03626],
			[-0.02805],
			[-0.03549],
			[-0.04261],
			[-0.04261],
			[-0.04872],
			[-0.05527],
			[5585e-6],
			[-0.02805],
			[-0.02805],
			[-5277e-6],
			[0.01254],
			[0.06062],
			[-0.02805],
			[-5139e-6],
			[0.04624],
			[0.0188],
			[0.01034],
			[-0.05],
			[-0.05143],
			[-0.02026],
			[-0.01054],
			[0.07815],
			[-0.04622],
			[-0.06076],
			[-0.04622],
			[-0.03237],
			[-5629e-6],
			[-0.03237],
			[0.03962],
			[-0.02525]
		],
		[
			[60, 3, 1, 1, 2],
			[48, 0.8366, 0, 3, 4],
			[92, 6.137, 0, 5, 6],
			[92, 3.397, 0, 7, 8],
			[62, -6389e-6, 1, 9, 10],
			[96, 1, 0, 11, 12],
			[60, 40, 0, 13, 14],
			[26, 1e9, 0, 15, 16],
			[62, -0.01996, 1, 17, 18],
			[83, 353, 1, 19, 20],
			[92, 4.289, 0, 21, 22],
			[50, 1e9, 0, 23, 24],
			[30, 139, 1, 25, 26],
			[42, 0.7278, 1, 27, 28],
			[1, 349.5, 0, 29, 30],
			[96, 2, 0, 31, 32],
			[38, 0.4583, 1, 33, 34],
			[92, 16.17, 0, 35, 36],
			[85, 2, 0, 37, 38],
			[93, 20.63, 0, 39, 40],
			[78, 3, 0, 41, 42],
			[34, 0.8729, 1, 43, 44],
			[60, 0, 0, 45, 46],
			[26, 1e9, 0, 47, 48],
			[67, -0.06714, 1, 49, 50],
			[83, 13.89, 1, 51, 52],
			[62, -0.01598, 0, 53, 54],
			[17, 3, 0, 55, 56],
			[0, 173.8, 0, 57, 58],
			[42, 0.7753, 1, 59, 60],
			[42, 0.641, 0, 61, 62],
			[-0.02663],
			[-962e-5],
			[-0.02663],
			[-962e-5],
			[-962e-5],
			[9033e-6],
			[0.03907],
			[9033e-6],
			[-0.05315],
			[-0.04468],
			[-0.03944],
			[-0.03944],
			[-0.03303],
			[-0.03944],
			[-0.0326],
			[-0.02663],
			[-0.04785],
			[8261e-6],
			[-0.05929],
			[8261e-6],
			[-0.03901],
			[8261e-6],
			[-0.01925],
			[8261e-6],
			[0.02945],
			[0.05327],
			[0.02452],
			[8261e-6],
			[8261e-6],
			[8261e-6],
			[0.0348],
			[8261e-6]
		],
		[
			[59, 4, 0, 1, 2],
			[22, 0.04903, 0, 3, 4],
			[60, 0, 1, 5, 6],
			[13, 0.01767, 0, 7, 8],
			[21, 0.02381, 0, 9, 10],
			[38, 1.2, 0, 11, 12],
			[46, 0.75, 0, 13, 14],
			[59, 1, 0, 15, 16],
			[60, -7, 0, 17, 18],
			[13, 0.02208, 0, 19, 20],
			[2, 219, 1, 21, 22],
			[39, 4, 0, 23, 24],
			[59, 11, 1, 25, 26],
			[47, 0.6239, 0, 27, 28],
			[59, 23, 1, 29, 30],
			[22, 0.0396, 0, 31, 32],
			[95, 47.03, 0, 33, 34],
			[50, 1.123, 0, 35, 36],
			[21, -0.06714, 1, 37, 38],
			[24, 0.03509, 0, 39, 40],
			[83, 77.29, 1, 41, 42],
			[21, 0.03116, 0, 43, 44],
			[87, 9062e-6, 1, 45, 46],
			[18, 14, 0, 47, 48],
			[83, 198.8, 0, 49, 50],
			[49, 0.4078, 0, 51, 52],
			[83, 230.4, 1, 53, 54],
			[2, 55.47, 1, 55, 56],
			[75, 0.1549, 0, 57, 58],
			[49, 0.902, 1, 59, 60],
			[49, 0.7765, 0, 61, 62],
			[-0.0419],
			[0.01873],
			[-0.03327],
			[0.04032],
			[-0.0419],
			[-0.0419],
			[-0.0419],
			[-0.05642],
			[0.04832],
			[2204e-6],
			[-0.04514],
			[2204e-6],
			[-0.02783],
			[-0.05938],
			[-0.05217],
			[-6312e-6],
			[-0.0383],
			[0.01706],
			[-0.04012],
			[0.1217],
			[6195e-6],
			[-0.05552],
			[-0.03797],
			[0.01083],
			[0.01639],
			[0.01639],
			[0.05214],
			[0.01639],
			[0.01639],
			[-608e-5],
			[0.01639],
			[-0.0642]
		],
		[
			[59, 4, 0, 1, 2],
			[68, 4412e-6, 0, 3, 4],
			[36, 0.85, 0, 5, 6],
			[96, 1, 0, 7, 8],
			[58, 60, 1, 9, 10],
			[76, 0.2039, 0, 11, 12],
			[46, 0.8939, 1, 13, 14],
			[93, 11.54, 0, 15, 16],
			[61, -0.03189, 0, 17, 18],
			[93, 20.63, 0, 19, 20],
			[82, 0.01042, 0, 21, 22],
			[25, 0.0533, 1, 23, 24],
			[82, -1875e-6, 0, 25, 26],
			[53, -6.268, 0, 27, 28],
			[39, 1.082, 0, 29, 30],
			[46, 0.7352, 0, 31, 32],
			[28, 0.01355, 0, 33, 34],
			[88, 7008e-7, 0, 35, 36],
			[1, 280.1, 0, 37, 38],
			[82, -2779e-6, 0, 39, 40],
			[94, 7.596, 0, 41, 42],
			[5, 42.02, 1, 43, 44],
			[13, 0.01806, 0, 45, 46],
			[68, 0.01205, 0, 47, 48],
			[46, 0.6181, 0, 49, 50],
			[93, 15.68, 0, 51, 52],
			[56, 70.35, 0, 53, 54],
			[59, 16, 1, 55, 56],
			[58, 198, 0, 57, 58],
			[82, -1875e-6, 0, 59, 60],
			[8, 62.47, 0, 61, 62],
			[-0.02345],
			[-0.05928],
			[0.02151],
			[-0.05265],
			[-16e-4],
			[-0.04685],
			[0.04954],
			[-16e-4],
			[-0.04063],
			[-0.05572],
			[5422e-6],
			[-0.03637],
			[-0.03834],
			[0.02011],
			[-6099e-6],
			[-0.04578],
			[0.0523],
			[0.01473],
			[0.01473],
			[0.01473],
			[0.01473],
			[0.08266],
			[0.01473],
			[0.01473],
			[-0.01325],
			[-4037e-6],
			[0.01473],
			[7382e-7],
			[-0.01325],
			[-0.05384],
			[-0.03279],
			[-0.01325]
		],
		[
			[59, 4, 0, 1, 2],
			[22, 0.04903, 0, 3, 4],
			[30, 130, 0, 5, 6],
			[62, -7143e-6, 1, 7, 8],
			[13, 0.02208, 0, 9, 10],
			[83, 44.01, 1, 11, 12],
			[46, 0.7651, 0, 13, 14],
			[46, 0.8156, 1, 15, 16],
			[72, 0, 0, 17, 18],
			[16, 5, 0, 19, 20],
			[83, 198.8, 1, 21, 22],
			[54, 71.5, 1, 23, 24],
			[80, 3, 0, 25, 26],
			[7, 334.9, 0, 27, 28],
			[59, 28, 1, 29, 30],
			[10, 238.9, 0, 31, 32],
			[29, 0.2288, 1, 33, 34],
			[35, 0.8, 0, 35, 36],
			[59, 2, 0, 37, 38],
			[5, 266, 1, 39, 40],
			[85, 2, 0, 41, 42],
			[35, 0.908, 0, 43, 44],
			[10, 238.9, 0, 45, 46],
			[59, 18, 1, 47, 48],
			[13, 0.02348, 0, 49, 50],
			[34, 0.5621, 0, 51, 52],
			[59, 28, 1, 53, 54],
			[39, 0.3358, 0, 55, 56],
			[46, 0.6617, 0, 57, 58],
			[49, 0.9285, 1, 59, 60],
			[49, 0.7765, 1, 61, 62],
			[-0.04581],
			[-0.04091],
			[-0.06053],
			[-0.0524],
			[0.03341],
			[-0.03184],
			[-0.04091],
			[-0.02218],
			[-0.01183],
			[-7975e-6],
			[0.04536],
			[-0.01183],
			[-0.02909],
			[-0.05185],
			[-0.01183],
			[-0.01183],
			[-0.05301],
			[-0.02508],
			[-5807e-6],
			[-0.04182],
			[0.01289],
			[0.04372],
			[-5807e-6],
			[0.01289],
			[0.01792],
			[0.05246],
			[0.01792],
			[0.01792],
			[0.01792],
			[-0.01175],
			[0.01792],
			[-0.07232]
		],
		[
			[59, 4, 0, 1, 2],
			[22, 0.04903, 0, 3, 4],
			[9, 0.4923, 0, 5, 6],
			[61, -9524e-6, 0, 7, 8],
			[21, 0.02074, 0, 9, 10],
			[30, 160, 1, 11, 12],
			[13, 0.02599, 0, 13, 14],
			[21, 0.07907, 1, 15, 16],
			[92, 3.5, 0, 17, 18],
			[60, 3, 1, 19, 20],
			[60, -4, 0, 21, 22],
			[54, 73, 1, 23, 24],
			[96, 2, 0, 25, 26],
			[59, 28, 0, 27, 28],
			[61, -6452e-6, 0, 29, 30],
			[21, -0.08772, 0, 31, 32],
			[35, 0.7, 1, 33, 34],
			[20, 0.05716, 1, 35, 36],
			[60, 20, 0, 37, 38],
			[59, -3, 0, 39, 40],
			[75, 0.03051, 0, 41, 42],
			[61, -0.04188, 0, 43, 44],
			[9, 0.4085, 0, 45, 46],
			[59, 13, 0, 47, 48],
			[92, 14.21, 0, 49, 50],
			[65, 0.06239, 0, 51, 52],
			[59, 20, 0, 53, 54],
			[20, -0.1599, 1, 55, 56],
			[48, 0.4324, 0, 57, 58],
			[83, 52.15, 1, 59, 60],
			[56, 79.02, 0, 61, 62],
			[-0.03332],
			[-0.0549],
			[-0.03332],
			[-0.03332],
			[-0.03332],
			[-6647e-6],
			[0.04424],
			[-6647e-6],
			[0.04576],
			[-0.04838],
			[0.05088],
			[-6506e-6],
			[-0.02037],
			[0.1102],
			[-0.05776],
			[-0.0343],
			[-0.0584],
			[-0.03888],
			[-0.03183],
			[0.03254],
			[-8739e-6],
			[-0.04582],
			[0.05622],
			[-0.04376],
			[0.0109],
			[0.04179],
			[0.04388],
			[0.0109],
			[-0.03848],
			[-5981e-6],
			[-5981e-6],
			[0.0109]
		],
		[
			[59, 4, 0, 1, 2],
			[68, 3357e-6, 0, 3, 4],
			[60, 0, 0, 5, 6],
			[35, 0.8841, 0, 7, 8],
			[12, 4.099, 0, 9, 10],
			[18, 14, 1, 11, 12],
			[42, 0.7278, 1, 13, 14],
			[30, 118, 0, 15, 16],
			[20, -0.02368, 1, 17, 18],
			[82, -2779e-6, 0, 19, 20],
			[17, 3, 0, 21, 22],
			[59, 14, 0, 23, 24],
			[12, 4.364, 0, 25, 26],
			[30, 139, 0, 27, 28],
			[40, 1.138, 0, 29, 30],
			[35, 0.8551, 0, 31, 32],
			[35, 0.2406, 0, 33, 34],
			[37, 0.9275, 0, 35, 36],
			[87, 7514e-6, 0, 37, 38],
			[42, 0.8036, 0, 39, 40],
			[96, 3, 0, 41, 42],
			[2, 542.1, 1, 43, 44],
			[9, 0.4547, 0, 45, 46],
			[9, -0.2895, 0, 47, 48],
			[82, -0.1113, 0, 49, 50],
			[96, 2, 0, 51, 52],
			[9, 0.4085, 0, 53, 54],
			[20, -0.03151, 1, 55, 56],
			[40, 0.7065, 0, 57, 58],
			[59, 28, 1, 59, 60],
			[9, 0.4827, 0, 61, 62],
			[-0.05894],
			[0.01057],
			[-0.04807],
			[0.05762],
			[-4786e-6],
			[-0.05873],
			[0.03408],
			[-0.02243],
			[-0.03349],
			[-0.04994],
			[-0.05397],
			[-0.03349],
			[-0.03349],
			[0.02534],
			[-0.03349],
			[0.01342],
			[0.02122],
			[-0.05288],
			[0.04194],
			[-0.0324],
			[-0.04386],
			[-2728e-6],
			[-2728e-6],
			[0.04639],
			[0.0147],
			[0.01787],
			[0.0147],
			[0.05162],
			[-8338e-6],
			[-0.07311],
			[-0.03113],
			[0.0147]
		],
		[
			[59, 4, 0, 1, 2],
			[22, 0.04376, 0, 3, 4],
			[9, 0.4923, 0, 5, 6],
			[61, -9524e-6, 0, 7, 8],
			[9, 0.4547, 0, 9, 10],
			[54, 74, 1, 11, 12],
			[49, 0.8658, 0, 13, 14],
			[96, 3, 0, 15, 16],
			[20, 0.05716, 1, 17, 18],
			[60, -7, 1, 19, 20],
			[61, -0.02352, 0, 21, 22],
			[93, 36.71, 0, 23, 24],
			[3, -20.2, 1, 25, 26],
			[35, 0.2406, 0, 27, 28],
			[46, 0.8265, 1, 29, 30],
			[20, 0.07871, 1, 31, 32],
			[83, 106.6, 0, 33, 34],
			[96, 1, 0, 35, 36],
			[7, 14.1, 0, 37, 38],
			[0.1094],
			[59, -3, 0, 39, 40],
			[83, 77.29, 1, 41, 42],
			[87, 0.03359, 0, 43, 44],
			[96, 3, 0, 45, 46],
			[9, 0.4259, 0, 47, 48],
			[35, 1.103, 0, 49, 50],
			[85, 2, 0, 51, 52],
			[2, 55.47, 1, 53, 54],
			[80, 2, 1, 55, 56],
			[6, 273, 0, 57, 58],
			[59, 28, 1, 59, 60],
			[-0.04952],
			[-0.03324],
			[-0.03324],
			[-0.03324],
			[-0.03324],
			[0.01197],
			[0.2375],
			[-0.02714],
			[0.01513],
			[-0.04589],
			[-0.03925],
			[-2033e-6],
			[0.04894],
			[2912e-6],
			[-0.04705],
			[459e-5],
			[-0.03402],
			[0.05523],
			[0.07846],
			[-0.05464],
			[-0.01117],
			[-0.05119],
			[0.02344],
			[0.02344],
			[0.05199],
			[0.02344],
			[0.02344],
			[-174e-5],
			[-0.01138],
			[-0.06607]
		],
		[
			[68, 4185e-6, 0, 1, 2],
			[6, 217.2, 0, 3, 4],
			[59, 9, 1, 5, 6],
			[55, 73, 1, 7, 8],
			[48, 0.4324, 0, 9, 10],
			[68, 9259e-6, 0, 11, 12],
			[60, 9, 1, 13, 14],
			[24, -0.07587, 1, 15, 16],
			[95, 35.7, 0, 17, 18],
			[80, 2, 1, 19, 20],
			[58, 198, 1, 21, 22],
			[95, 45.39, 0, 23, 24],
			[79, 15, 0, 25, 26],
			[30, 156, 0, 27, 28],
			[6, 62.36, 1, 29, 30],
			[88, 1286e-6, 0, 31, 32],
			[65, -0.09625, 1, 33, 34],
			[35, 0.773, 1, 35, 36],
			[61, -0.01954, 0, 37, 38],
			[58, 30, 0, 39, 40],
			[59, 35, 0, 41, 42],
			[20, -0.2133, 0, 43, 44],
			[56, 85.74, 0, 45, 46],
			[85, 1, 0, 47, 48],
			[20, -0.1844, 1, 49, 50],
			[60, 3, 1, 51, 52],
			[88, 0.06911, 1, 53, 54],
			[80, 5, 0, 55, 56],
			[80, 2, 0, 57, 58],
			[69, 2.863, 0, 59, 60],
			[58, 102, 0, 61, 62],
			[0.01662],
			[-0.06412],
			[-0.035],
			[0.03435],
			[0.01726],
			[-0.03154],
			[0.01726],
			[0.05363],
			[0.02412],
			[0.05121],
			[3147e-6],
			[0.02412],
			[-0.04722],
			[3147e-6],
			[-0.01498],
			[-0.07789],
			[-0.03424],
			[-0.05573],
			[-0.02434],
			[5856e-6],
			[-0.04279],
			[-0.01036],
			[-0.05737],
			[-0.01232],
			[-0.01535],
			[-0.04332],
			[0.03262],
			[-9701e-6],
			[0.03838],
			[-0.0374],
			[0.04909],
			[0.01303]
		],
		[
			[9, 0.4827, 0, 1, 2],
			[30, 130, 1, 3, 4],
			[62, -0.01598, 1, 5, 6],
			[83, 275.2, 1, 7, 8],
			[35, 0.8551, 0, 9, 10],
			[2, 118.8, 1, 11, 12],
			[83, 30.02, 0, 13, 14],
			[82, -0.3115, 0, 15, 16],
			[54, 73, 0, 17, 18],
			[84, 0.09576, 1, 19, 20],
			[37, 0.7614, 0, 21, 22],
			[83, 46.49, 1, 23, 24],
			[5, 129.4, 1, 25, 26],
			[82, -0.0393, 1, 27, 28],
			[36, 0.8307, 1, 29, 30],
			[16, 2, 0, 31, 32],
			[94, 13.03, 0, 33, 34],
			[87, 6191e-6, 1, 35, 36],
			[29, -0.01626, 0, 37, 38],
			[50, 1.111, 0, 39, 40],
			[30, 239, 0, 41, 42],
			[64, -0.01233, 0, 43, 44],
			[38, 1.352, 1, 45, 46],
			[69, 2.5, 0, 47, 48],
			[62, -0.03096, 1, 49, 50],
			[82, 3973e-7, 0, 51, 52],
			[62, -0.0904, 0, 53, 54],
			[23, 0.0463, 0, 55, 56],
			[29, -0.4031, 1, 57, 58],
			[25, -0.1411, 0, 59, 60],
			[7, 198.7, 0, 61, 62],
			[-0.02502],
			[-0.03313],
			[-0.0542],
			[-0.03619],
			[0.02788],
			[-0.02502],
			[0.09716],
			[-0.02502],
			[-0.0288],
			[189e-6],
			[0.0423],
			[189e-6],
			[0.04435],
			[-0.01948],
			[-0.04776],
			[-0.01948],
			[-0.03425],
			[-0.05447],
			[-0.03425],
			[-4665e-6],
			[-4665e-6],
			[-0.04011],
			[-0.01886],
			[-4665e-6],
			[-4665e-6],
			[7753e-6],
			[-4665e-6],
			[-4665e-6],
			[0.02192],
			[0.04398],
			[0.01745],
			[7753e-6]
		],
		[
			[92, 5.272, 0, 1, 2],
			[30, 153, 0, 3, 4],
			[62, -0.0289, 1, 5, 6],
			[2, 77.76, 1, 7, 8],
			[26, 1e9, 0, 9, 10],
			[92, 11.56, 0, 11, 12],
			[4, 222.9, 0, 13, 14],
			[76, -0.06543, 0, 15, 16],
			[22, -0.3116, 1, 17, 18],
			[48, 0.7369, 0, 19, 20],
			[55, 73, 1, 21, 22],
			[0, 158.9, 0, 23, 24],
			[62, -0.0904, 1, 25, 26],
			[17, 0, 0, 27, 28],
			[36, 0.6968, 0, 29, 30],
			[74, -0.1524, 0, 31, 32],
			[33, 4, 0, 33, 34],
			[92, 2.508, 0, 35, 36],
			[56, 73.27, 0, 37, 38],
			[34, 0.76, 0, 39, 40],
			[2, 77.76, 0, 41, 42],
			[43, 1.112, 0, 43, 44],
			[80, 0, 1, 45, 46],
			[4, 517.8, 1, 47, 48],
			[17, 58, 0, 49, 50],
			[3, 161.8, 1, 51, 52],
			[17, 1, 0, 53, 54],
			[8, 100.1, 0, 55, 56],
			[85, 2, 0, 57, 58],
			[33, 0.7692, 0, 59, 60],
			[74, 2685e-6, 1, 61, 62],
			[-0.05848],
			[-0.01988],
			[-0.06095],
			[-0.02286],
			[-9023e-6],
			[-5103e-6],
			[-0.05021],
			[-0.02068],
			[-0.0172],
			[-5103e-6],
			[-0.04282],
			[-0.0172],
			[-5103e-6],
			[-0.05155],
			[-5103e-6],
			[-0.03779],
			[-5103e-6],
			[-2657e-7],
			[-5103e-6],
			[-2657e-7],
			[-2657e-7],
			[3407e-6],
			[3407e-6],
			[708e-5],
			[708e-5],
			[0.0161],
			[0.03486],
			[708e-5],
			[0.02112],
			[0.04611],
			[708e-5],
			[708e-5]
		],
		[
			[60, 3, 0, 1, 2],
			[95, 58.35, 0, 3, 4],
			[72, 0, 0, 5, 6],
			[93, 11.54, 0, 7, 8],
			[60, 0, 0, 9, 10],
			[36, 0.7895, 0, 11, 12],
			[87, 0.07315, 0, 13, 14],
			[73, 1e9, 0, 15, 16],
			[4, 141.5, 1, 17, 18],
			[36, 0.8952, 0, 19, 20],
			[52, 2.253, 1, 21, 22],
			[26, -0.1778, 0, 23, 24],
			[10, 206.8, 0, 25, 26],
			[4, 40.84, 1, 27, 28],
			[89, 240.8, 0, 29, 30],
			[42, 0.7097, 0, 31, 32],
			[5, 17.82, 0, 33, 34],
			[60, 2, 0, 35, 36],
			[34, 0.1261, 0, 37, 38],
			[72, 1, 0, 39, 40],
			[89, 137.9, 0, 41, 42],
			[34, 0.76, 0, 43, 44],
			[40, 0.8899, 0, 45, 46],
			[50, 1.223, 1, 47, 48],
			[56, 70.35, 0, 49, 50],
			[95, 47.03, 0, 51, 52],
			[42, 0.5165, 1, 53, 54],
			[31, 0.7671, 1, 55, 56],
			[49, 0.9285, 0, 57, 58],
			[10, 133.4, 0, 59, 60],
			[66, 0.4107, 0, 61, 62],
			[-0.04178],
			[-0.05623],
			[-0.02891],
			[-0.03534],
			[-0.04571],
			[-0.02891],
			[-0.02891],
			[-0.02891],
			[565e-5],
			[-0.01791],
			[-0.02891],
			[-0.01791],
			[225e-5],
			[-0.01847],
			[225e-5],
			[0.04405],
			[0.01854],
			[0.01854],
			[0.01854],
			[0.04469],
			[-0.03166],
			[0.01569],
			[0.0129],
			[-0.04453],
			[-0.06393],
			[-0.0262],
			[0.01557],
			[-0.01557],
			[-0.06141],
			[-0.03516],
			[0.03174],
			[-0.02013]
		],
		[
			[92, 6.137, 0, 1, 2],
			[30, 156, 0, 3, 4],
			[57, 18, 0, 5, 6],
			[82, -1875e-6, 0, 7, 8],
			[14, 0, 0, 9, 10],
			[82, -0.1113, 0, 11, 12],
			[6, 228.7, 0, 13, 14],
			[23, 0.05253, 0, 15, 16],
			[6, 127.9, 1, 17, 18],
			[13, 0.024, 0, 19, 20],
			[92, 0.3025, 0, 21, 22],
			[13, 0.02799, 0, 23, 24],
			[92, 11.56, 0, 25, 26],
			[13, 0.02599, 0, 27, 28],
			[36, 0.6546, 0, 29, 30],
			[82, -0.3921, 0, 31, 32],
			[80, 2, 0, 33, 34],
			[19, 1e9, 0, 35, 36],
			[56, 73.27, 0, 37, 38],
			[92, 3.397, 0, 39, 40],
			[82, -0.01188, 0, 41, 42],
			[40, 1.138, 1, 43, 44],
			[67, -0.06714, 0, 45, 46],
			[92, 11, 0, 47, 48],
			[67, -0.02667, 0, 49, 50],
			[94, 10.96, 0, 51, 52],
			[41, 0.6463, 1, 53, 54],
			[16, 2, 0, 55, 56],
			[58, 90, 0, 57, 58],
			[34, 0.6482, 0, 59, 60],
			[56, 92.54, 0, 61, 62],
			[-3649e-6],
			[-0.0366],
			[-3649e-6],
			[-0.04042],
			[-0.05204],
			[-0.01335],
			[-0.05165],
			[-8829e-6],
			[-0.0146],
			[-3649e-6],
			[-0.02137],
			[-0.0491],
			[-0.04647],
			[-0.01974],
			[-0.01974],
			[-3649e-6],
			[1312e-6],
			[6273e-6],
			[-3649e-6],
			[-3649e-6],
			[-3649e-6],
			[-3649e-6],
			[-3649e-6],
			[-3649e-6],
			[0.01944],
			[0.03684],
			[6273e-6],
			[0.01944],
			[0.01801],
			[0.0439],
			[6273e-6],
			[6273e-6]
		],
		[
			[68, 4185e-6, 0, 1, 2],
			[58, 198, 0, 3, 4],
			[82, 8051e-6, 0, 5, 6],
			[55, 73, 1, 7, 8],
			[42, 0.5517, 1, 9, 10],
			[59, 3, 1, 11, 12],
			[8, 62.47, 0, 13, 14],
			[24, -0.1019, 1, 15, 16],
			[42, 0.7278, 1, 17, 18],
			[2, 85.28, 1, 19, 20],
			[40, 1.092, 0, 21, 22],
			[58, 90, 1, 23, 24],
			[8, 28.3, 0, 25, 26],
			[13, 0.0245, 0, 27, 28],
			[16, 6, 0, 29, 30],
			[82, -0.1867, 0, 31, 32],
			[72, 0, 0, 33, 34],
			[47, 0.09574, 0, 35, 36],
			[8, 22.22, 0, 37, 38],
			[86, 6016e-7, 0, 39, 40],
			[40, 0.6569, 0, 41, 42],
			[2, 244.8, 0, 43, 44],
			[55, 83, 1, 45, 46],
			[72, 0, 0, 47, 48],
			[8, 47.06, 0, 49, 50],
			[82, -0.057, 0, 51, 52],
			[58, 150, 0, 53, 54],
			[8, 29.5, 0, 55, 56],
			[2, 542.1, 0, 57, 58],
			[8, 239.4, 0, 59, 60],
			[13, 0.02943, 0, 61, 62],
			[7571e-6],
			[-0.0642],
			[0.02273],
			[-0.02385],
			[0.03438],
			[0.0608],
			[-0.02905],
			[0.02294],
			[0.01161],
			[-0.01175],
			[-7768e-6],
			[0.04504],
			[-0.02808],
			[-0.0903],
			[-0.01175],
			[-0.04934],
			[-0.02303],
			[-0.04676],
			[-0.02073],
			[0.03874],
			[5785e-6],
			[-0.04672],
			[0.04048],
			[5785e-6],
			[-0.04164],
			[-0.02664],
			[-0.0573],
			[-0.04164],
			[-0.02664],
			[0.01392],
			[0.01857],
			[-0.02664]
		],
		[
			[68, 2682e-6, 0, 1, 2],
			[46, 0.8049, 1, 3, 4],
			[83, 39.56, 1, 5, 6],
			[54, 73, 0, 7, 8],
			[4, 160.8, 0, 9, 10],
			[68, 8895e-6, 0, 11, 12],
			[80, 2, 0, 13, 14],
			[5, 9.067, 1, 15, 16],
			[5, 303.3, 0, 17, 18],
			[43, 1.55, 0, 19, 20],
			[51, 0.08791, 0, 21, 22],
			[16, 5, 0, 23, 24],
			[59, 12, 1, 25, 26],
			[59, 2, 1, 27, 28],
			[84, 0.1406, 0, 29, 30],
			[51, 0.0624, 0, 31, 32],
			[59, 28, 1, 33, 34],
			[83, 33.94, 0, 35, 36],
			[46, 0.6404, 1, 37, 38],
			[26, -0.08368, 1, 39, 40],
			[89, 96.62, 0, 41, 42],
			[59, 23, 0, 43, 44],
			[39, 1.082, 0, 45, 46],
			[82, 281e-5, 1, 47, 48],
			[46, 0.6807, 0, 49, 50],
			[93, 27.09, 0, 51, 52],
			[82, -0.1591, 0, 53, 54],
			[83, 176.4, 0, 55, 56],
			[46, 0.7011, 0, 57, 58],
			[59, 23, 1, 59, 60],
			[32, 0.4956, 1, 61, 62],
			[0.01697],
			[0.01697],
			[0.01697],
			[0.0551],
			[0.01697],
			[0.05857],
			[0.0299],
			[0.01697],
			[0.01697],
			[7344e-6],
			[-0.06419],
			[-0.01984],
			[-0.04071],
			[-0.08414],
			[-0.03735],
			[0.01697],
			[-0.02998],
			[-0.06697],
			[-5247e-6],
			[-0.0254],
			[-0.04986],
			[-0.01033],
			[-5247e-6],
			[-8722e-6],
			[6195e-6],
			[0.02112],
			[0.04398],
			[9146e-6],
			[-5247e-6],
			[4739e-7],
			[4739e-7],
			[6195e-6]
		],
		[
			[9, 0.473, 0, 1, 2],
			[0, -27.06, 0, 3, 4],
			[61, -0.0152, 0, 5, 6],
			[61, -0.0268, 0, 7, 8],
			[35, 0.8551, 0, 9, 10],
			[83, 44.01, 1, 11, 12],
			[7, 182.5, 0, 13, 14],
			[24, -0.04778, 0, 15, 16],
			[9, -0.1318, 0, 17, 18],
			[84, 0.09576, 0, 19, 20],
			[65, -0.3645, 0, 21, 22],
			[10, 102.6, 0, 23, 24],
			[62, -0.04486, 1, 25, 26],
			[83, 28.03, 0, 27, 28],
			[42, 0.6667, 1, 29, 30],
			[78, 1, 0, 31, 32],
			[9, 0.3786, 0, 33, 34],
			[56, 108.9, 0, 35, 36],
			[31, 0.5969, 1, 37, 38],
			[31, 0.7194, 0, 39, 40],
			[32, 1.074, 1, 41, 42],
			[45, 0.04712, 0, 43, 44],
			[9, 0.3989, 0, 45, 46],
			[9, 0.8132, 0, 47, 48],
			[17, 2, 0, 49, 50],
			[83, 176.4, 0, 51, 52],
			[78, 1, 0, 53, 54],
			[76, 0.07534, 1, 55, 56],
			[49, 0.9285, 1, 57, 58],
			[76, -0.2093, 1, 59, 60],
			[9, 0.9536, 0, 61, 62],
			[-0.01036],
			[-0.02465],
			[-0.0513],
			[-0.01036],
			[-0.01036],
			[0.04244],
			[-0.01036],
			[0.06074],
			[-0.05922],
			[-0.0231],
			[-0.01181],
			[0.05401],
			[0.0866],
			[-0.01777],
			[-0.05207],
			[-0.03544],
			[-0.04674],
			[-0.02334],
			[-0.03671],
			[-0.01208],
			[-0.01208],
			[-4731e-6],
			[-4731e-6],
			[2614e-6],
			[2614e-6],
			[2614e-6],
			[0.05043],
			[0.02052],
			[7205e-6],
			[0.02112],
			[2614e-6],
			[2614e-6]
		],
		[
			[96, 1, 0, 1, 2],
			[92, 10.5, 0, 3, 4],
			[16, 4, 0, 5, 6],
			[68, 2442e-6, 0, 7, 8],
			[46, 0.9031, 0, 9, 10],
			[56, 74, 0, 11, 12],
			[46, 0.7011, 0, 13, 14],
			[30, 126, 0, 15, 16],
			[83, 28.03, 1, 17, 18],
			[39, 0, 0, 19, 20],
			[6, 112.4, 1, 21, 22],
			[59, 23, 1, 23, 24],
			[59, 9, 0, 25, 26],
			[68, 0.01685, 0, 27, 28],
			[59, 20, 0, 29, 30],
			[92, 3.397, 0, 31, 32],
			[5, 13.49, 1, 33, 34],
			[6, 133.7, 1, 35, 36],
			[21, 2882e-6, 1, 37, 38],
			[5, 519.5, 1, 39, 40],
			[62, -0.07559, 0, 41, 42],
			[73, -6, 1, 43, 44],
			[62, 0.01136, 0, 45, 46],
			[7, 9.66, 0, 47, 48],
			[74, 0.3113, 1, 49, 50],
			[30, 142, 1, 51, 52],
			[54, 73, 1, 53, 54],
			[10, -73.99, 0, 55, 56],
			[59, 12, 0, 57, 58],
			[62, -0.01598, 0, 59, 60],
			[47, 1.034, 0, 61, 62],
			[-0.05425],
			[-9843e-6],
			[-9844e-6],
			[-9843e-6],
			[-0.05376],
			[-0.03221],
			[-9843e-6],
			[-0.03182],
			[5839e-6],
			[0.04883],
			[5839e-6],
			[0.03601],
			[-9843e-6],
			[5839e-6],
			[-9843e-6],
			[5839e-6],
			[-0.01782],
			[-0.05694],
			[-0.02489],
			[0.06559],
			[-0.04678],
			[6847e-6],
			[-5443e-6],
			[0.03531],
			[0.01503],
			[0.04344],
			[0.01503],
			[0.01503],
			[-0.02793],
			[0.01503],
			[-0.06705],
			[-0.01196]
		],
		[
			[3, 47.48, 1, 1, 2],
			[61, -0.0122, 0, 3, 4],
			[9, 0.473, 0, 5, 6],
			[82, -0.0201, 0, 7, 8],
			[2, 39.94, 1, 9, 10],
			[53, 3.228, 1, 11, 12],
			[46, 0.75, 1, 13, 14],
			[2, 362.9, 0, 15, 16],
			[9, 1.423, 0, 17, 18],
			[6, 39.83, 0, 19, 20],
			[31, 0.6303, 1, 21, 22],
			[58, 174, 0, 23, 24],
			[9, 0.4085, 0, 25, 26],
			[75, 0.02304, 0, 27, 28],
			[58, 174, 1, 29, 30],
			[94, 18.86, 0, 31, 32],
			[94, 7.418, 0, 33, 34],
			[92, 3.397, 0, 35, 36],
			[46, 0.7352, 0, 37, 38],
			[3, 32.8, 1, 39, 40],
			[9, 0.9769, 0, 41, 42],
			[3, 12.94, 1, 43, 44],
			[46, 0.7651, 1, 45, 46],
			[53, 0.7323, 1, 47, 48],
			[39, 2.402, 0, 49, 50],
			[2, 392.8, 0, 51, 52],
			[34, 0.7949, 0, 53, 54],
			[24, -0.02301, 0, 55, 56],
			[9, 0.7854, 0, 57, 58],
			[63, -0.01181, 0, 59, 60],
			[17, 6, 0, 61, 62],
			[-0.02176],
			[-0.02176],
			[-0.02176],
			[-0.02176],
			[-0.05464],
			[-0.04039],
			[-0.02176],
			[-0.04187],
			[-0.02176],
			[0.04378],
			[-0.02176],
			[-0.02176],
			[-0.02176],
			[-31e-5],
			[0.03343],
			[-0.01674],
			[-0.03741],
			[-0.02006],
			[-0.06405],
			[-0.02006],
			[-0.02006],
			[0.01941],
			[-0.02006],
			[0.04269],
			[8176e-6],
			[0.05056],
			[8176e-6],
			[0.02998],
			[-0.03294],
			[8176e-6],
			[8176e-6],
			[-0.05204]
		],
		[
			[72, 0, 0, 1, 2],
			[36, 0.8307, 0, 3, 4],
			[3, 44.9, 1, 5, 6],
			[61, -0.03475, 0, 7, 8],
			[8, 36.04, 0, 9, 10],
			[31, 1.183, 0, 11, 12],
			[33, 0.7194, 1, 13, 14],
			[82, 0.05088, 0, 15, 16],
			[80, 2, 1, 17, 18],
			[61, -5263e-6, 0, 19, 20],
			[58, 198, 1, 21, 22],
			[2, 259.9, 1, 23, 24],
			[34, 0.6482, 0, 25, 26],
			[2, 102.6, 1, 27, 28],
			[42, 0.88, 0, 29, 30],
			[84, 0.07008, 0, 31, 32],
			[3, 93.38, 1, 33, 34],
			[83, 26.42, 0, 35, 36],
			[53, 5.624, 0, 37, 38],
			[35, 0.773, 0, 39, 40],
			[93, 11.3, 0, 41, 42],
			[61, -0.0268, 0, 43, 44],
			[22, 0.05568, 0, 45, 46],
			[72, 1, 0, 47, 48],
			[3, -107.4, 1, 49, 50],
			[38, 1.031, 1, 51, 52],
			[8, 47.06, 0, 53, 54],
			[84, 0.1097, 0, 55, 56],
			[84, 0.02555, 0, 57, 58],
			[35, 0.02553, 0, 59, 60],
			[34, 1.22, 0, 61, 62],
			[8676e-6],
			[0.0203],
			[8676e-6],
			[8676e-6],
			[0.0279],
			[0.03965],
			[0.0203],
			[0.0279],
			[-0.02249],
			[-0.03706],
			[-0.021],
			[-0.01225],
			[-0.01225],
			[8676e-6],
			[-0.01225],
			[-3782e-6],
			[-0.03912],
			[-0.0568],
			[-0.0391],
			[-4103e-7],
			[-0.05359],
			[0.03598],
			[-0.02414],
			[0.02771],
			[-0.06093],
			[-0.01672],
			[-0.03796],
			[-1533e-6],
			[-0.01297],
			[4451e-6],
			[-0.04252],
			[-0.01297]
		],
		[
			[59, 3, 0, 1, 2],
			[22, 0.0396, 0, 3, 4],
			[37, 0.875, 0, 5, 6],
			[21, -0.06714, 0, 7, 8],
			[21, 0.01782, 0, 9, 10],
			[39, 0.3358, 0, 11, 12],
			[60, 0, 0, 13, 14],
			[68, 3657e-6, 0, 15, 16],
			[21, 0.06044, 1, 17, 18],
			[13, 0.02208, 0, 19, 20],
			[4, 211.7, 1, 21, 22],
			[31, 0.9685, 0, 23, 24],
			[25, 0.02909, 1, 25, 26],
			[22, -0.3116, 0, 27, 28],
			[46, 0.8049, 1, 29, 30],
			[94, 10.27, 0, 31, 32],
			[60, -7, 0, 33, 34],
			[59, 2, 0, 35, 36],
			[34, 0.8992, 1, 37, 38],
			[16, 4, 0, 39, 40],
			[22, 0.1274, 0, 41, 42],
			[21, 0.03116, 0, 43, 44],
			[87, 9062e-6, 1, 45, 46],
			[62, 9517e-6, 0, 47, 48],
			[21, 0.042, 0, 49, 50],
			[75, 0.1683, 0, 51, 52],
			[46, 0.6181, 0, 53, 54],
			[19, 0.08994, 0, 55, 56],
			[37, 1.154, 0, 57, 58],
			[4, 32.53, 1, 59, 60],
			[39, 1.143, 0, 61, 62],
			[-0.02102],
			[0.1557],
			[0.08892],
			[-0.02602],
			[-0.05112],
			[-0.02376],
			[0.1026],
			[-0.02323],
			[335e-5],
			[0.04279],
			[-0.03625],
			[335e-5],
			[-0.02642],
			[-0.05507],
			[-0.04172],
			[1212e-6],
			[7726e-6],
			[9698e-6],
			[7726e-6],
			[7726e-6],
			[0.03953],
			[7726e-6],
			[7726e-6],
			[7726e-6],
			[-0.01373],
			[7726e-6],
			[-0.01385],
			[-0.04176],
			[-5036e-6],
			[7726e-6],
			[-0.03174],
			[-5036e-6]
		],
		[
			[59, 3, 0, 1, 2],
			[22, 0.0396, 0, 3, 4],
			[30, 156, 0, 5, 6],
			[20, 0.04379, 1, 7, 8],
			[92, 5.514, 0, 9, 10],
			[82, -1875e-6, 0, 11, 12],
			[42, 0.7278, 0, 13, 14],
			[68, 3357e-6, 0, 15, 16],
			[68, 4902e-6, 0, 17, 18],
			[80, 1, 1, 19, 20],
			[87, 0.03184, 0, 21, 22],
			[78, 2, 0, 23, 24],
			[68, 2682e-6, 0, 25, 26],
			[28, -0.1565, 0, 27, 28],
			[59, 20, 1, 29, 30],
			[42, 0.7278, 1, 31, 32],
			[22, -0.05716, 0, 33, 34],
			[4, 211.7, 0, 35, 36],
			[82, -4627e-6, 0, 37, 38],
			[82, -0.03262, 0, 39, 40],
			[69, 3.472, 0, 41, 42],
			[9, 0.4172, 0, 43, 44],
			[92, 21.94, 0, 45, 46],
			[22, -0.1079, 1, 47, 48],
			[9, 0.4827, 0, 49, 50],
			[69, 6.552, 0, 51, 52],
			[3, 47.48, 1, 53, 54],
			[73, 10, 0, 55, 56],
			[4, 265, 0, 57, 58],
			[22, -0.01217, 0, 59, 60],
			[67, 0.0417, 1, 61, 62],
			[0.02199],
			[-0.03865],
			[-0.01807],
			[-0.04887],
			[0.1878],
			[-0.02139],
			[0.06832],
			[-0.03669],
			[-0.01192],
			[-0.02996],
			[-0.04173],
			[-0.06674],
			[-0.01192],
			[0.04127],
			[-0.01192],
			[0.0129],
			[0.03414],
			[-0.03711],
			[-0.01576],
			[0.04172],
			[-0.03741],
			[0.03137],
			[-0.05288],
			[-0.01832],
			[0.01252],
			[0.01252],
			[0.0459],
			[0.01252],
			[-0.02092],
			[0.01252],
			[-0.05596],
			[5011e-6]
		],
		[
			[9, 0.473, 0, 1, 2],
			[22, -0.05716, 0, 3, 4],
			[3, 39.99, 1, 5, 6],
			[93, 11.06, 0, 7, 8],
			[46, 0.6807, 1, 9, 10],
			[55, 71, 1, 11, 12],
			[46, 0.8265, 1, 13, 14],
			[78, 2, 0, 15, 16],
			[48, 0.9924, 0, 17, 18],
			[68, 4412e-6, 0, 19, 20],
			[93, 11.3, 0, 21, 22],
			[31, 1.164, 1, 23, 24],
			[68, 2682e-6, 0, 25, 26],
			[28, -0.1565, 0, 27, 28],
			[49, 0.8658, 1, 29, 30],
			[50, 0.9914, 0, 31, 32],
			[45, 0.01442, 0, 33, 34],
			[62, -0.01042, 0, 35, 36],
			[19, -0.03327, 0, 37, 38],
			[31, 0.4185, 0, 39, 40],
			[83, 58.59, 1, 41, 42],
			[49, 0.6196, 0, 43, 44],
			[5, 9.067, 0, 45, 46],
			[2, 542.1, 1, 47, 48],
			[62, 2026e-6, 0, 49, 50],
			[9, 0.634, 0, 51, 52],
			[78, 1, 0, 53, 54],
			[8, 109.1, 0, 55, 56],
			[61, -0.04614, 0, 57, 58],
			[12, 2.119, 0, 59, 60],
			[50, 0.8941, 1, 61, 62],
			[0.05203],
			[-0.02427],
			[-0.01051],
			[-0.04997],
			[9076e-7],
			[0.04722],
			[-0.03594],
			[9076e-7],
			[-0.03451],
			[0.02886],
			[-0.03451],
			[-6316e-6],
			[-0.03451],
			[-0.05784],
			[-0.03451],
			[-0.04014],
			[-0.0485],
			[0.04098],
			[-0.03736],
			[0.01627],
			[-5182e-6],
			[0.07995],
			[0.09542],
			[-0.02366],
			[3368e-6],
			[3368e-6],
			[3368e-6],
			[0.0318],
			[-9862e-6],
			[3368e-6],
			[-9862e-6],
			[-0.03275]
		],
		[
			[96, 1, 0, 1, 2],
			[20, 1e9, 0, 3, 4],
			[61, -0.0268, 0, 5, 6],
			[83, 30.02, 1, 7, 8],
			[56, 79.02, 0, 9, 10],
			[83, 66.87, 1, 11, 12],
			[6, 241.7, 0, 13, 14],
			[2, 46.14, 1, 15, 16],
			[42, 0.8265, 1, 17, 18],
			[65, -0.0875, 1, 19, 20],
			[67, 0.05275, 0, 21, 22],
			[2, 150.6, 1, 23, 24],
			[60, 2, 1, 25, 26],
			[80, 2, 1, 27, 28],
			[36, 0.6968, 0, 29, 30],
			[22, 1e9, 0, 31, 32],
			[61, -5263e-6, 0, 33, 34],
			[40, 0.8214, 1, 35, 36],
			[54, 86, 1, 37, 38],
			[67, 0.0417, 1, 39, 40],
			[60, -2, 1, 41, 42],
			[23, 0.02911, 0, 43, 44],
			[6, 75.17, 1, 45, 46],
			[26, -0.1778, 0, 47, 48],
			[60, 9, 1, 49, 50],
			[96, 3, 0, 51, 52],
			[80, 2, 0, 53, 54],
			[25, 0.02909, 1, 55, 56],
			[25, -0.2067, 1, 57, 58],
			[25, 0.03804, 1, 59, 60],
			[54, 82, 0, 61, 62],
			[-0.05281],
			[-0.01497],
			[-0.02798],
			[-0.01497],
			[-2195e-6],
			[0.03063],
			[-8194e-6],
			[-0.01497],
			[-0.07875],
			[-0.01539],
			[-0.04562],
			[0.04657],
			[-0.01606],
			[0.07683],
			[-0.06251],
			[-326e-5],
			[-0.06997],
			[-0.03505],
			[-0.02263],
			[-0.01194],
			[-0.01194],
			[9308e-7],
			[9308e-7],
			[-0.01194],
			[0.03355],
			[0.01562],
			[9308e-7],
			[9308e-7],
			[0.02684],
			[8978e-6],
			[9308e-7],
			[9308e-7]
		],
		[
			[68, 3003e-6, 0, 1, 2],
			[7, 182.5, 0, 3, 4],
			[92, 5.272, 0, 5, 6],
			[76, 0.183, 0, 7, 8],
			[24, 0.1178, 0, 9, 10],
			[96, 1, 0, 11, 12],
			[17, 3, 0, 13, 14],
			[78, 15, 0, 15, 16],
			[54, 82, 1, 17, 18],
			[9, 0.9536, 0, 19, 20],
			[50, 0.8156, 0, 21, 22],
			[22, -0.04215, 1, 23, 24],
			[80, 2, 0, 25, 26],
			[3, 370.2, 1, 27, 28],
			[43, 0.8266, 0, 29, 30],
			[92, 1.627, 0, 31, 32],
			[30, 92, 0, 33, 34],
			[92, 1.232, 0, 35, 36],
			[86, 0.01646, 0, 37, 38],
			[9, 0.3786, 0, 39, 40],
			[6, 205.5, 1, 41, 42],
			[35, 2.336, 0, 43, 44],
			[67, -0.05467, 0, 45, 46],
			[92, 4.982, 0, 47, 48],
			[48, 0.7735, 0, 49, 50],
			[9, 0.5152, 0, 51, 52],
			[78, 2, 0, 53, 54],
			[62, 9517e-6, 1, 55, 56],
			[22, 0.01645, 1, 57, 58],
			[13, 0.02849, 0, 59, 60],
			[9, 0.5, 0, 61, 62],
			[-0.05706],
			[7909e-6],
			[-0.02044],
			[0.05018],
			[-0.05669],
			[-0.01245],
			[0.06587],
			[-0.02433],
			[-0.05674],
			[0.03491],
			[5636e-6],
			[-0.05518],
			[-8711e-7],
			[0.08503],
			[-0.1266],
			[-0.03253],
			[-0.02594],
			[-0.01105],
			[-0.03647],
			[-0.05278],
			[-0.01528],
			[-0.01105],
			[-0.06129],
			[-0.01746],
			[-0.01105],
			[5495e-6],
			[-0.01105],
			[0.0503],
			[0.03134],
			[9738e-6],
			[-0.01105],
			[1719e-6]
		],
		[
			[59, 4, 0, 1, 2],
			[61, -0.01364, 0, 3, 4],
			[74, -0.1524, 1, 5, 6],
			[22, 0.07399, 0, 7, 8],
			[85, 2, 0, 9, 10],
			[84, 0.1521, 1, 11, 12],
			[36, 0.7327, 1, 13, 14],
			[21, -0.09952, 0, 15, 16],
			[21, 0.03116, 0, 17, 18],
			[25, -0.1411, 0, 19, 20],
			[64, -0.03, 0, 21, 22],
			[16, 37, 0, 23, 24],
			[82, -0.06788, 0, 25, 26],
			[80, 2, 1, 27, 28],
			[10, 206.8, 0, 29, 30],
			[94, 16.06, 0, 31, 32],
			[82, -5696e-6, 0, 33, 34],
			[16, 5, 0, 35, 36],
			[82, 0.05088, 0, 37, 38],
			[8, 168, 0, 39, 40],
			[74, 0.1259, 0, 41, 42],
			[43, 0.8266, 0, 43, 44],
			[64, 0.563, 0, 45, 46],
			[7, 472.9, 1, 47, 48],
			[42, 0.8265, 0, 49, 50],
			[6, 133.7, 1, 51, 52],
			[89, 72.88, 0, 53, 54],
			[21, -0.05179, 0, 55, 56],
			[84, 0.2553, 1, 57, 58],
			[82, -1057e-6, 0, 59, 60],
			[22, 0.01255, 0, 61, 62],
			[-0.01664],
			[-0.01664],
			[-0.02038],
			[-0.05058],
			[-0.02141],
			[-0.01664],
			[-0.01664],
			[-0.0487],
			[-4054e-6],
			[0.07187],
			[0.0281],
			[-4054e-6],
			[-4054e-6],
			[-0.01664],
			[-0.01664],
			[-4054e-6],
			[-0.05689],
			[-0.0244],
			[-0.01934],
			[-0.06227],
			[0.09423],
			[-0.01934],
			[-0.01934],
			[0.01268],
			[0.02391],
			[0.04292],
			[0.01438],
			[0.02391],
			[0.01438],
			[-2811e-7],
			[-0.05015],
			[-5059e-6]
		],
		[
			[60, 0, 0, 1, 2],
			[4, 67.15, 0, 3, 4],
			[21, 0.02074, 1, 5, 6],
			[23, 0.419, 0, 7, 8],
			[36, 0.9709, 0, 9, 10],
			[46, 0.7651, 1, 11, 12],
			[23, 0.165, 1, 13, 14],
			[76, 0.4444, 1, 15, 16],
			[0.02411],
			[85, 2, 0, 17, 18],
			[20, 0.01439, 1, 19, 20],
			[17, 6, 0, 21, 22],
			[49, 0.8658, 1, 23, 24],
			[7, 14.1, 0, 25, 26],
			[16, 6, 0, 27, 28],
			[0, 50.44, 0, 29, 30],
			[0.02167],
			[39, 0.3358, 1, 31, 32],
			[21, 0.07907, 1, 33, 34],
			[16, 0, 0, 35, 36],
			[88, 0.0104, 0, 37, 38],
			[20, 0.1321, 0, 39, 40],
			[34, 0.5621, 1, 41, 42],
			[7, 217.5, 0, 43, 44],
			[23, 0.233, 0, 45, 46],
			[0.1806],
			[13, 0.024, 0, 47, 48],
			[58, 174, 0, 49, 50],
			[76, 0.03006, 1, 51, 52],
			[-0.05322],
			[-0.0322],
			[-8715e-6],
			[8762e-6],
			[-0.01769],
			[-8715e-6],
			[-0.01769],
			[-0.03306],
			[-0.01769],
			[-0.02971],
			[4083e-6],
			[0.03205],
			[4083e-6],
			[0.03274],
			[4083e-6],
			[-6844e-6],
			[-8743e-6],
			[-0.04732],
			[-0.02977],
			[-0.05866],
			[-0.04704],
			[-6499e-6],
			[0.02528],
			[-0.02254]
		],
		[
			[92, 2.661, 0, 1, 2],
			[61, -5263e-6, 0, 3, 4],
			[49, 0.9119, 1, 5, 6],
			[83, 30.02, 1, 7, 8],
			[83, 20.42, 0, 9, 10],
			[35, 0.2406, 0, 11, 12],
			[46, 0.8265, 0, 13, 14],
			[4, 99.74, 1, 15, 16],
			[80, 2, 0, 17, 18],
			[0, -14.83, 0, 19, 20],
			[86, 0.01346, 0, 21, 22],
			[3, 370.2, 1, 23, 24],
			[61, -0.01863, 0, 25, 26],
			[17, 5, 0, 27, 28],
			[50, 0.8941, 1, 29, 30],
			[0, -14.83, 0, 31, 32],
			[93, 16.13, 0, 33, 34],
			[35, 0, 1, 35, 36],
			[74, 0.2623, 0, 37, 38],
			[51, 0.1164, 0, 39, 40],
			[26, 0.0142, 1, 41, 42],
			[74, 0.1185, 0, 43, 44],
			[55, 79, 1, 45, 46],
			[4, 222.9, 1, 47, 48],
			[38, 1.09, 0, 49, 50],
			[83, 49.11, 1, 51, 52],
			[25, 0.03804, 1, 53, 54],
			[25, 1e9, 0, 55, 56],
			[3, 330.3, 0, 57, 58],
			[4, 265, 0, 59, 60],
			[17, 12, 0, 61, 62],
			[-0.02769],
			[-0.05442],
			[-0.03109],
			[-0.02769],
			[-0.02336],
			[-0.01904],
			[-0.02769],
			[-0.02336],
			[-0.0141],
			[-0.01904],
			[-0.01904],
			[-0.0141],
			[-9163e-6],
			[-9943e-6],
			[-0.0141],
			[-9163e-6],
			[5538e-6],
			[5538e-6],
			[0.04861],
			[5538e-6],
			[5538e-6],
			[0.02234],
			[0.04163],
			[0.02234],
			[-2629e-6],
			[5538e-6],
			[5538e-6],
			[-2629e-6],
			[-2629e-6],
			[-9163e-6],
			[-6128e-6],
			[-9163e-6]
		],
		[
			[4, 40.84, 1, 1, 2],
			[82, -0.01188, 0, 3, 4],
			[46, 0.8939, 1, 5, 6],
			[51, 0.1914, 0, 7, 8],
			[66, 6667e-7, 1, 9, 10],
			[39, 0.3358, 0, 11, 12],
			[17, 12, 0, 13, 14],
			[92, 7.141, 0, 15, 16],
			[38, 0.1774, 1, 17, 18],
			[6, 39.83, 0, 19, 20],
			[24, -0.05908, 1, 21, 22],
			[6, 151.8, 1, 23, 24],
			[3, 330.3, 0, 25, 26],
			[92, 2.228, 0, 27, 28],
			[51, 0.128, 0, 29, 30],
			[10, -110.2, 0, 31, 32],
			[38, 1.857, 1, 33, 34],
			[-0.01987],
			[0.1089],
			[92, 4.714, 0, 35, 36],
			[86, 1147e-6, 0, 37, 38],
			[65, -0.03025, 1, 39, 40],
			[92, 9.454, 0, 41, 42],
			[82, -1875e-6, 0, 43, 44],
			[34, 0.949, 0, 45, 46],
			[29, 7868e-6, 1, 47, 48],
			[46, 0.6617, 1, 49, 50],
			[7, 46.75, 1, 51, 52],
			[26, -0.1778, 0, 53, 54],
			[13, 0.01565, 0, 55, 56],
			[82, 8051e-6, 0, 57, 58],
			[189e-5],
			[-0.03864],
			[0.07434],
			[189e-5],
			[-0.05466],
			[-9087e-6],
			[-557e-5],
			[-0.07213],
			[-0.05558],
			[0.01074],
			[-0.04603],
			[-0.01297],
			[-7772e-6],
			[-7772e-6],
			[-7772e-6],
			[6525e-6],
			[0.02263],
			[-4019e-6],
			[1454e-6],
			[-7772e-6],
			[-0.05063],
			[-0.018],
			[-0.018],
			[-7772e-6],
			[-0.02328],
			[-0.05034],
			[-7772e-6],
			[-0.03061]
		],
		[
			[72, 0, 0, 1, 2],
			[49, 0.8658, 0, 3, 4],
			[92, 2.805, 0, 5, 6],
			[75, 0.13, 0, 7, 8],
			[68, 8895e-6, 0, 9, 10],
			[81, -0.08132, 0, 11, 12],
			[16, 4, 0, 13, 14],
			[68, 0.0112, 0, 15, 16],
			[82, -0.1447, 0, 17, 18],
			[0, 216.5, 0, 19, 20],
			[82, 0.01326, 0, 21, 22],
			[11, 2, 0, 23, 24],
			[10, -266, 0, 25, 26],
			[2, 179.8, 1, 27, 28],
			[49, 0.9119, 0, 29, 30],
			[65, -0.224, 0, 31, 32],
			[81, -0.0114, 0, 33, 34],
			[45, 0.02362, 0, 35, 36],
			[2, 124.7, 1, 37, 38],
			[75, 0.1849, 0, 39, 40],
			[56, 85.74, 0, 41, 42],
			[43, 0.7994, 0, 43, 44],
			[23, 0.1531, 0, 45, 46],
			[93, 5.63, 0, 47, 48],
			[47, 2.04, 1, 49, 50],
			[79, 2, 0, 51, 52],
			[93, 14.61, 0, 53, 54],
			[8, 194.6, 0, 55, 56],
			[88, 1626e-6, 1, 57, 58],
			[72, 1, 0, 59, 60],
			[22, -0.01217, 0, 61, 62],
			[0.01083],
			[0.04724],
			[0.04795],
			[0.01083],
			[0.1128],
			[0.01842],
			[0.01083],
			[0.01083],
			[0.01083],
			[-0.03441],
			[-951e-5],
			[-0.0639],
			[0.01083],
			[-3651e-6],
			[-0.05299],
			[-0.01546],
			[-0.02757],
			[-0.02757],
			[-0.02757],
			[-0.02757],
			[-0.02757],
			[-0.02757],
			[-0.05078],
			[-0.02757],
			[-0.02757],
			[-4781e-6],
			[0.04285],
			[-0.01096],
			[0.03387],
			[1785e-6],
			[-0.02757],
			[-9296e-6]
		],
		[
			[9, 0.473, 0, 1, 2],
			[22, -0.03668, 0, 3, 4],
			[3, 47.48, 1, 5, 6],
			[20, -0.07644, 0, 7, 8],
			[46, 0.6807, 1, 9, 10],
			[55, 71, 1, 11, 12],
			[46, 0.7011, 1, 13, 14],
			[93, 21.84, 0, 15, 16],
			[91, 0.068, 1, 17, 18],
			[51, 0.1369, 0, 19, 20],
			[64, -0.03, 0, 21, 22],
			[82, 1961e-6, 0, 23, 24],
			[91, 0.068, 1, 25, 26],
			[74, -0.1524, 1, 27, 28],
			[23, 0.257, 1, 29, 30],
			[82, -0.3921, 0, 31, 32],
			[58, 198, 0, 33, 34],
			[60, 8, 1, 35, 36],
			[49, 1.18, 0, 37, 38],
			[20, -0.1145, 1, 39, 40],
			[14, 0, 0, 41, 42],
			[35, 0.773, 0, 43, 44],
			[9, 0.4448, 0, 45, 46],
			[9, 0.8132, 0, 47, 48],
			[56, 79.59, 0, 49, 50],
			[39, 4, 0, 51, 52],
			[8, 26.09, 0, 53, 54],
			[60, 29, 1, 55, 56],
			[58, 18, 0, 57, 58],
			[62, -0.01364, 0, 59, 60],
			[22, 0.06326, 1, 61, 62],
			[0.05277],
			[-0.0231],
			[0.05513],
			[-0.04289],
			[-0.02377],
			[0.09121],
			[0.1413],
			[-0.02998],
			[-0.03233],
			[2959e-6],
			[-0.0325],
			[0.02462],
			[-0.0325],
			[-0.03353],
			[-0.05777],
			[-0.0325],
			[-0.02785],
			[0.01861],
			[-0.05055],
			[-0.01393],
			[-0.03008],
			[0.0793],
			[-2016e-6],
			[0.04938],
			[7117e-6],
			[7117e-6],
			[7117e-6],
			[0.03415],
			[-0.02792],
			[7117e-6],
			[-0.05125],
			[7117e-6]
		],
		[
			[72, 0, 0, 1, 2],
			[46, 0.7011, 0, 3, 4],
			[59, 2, 1, 5, 6],
			[61, -0.02047, 0, 7, 8],
			[59, 23, 1, 9, 10],
			[89, 325.3, 0, 11, 12],
			[30, 135, 0, 13, 14],
			[82, 0.2039, 0, 15, 16],
			[1, 313, 0, 17, 18],
			[59, 9, 0, 19, 20],
			[34, 1.071, 0, 21, 22],
			[83, 198.8, 1, 23, 24],
			[66, 0.2131, 0, 25, 26],
			[59, 13, 0, 27, 28],
			[46, 0.7786, 1, 29, 30],
			[59, 7, 1, 31, 32],
			[89, 161.5, 0, 33, 34],
			[83, 39.56, 0, 35, 36],
			[46, 0.4583, 0, 37, 38],
			[92, 6.875, 0, 39, 40],
			[25, 0.02262, 1, 41, 42],
			[66, -0.112, 0, 43, 44],
			[32, 0.8812, 0, 45, 46],
			[30, 130, 1, 47, 48],
			[82, -0.01188, 0, 49, 50],
			[4, 374.4, 0, 51, 52],
			[24, -2, 1, 53, 54],
			[47, 0.92, 1, 55, 56],
			[2, 77.76, 1, 57, 58],
			[92, 2.805, 0, 59, 60],
			[72, 2, 0, 61, 62],
			[3933e-6],
			[0.01656],
			[3933e-6],
			[0.01548],
			[0.01656],
			[0.04678],
			[0.01656],
			[0.01656],
			[-0.03053],
			[3933e-6],
			[3933e-6],
			[-0.03243],
			[3933e-6],
			[-0.07663],
			[3933e-6],
			[-0.03417],
			[-0.05466],
			[-0.03673],
			[-5426e-7],
			[-0.01905],
			[-5426e-7],
			[0.09691],
			[-5426e-7],
			[0.04041],
			[-0.05521],
			[-0.02654],
			[-0.0436],
			[1032e-6],
			[-1899e-6],
			[0.02902],
			[-0.02932],
			[-1899e-6]
		],
		[
			[30, 156, 0, 1, 2],
			[83, 44.01, 1, 3, 4],
			[46, 0.8559, 1, 5, 6],
			[2, 62.44, 1, 7, 8],
			[60, -1, 1, 9, 10],
			[75, 0.1549, 0, 11, 12],
			[51, 0.1473, 0, 13, 14],
			[28, 3978e-6, 1, 15, 16],
			[59, 12, 0, 17, 18],
			[74, 0.3879, 0, 19, 20],
			[59, 0, 0, 21, 22],
			[40, 0.3629, 0, 23, 24],
			[2, 118.8, 1, 25, 26],
			[50, 0.9046, 0, 27, 28],
			[60, 23, 0, 29, 30],
			[92, 6.511, 0, 31, 32],
			[47, 1.193, 1, 33, 34],
			[75, 5101e-6, 0, 35, 36],
			[51, 0.08791, 0, 37, 38],
			[64, -0.01833, 1, 39, 40],
			[60, -6, 1, 41, 42],
			[83, 157.7, 0, 43, 44],
			[40, 1.03, 0, 45, 46],
			[59, 28, 1, 47, 48],
			[52, 2.253, 0, 49, 50],
			[45, 0.1379, 1, 51, 52],
			[46, 0.7352, 0, 53, 54],
			[73, 6, 0, 55, 56],
			[52, 2.702, 0, 57, 58],
			[60, 1, 0, 59, 60],
			[38, 0.6702, 1, 61, 62],
			[-0.04427],
			[-8595e-6],
			[-0.06781],
			[-0.01532],
			[-8595e-6],
			[-0.03042],
			[-0.04364],
			[-8595e-6],
			[-8595e-6],
			[-8595e-6],
			[-8595e-6],
			[0.06155],
			[-8595e-6],
			[0.01292],
			[-4785e-6],
			[0.03426],
			[-6816e-7],
			[-6816e-7],
			[2568e-7],
			[0.03248],
			[-6816e-7],
			[-6816e-7],
			[95e-4],
			[-6816e-7],
			[-6816e-7],
			[-0.03926],
			[-0.03698],
			[-9499e-6],
			[-7753e-6],
			[-6816e-7],
			[-0.05303],
			[-6816e-7]
		],
		[
			[68, 2682e-6, 0, 1, 2],
			[55, 72, 1, 3, 4],
			[82, -1875e-6, 0, 5, 6],
			[60, 29, 0, 7, 8],
			[58, 234, 0, 9, 10],
			[60, 3, 1, 11, 12],
			[92, 5.272, 0, 13, 14],
			[55, 72, 0, 15, 16],
			[0, 173.8, 0, 17, 18],
			[55, 96, 0, 19, 20],
			[64, -0.03675, 0, 21, 22],
			[50, 0.8538, 0, 23, 24],
			[80, 2, 0, 25, 26],
			[68, 4902e-6, 0, 27, 28],
			[62, -0.04147, 1, 29, 30],
			[50, 0.3462, 0, 31, 32],
			[63, -0.01068, 0, 33, 34],
			[88, 9912e-7, 0, 35, 36],
			[26, -1919e-6, 0, 37, 38],
			[42, 0.7445, 1, 39, 40],
			[50, 1.257, 1, 41, 42],
			[9, 0.4827, 0, 43, 44],
			[53, 5.029, 0, 45, 46],
			[35, 0.8218, 0, 47, 48],
			[20, 0.04379, 1, 49, 50],
			[60, 40, 0, 51, 52],
			[74, 0.2415, 0, 53, 54],
			[93, 10.61, 0, 55, 56],
			[3, 76.03, 1, 57, 58],
			[6, 293, 1, 59, 60],
			[58, 174, 0, 61, 62],
			[-0.06405],
			[-0.01327],
			[-0.03419],
			[0.06037],
			[0.02961],
			[-0.06911],
			[0.04435],
			[-0.03089],
			[0.05482],
			[0.02046],
			[-0.04539],
			[0.03395],
			[-0.04931],
			[0.04186],
			[-0.05363],
			[0.04438],
			[-7373e-6],
			[0.05366],
			[-0.02126],
			[0.05569],
			[0.03565],
			[9325e-6],
			[-0.04866],
			[9325e-6],
			[-0.02622],
			[-0.01766],
			[-0.04485],
			[-0.0262],
			[-0.01766],
			[-9531e-6],
			[4742e-6],
			[-9531e-6]
		],
		[
			[59, 2, 0, 1, 2],
			[22, 0.03293, 0, 3, 4],
			[9, 0.6981, 0, 5, 6],
			[20, 0.04379, 1, 7, 8],
			[55, 70, 1, 9, 10],
			[18, 6, 1, 11, 12],
			[46, 0.7192, 1, 13, 14],
			[74, 0.04266, 1, 15, 16],
			[75, 0.05546, 1, 17, 18],
			[83, 198.8, 1, 19, 20],
			[9, 0.4448, 0, 21, 22],
			[59, 13, 0, 23, 24],
			[46, 0.6181, 0, 25, 26],
			[32, 0.5971, 0, 27, 28],
			[59, 23, 1, 29, 30],
			[96, 3, 0, 31, 32],
			[50, 1.192, 1, 33, 34],
			[20, 0.07871, 0, 35, 36],
			[29, -0.1357, 0, 37, 38],
			[59, -3, 0, 39, 40],
			[67, -0.4987, 0, 41, 42],
			[59, -2, 0, 43, 44],
			[61, -0.01608, 0, 45, 46],
			[20, 1e9, 0, 47, 48],
			[75, 0.02524, 0, 49, 50],
			[80, 2, 1, 51, 52],
			[59, 20, 0, 53, 54],
			[19, -4977e-6, 1, 55, 56],
			[74, -0.1524, 1, 57, 58],
			[22, -0.01055, 0, 59, 60],
			[67, 0.05275, 0, 61, 62],
			[-0.05429],
			[0.0515],
			[-0.02944],
			[0.02558],
			[-0.02386],
			[0.05778],
			[-0.02503],
			[0.1928],
			[6776e-7],
			[-0.03453],
			[6776e-7],
			[0.05157],
			[0.04131],
			[-0.04308],
			[-4689e-6],
			[0.05663],
			[-0.0432],
			[8635e-6],
			[0.02296],
			[-0.02274],
			[0.02527],
			[6901e-6],
			[1135e-6],
			[-0.05693],
			[0.01162],
			[0.01162],
			[0.01162],
			[0.03668],
			[-0.01707],
			[0.01162],
			[-0.05127],
			[0.01162]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[6, 145.9, 1, 3, 4],
			[9, 0.4448, 0, 5, 6],
			[88, 554e-5, 0, 7, 8],
			[63, 0.01734, 0, 9, 10],
			[0, -3.712, 0, 11, 12],
			[67, -0.049, 1, 13, 14],
			[50, 0.04831, 1, 15, 16],
			[50, 1.223, 1, 17, 18],
			[95, 568.1, 0, 19, 20],
			[74, 0.3449, 1, 21, 22],
			[96, 2, 0, 23, 24],
			[94, 6.848, 0, 25, 26],
			[2, 93.67, 1, 27, 28],
			[43, 0.7994, 0, 29, 30],
			[29, 0.3247, 1, 31, 32],
			[61, -0.01954, 0, 33, 34],
			[51, 0.2134, 0, 35, 36],
			[5, -375.3, 1, 37, 38],
			[50, 1.76, 0, 39, 40],
			[26, -2, 0, 41, 42],
			[35, 0.5017, 0, 43, 44],
			[45, 0.1529, 0, 45, 46],
			[95, 60.61, 0, 47, 48],
			[44, 0.264, 0, 49, 50],
			[29, 0.2288, 0, 51, 52],
			[76, 0.03006, 1, 53, 54],
			[50, 0.5231, 1, 55, 56],
			[80, 2, 0, 57, 58],
			[6, 273, 0, 59, 60],
			[50, 1.074, 0, 61, 62],
			[-0.04596],
			[0.01898],
			[-0.0259],
			[0.03083],
			[-0.06341],
			[-0.01103],
			[0.04433],
			[-0.03643],
			[-0.0347],
			[-0.01399],
			[1541e-6],
			[-0.01399],
			[1541e-6],
			[0.02316],
			[0.1136],
			[1541e-6],
			[-0.03625],
			[2496e-6],
			[-0.01656],
			[0.07023],
			[-0.05107],
			[0.01063],
			[-0.03708],
			[197e-5],
			[-0.05952],
			[-0.02026],
			[0.02129],
			[-0.01228],
			[0.03741],
			[0.01529],
			[-7198e-6],
			[0.01529]
		],
		[
			[68, 2682e-6, 0, 1, 2],
			[61, -0.01438, 0, 3, 4],
			[13, 0.02849, 0, 5, 6],
			[92, 1.232, 0, 7, 8],
			[59, 28, 1, 9, 10],
			[17, 3, 0, 11, 12],
			[82, 0.2039, 0, 13, 14],
			[16, 16, 0, 15, 16],
			[59, 35, 0, 17, 18],
			[42, 0.9198, 1, 19, 20],
			[51, 0.08791, 0, 21, 22],
			[4, 160.8, 1, 23, 24],
			[85, 2, 0, 25, 26],
			[59, 8, 0, 27, 28],
			[59, 18, 1, 29, 30],
			[81, -8094e-7, 0, 31, 32],
			[-0.03759],
			[61, -0.0268, 0, 33, 34],
			[82, -0.01352, 1, 35, 36],
			[25, 0.02909, 1, 37, 38],
			[9, 0.3989, 0, 39, 40],
			[65, -0.0875, 0, 41, 42],
			[64, -0.05267, 0, 43, 44],
			[82, -0.1867, 0, 45, 46],
			[28, -2, 0, 47, 48],
			[49, 0.9119, 0, 49, 50],
			[34, 0.8874, 0, 51, 52],
			[25, 0.142, 1, 53, 54],
			[26, -1919e-6, 1, 55, 56],
			[51, 0.1768, 0, 57, 58],
			[92, 11.56, 0, 59, 60],
			[-0.03759],
			[-0.06936],
			[-0.03759],
			[-2897e-6],
			[-158e-5],
			[-0.03425],
			[0.04123],
			[0.01794],
			[-158e-5],
			[143e-5],
			[0.03052],
			[-158e-5],
			[0.05638],
			[-158e-5],
			[0.06355],
			[-0.01584],
			[-0.01584],
			[6535e-6],
			[0.02362],
			[-6267e-7],
			[-9958e-6],
			[-0.01584],
			[-0.02899],
			[-0.01584],
			[-0.01584],
			[-0.01584],
			[-0.06039],
			[-0.02457],
			[-0.03404],
			[-0.01584]
		],
		[
			[59, 1, 0, 1, 2],
			[22, 0.04376, 0, 3, 4],
			[25, 0.02909, 1, 5, 6],
			[7, 14.1, 0, 7, 8],
			[55, 68, 1, 9, 10],
			[75, 0.145, 0, 11, 12],
			[41, 1.044, 0, 13, 14],
			[19, 0.01258, 0, 15, 16],
			[17, 16, 0, 17, 18],
			[16, 18, 0, 19, 20],
			[9, 0.4448, 0, 21, 22],
			[36, 0.7895, 1, 23, 24],
			[59, 11, 1, 25, 26],
			[68, 3657e-6, 0, 27, 28],
			[92, 13.25, 0, 29, 30],
			[52, 3.878, 1, 31, 32],
			[13, 0.025, 0, 33, 34],
			[81, -0.05595, 0, 35, 36],
			[92, 16.17, 0, 37, 38],
			[83, 198.8, 1, 39, 40],
			[81, -8094e-7, 0, 41, 42],
			[17, 0, 0, 43, 44],
			[67, -0.15, 1, 45, 46],
			[39, 0.4593, 0, 47, 48],
			[59, 28, 1, 49, 50],
			[22, -0.05716, 0, 51, 52],
			[69, 3.192, 0, 53, 54],
			[59, 49, 0, 55, 56],
			[69, 3.328, 0, 57, 58],
			[81, -0.02478, 0, 59, 60],
			[67, 0.4061, 0, 61, 62],
			[-0.03518],
			[-7165e-7],
			[0.1552],
			[-0.0182],
			[0.01764],
			[-0.05859],
			[-0.03563],
			[0.02399],
			[-0.04322],
			[0.01479],
			[0.03956],
			[-0.01138],
			[0.05895],
			[-0.03822],
			[-0.01818],
			[0.04081],
			[0.01717],
			[0.03751],
			[8489e-6],
			[-0.02993],
			[2327e-6],
			[-0.04339],
			[0.03816],
			[-518e-5],
			[-0.104],
			[0.02434],
			[3686e-6],
			[-0.04329],
			[2112e-6],
			[-0.02826],
			[0.05139],
			[2112e-6]
		],
		[
			[72, 0, 0, 1, 2],
			[46, 0.7011, 0, 3, 4],
			[59, 2, 1, 5, 6],
			[56, 71.13, 0, 7, 8],
			[59, 28, 1, 9, 10],
			[22, 0.06326, 0, 11, 12],
			[9, 0.4923, 0, 13, 14],
			[82, 0.05088, 0, 15, 16],
			[74, -0.1524, 1, 17, 18],
			[59, 9, 0, 19, 20],
			[54, 80, 1, 21, 22],
			[20, 0.07871, 1, 23, 24],
			[31, 1.075, 1, 25, 26],
			[54, 73, 1, 27, 28],
			[22, -0.01409, 0, 29, 30],
			[40, 0.8416, 1, 31, 32],
			[29, 0.08564, 0, 33, 34],
			[23, 0.1531, 0, 35, 36],
			[6, 293, 0, 37, 38],
			[92, 6.875, 0, 39, 40],
			[59, 20, 0, 41, 42],
			[47, 1, 0, 43, 44],
			[20, 0.1321, 1, 45, 46],
			[6, 361.7, 1, 47, 48],
			[82, 1961e-6, 0, 49, 50],
			[83, 353, 1, 51, 52],
			[92, 6.137, 0, 53, 54],
			[28, -0.03644, 0, 55, 56],
			[20, -0.2441, 0, 57, 58],
			[74, 0.1339, 1, 59, 60],
			[21, -0.4324, 0, 61, 62],
			[3366e-6],
			[0.0278],
			[3366e-6],
			[3366e-6],
			[3366e-6],
			[8077e-6],
			[0.03186],
			[3366e-6],
			[-0.02783],
			[3366e-6],
			[3366e-6],
			[-5978e-6],
			[-0.04949],
			[3366e-6],
			[-0.07921],
			[3366e-6],
			[-0.0499],
			[4641e-6],
			[0.08274],
			[-0.02781],
			[-0.03373],
			[0.04805],
			[-0.01698],
			[0.04293],
			[-0.02031],
			[-0.05427],
			[-0.06215],
			[-5834e-6],
			[-0.03527],
			[0.0148],
			[-0.04193],
			[0.01015]
		],
		[
			[13, 0.02754, 0, 1, 2],
			[17, 3, 0, 3, 4],
			[73, 1e9, 0, 5, 6],
			[59, 12, 0, 7, 8],
			[58, 174, 0, 9, 10],
			[81, 0.08054, 0, 11, 12],
			[65, -0.1887, 1, 13, 14],
			[89, 325.3, 0, 15, 16],
			[29, -2, 0, 17, 18],
			[8, 25.09, 0, 19, 20],
			[42, 0.5517, 0, 21, 22],
			[59, 6, 0, 23, 24],
			[8, 100.1, 0, 25, 26],
			[51, 0.15, 0, 27, 28],
			[48, 1.067, 1, 29, 30],
			[56, 88.11, 0, 31, 32],
			[53, 7.816, 1, 33, 34],
			[50, 1.76, 1, 35, 36],
			[75, 0.3273, 1, 37, 38],
			[20, 0.0348, 1, 39, 40],
			[9, 0.3989, 0, 41, 42],
			[18, 16, 0, 43, 44],
			[41, 1.044, 1, 45, 46],
			[86, 0.03088, 0, 47, 48],
			[50, 0.8362, 0, 49, 50],
			[27, 0.1139, 0, 51, 52],
			[73, 7, 0, 53, 54],
			[81, -0.01853, 0, 55, 56],
			[89, 54.43, 0, 57, 58],
			[75, 0.016, 0, 59, 60],
			[58, 366, 1, 61, 62],
			[-6564e-6],
			[-6564e-6],
			[0.0119],
			[0.08726],
			[-6564e-6],
			[0.02273],
			[-4472e-7],
			[0.06135],
			[-6564e-6],
			[6979e-6],
			[6979e-6],
			[0.0233],
			[4395e-6],
			[0.03512],
			[-6564e-6],
			[-6564e-6],
			[-0.03667],
			[-6564e-6],
			[-6564e-6],
			[-6564e-6],
			[-0.05434],
			[-0.03265],
			[-6564e-6],
			[-0.03265],
			[-7486e-6],
			[-0.07534],
			[-0.02731],
			[-6564e-6],
			[-6564e-6],
			[-6564e-6],
			[-0.04206],
			[-0.01917]
		],
		[
			[72, 0, 0, 1, 2],
			[68, 0.0125, 0, 3, 4],
			[30, 135, 1, 5, 6],
			[58, 198, 0, 7, 8],
			[79, 15, 0, 9, 10],
			[23, 0.1427, 0, 11, 12],
			[46, 0.7786, 0, 13, 14],
			[83, 26.42, 0, 15, 16],
			[46, 0.5435, 0, 17, 18],
			[52, 3.663, 1, 19, 20],
			[89, 121.9, 0, 21, 22],
			[87, 5759e-6, 0, 23, 24],
			[41, 0.8533, 1, 25, 26],
			[34, 0.76, 0, 27, 28],
			[72, 2, 0, 29, 30],
			[96, 1, 0, 31, 32],
			[29, 7868e-6, 1, 33, 34],
			[23, 0.1531, 0, 35, 36],
			[22, 0.01444, 1, 37, 38],
			[62, 3599e-6, 1, 39, 40],
			[55, 53, 1, 41, 42],
			[23, -0.1048, 1, 43, 44],
			[58, 84, 0, 45, 46],
			[66, 0.0556, 0, 47, 48],
			[47, 1.163, 0, 49, 50],
			[58, 282, 0, 51, 52],
			[19, 0.02049, 1, 53, 54],
			[19, -0.2566, 0, 55, 56],
			[29, -0.2214, 1, 57, 58],
			[66, 0.031, 1, 59, 60],
			[54, 82, 0, 61, 62],
			[-0.04191],
			[-4606e-6],
			[0.02654],
			[-237e-5],
			[-0.0131],
			[0.02165],
			[-0.05719],
			[-0.0131],
			[-0.01259],
			[0.01147],
			[0.01147],
			[0.03874],
			[-0.02484],
			[-0.05008],
			[-0.02484],
			[0.02082],
			[4742e-6],
			[-0.04778],
			[-0.05225],
			[-0.02266],
			[-0.04718],
			[-3053e-6],
			[-0.01287],
			[0.04932],
			[0.02967],
			[-0.01243],
			[-0.01243],
			[0.02085],
			[-0.04648],
			[-0.01243],
			[-0.01243],
			[-0.04668]
		],
		[
			[68, 2442e-6, 0, 1, 2],
			[55, 73, 1, 3, 4],
			[81, -3563e-6, 0, 5, 6],
			[56, 78.4, 0, 7, 8],
			[4, 147.9, 0, 9, 10],
			[54, 91, 0, 11, 12],
			[30, 183, 1, 13, 14],
			[4, 409.3, 1, 15, 16],
			[61, -5867e-6, 0, 17, 18],
			[55, 96, 0, 19, 20],
			[56, 95.69, 0, 21, 22],
			[25, 0.03285, 1, 23, 24],
			[1, 60.26, 0, 25, 26],
			[3, 76.03, 1, 27, 28],
			[42, 0.641, 0, 29, 30],
			[67, 3667e-6, 0, 31, 32],
			[29, 0.0129, 0, 33, 34],
			[88, 0.0104, 0, 35, 36],
			[5, 13.49, 1, 37, 38],
			[30, 77, 0, 39, 40],
			[25, -0.08107, 0, 41, 42],
			[42, 0.641, 1, 43, 44],
			[54, 88, 0, 45, 46],
			[42, 0.8901, 0, 47, 48],
			[68, 5411e-6, 0, 49, 50],
			[30, 228, 1, 51, 52],
			[84, 7056e-6, 0, 53, 54],
			[5, 88.99, 0, 55, 56],
			[56, 96.98, 0, 57, 58],
			[68, 4632e-6, 0, 59, 60],
			[4, 265, 0, 61, 62],
			[-0.06185],
			[-0.01963],
			[-0.02039],
			[0.05418],
			[-8926e-7],
			[-0.05127],
			[-8926e-7],
			[0.05694],
			[-0.03338],
			[0.05266],
			[0.01423],
			[-0.05433],
			[0.04076],
			[-4909e-6],
			[-0.01018],
			[-0.07937],
			[0.02682],
			[1173e-6],
			[-0.06524],
			[3515e-6],
			[-0.08343],
			[0.01931],
			[-0.05438],
			[-6108e-6],
			[-0.02665],
			[-0.05504],
			[-8377e-6],
			[-0.04799],
			[0.04074],
			[2469e-7],
			[-7858e-6],
			[-0.05012]
		],
		[
			[4, 40.84, 1, 1, 2],
			[69, 2.008, 0, 3, 4],
			[9, 0.473, 0, 5, 6],
			[38, 3.8, 1, 7, 8],
			[31, 0.7888, 1, 9, 10],
			[0, -27.06, 0, 11, 12],
			[67, -0.049, 1, 13, 14],
			[40, 1.25, 0, 15, 16],
			[60, 0, 0, 17, 18],
			[69, 5.752, 0, 19, 20],
			[96, 1, 0, 21, 22],
			[96, 2, 0, 23, 24],
			[93, 9.854, 0, 25, 26],
			[17, 3, 0, 27, 28],
			[49, 0.8658, 1, 29, 30],
			[50, 0.9617, 0, 31, 32],
			[67, 0.7443, 0, 33, 34],
			[95, 331.2, 0, 35, 36],
			[0.03348],
			[60, 29, 1, 37, 38],
			[33, 1.1, 1, 39, 40],
			[0, 27.36, 0, 41, 42],
			[61, -0.02352, 0, 43, 44],
			[0, -37.1, 0, 45, 46],
			[10, -110.2, 0, 47, 48],
			[96, 3, 0, 49, 50],
			[0, 22.28, 0, 51, 52],
			[4, 160.8, 0, 53, 54],
			[13, 0.02799, 0, 55, 56],
			[75, 0.1549, 0, 57, 58],
			[50, 0.8941, 1, 59, 60],
			[-0.02744],
			[0.01846],
			[0.1132],
			[6632e-6],
			[-0.03752],
			[9835e-6],
			[-0.03262],
			[0.03045],
			[-0.06679],
			[-0.01354],
			[-0.05417],
			[-0.01392],
			[-0.04349],
			[0.03346],
			[-0.02304],
			[0.03816],
			[0.01783],
			[0.1245],
			[-0.04068],
			[0.04016],
			[0.04898],
			[-0.02243],
			[-0.05395],
			[-6557e-6],
			[5854e-6],
			[-0.03129],
			[0.03726],
			[0.01552],
			[0.01552],
			[-8955e-6]
		],
		[
			[72, 0, 0, 1, 2],
			[1, 280.1, 0, 3, 4],
			[59, 2, 1, 5, 6],
			[46, 0.8049, 1, 7, 8],
			[46, 0.57, 0, 9, 10],
			[22, 0.06326, 0, 11, 12],
			[82, -1875e-6, 1, 13, 14],
			[39, 0.4593, 0, 15, 16],
			[36, 0.7327, 0, 17, 18],
			[59, 13, 0, 19, 20],
			[64, -0.05267, 0, 21, 22],
			[21, -0.4324, 0, 23, 24],
			[35, 0.02553, 1, 25, 26],
			[80, 2, 0, 27, 28],
			[22, -0.01409, 1, 29, 30],
			[82, -1875e-6, 0, 31, 32],
			[50, 0.3462, 0, 33, 34],
			[50, 1.091, 1, 35, 36],
			[50, 0.9226, 1, 37, 38],
			[18, 24, 0, 39, 40],
			[78, 1, 0, 41, 42],
			[74, 1441e-6, 1, 43, 44],
			[59, 28, 0, 45, 46],
			[70, 0, 0, 47, 48],
			[72, 1, 0, 49, 50],
			[50, 0.04831, 1, 51, 52],
			[36, 0.7632, 0, 53, 54],
			[21, -0.4324, 1, 55, 56],
			[70, 2, 0, 57, 58],
			[66, 0.1394, 1, 59, 60],
			[58, 54, 1, 61, 62],
			[5559e-6],
			[5559e-6],
			[5559e-6],
			[0.02445],
			[5559e-6],
			[5559e-6],
			[-2992e-6],
			[-0.02148],
			[-0.01319],
			[3258e-6],
			[-0.01319],
			[0.02557],
			[-0.04537],
			[-0.01319],
			[-0.02246],
			[-0.06464],
			[-0.0217],
			[0.06759],
			[-0.03681],
			[-0.0561],
			[-0.04709],
			[2012e-6],
			[0.03366],
			[-0.02662],
			[3433e-6],
			[0.02279],
			[-0.01231],
			[3433e-6],
			[-0.0634],
			[8072e-6],
			[9905e-6],
			[-0.03013]
		],
		[
			[4, 40.84, 1, 1, 2],
			[82, 1188e-6, 0, 3, 4],
			[25, 0.02909, 1, 5, 6],
			[39, 0.8774, 1, 7, 8],
			[28, 0, 1, 9, 10],
			[75, 0.1371, 0, 11, 12],
			[50, 0.8156, 0, 13, 14],
			[23, 0.05947, 0, 15, 16],
			[34, 3.326, 0, 17, 18],
			[89, 28.1, 0, 19, 20],
			[23, 0.5348, 0, 21, 22],
			[28, 5296e-6, 1, 23, 24],
			[82, -0.3115, 0, 25, 26],
			[19, -0.5318, 0, 27, 28],
			[50, 1.101, 0, 29, 30],
			[65, -0.161, 0, 31, 32],
			[39, 0, 1, 33, 34],
			[53, -10.69, 1, 35, 36],
			[5, 67.94, 0, 37, 38],
			[96, 1, 0, 39, 40],
			[87, 0.1451, 0, 41, 42],
			[31, 1.638, 1, 43, 44],
			[82, 0.2039, 1, 45, 46],
			[49, 0.8658, 1, 47, 48],
			[82, -1875e-6, 0, 49, 50],
			[81, -7929e-6, 1, 51, 52],
			[96, 2, 0, 53, 54],
			[75, 0.03051, 1, 55, 56],
			[23, 0.3163, 1, 57, 58],
			[23, 0.5348, 1, 59, 60],
			[38, 0.9012, 0, 61, 62],
			[3516e-6],
			[-0.0509],
			[-0.03206],
			[0.04087],
			[-0.05046],
			[0.01702],
			[-0.02147],
			[0.1131],
			[-0.05136],
			[-0.02432],
			[-0.01914],
			[0.05243],
			[-0.06403],
			[8973e-6],
			[0.06865],
			[-0.03594],
			[0.03271],
			[584e-5],
			[0.01478],
			[-0.01702],
			[0.09637],
			[0.01299],
			[-0.02165],
			[7366e-6],
			[-0.06588],
			[-0.01021],
			[7802e-6],
			[0.04681],
			[-0.0467],
			[0.0508],
			[-0.04017],
			[0.01258]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[2, 474.2, 1, 3, 4],
			[46, 0.7011, 0, 5, 6],
			[31, 0.9932, 0, 7, 8],
			[38, 0.4583, 0, 9, 10],
			[16, 7, 0, 11, 12],
			[17, 12, 0, 13, 14],
			[83, 127.7, 1, 15, 16],
			[73, -5, 1, 17, 18],
			[25, 0.02262, 1, 19, 20],
			[68, 0.03387, 0, 21, 22],
			[9, 0.7854, 0, 23, 24],
			[80, 2, 1, 25, 26],
			[7, 239.8, 0, 27, 28],
			[58, 174, 0, 29, 30],
			[56, 76, 0, 31, 32],
			[56, 84.63, 0, 33, 34],
			[58, 366, 1, 35, 36],
			[68, 0.01205, 0, 37, 38],
			[81, 0.01641, 1, 39, 40],
			[3, 213.6, 0, 41, 42],
			[-0.05427],
			[-6858e-6],
			[33, 2.259, 0, 43, 44],
			[65, -0.1887, 1, 45, 46],
			[24, -0.1516, 1, 47, 48],
			[65, -0.1887, 0, 49, 50],
			[9, 0.4827, 0, 51, 52],
			[60, 40, 0, 53, 54],
			[12, 3.234, 0, 55, 56],
			[54, 82, 0, 57, 58],
			[-0.05708],
			[-0.03609],
			[-0.02155],
			[0.06637],
			[-0.04693],
			[0.03326],
			[0.01486],
			[-0.03054],
			[0.09077],
			[-0.015],
			[0.02166],
			[-0.03722],
			[5963e-7],
			[3239e-6],
			[5963e-7],
			[0.03155],
			[0.01246],
			[0.02822],
			[0.01246],
			[5963e-7],
			[-0.02483],
			[5963e-7],
			[5963e-7],
			[-0.0546],
			[-0.03227],
			[5963e-7],
			[-0.02509],
			[-0.06116]
		],
		[
			[85, 2, 0, 1, 2],
			[67, -0.03938, 1, 3, 4],
			[94, 10.27, 0, 5, 6],
			[81, -3563e-6, 0, 7, 8],
			[37, 0.9275, 0, 9, 10],
			[46, 0.6404, 0, 11, 12],
			[91, 0.068, 0, 13, 14],
			[69, 2.29, 0, 15, 16],
			[25, -0.03768, 1, 17, 18],
			[41, 0.8533, 0, 19, 20],
			[33, 1.114, 0, 21, 22],
			[6, 257.4, 0, 23, 24],
			[37, 0.5932, 0, 25, 26],
			[41, 3.406, 1, 27, 28],
			[19, -0.1725, 0, 29, 30],
			[70, 1, 0, 31, 32],
			[28, -0.1304, 1, 33, 34],
			[93, 27.09, 0, 35, 36],
			[46, 0.6404, 0, 37, 38],
			[23, 0.2123, 0, 39, 40],
			[25, 0.02909, 1, 41, 42],
			[36, 0.9431, 0, 43, 44],
			[69, 5.858, 0, 45, 46],
			[16, 56, 0, 47, 48],
			[91, 0.38, 0, 49, 50],
			[19, -0.0286, 0, 51, 52],
			[33, 0.6444, 0, 53, 54],
			[23, 8658e-6, 0, 55, 56],
			[33, 1.1, 0, 57, 58],
			[25, 5164e-6, 0, 59, 60],
			[67, 0.05911, 0, 61, 62],
			[0.09241],
			[-6464e-6],
			[-0.01362],
			[0.01317],
			[-0.01362],
			[1995e-6],
			[3568e-6],
			[-0.01362],
			[8775e-6],
			[7808e-6],
			[0.03735],
			[7808e-6],
			[6821e-6],
			[-0.01362],
			[-966e-5],
			[7808e-6],
			[-0.02843],
			[-0.01362],
			[-0.04012],
			[-0.01362],
			[-0.04012],
			[-0.04012],
			[-0.04829],
			[-0.05716],
			[-0.01362],
			[-0.05332],
			[-0.01362],
			[-0.03301],
			[-0.04297],
			[-0.01362],
			[-0.01362],
			[-0.03122]
		],
		[
			[21, 0.01782, 1, 1, 2],
			[60, 0, 1, 3, 4],
			[6, 139.6, 1, 5, 6],
			[24, 0.04239, 0, 7, 8],
			[58, 174, 1, 9, 10],
			[23, 0.02155, 1, 11, 12],
			[22, -0.05716, 1, 13, 14],
			[68, 4902e-6, 0, 15, 16],
			[25, 0.02549, 0, 17, 18],
			[67, -0.09267, 1, 19, 20],
			[22, 0.07399, 1, 21, 22],
			[22, -0.02778, 0, 23, 24],
			[82, 1188e-6, 0, 25, 26],
			[81, -7929e-6, 0, 27, 28],
			[75, 0.13, 0, 29, 30],
			[20, 0.05716, 1, 31, 32],
			[22, -0.1293, 1, 33, 34],
			[82, 3973e-7, 1, 35, 36],
			[95, 204.9, 0, 37, 38],
			[95, 106.6, 0, 39, 40],
			[95, 43.85, 0, 41, 42],
			[49, 0.7765, 0, 43, 44],
			[60, 23, 0, 45, 46],
			[21, 0.03605, 0, 47, 48],
			[-0.03481],
			[34, 1.22, 1, 49, 50],
			[13, 0.02799, 0, 51, 52],
			[18, 3, 0, 53, 54],
			[68, 0.01622, 0, 55, 56],
			[19, 0, 1, 57, 58],
			[8, 239.4, 0, 59, 60],
			[-0.02182],
			[0.1452],
			[-0.0117],
			[-0.04672],
			[0.03203],
			[-0.02716],
			[-0.04955],
			[-9867e-6],
			[-0.02902],
			[4027e-6],
			[-0.01456],
			[0.02156],
			[0.01388],
			[-0.03743],
			[-5765e-6],
			[0.04946],
			[0.01062],
			[0.1865],
			[-0.01807],
			[0.0378],
			[-0.03518],
			[-0.06043],
			[6833e-7],
			[-0.0548],
			[0.1093],
			[-0.01148],
			[8665e-6],
			[-0.0407],
			[-0.03671],
			[0.01641]
		],
		[
			[21, 0.02074, 1, 1, 2],
			[95, 43.85, 0, 3, 4],
			[4, 141.5, 0, 5, 6],
			[94, 15.09, 0, 7, 8],
			[34, 0.5621, 0, 9, 10],
			[83, 26.42, 1, 11, 12],
			[9, 0.3989, 0, 13, 14],
			[8, 26.09, 0, 15, 16],
			[13, 0.01734, 0, 17, 18],
			[9, 0.7854, 0, 19, 20],
			[58, 174, 1, 21, 22],
			[13, 0.01767, 0, 23, 24],
			[50, 1.76, 0, 25, 26],
			[22, -5947e-6, 1, 27, 28],
			[13, 0.02943, 0, 29, 30],
			[22, -0.3116, 0, 31, 32],
			[88, 0.02023, 1, 33, 34],
			[21, -0.123, 0, 35, 36],
			[91, 0.272, 0, 37, 38],
			[83, 198.8, 1, 39, 40],
			[75, 0.145, 1, 41, 42],
			[63, -0.03999, 1, 43, 44],
			[46, 0.5951, 0, 45, 46],
			[22, -0.03189, 0, 47, 48],
			[96, 3, 0, 49, 50],
			[46, 0.9495, 0, 51, 52],
			[66, 0.01, 0, 53, 54],
			[0.0646],
			[60, 1, 1, 55, 56],
			[50, 1.123, 1, 57, 58],
			[66, 0.092, 0, 59, 60],
			[-0.02248],
			[-0.03777],
			[-9013e-6],
			[-0.02248],
			[-9013e-6],
			[-9013e-6],
			[-0.03904],
			[-0.01578],
			[-9013e-6],
			[0.01841],
			[-9013e-6],
			[0.03699],
			[-9013e-6],
			[0.01599],
			[0.01752],
			[-9013e-6],
			[-0.03248],
			[-0.03248],
			[-0.05693],
			[-0.04354],
			[119e-6],
			[-0.03248],
			[-0.03248],
			[-0.01736],
			[-8991e-6],
			[-0.04922],
			[6232e-6],
			[0.04862],
			[-2974e-6],
			[-0.05037]
		],
		[
			[30, 156, 0, 1, 2],
			[40, 1.03, 1, 3, 4],
			[52, 2.702, 1, 5, 6],
			[28, 268e-5, 1, 7, 8],
			[60, -3, 1, 9, 10],
			[17, 12, 0, 11, 12],
			[40, 0.8008, 0, 13, 14],
			[75, 7397e-6, 0, 15, 16],
			[82, -1057e-6, 0, 17, 18],
			[4, 235.5, 0, 19, 20],
			[83, 24.45, 1, 21, 22],
			[86, 0.01558, 0, 23, 24],
			[40, 1.092, 1, 25, 26],
			[64, 0.1743, 0, 27, 28],
			[4, 248.9, 0, 29, 30],
			[61, -0.02807, 0, 31, 32],
			[82, -1875e-6, 0, 33, 34],
			[78, 3, 0, 35, 36],
			[64, 0.04667, 0, 37, 38],
			[76, 0.1515, 1, 39, 40],
			[65, 0.1559, 0, 41, 42],
			[82, -0.02366, 1, 43, 44],
			[78, 1, 0, 45, 46],
			[4, 211.7, 0, 47, 48],
			[52, 1.57, 1, 49, 50],
			[65, 5389e-6, 1, 51, 52],
			[61, -0.02141, 0, 53, 54],
			[33, 0.7692, 0, 55, 56],
			[83, 32.06, 1, 57, 58],
			[65, -0.1422, 1, 59, 60],
			[43, 0.6667, 0, 61, 62],
			[-0.04007],
			[0.02273],
			[1036e-6],
			[-0.03232],
			[-0.05463],
			[0.02798],
			[-0.04692],
			[-0.08168],
			[-0.05466],
			[-0.01731],
			[0.03861],
			[-0.02438],
			[-3704e-6],
			[-0.04262],
			[6215e-6],
			[0.02818],
			[324e-5],
			[-0.01507],
			[-0.03443],
			[324e-5],
			[-0.0417],
			[-8271e-6],
			[-0.01759],
			[324e-5],
			[324e-5],
			[7666e-6],
			[324e-5],
			[324e-5],
			[324e-5],
			[0.04138],
			[0.02088],
			[324e-5]
		],
		[
			[30, 156, 0, 1, 2],
			[40, 1.03, 1, 3, 4],
			[46, 0.8939, 1, 5, 6],
			[81, -2165e-6, 0, 7, 8],
			[59, 7, 0, 9, 10],
			[1, 313, 0, 11, 12],
			[41, 0.7692, 1, 13, 14],
			[80, 1, 0, 15, 16],
			[59, 12, 0, 17, 18],
			[61, -5263e-6, 0, 19, 20],
			[22, 0.05568, 1, 21, 22],
			[59, 1, 0, 23, 24],
			[46, 0.5951, 1, 25, 26],
			[50, 1.223, 1, 27, 28],
			[40, 1.22, 0, 29, 30],
			[57, 48, 1, 31, 32],
			[59, 20, 1, 33, 34],
			[94, 2.368, 0, 35, 36],
			[56, 75.34, 0, 37, 38],
			[45, 0.08667, 0, 39, 40],
			[38, 0.4583, 0, 41, 42],
			[79, 10, 0, 43, 44],
			[59, 35, 0, 45, 46],
			[50, 0.5231, 0, 47, 48],
			[80, 1, 1, 49, 50],
			[2, 137.7, 1, 51, 52],
			[64, -0.05267, 0, 53, 54],
			[50, 0.8156, 0, 55, 56],
			[94, 2.368, 0, 57, 58],
			[13, 0.01154, 0, 59, 60],
			[57, 21, 1, 61, 62],
			[-0.01332],
			[0.01846],
			[-0.048],
			[-0.01332],
			[-0.01315],
			[-0.04707],
			[-0.03877],
			[1938e-6],
			[-0.03484],
			[-7682e-6],
			[8434e-6],
			[0.04994],
			[0.03986],
			[5192e-6],
			[-0.02656],
			[0.0571],
			[-181e-5],
			[8168e-7],
			[0.02601],
			[-181e-5],
			[3828e-7],
			[0.01546],
			[3828e-7],
			[-181e-5],
			[-181e-5],
			[-5405e-6],
			[-0.01521],
			[-181e-5],
			[-181e-5],
			[-0.03372],
			[-0.03983],
			[-181e-5]
		],
		[
			[82, 0.09385, 1, 1, 2],
			[68, 2442e-6, 0, 3, 4],
			[25, 0.08815, 1, 5, 6],
			[69, 5.55, 0, 7, 8],
			[13, 0.02849, 0, 9, 10],
			[63, 2796e-6, 0, 11, 12],
			[58, -54, 0, 13, 14],
			[58, 234, 1, 15, 16],
			[7, 125.2, 0, 17, 18],
			[17, 3, 0, 19, 20],
			[78, 1, 1, 21, 22],
			[66, 0.2687, 1, 23, 24],
			[6, 133.7, 1, 25, 26],
			[88, 0.01929, 1, 27, 28],
			[32, 1.213, 1, 29, 30],
			[61, -0.01863, 0, 31, 32],
			[95, 444.4, 0, 33, 34],
			[61, -0.0122, 0, 35, 36],
			[3, 30.1, 1, 37, 38],
			[59, 12, 1, 39, 40],
			[58, 174, 0, 41, 42],
			[59, 18, 1, 43, 44],
			[59, 9, 1, 45, 46],
			[25, 0.01986, 1, 47, 48],
			[3, 213.6, 0, 49, 50],
			[66, -0.188, 0, 51, 52],
			[0, 145.2, 0, 53, 54],
			[0.1166],
			[-0.01735],
			[30, 156, 1, 55, 56],
			[61, -0.1188, 0, 57, 58],
			[-0.04469],
			[3761e-6],
			[-0.1145],
			[0.0452],
			[-0.02937],
			[0.0447],
			[-0.04456],
			[0.01593],
			[-0.01167],
			[0.01126],
			[9664e-6],
			[-0.01167],
			[-0.04803],
			[-0.01167],
			[-0.01534],
			[-0.01167],
			[-0.06976],
			[-0.04878],
			[-0.04878],
			[-0.04878],
			[-5743e-6],
			[-0.04878],
			[0.05839],
			[-0.02446],
			[-0.04507],
			[-4068e-6],
			[-0.03508],
			[0.05645]
		],
		[
			[2, 46.14, 1, 1, 2],
			[82, -1923e-7, 0, 3, 4],
			[26, -4135e-6, 0, 5, 6],
			[78, 2, 0, 7, 8],
			[56, 78.4, 0, 9, 10],
			[81, -0.01013, 0, 11, 12],
			[20, -0.04095, 0, 13, 14],
			[2, 7.653, 0, 15, 16],
			[0, 29.77, 0, 17, 18],
			[40, 0.8008, 1, 19, 20],
			[61, -0.01016, 0, 21, 22],
			[82, -6786e-6, 0, 23, 24],
			[16, 14, 0, 25, 26],
			[60, 20, 1, 27, 28],
			[61, -0.04848, 0, 29, 30],
			[20, -0.04665, 0, 31, 32],
			[34, 1.109, 1, 33, 34],
			[82, -0.06788, 0, 35, 36],
			[61, -0.03189, 0, 37, 38],
			[69, 1.68, 0, 39, 40],
			[93, 36.71, 0, 41, 42],
			[69, 4.281, 0, 43, 44],
			[29, 7868e-6, 1, 45, 46],
			[23, -0.04441, 1, 47, 48],
			[81, -0.1616, 0, 49, 50],
			[2, 392.8, 0, 51, 52],
			[42, 0.641, 0, 53, 54],
			[69, 5.644, 0, 55, 56],
			[69, 4.843, 0, 57, 58],
			[10, 121.1, 0, 59, 60],
			[10, 163.3, 0, 61, 62],
			[-0.01106],
			[-0.08077],
			[-0.01666],
			[0.04453],
			[2816e-6],
			[-0.04687],
			[-917e-5],
			[0.05753],
			[0.03264],
			[-0.06205],
			[-0.03104],
			[0.04901],
			[-0.01671],
			[-0.03964],
			[0.01796],
			[-0.01671],
			[0.07968],
			[0.0183],
			[-0.03937],
			[6961e-6],
			[-0.02889],
			[3722e-6],
			[0.01161],
			[-0.02174],
			[-0.01955],
			[3015e-6],
			[0.05748],
			[2416e-6],
			[-0.03922],
			[1675e-6],
			[0.02735],
			[1675e-6]
		],
		[
			[68, 2442e-6, 0, 1, 2],
			[56, 71.13, 0, 3, 4],
			[2, 57.53, 1, 5, 6],
			[96, 3, 0, 7, 8],
			[55, 96, 1, 9, 10],
			[3, 37.51, 1, 11, 12],
			[85, 2, 0, 13, 14],
			[2, 474.2, 1, 15, 16],
			[0.06542],
			[60, 17, 0, 17, 18],
			[56, 79.59, 0, 19, 20],
			[31, 1.116, 1, 21, 22],
			[21, 0.02074, 0, 23, 24],
			[25, 0.03804, 1, 25, 26],
			[94, 10.27, 0, 27, 28],
			[94, 0.7144, 0, 29, 30],
			[36, 0.3897, 0, 31, 32],
			[76, 0.2416, 0, 33, 34],
			[3, 24.73, 1, 35, 36],
			[0.03345],
			[29, -0.2214, 0, 37, 38],
			[55, 87, 0, 39, 40],
			[29, 0.06042, 1, 41, 42],
			[47, 0.6239, 0, 43, 44],
			[58, -12, 0, 45, 46],
			[62, -0.04486, 1, 47, 48],
			[68, 644e-5, 0, 49, 50],
			[33, 0.8896, 0, 51, 52],
			[68, 3357e-6, 0, 53, 54],
			[-0.01934],
			[-0.05871],
			[0.03746],
			[-0.01294],
			[0.03861],
			[-0.02991],
			[-0.03501],
			[0.01531],
			[-8095e-7],
			[-0.0637],
			[-0.04022],
			[-0.06656],
			[-0.03477],
			[0.02138],
			[-0.03805],
			[4867e-7],
			[-3681e-6],
			[-0.05068],
			[-0.01359],
			[6976e-6],
			[-0.01359],
			[-4843e-6],
			[-0.02241],
			[-0.04989],
			[-0.01359],
			[-0.01785]
		],
		[
			[72, 0, 0, 1, 2],
			[29, 4951e-6, 1, 3, 4],
			[59, 2, 0, 5, 6],
			[3, 330.3, 0, 7, 8],
			[6, 60.37, 0, 9, 10],
			[22, 0.06326, 1, 11, 12],
			[41, 0.8372, 0, 13, 14],
			[50, 0.8538, 1, 15, 16],
			[46, 0.5951, 1, 17, 18],
			[81, 1047e-6, 0, 19, 20],
			[80, 3, 1, 21, 22],
			[20, 0.04379, 1, 23, 24],
			[35, 0.02553, 1, 25, 26],
			[22, -5947e-6, 0, 27, 28],
			[37, 0.9712, 0, 29, 30],
			[55, 75, 1, 31, 32],
			[35, 0.8218, 0, 33, 34],
			[6, 205.5, 1, 35, 36],
			[40, 1.122, 1, 37, 38],
			[16, 29, 0, 39, 40],
			[59, 7, 0, 41, 42],
			[82, -2779e-6, 0, 43, 44],
			[75, 0.2669, 1, 45, 46],
			[88, 0.0507, 1, 47, 48],
			[81, 4451e-6, 0, 49, 50],
			[50, 0, 1, 51, 52],
			[35, 0.3865, 0, 53, 54],
			[82, -0.07689, 0, 55, 56],
			[69, 5.55, 0, 57, 58],
			[41, 1.371, 1, 59, 60],
			[56, 93.5, 0, 61, 62],
			[7558e-7],
			[0.04169],
			[0.0259],
			[-1504e-6],
			[-0.01697],
			[0.01837],
			[-0.0519],
			[-0.01697],
			[0.06725],
			[-1076e-7],
			[-0.02422],
			[-0.0758],
			[0.01935],
			[-6376e-6],
			[-0.08631],
			[-0.02646],
			[-0.04815],
			[-6613e-6],
			[0.08011],
			[-0.03804],
			[-0.04868],
			[0.01619],
			[0.064],
			[-5366e-6],
			[6176e-6],
			[-0.0525],
			[0.01665],
			[-0.02368],
			[0.02401],
			[1116e-6],
			[-6943e-6],
			[-0.05311]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[89, 240.8, 0, 3, 4],
			[35, 0.7409, 1, 5, 6],
			[27, 0.08192, 1, 7, 8],
			[32, 0.4956, 1, 9, 10],
			[55, 70, 1, 11, 12],
			[13, 0.02849, 0, 13, 14],
			[32, 1.534, 1, 15, 16],
			[21, -0.1864, 0, 17, 18],
			[61, -9524e-6, 0, 19, 20],
			[65, -0.161, 0, 21, 22],
			[89, 96.62, 0, 23, 24],
			[80, 1, 1, 25, 26],
			[85, 2, 0, 27, 28],
			[47, 4, 0, 29, 30],
			[82, -0.0201, 0, 31, 32],
			[76, 0.1644, 1, 33, 34],
			[17, 21, 0, 35, 36],
			[84, 0.1259, 0, 37, 38],
			[76, 0.183, 1, 39, 40],
			[0.02773],
			[3, 370.2, 0, 41, 42],
			[65, 0.6298, 0, 43, 44],
			[24, 0.1454, 0, 45, 46],
			[82, 0.05088, 0, 47, 48],
			[2, 337.7, 0, 49, 50],
			[51, 0.1088, 0, 51, 52],
			[9, 0.9769, 0, 53, 54],
			[47, 0.9083, 1, 55, 56],
			[82, 0.2039, 0, 57, 58],
			[61, -0.0122, 0, 59, 60],
			[-0.01012],
			[-0.05843],
			[-0.03496],
			[-0.01012],
			[-0.01012],
			[-0.04363],
			[-0.04758],
			[-0.01012],
			[-0.01012],
			[-4202e-7],
			[-0.01012],
			[0.04926],
			[0.06674],
			[-0.01012],
			[-0.01313],
			[-0.06116],
			[0.05166],
			[4036e-6],
			[0.03604],
			[3026e-6],
			[3026e-6],
			[-0.04228],
			[857e-5],
			[-3274e-6],
			[-3274e-6],
			[-9987e-6],
			[-9987e-6],
			[-0.04196],
			[-0.01285],
			[-9987e-6]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[6, 151.8, 1, 3, 4],
			[49, 0.9119, 0, 5, 6],
			[88, 5995e-6, 0, 7, 8],
			[58, 366, 0, 9, 10],
			[35, 0.2406, 0, 11, 12],
			[50, 0.8941, 1, 13, 14],
			[59, 2, 0, 15, 16],
			[81, -0.01013, 0, 17, 18],
			[79, 4, 0, 19, 20],
			[27, -0.3984, 0, 21, 22],
			[6, 257.4, 1, 23, 24],
			[78, 2, 0, 25, 26],
			[75, 0.01111, 0, 27, 28],
			[35, 0.7409, 0, 29, 30],
			[0, -27.06, 0, 31, 32],
			[18, 16, 0, 33, 34],
			[75, 0.02762, 1, 35, 36],
			[50, 1.223, 1, 37, 38],
			[78, 14, 0, 39, 40],
			[41, 1.223, 1, 41, 42],
			[16, 3, 0, 43, 44],
			[37, 0, 0, 45, 46],
			[23, -0.04441, 0, 47, 48],
			[41, 0.6463, 1, 49, 50],
			[86, 2763e-6, 0, 51, 52],
			[56, 101.3, 0, 53, 54],
			[78, 2, 0, 55, 56],
			[41, 1.321, 0, 57, 58],
			[47, 0.8632, 1, 59, 60],
			[90, 0, 0, 61, 62],
			[-3719e-6],
			[-0.05423],
			[-0.01731],
			[0.05293],
			[0.03802],
			[-0.03101],
			[-0.05889],
			[-0.02057],
			[0.0702],
			[-0.02256],
			[-0.02757],
			[0.0355],
			[0.1175],
			[0.01522],
			[0.03164],
			[-0.06377],
			[0.02877],
			[2966e-6],
			[2966e-6],
			[0.0133],
			[2966e-6],
			[2966e-6],
			[0.02258],
			[2966e-6],
			[-0.07084],
			[2966e-6],
			[2966e-6],
			[-0.01516],
			[-6497e-6],
			[2966e-6],
			[-0.02727],
			[-2579e-6]
		],
		[
			[25, 0.02909, 1, 1, 2],
			[68, 3003e-6, 0, 3, 4],
			[66, 0.1657, 1, 5, 6],
			[83, 33.94, 0, 7, 8],
			[83, 28.03, 1, 9, 10],
			[68, 5411e-6, 0, 11, 12],
			[8, 62.47, 0, 13, 14],
			[96, 2, 0, 15, 16],
			[28, 5296e-6, 1, 17, 18],
			[2, 60.1, 1, 19, 20],
			[21, 2882e-6, 0, 21, 22],
			[46, 0.57, 1, 23, 24],
			[93, 20.63, 0, 25, 26],
			[25, 0.142, 0, 27, 28],
			[88, 0.02992, 1, 29, 30],
			[7, -79.89, 0, 31, 32],
			[52, 3.663, 0, 33, 34],
			[86, 0.01826, 0, 35, 36],
			[7, 154.9, 0, 37, 38],
			[13, 0.01493, 0, 39, 40],
			[13, 0.03198, 0, 41, 42],
			[72, 0, 0, 43, 44],
			[33, 1.48, 1, 45, 46],
			[30, 170, 0, 47, 48],
			[88, 0.01277, 1, 49, 50],
			[33, 0.989, 1, 51, 52],
			[49, 0.7351, 1, 53, 54],
			[83, 90.71, 1, 55, 56],
			[-2594e-6],
			[58, 42, 0, 57, 58],
			[58, 282, 0, 59, 60],
			[-0.01586],
			[-0.05762],
			[-0.0198],
			[-0.01586],
			[0.03067],
			[-0.01586],
			[5379e-6],
			[-0.01586],
			[-158e-5],
			[-0.03714],
			[-158e-5],
			[-0.03238],
			[0.02242],
			[-158e-5],
			[-158e-5],
			[0.03051],
			[-0.04295],
			[0.01227],
			[-0.09111],
			[-0.04295],
			[-0.04296],
			[-0.01622],
			[0.03933],
			[-6182e-6],
			[-0.04362],
			[-2594e-6],
			[0.07853],
			[8768e-6],
			[-2594e-6],
			[0.02602]
		],
		[
			[72, 0, 0, 1, 2],
			[13, 0.025, 0, 3, 4],
			[92, 21.94, 0, 5, 6],
			[4, 222.9, 0, 7, 8],
			[60, 9, 1, 9, 10],
			[33, 1.066, 0, 11, 12],
			[75, 7397e-6, 1, 13, 14],
			[60, 23, 0, 15, 16],
			[46, 0.6617, 0, 17, 18],
			[26, 0.1379, 0, 19, 20],
			[50, 1e9, 0, 21, 22],
			[92, 2.805, 0, 23, 24],
			[60, 4, 1, 25, 26],
			[45, 0.09132, 1, 27, 28],
			[21, -0.2645, 1, 29, 30],
			[60, 0, 0, 31, 32],
			[46, 0.7011, 1, 33, 34],
			[60, 23, 0, 35, 36],
			[64, -0.07467, 0, 37, 38],
			[77, 0, 0, 39, 40],
			[55, 72, 1, 41, 42],
			[81, 0.1411, 0, 43, 44],
			[34, 0.6482, 0, 45, 46],
			[64, -0.8773, 0, 47, 48],
			[79, 5, 1, 49, 50],
			[88, 0.02023, 1, 51, 52],
			[60, 23, 0, 53, 54],
			[46, 0.8457, 0, 55, 56],
			[33, 0.9032, 0, 57, 58],
			[62, 6663e-6, 0, 59, 60],
			[66, -0.0556, 0, 61, 62],
			[-2779e-7],
			[0.02368],
			[5691e-6],
			[-2779e-7],
			[2576e-6],
			[0.03144],
			[2576e-6],
			[-2779e-7],
			[-0.04559],
			[-9366e-6],
			[-0.02641],
			[-2779e-7],
			[-2779e-7],
			[-0.01755],
			[-0.05913],
			[-2779e-7],
			[-0.02415],
			[-0.03698],
			[-6665e-6],
			[-0.02415],
			[-0.0179],
			[-0.05172],
			[437e-5],
			[-0.01255],
			[437e-5],
			[437e-5],
			[437e-5],
			[0.07404],
			[437e-5],
			[0.04079],
			[437e-5],
			[0.06451]
		],
		[
			[59, 1, 0, 1, 2],
			[58, 24, 1, 3, 4],
			[58, 174, 1, 5, 6],
			[2, 392.8, 1, 7, 8],
			[11, 2, 0, 9, 10],
			[37, 0.9275, 0, 11, 12],
			[46, 0.57, 0, 13, 14],
			[94, 11.28, 0, 15, 16],
			[55, 81, 1, 17, 18],
			[34, 0.5621, 1, 19, 20],
			[60, -3, 0, 21, 22],
			[34, 0.9658, 0, 23, 24],
			[39, 1.125, 0, 25, 26],
			[2, 112.9, 1, 27, 28],
			[34, 1.042, 1, 29, 30],
			[59, -3, 0, 31, 32],
			[66, 0.112, 0, 33, 34],
			[74, 0.2623, 0, 35, 36],
			[93, 10.35, 0, 37, 38],
			[54, 83, 1, 39, 40],
			[94, 10.63, 0, 41, 42],
			[2, 207.1, 0, 43, 44],
			[64, 0.04667, 0, 45, 46],
			[61, -0.01289, 0, 47, 48],
			[38, 0.3399, 0, 49, 50],
			[29, -6122e-6, 1, 51, 52],
			[60, 0, 1, 53, 54],
			[8, 239.4, 0, 55, 56],
			[60, 20, 1, 57, 58],
			[17, 6, 0, 59, 60],
			[87, 0.04046, 1, 61, 62],
			[1498e-6],
			[-0.04353],
			[3335e-8],
			[-0.03808],
			[0.03304],
			[-0.03643],
			[-3187e-6],
			[0.1411],
			[-0.05611],
			[0.01792],
			[0.0604],
			[-0.01074],
			[-3426e-6],
			[0.1343],
			[-1549e-6],
			[-0.03131],
			[7695e-6],
			[0.01747],
			[7695e-6],
			[0.03393],
			[-1465e-6],
			[-0.02715],
			[-0.01345],
			[7695e-6],
			[-0.01372],
			[0.01781],
			[-6441e-6],
			[0.0315],
			[-0.01372],
			[-0.05183],
			[-0.01648],
			[-0.01372]
		],
		[
			[82, 0.2039, 1, 1, 2],
			[59, 1, 0, 3, 4],
			[64, -0.09703, 1, 5, 6],
			[9, 0.717, 0, 7, 8],
			[1, 280.1, 0, 9, 10],
			[28, -0.01208, 0, 11, 12],
			[25, 0.08815, 1, 13, 14],
			[12, 5.068, 0, 15, 16],
			[60, -2, 0, 17, 18],
			[28, 8116e-6, 1, 19, 20],
			[41, 0.9898, 0, 21, 22],
			[9, 0.6072, 0, 23, 24],
			[39, 0.5595, 0, 25, 26],
			[89, 325.3, 0, 27, 28],
			[75, 0.06725, 0, 29, 30],
			[60, -7, 0, 31, 32],
			[59, -3, 0, 33, 34],
			[39, 1.07, 0, 35, 36],
			[82, -0.06788, 0, 37, 38],
			[65, 0.176, 0, 39, 40],
			[82, -1923e-7, 0, 41, 42],
			[25, -0.02716, 0, 43, 44],
			[60, 23, 1, 45, 46],
			[25, 0.04431, 1, 47, 48],
			[0.08932],
			[0.016],
			[9, 0.3989, 0, 49, 50],
			[-0.07245],
			[641e-6],
			[0.02131],
			[-0.03914],
			[-4737e-6],
			[-0.01961],
			[0.06997],
			[375e-5],
			[-0.01623],
			[0.07512],
			[-0.01321],
			[-0.05199],
			[0.01562],
			[-0.01463],
			[0.01898],
			[-0.01683],
			[-2036e-6],
			[-0.03822],
			[-94e-4],
			[0.02681],
			[-0.04707],
			[0.0137],
			[-7067e-6],
			[-0.0631]
		],
		[
			[67, -0.03938, 1, 1, 2],
			[54, 91, 0, 3, 4],
			[50, 0.8538, 1, 5, 6],
			[59, 1, 1, 7, 8],
			[12, 7.044, 0, 9, 10],
			[47, 0.6239, 0, 11, 12],
			[50, 1.091, 0, 13, 14],
			[95, 132.6, 0, 15, 16],
			[81, -3563e-6, 0, 17, 18],
			[88, 0.02113, 0, 19, 20],
			[29, -349e-5, 0, 21, 22],
			[59, 20, 1, 23, 24],
			[3, 16.09, 1, 25, 26],
			[13, 0.01734, 0, 27, 28],
			[21, -0.09952, 0, 29, 30],
			[21, -0.01802, 0, 31, 32],
			[66, 0.1205, 0, 33, 34],
			[92, 4.289, 0, 35, 36],
			[13, 0.02799, 0, 37, 38],
			[40, 1.22, 1, 39, 40],
			[19, -0.2846, 0, 41, 42],
			[36, 0.7632, 0, 43, 44],
			[67, -0.4987, 1, 45, 46],
			[59, 2, 0, 47, 48],
			[88, 554e-5, 1, 49, 50],
			[54, 72, 0, 51, 52],
			[65, 0.126, 0, 53, 54],
			[59, 20, 0, 55, 56],
			[40, 0.9907, 0, 57, 58],
			[67, 2274e-9, 0, 59, 60],
			[13, 0.02208, 0, 61, 62],
			[-0.02139],
			[-0.04941],
			[9612e-6],
			[-0.02139],
			[7114e-7],
			[0.03908],
			[6422e-7],
			[-0.02642],
			[-0.04194],
			[-0.03033],
			[-0.03033],
			[-0.07907],
			[-2821e-6],
			[-0.03033],
			[-0.03033],
			[0.03868],
			[-194e-5],
			[-0.04705],
			[-0.02521],
			[0.03666],
			[-0.04126],
			[8645e-6],
			[0.03963],
			[3741e-6],
			[0.01373],
			[-7789e-6],
			[-0.0313],
			[-8131e-6],
			[-0.05238],
			[-2743e-6],
			[0.03071],
			[-8916e-8]
		],
		[
			[82, 0.2039, 1, 1, 2],
			[67, -0.03938, 1, 3, 4],
			[67, 0.5794, 1, 5, 6],
			[2, 93.67, 0, 7, 8],
			[47, 1.05, 0, 9, 10],
			[74, 0.5201, 1, 11, 12],
			[21, -0.1864, 1, 13, 14],
			[88, 5995e-6, 0, 15, 16],
			[62, 0.02204, 1, 17, 18],
			[43, 0.8132, 0, 19, 20],
			[44, 0, 0, 21, 22],
			[95, 444.4, 0, 23, 24],
			[47, 0.4889, 0, 25, 26],
			[-0.04686],
			[5, 236.8, 0, 27, 28],
			[34, 0.7143, 0, 29, 30],
			[82, -785e-5, 0, 31, 32],
			[93, 20.63, 0, 33, 34],
			[21, -0.1864, 0, 35, 36],
			[40, 0.8008, 0, 37, 38],
			[40, 1.079, 0, 39, 40],
			[51, 0.105, 0, 41, 42],
			[40, 1.01, 0, 43, 44],
			[13, 91e-4, 0, 45, 46],
			[88, 0.04129, 1, 47, 48],
			[0.01914],
			[-0.02281],
			[0.06411],
			[-9722e-6],
			[-0.05976],
			[9506e-6],
			[3726e-6],
			[-0.03867],
			[-0.01167],
			[0.01306],
			[0.101],
			[0.02877],
			[-8422e-7],
			[0.02255],
			[-0.02212],
			[-8422e-7],
			[-0.03086],
			[9948e-6],
			[0.01139],
			[0.03665],
			[-0.04598],
			[-0.06639],
			[-0.04376],
			[0.01149]
		],
		[
			[82, -5696e-6, 0, 1, 2],
			[69, 2.29, 0, 3, 4],
			[28, 9968e-6, 1, 5, 6],
			[25, 0.08815, 1, 7, 8],
			[80, 2, 0, 9, 10],
			[28, -0.1565, 0, 11, 12],
			[21, 2882e-6, 1, 13, 14],
			[54, 87, 1, 15, 16],
			[26, 0, 0, 17, 18],
			[59, 3, 1, 19, 20],
			[59, 28, 0, 21, 22],
			[92, 3.07, 0, 23, 24],
			[49, 0.8798, 1, 25, 26],
			[2, 49.61, 1, 27, 28],
			[93, 20.63, 0, 29, 30],
			[13, 0.02943, 0, 31, 32],
			[-0.02997],
			[40, 2.477, 1, 33, 34],
			[-0.03988],
			[43, 0.9104, 0, 35, 36],
			[50, 0.8681, 0, 37, 38],
			[93, 10.08, 0, 39, 40],
			[82, -0.1204, 0, 41, 42],
			[8, 62.47, 0, 43, 44],
			[6, 505.2, 1, 45, 46],
			[35, 0.3865, 0, 47, 48],
			[35, 0.7409, 1, 49, 50],
			[69, 5.254, 0, 51, 52],
			[24, 0.03844, 0, 53, 54],
			[79, 6, 0, 55, 56],
			[33, 2.259, 1, 57, 58],
			[0.08024],
			[0.02722],
			[0.04011],
			[-0.02293],
			[2703e-6],
			[-2494e-6],
			[0.05609],
			[0.01291],
			[-0.05312],
			[-2494e-6],
			[-2494e-6],
			[-0.0168],
			[-0.05812],
			[-0.02728],
			[-0.01543],
			[0.04036],
			[5904e-6],
			[0.02047],
			[5904e-6],
			[-8586e-6],
			[1639e-8],
			[-0.05064],
			[4152e-6],
			[-0.02475],
			[9264e-6],
			[-0.05262],
			[-0.0187],
			[0.03942]
		],
		[
			[82, 0.2039, 1, 1, 2],
			[67, -0.03028, 1, 3, 4],
			[67, 0.5794, 1, 5, 6],
			[2, 93.67, 0, 7, 8],
			[60, 0, 1, 9, 10],
			[89, 325.3, 0, 11, 12],
			[9, 0.6072, 0, 13, 14],
			[59, 0, 1, 15, 16],
			[62, 0.02204, 1, 17, 18],
			[65, 0.113, 0, 19, 20],
			[14, 0, 0, 21, 22],
			[91, 0.44, 0, 23, 24],
			[5056e-6],
			[59, 11, 0, 25, 26],
			[0.06807],
			[27, 0.1872, 1, 27, 28],
			[7, 239.8, 0, 29, 30],
			[59, 20, 0, 31, 32],
			[59, 5, 1, 33, 34],
			[3, 24.73, 1, 35, 36],
			[59, 28, 1, 37, 38],
			[7, 93.14, 0, 39, 40],
			[67, 0.05911, 0, 41, 42],
			[60, 68, 1, 43, 44],
			[66, 0, 1, 45, 46],
			[-3689e-6],
			[-0.04693],
			[-0.04855],
			[0.02373],
			[-6496e-6],
			[-0.04606],
			[1571e-6],
			[-0.02092],
			[0.01912],
			[0.06019],
			[-0.02423],
			[0.0135],
			[-0.03497],
			[0.01745],
			[0.01918],
			[-4927e-7],
			[0.05926],
			[-4195e-6],
			[-0.06462],
			[-0.02814],
			[-0.02814],
			[-0.02814]
		],
		[
			[25, 0.02909, 1, 1, 2],
			[59, 0, 0, 3, 4],
			[69, 4.952, 0, 5, 6],
			[58, 18, 1, 7, 8],
			[80, 2, 1, 9, 10],
			[59, 28, 1, 11, 12],
			[40, 1.22, 1, 13, 14],
			[69, 5.365, 0, 15, 16],
			[25, -5638e-6, 0, 17, 18],
			[96, 1, 0, 19, 20],
			[75, 0.2511, 0, 21, 22],
			[79, 10, 0, 23, 24],
			[87, 0.1451, 0, 25, 26],
			[74, 0.06694, 0, 27, 28],
			[16, 7, 0, 29, 30],
			[75, 0.05023, 1, 31, 32],
			[73, -9, 1, 33, 34],
			[2, 474.2, 1, 35, 36],
			[85, 2, 0, 37, 38],
			[89, 28.1, 0, 39, 40],
			[59, 20, 0, 41, 42],
			[78, 2, 0, 43, 44],
			[69, 3.03, 0, 45, 46],
			[75, 0.02524, 1, 47, 48],
			[46, 0.6617, 1, 49, 50],
			[87, 7069e-6, 0, 51, 52],
			[79, 4, 1, 53, 54],
			[68, 644e-5, 0, 55, 56],
			[73, -5, 1, 57, 58],
			[28, -0.2856, 1, 59, 60],
			[89, 72.88, 0, 61, 62],
			[-0.0317],
			[8632e-6],
			[-1721e-6],
			[-0.05121],
			[-0.02548],
			[0.0455],
			[0.02472],
			[-0.01842],
			[-0.01162],
			[6388e-6],
			[0.02058],
			[-82e-4],
			[-0.08362],
			[-0.01162],
			[-0.01162],
			[-0.01162],
			[-0.02074],
			[0.04999],
			[-1043e-6],
			[-0.03643],
			[0.07952],
			[417e-6],
			[0.1112],
			[-9338e-6],
			[-0.07789],
			[-0.03358],
			[-0.03954],
			[9318e-6],
			[0.04712],
			[-0.04027],
			[-0.01542],
			[0.05129]
		],
		[
			[82, 0.09385, 1, 1, 2],
			[67, -0.03028, 1, 3, 4],
			[69, 2.5, 0, 5, 6],
			[46, 0.6404, 0, 7, 8],
			[60, 0, 0, 9, 10],
			[82, 0.2039, 0, 11, 12],
			[8, 194.6, 0, 13, 14],
			[51, 0.103, 0, 15, 16],
			[78, 1, 1, 17, 18],
			[24, 0.04239, 1, 19, 20],
			[0, 158.9, 0, 21, 22],
			[46, 0.6404, 1, 23, 24],
			[19, -0.5318, 1, 25, 26],
			[64, 0.3843, 1, 27, 28],
			[24, 0.1178, 0, 29, 30],
			[24, -0.0389, 1, 31, 32],
			[55, 73, 1, 33, 34],
			[0, 216.5, 0, 35, 36],
			[66, 0.01, 1, 37, 38],
			[21, 0.1955, 1, 39, 40],
			[9, 0.4448, 0, 41, 42],
			[61, -0.01608, 0, 43, 44],
			[9, 0.9536, 0, 45, 46],
			[64, -0.04633, 0, 47, 48],
			[-0.02076],
			[-0.03764],
			[-4621e-7],
			[66, 0.4107, 1, 49, 50],
			[54, 53, 1, 51, 52],
			[64, -0.252, 0, 53, 54],
			[76, -0.1596, 0, 55, 56],
			[-2966e-6],
			[0.03686],
			[-9488e-6],
			[3579e-6],
			[-0.02525],
			[-0.07531],
			[-0.01819],
			[-9488e-6],
			[-0.02778],
			[0.06125],
			[-0.02109],
			[0.01673],
			[-6105e-7],
			[0.02141],
			[6935e-6],
			[-0.03908],
			[0.03336],
			[0.1354],
			[-0.05778],
			[-0.02698],
			[-0.04177],
			[-0.02698],
			[0.108],
			[-3185e-6],
			[0.01436],
			[-0.02698]
		],
		[
			[30, 156, 0, 1, 2],
			[40, 1.03, 1, 3, 4],
			[52, 2.253, 0, 5, 6],
			[29, 7868e-6, 1, 7, 8],
			[9, 0.6806, 0, 9, 10],
			[65, 0, 0, 11, 12],
			[41, 0.8166, 0, 13, 14],
			[20, -0.02049, 0, 15, 16],
			[3, 116.7, 1, 17, 18],
			[30, 108, 0, 19, 20],
			[50, 1.031, 1, 21, 22],
			[76, -1992e-8, 0, 23, 24],
			[62, -9606e-6, 0, 25, 26],
			[87, 3799e-6, 0, 27, 28],
			[6, 257.4, 0, 29, 30],
			[9, 0.5, 0, 31, 32],
			[6, 42.71, 1, 33, 34],
			[51, 0.1831, 0, 35, 36],
			[41, 0.9701, 0, 37, 38],
			[87, 0.1451, 1, 39, 40],
			[13, 0.02648, 0, 41, 42],
			[87, 0.1451, 0, 43, 44],
			[65, 0.07645, 0, 45, 46],
			[80, 1, 1, 47, 48],
			[51, 0.128, 0, 49, 50],
			[22, 0.07399, 0, 51, 52],
			[10, 206.8, 0, 53, 54],
			[51, 0.09331, 0, 55, 56],
			[85, 2, 0, 57, 58],
			[50, 0.5231, 0, 59, 60],
			[56, 93.5, 0, 61, 62],
			[-6313e-6],
			[-0.0471],
			[-0.04129],
			[-3243e-6],
			[-0.05604],
			[0.01525],
			[-0.02447],
			[0.02331],
			[-0.0206],
			[0.05517],
			[0.01862],
			[-0.0202],
			[4539e-6],
			[-0.06198],
			[0.0123],
			[0.05557],
			[-0.04364],
			[-0.102],
			[-0.02431],
			[4636e-7],
			[-0.02592],
			[-8446e-6],
			[4636e-7],
			[-8446e-6],
			[4636e-7],
			[4636e-7],
			[3053e-6],
			[4636e-7],
			[4636e-7],
			[0.03271],
			[3257e-6],
			[4636e-7]
		],
		[
			[25, 0.02909, 1, 1, 2],
			[95, 43.85, 0, 3, 4],
			[60, 23, 1, 5, 6],
			[94, 10.63, 0, 7, 8],
			[61, -0.0268, 0, 9, 10],
			[66, 0.1657, 1, 11, 12],
			[41, 1, 0, 13, 14],
			[60, 2, 0, 15, 16],
			[13, 0.0153, 0, 17, 18],
			[93, 20.63, 0, 19, 20],
			[80, 2, 1, 21, 22],
			[56, 85.17, 0, 23, 24],
			[27, -5549e-6, 0, 25, 26],
			[36, 0.604, 0, 27, 28],
			[93, 16.58, 0, 29, 30],
			[25, 0.02909, 0, 31, 32],
			[13, 0.01493, 0, 33, 34],
			[64, -0.03, 0, 35, 36],
			[60, -10, 0, 37, 38],
			[80, 6, 0, 39, 40],
			[51, 0.09718, 0, 41, 42],
			[60, 20, 1, 43, 44],
			[78, 2, 0, 45, 46],
			[60, 10, 1, 47, 48],
			[36, 0.604, 0, 49, 50],
			[26, 0.01989, 1, 51, 52],
			[51, 0.1445, 0, 53, 54],
			[41, 0.3641, 0, 55, 56],
			[71, 0, 0, 57, 58],
			[94, 7.035, 0, 59, 60],
			[78, 5, 1, 61, 62],
			[-0.04216],
			[-6929e-6],
			[-6929e-6],
			[-0.02132],
			[-6929e-6],
			[-6929e-6],
			[-6929e-6],
			[-0.01445],
			[-2861e-6],
			[-6929e-6],
			[27e-5],
			[27e-5],
			[0.01557],
			[5084e-6],
			[27e-5],
			[5084e-6],
			[-0.0287],
			[0.01089],
			[3819e-6],
			[-0.05767],
			[-0.03579],
			[0.0373],
			[-6578e-6],
			[0.06777],
			[-8338e-6],
			[0.05767],
			[-0.06007],
			[-8338e-6],
			[0.04002],
			[-0.04171],
			[0.1142],
			[0.03311]
		],
		[
			[30, 156, 0, 1, 2],
			[82, -1875e-6, 0, 3, 4],
			[58, 174, 1, 5, 6],
			[60, -3, 1, 7, 8],
			[10, 53.92, 0, 9, 10],
			[62, -0.01474, 1, 11, 12],
			[60, 23, 1, 13, 14],
			[87, 0.05114, 1, 15, 16],
			[65, 0.1559, 0, 17, 18],
			[13, 0.01734, 0, 19, 20],
			[33, 1.214, 1, 21, 22],
			[82, -0.1007, 0, 23, 24],
			[80, 1, 1, 25, 26],
			[58, 282, 0, 27, 28],
			[65, -0.04, 0, 29, 30],
			[94, 0.7144, 0, 31, 32],
			[6, 205.5, 1, 33, 34],
			[80, 2, 0, 35, 36],
			[82, -0.2316, 0, 37, 38],
			[87, 0.01493, 0, 39, 40],
			[6, 145.9, 1, 41, 42],
			[26, 0.012, 0, 43, 44],
			[16, 6, 0, 45, 46],
			[88, 0.03886, 0, 47, 48],
			[10, 95.08, 0, 49, 50],
			[44, 0.1361, 0, 51, 52],
			[79, 5, 0, 53, 54],
			[27, -1086e-6, 1, 55, 56],
			[37, 0.4416, 1, 57, 58],
			[88, 0.01929, 0, 59, 60],
			[35, 0.7, 0, 61, 62],
			[0.03276],
			[-0.04421],
			[-0.01811],
			[0.08434],
			[0.01141],
			[-0.0297],
			[0.09542],
			[0.03334],
			[0.01355],
			[-0.02225],
			[-0.04641],
			[-0.02225],
			[-0.01942],
			[8585e-6],
			[8464e-7],
			[0.04913],
			[2462e-6],
			[2462e-6],
			[-0.02356],
			[2462e-6],
			[938e-5],
			[0.02144],
			[938e-5],
			[2462e-6],
			[-8179e-7],
			[-0.04346],
			[0.01421],
			[-0.07151],
			[0.01271],
			[0.05432],
			[0.03328],
			[-0.02567]
		],
		[
			[81, -9034e-6, 0, 1, 2],
			[16, 18, 0, 3, 4],
			[26, -4135e-6, 0, 5, 6],
			[75, 0.2669, 1, 7, 8],
			[50, 0.8362, 0, 9, 10],
			[13, 0.02699, 0, 11, 12],
			[56, 93.5, 0, 13, 14],
			[26, -0.133, 1, 15, 16],
			[58, -186, 0, 17, 18],
			[5, 346.3, 0, 19, 20],
			[52, 3.878, 1, 21, 22],
			[65, 0.0405, 1, 23, 24],
			[8, 100.1, 0, 25, 26],
			[56, 79.02, 0, 27, 28],
			[4, 282.4, 0, 29, 30],
			[23, -0.04441, 1, 31, 32],
			[56, 66.14, 0, 33, 34],
			[73, -41, 0, 35, 36],
			[22, -0.05716, 1, 37, 38],
			[58, 198, 0, 39, 40],
			[32, 1.099, 0, 41, 42],
			[32, 0.5971, 0, 43, 44],
			[41, 0.6988, 1, 45, 46],
			[52, 2.702, 1, 47, 48],
			[16, 7, 0, 49, 50],
			[20, 0.1321, 0, 51, 52],
			[74, 0.3113, 1, 53, 54],
			[92, 11, 0, 55, 56],
			[81, -2866e-6, 1, 57, 58],
			[26, 0.01989, 1, 59, 60],
			[23, 0.05947, 0, 61, 62],
			[0.05516],
			[-0.04179],
			[-0.02385],
			[0.01305],
			[0.03045],
			[-0.03403],
			[0.07789],
			[0.01476],
			[0.06937],
			[7068e-6],
			[-0.02786],
			[0.02621],
			[0.02013],
			[-1385e-6],
			[0.02013],
			[0.05396],
			[-0.01905],
			[-7519e-6],
			[-0.01905],
			[0.01953],
			[-0.0457],
			[-0.03008],
			[-0.01905],
			[-0.01905],
			[-0.01526],
			[0.01719],
			[0.01931],
			[-8422e-6],
			[1977e-6],
			[-0.04794],
			[0.01349],
			[-0.06731]
		],
		[
			[82, -5696e-6, 0, 1, 2],
			[69, 2.29, 0, 3, 4],
			[41, 0.8993, 0, 5, 6],
			[23, 0.1121, 0, 7, 8],
			[60, 0, 1, 9, 10],
			[22, -0.01624, 1, 11, 12],
			[13, 0.01598, 0, 13, 14],
			[21, 0, 0, 15, 16],
			[45, 0.03704, 0, 17, 18],
			[21, 0.07907, 1, 19, 20],
			[69, 8.902, 0, 21, 22],
			[39, 1.095, 0, 23, 24],
			[21, 0.01516, 1, 25, 26],
			[4, 248.9, 0, 27, 28],
			[26, 1e9, 0, 29, 30],
			[13, 0.03566, 0, 31, 32],
			[-1622e-6],
			[60, -3, 1, 33, 34],
			[47, 1.298, 0, 35, 36],
			[2, 392.8, 1, 37, 38],
			[22, 0.1274, 0, 39, 40],
			[4, 160.8, 0, 41, 42],
			[33, 1.1, 1, 43, 44],
			[79, 3, 0, 45, 46],
			[27, -1086e-6, 0, 47, 48],
			[36, 0.7632, 0, 49, 50],
			[23, 0.1427, 1, 51, 52],
			[52, 2.011, 1, 53, 54],
			[69, 5.953, 0, 55, 56],
			[2, 57.53, 0, 57, 58],
			[61, -6452e-6, 0, 59, 60],
			[0.144],
			[0.01747],
			[-0.01426],
			[0.07581],
			[0.02239],
			[-0.03845],
			[-0.02593],
			[0.02796],
			[0.08526],
			[-0.0265],
			[0.02587],
			[5887e-6],
			[-0.03595],
			[0.04013],
			[0.01715],
			[-0.03951],
			[-0.02917],
			[0.02445],
			[8159e-6],
			[-0.01457],
			[-0.04746],
			[-4116e-6],
			[3661e-6],
			[0.0371],
			[3661e-6],
			[4255e-6],
			[-0.028],
			[-3473e-6],
			[-0.02198],
			[3661e-6]
		],
		[
			[28, 1451e-6, 1, 1, 2],
			[35, 0.2406, 0, 3, 4],
			[4, 60.52, 1, 5, 6],
			[89, 240.8, 0, 7, 8],
			[49, 0.8658, 0, 9, 10],
			[54, 90, 0, 11, 12],
			[6, 158.5, 1, 13, 14],
			[50, 0.9722, 1, 15, 16],
			[33, 0.6444, 1, 17, 18],
			[54, 100, 1, 19, 20],
			[50, 0.8156, 1, 21, 22],
			[33, 1.058, 0, 23, 24],
			[49, 0.8912, 0, 25, 26],
			[50, 0.5231, 0, 27, 28],
			[68, 8547e-6, 0, 29, 30],
			[34, 0.1261, 0, 31, 32],
			[94, 14.32, 0, 33, 34],
			[9, 0.5848, 0, 35, 36],
			[65, -0.3645, 0, 37, 38],
			[75, 0.04088, 0, 39, 40],
			[44, 3.403, 0, 41, 42],
			[75, 0.02304, 0, 43, 44],
			[35, 0.773, 0, 45, 46],
			[13, 0.01336, 0, 47, 48],
			[8, 23.2, 0, 49, 50],
			[33, 0, 0, 51, 52],
			[9, 0.9769, 0, 53, 54],
			[20, 3367e-6, 0, 55, 56],
			[27, -9715e-6, 0, 57, 58],
			[69, 5.953, 0, 59, 60],
			[8, 83.62, 0, 61, 62],
			[-0.02984],
			[-0.06632],
			[-0.02402],
			[-8738e-6],
			[-8738e-6],
			[0.02849],
			[-8738e-6],
			[0.05819],
			[0.03591],
			[964e-5],
			[9178e-6],
			[0.01798],
			[9178e-6],
			[5833e-6],
			[9178e-6],
			[-0.0135],
			[0.01647],
			[-0.03214],
			[-0.03487],
			[0.04295],
			[-0.0342],
			[0.03085],
			[-0.04036],
			[-0.09587],
			[-0.04454],
			[0.02746],
			[-0.01769],
			[0.01325],
			[-0.04867],
			[-5968e-6],
			[-0.01364],
			[0.01724]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[1, 150.7, 0, 3, 4],
			[54, 95, 1, 5, 6],
			[88, 5995e-6, 0, 7, 8],
			[59, 12, 0, 9, 10],
			[82, -0.3115, 0, 11, 12],
			[22, -0.1079, 1, 13, 14],
			[59, 2, 0, 15, 16],
			[82, -0.1867, 0, 17, 18],
			[89, 325.3, 0, 19, 20],
			[74, 0.1556, 0, 21, 22],
			[22, -0.2124, 1, 23, 24],
			[1, 280.1, 0, 25, 26],
			[47, 1.019, 0, 27, 28],
			[69, 7.549, 0, 29, 30],
			[94, 12.02, 0, 31, 32],
			[59, 20, 0, 33, 34],
			[0.03315],
			[22, 0.02756, 1, 35, 36],
			[41, 1.081, 1, 37, 38],
			[44, 3.942, 0, 39, 40],
			[59, 28, 1, 41, 42],
			[25, -0.06543, 1, 43, 44],
			[88, 2662e-6, 0, 45, 46],
			[1, 555.1, 0, 47, 48],
			[52, 2.253, 0, 49, 50],
			[69, 3.192, 0, 51, 52],
			[82, -0.06788, 1, 53, 54],
			[88, 0.01762, 0, 55, 56],
			[94, 16.06, 0, 57, 58],
			[25, 0.01311, 0, 59, 60],
			[-0.04906],
			[6886e-6],
			[0.03711],
			[-0.04353],
			[-0.05388],
			[-0.02319],
			[-0.0357],
			[2887e-6],
			[2887e-6],
			[0.05601],
			[0.0258],
			[-0.05131],
			[0.0822],
			[-6407e-6],
			[-0.01742],
			[0.1105],
			[-4264e-6],
			[0.0682],
			[-2696e-6],
			[0.01169],
			[0.01182],
			[-0.01251],
			[0.08029],
			[-0.02618],
			[0.01692],
			[-0.04269],
			[-0.05136],
			[6681e-6],
			[3831e-6],
			[-0.05278]
		],
		[
			[4, 40.84, 1, 1, 2],
			[66, 0, 1, 3, 4],
			[67, -0.012, 1, 5, 6],
			[81, 384e-6, 0, 7, 8],
			[89, 28.1, 0, 9, 10],
			[81, -9034e-6, 0, 11, 12],
			[60, 0, 1, 13, 14],
			[34, 1.535, 0, 15, 16],
			[29, 0.2288, 1, 17, 18],
			[22, -0.03189, 0, 19, 20],
			[24, 0.2584, 0, 21, 22],
			[52, 7.009, 1, 23, 24],
			[42, 0.641, 1, 25, 26],
			[43, 1.066, 0, 27, 28],
			[22, -0.9303, 1, 29, 30],
			[75, 0.02304, 0, 31, 32],
			[54, 76, 0, 33, 34],
			[7, 38.21, 0, 35, 36],
			[75, 0.2669, 0, 37, 38],
			[24, -0.05908, 0, 39, 40],
			[83, 20.42, 1, 41, 42],
			[22, 0.03616, 0, 43, 44],
			[75, 6585e-6, 1, 45, 46],
			[81, -0.1159, 0, 47, 48],
			[60, 40, 0, 49, 50],
			[67, -0.06042, 1, 51, 52],
			[34, 1.096, 1, 53, 54],
			[67, 0.112, 0, 55, 56],
			[22, -0.3116, 0, 57, 58],
			[50, 0.3462, 0, 59, 60],
			[34, 1.061, 0, 61, 62],
			[0.01435],
			[-0.03889],
			[0.1012],
			[-1233e-6],
			[-0.01095],
			[-0.05832],
			[0.05224],
			[-0.03372],
			[-9122e-6],
			[-0.03375],
			[-0.04919],
			[-9122e-6],
			[0.01663],
			[-9122e-6],
			[0.06799],
			[-9122e-6],
			[-0.02554],
			[0.01329],
			[0.07952],
			[0.02822],
			[-9618e-6],
			[0.01914],
			[-0.02642],
			[-9618e-6],
			[0.01073],
			[-0.01369],
			[-0.01369],
			[-0.03147],
			[-0.02221],
			[0.06612],
			[1519e-6],
			[0.02162]
		],
		[
			[85, 2, 0, 1, 2],
			[67, -0.03938, 1, 3, 4],
			[94, 10.27, 0, 5, 6],
			[54, 91, 0, 7, 8],
			[49, 0.9362, 1, 9, 10],
			[42, 0.641, 0, 11, 12],
			[0, 16.88, 0, 13, 14],
			[62, 0.02204, 1, 15, 16],
			[2, 74.23, 0, 17, 18],
			[75, 0.1549, 0, 19, 20],
			[42, 0.9, 1, 21, 22],
			[65, -0.06725, 0, 23, 24],
			[58, -264, 0, 25, 26],
			[75, 0.1239, 0, 27, 28],
			[78, 14, 0, 29, 30],
			[25, -0.03768, 0, 31, 32],
			[41, 0.7937, 1, 33, 34],
			[65, -0.044, 1, 35, 36],
			[51, 0.15, 0, 37, 38],
			[25, 0.0533, 1, 39, 40],
			[94, 5.913, 0, 41, 42],
			[41, 0.8993, 0, 43, 44],
			[51, 0.1069, 0, 45, 46],
			[51, 0.07315, 0, 47, 48],
			[2, 44.42, 0, 49, 50],
			[-0.03382],
			[0, -14.83, 0, 51, 52],
			[64, -0.03, 0, 53, 54],
			[33, 0.875, 0, 55, 56],
			[54, 65, 0, 57, 58],
			[60, -3, 0, 59, 60],
			[-0.01034],
			[2811e-7],
			[0.01228],
			[0.04377],
			[-0.01034],
			[-0.01034],
			[-0.01034],
			[0.02105],
			[0.02281],
			[5912e-6],
			[5912e-6],
			[7584e-6],
			[-2876e-6],
			[5912e-6],
			[-0.01034],
			[-2876e-6],
			[-0.01034],
			[-0.01034],
			[-0.01034],
			[-0.03382],
			[-0.03382],
			[-0.05632],
			[-0.01034],
			[-0.01034],
			[-0.01034],
			[-0.03348],
			[-0.01034],
			[-0.02125],
			[-0.01034],
			[-0.04754]
		],
		[
			[82, 0.2039, 1, 1, 2],
			[49, 0.902, 0, 3, 4],
			[21, -0.123, 1, 5, 6],
			[16, 1, 0, 7, 8],
			[58, 174, 1, 9, 10],
			[52, 8.495, 1, 11, 12],
			[59, 18, 1, 13, 14],
			[2, 187.7, 0, 15, 16],
			[78, 2, 0, 17, 18],
			[88, 0.01403, 1, 19, 20],
			[88, 0.01683, 0, 21, 22],
			[76, 0.5176, 1, 23, 24],
			[76, 0.1036, 0, 25, 26],
			[88, 0.06911, 1, 27, 28],
			[68, 0.01751, 0, 29, 30],
			[94, 16.06, 0, 31, 32],
			[62, 4484e-6, 1, 33, 34],
			[84, 0.01655, 0, 35, 36],
			[62, -0.0904, 0, 37, 38],
			[59, 2, 0, 39, 40],
			[82, -1875e-6, 0, 41, 42],
			[59, 20, 0, 43, 44],
			[59, 11, 1, 45, 46],
			[-0.06773],
			[-0.04095],
			[0.02065],
			[-0.03663],
			[51, 0.09156, 0, 47, 48],
			[-8227e-6],
			[68, 734e-5, 0, 49, 50],
			[-0.01088],
			[1671e-6],
			[0.01415],
			[1671e-6],
			[0.03639],
			[1671e-6],
			[4815e-6],
			[1671e-6],
			[0.01975],
			[-0.01699],
			[1671e-6],
			[1671e-6],
			[-0.01703],
			[-4806e-6],
			[-0.04373],
			[-0.02524],
			[1671e-6],
			[-7612e-6],
			[-0.06012],
			[-6387e-6],
			[0.1112]
		],
		[
			[54, 100, 1, 1, 2],
			[39, 0.3358, 0, 3, 4],
			[69, 7.673, 0, 5, 6],
			[62, 9517e-6, 0, 7, 8],
			[29, 4951e-6, 1, 9, 10],
			[35, 3.5, 1, 11, 12],
			[59, 8, 0, 13, 14],
			[57, 498, 0, 15, 16],
			[35, 0.7409, 1, 17, 18],
			[1, 280.1, 0, 19, 20],
			[59, 49, 1, 21, 22],
			[94, 18.86, 0, 23, 24],
			[0.06989],
			[92, 4.982, 0, 25, 26],
			[10, -16.29, 0, 27, 28],
			[65, -0.224, 0, 29, 30],
			[87, 0.0101, 0, 31, 32],
			[87, 0.04046, 1, 33, 34],
			[59, 14, 0, 35, 36],
			[57, 30, 0, 37, 38],
			[56, 85.74, 0, 39, 40],
			[1, 60.26, 0, 41, 42],
			[64, -0.146, 0, 43, 44],
			[65, 0.3243, 1, 45, 46],
			[66, 0.1497, 0, 47, 48],
			[94, 3.516, 0, 49, 50],
			[87, 0.01424, 0, 51, 52],
			[65, 0.0175, 0, 53, 54],
			[59, 49, 0, 55, 56],
			[-0.0206],
			[-0.03879],
			[-0.0206],
			[-9566e-6],
			[-9566e-6],
			[0.04452],
			[4327e-6],
			[0.05893],
			[-0.01293],
			[0.01462],
			[3445e-6],
			[-0.01991],
			[-0.03153],
			[-5847e-6],
			[0.07799],
			[0.01305],
			[-0.05734],
			[0.01442],
			[0.03654],
			[-0.02376],
			[-0.02956],
			[-0.05965],
			[0.02233],
			[-0.02413],
			[4478e-6],
			[0.08076],
			[0.01909],
			[-0.05797]
		],
		[
			[4, 32.53, 1, 1, 2],
			[69, 2.008, 0, 3, 4],
			[21, 0.01782, 1, 5, 6],
			[35, 3.5, 0, 7, 8],
			[0, -27.06, 0, 9, 10],
			[25, 0.02262, 1, 11, 12],
			[2, 137.7, 0, 13, 14],
			[10, 33.84, 0, 15, 16],
			[33, 0.202, 1, 17, 18],
			[35, 1.317, 1, 19, 20],
			[92, 9.454, 0, 21, 22],
			[83, 28.03, 0, 23, 24],
			[69, 4.952, 0, 25, 26],
			[83, 26.42, 1, 27, 28],
			[0, 24.86, 0, 29, 30],
			[0.0556],
			[93, 36.71, 0, 31, 32],
			[0.1138],
			[-0.01286],
			[22, -0.1079, 0, 33, 34],
			[25, -0.06543, 0, 35, 36],
			[25, 0.08815, 1, 37, 38],
			[21, -0.07696, 1, 39, 40],
			[0, -52.15, 0, 41, 42],
			[61, -0.04614, 0, 43, 44],
			[30, 223, 0, 45, 46],
			[54, 86, 1, 47, 48],
			[54, 56, 1, 49, 50],
			[40, 0.9812, 1, 51, 52],
			[22, -0.07855, 1, 53, 54],
			[96, 2, 0, 55, 56],
			[-0.0439],
			[0.01968],
			[0.02839],
			[-0.03751],
			[0.0939],
			[-0.01767],
			[-0.04942],
			[-0.02523],
			[-0.02523],
			[0.04524],
			[-2772e-6],
			[-0.02222],
			[-2772e-6],
			[0.01106],
			[-4612e-6],
			[0.03617],
			[-0.01649],
			[-0.05157],
			[-0.02643],
			[-0.0455],
			[-0.02643],
			[0.01957],
			[0.1402],
			[-0.01052],
			[-9933e-6],
			[0.01942]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[89, 240.8, 0, 3, 4],
			[50, 0.8538, 1, 5, 6],
			[58, -12, 0, 7, 8],
			[45, 0.01442, 0, 9, 10],
			[67, -0.07467, 1, 11, 12],
			[35, 0.7409, 0, 13, 14],
			[20, -0.1844, 0, 15, 16],
			[27, 0.08192, 1, 17, 18],
			[65, 5389e-6, 0, 19, 20],
			[58, 174, 0, 21, 22],
			[73, -57, 1, 23, 24],
			[54, 75, 1, 25, 26],
			[45, 0.07882, 0, 27, 28],
			[54, 91, 1, 29, 30],
			[58, -186, 0, 31, 32],
			[94, 14.32, 0, 33, 34],
			[20, 0.1321, 1, 35, 36],
			[57, 282, 0, 37, 38],
			[76, 0.183, 1, 39, 40],
			[50, 1.378, 1, 41, 42],
			[45, 0.04065, 0, 43, 44],
			[33, 0.7692, 0, 45, 46],
			[52, 10.47, 0, 47, 48],
			[8, 168, 0, 49, 50],
			[76, 0.07534, 0, 51, 52],
			[58, 198, 0, 53, 54],
			[74, 0.1962, 1, 55, 56],
			[50, 1.305, 0, 57, 58],
			[53, 3.228, 1, 59, 60],
			[33, 1.764, 0, 61, 62],
			[-0.01267],
			[-8331e-6],
			[-0.04088],
			[-8331e-6],
			[-0.05079],
			[-8331e-6],
			[-0.01694],
			[-8331e-6],
			[-8331e-6],
			[2403e-6],
			[0.0367],
			[-8331e-6],
			[0.04695],
			[-8331e-6],
			[-3887e-6],
			[0.06387],
			[-0.07603],
			[0.01243],
			[-0.01343],
			[0.03488],
			[0.02203],
			[-0.01706],
			[0.03648],
			[6735e-7],
			[0.04099],
			[-0.01606],
			[-8399e-6],
			[0.02868],
			[-8262e-6],
			[0.01634],
			[-0.03222],
			[0.03447]
		],
		[
			[67, -0.012, 1, 1, 2],
			[46, 0.6807, 0, 3, 4],
			[72, 1, 0, 5, 6],
			[25, -0.1411, 0, 7, 8],
			[59, 23, 0, 9, 10],
			[50, 0.75, 0, 11, 12],
			[59, 28, 0, 13, 14],
			[4, 147.9, 1, 15, 16],
			[67, -0.1321, 1, 17, 18],
			[51, 0.128, 0, 19, 20],
			[67, -0.09267, 0, 21, 22],
			[75, 0.01462, 0, 23, 24],
			[53, -19.35, 1, 25, 26],
			[75, 0.3603, 1, 27, 28],
			[86, 9089e-6, 0, 29, 30],
			[58, -156, 0, 31, 32],
			[66, 0.1047, 1, 33, 34],
			[2, 98.06, 0, 35, 36],
			[21, -0.04574, 0, 37, 38],
			[50, 0.8941, 1, 39, 40],
			[75, 0.1239, 0, 41, 42],
			[66, 0.1303, 0, 43, 44],
			[34, 1.096, 1, 45, 46],
			[9, 0.3989, 0, 47, 48],
			[59, 13, 1, 49, 50],
			[59, 16, 1, 51, 52],
			[34, 1.061, 0, 53, 54],
			[9, 0.7602, 0, 55, 56],
			[49, 0.8495, 0, 57, 58],
			[67, 0.3453, 0, 59, 60],
			[94, 12.49, 0, 61, 62],
			[0.07401],
			[-7319e-6],
			[0.02128],
			[-7319e-6],
			[-7319e-6],
			[5485e-6],
			[-4161e-6],
			[0.02714],
			[-7319e-6],
			[-0.02492],
			[-7319e-6],
			[-0.02463],
			[-7319e-6],
			[-0.0443],
			[-0.06953],
			[-7319e-6],
			[-0.03525],
			[0.05935],
			[-1767e-6],
			[0.0316],
			[-0.04072],
			[-7285e-6],
			[-1243e-6],
			[0.01901],
			[-0.04391],
			[-0.01255],
			[0.04524],
			[-0.02779],
			[-0.03385],
			[0.03953],
			[0.07927],
			[-0.02888]
		],
		[
			[26, -4135e-6, 0, 1, 2],
			[91, -0.068, 0, 3, 4],
			[29, 4951e-6, 1, 5, 6],
			[29, -0.1569, 0, 7, 8],
			[81, -7929e-6, 0, 9, 10],
			[72, 0, 0, 11, 12],
			[93, 11.3, 0, 13, 14],
			[67, 3667e-6, 1, 15, 16],
			[84, 3141e-6, 1, 17, 18],
			[47, 0.6239, 1, 19, 20],
			[42, 0.641, 0, 21, 22],
			[42, 0.91, 1, 23, 24],
			[29, -0.4031, 1, 25, 26],
			[28, 0.03385, 1, 27, 28],
			[88, 0.04403, 0, 29, 30],
			[93, 27.09, 0, 31, 32],
			[85, 1, 0, 33, 34],
			[94, 7.222, 0, 35, 36],
			[64, 0.1743, 0, 37, 38],
			[84, 0.08201, 1, 39, 40],
			[5, 100.1, 1, 41, 42],
			[30, 163, 0, 43, 44],
			[39, 1.082, 1, 45, 46],
			[1, 216.4, 0, 47, 48],
			[26, 0.08307, 1, 49, 50],
			[87, 1164e-6, 0, 51, 52],
			[46, 0.9031, 0, 53, 54],
			[88, 9912e-7, 1, 55, 56],
			[30, 150, 0, 57, 58],
			[88, 0.02023, 0, 59, 60],
			[25, -0.06543, 1, 61, 62],
			[-0.03601],
			[0.02871],
			[0.01942],
			[-0.03032],
			[-3803e-6],
			[-0.05078],
			[0.02954],
			[2992e-7],
			[-0.04209],
			[0.01641],
			[0.03855],
			[-1749e-6],
			[-0.01709],
			[4114e-6],
			[-0.04052],
			[-0.01709],
			[0.02993],
			[9709e-6],
			[-3823e-6],
			[9709e-6],
			[0.05992],
			[-0.044],
			[4098e-6],
			[-0.02706],
			[-3434e-7],
			[-0.03514],
			[-0.02741],
			[0.02346],
			[6927e-6],
			[-0.02143],
			[-0.03131],
			[0.04445]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[79, 4, 0, 3, 4],
			[46, 0.75, 0, 5, 6],
			[59, 5, 0, 7, 8],
			[10, 121.1, 0, 9, 10],
			[17, 58, 0, 11, 12],
			[17, 9, 0, 13, 14],
			[50, 1.169, 0, 15, 16],
			[3, 161.8, 1, 17, 18],
			[88, 554e-5, 0, 19, 20],
			[50, 0.9143, 0, 21, 22],
			[88, 0.01277, 1, 23, 24],
			[25, 0.0533, 0, 25, 26],
			[59, 4, 1, 27, 28],
			[54, 90, 1, 29, 30],
			[86, 3326e-6, 0, 31, 32],
			[3, -27.98, 0, 33, 34],
			[88, 0.01217, 1, 35, 36],
			[31, 1.224, 0, 37, 38],
			[59, 2, 0, 39, 40],
			[10, -370.8, 0, 41, 42],
			[59, 13, 1, 43, 44],
			[50, 1.76, 1, 45, 46],
			[61, -6452e-6, 0, 47, 48],
			[59, 23, 0, 49, 50],
			[73, -3, 1, 51, 52],
			[42, 0.5517, 0, 53, 54],
			[92, 2.508, 0, 55, 56],
			[59, 23, 0, 57, 58],
			[50, 0.9226, 0, 59, 60],
			[90, 0, 0, 61, 62],
			[0.02054],
			[-0.05024],
			[-0.01502],
			[0.06741],
			[0.07968],
			[0.01373],
			[-0.03968],
			[0.01875],
			[-0.04061],
			[0.01739],
			[0.02365],
			[-0.04135],
			[-7562e-6],
			[0.04107],
			[-0.04867],
			[0.03472],
			[219e-5],
			[0.02448],
			[-294e-6],
			[0.01803],
			[1647e-6],
			[0.0267],
			[0.02015],
			[-294e-6],
			[-0.02592],
			[-294e-6],
			[-294e-6],
			[-294e-6],
			[-294e-6],
			[-0.0145],
			[-0.04614],
			[-7009e-6]
		],
		[
			[58, 174, 1, 1, 2],
			[50, 0.3462, 0, 3, 4],
			[22, 0.08712, 1, 5, 6],
			[94, 18.86, 0, 7, 8],
			[37, 0.9384, 0, 9, 10],
			[50, 0.75, 0, 11, 12],
			[9, 0.4085, 0, 13, 14],
			[10, -370.8, 0, 15, 16],
			[7, 167.2, 0, 17, 18],
			[67, -0.06714, 1, 19, 20],
			[17, 36, 0, 21, 22],
			[23, 0.1427, 0, 23, 24],
			[75, 0.2511, 1, 25, 26],
			[67, -0.3337, 0, 27, 28],
			[2, 157.2, 1, 29, 30],
			[23, 0.07568, 0, 31, 32],
			[58, 90, 0, 33, 34],
			[9, 0.8132, 0, 35, 36],
			[54, 86, 0, 37, 38],
			[38, 1.649, 0, 39, 40],
			[50, 0.8941, 1, 41, 42],
			[9, 0.5152, 0, 43, 44],
			[32, 1.086, 1, 45, 46],
			[54, 1e9, 0, 47, 48],
			[60, 53, 0, 49, 50],
			[60, 5, 0, 51, 52],
			[60, 10, 1, 53, 54],
			[23, 0.3163, 0, 55, 56],
			[54, 94, 0, 57, 58],
			[84, 0.03895, 0, 59, 60],
			[27, -2229e-6, 1, 61, 62],
			[-0.01503],
			[0.08332],
			[-0.04404],
			[-0.01095],
			[0.1488],
			[-7134e-6],
			[-0.03965],
			[0.04417],
			[4876e-6],
			[4876e-6],
			[0.03694],
			[7696e-6],
			[-0.01484],
			[4876e-6],
			[-0.0252],
			[8564e-8],
			[-0.06075],
			[0.01895],
			[0.03383],
			[-0.01863],
			[-6236e-7],
			[-0.04018],
			[-0.01582],
			[0.04058],
			[-0.02263],
			[0.06487],
			[-0.05222],
			[-4774e-6],
			[-0.04611],
			[0.03629],
			[0.04714],
			[8332e-6]
		],
		[
			[82, -0.3115, 0, 1, 2],
			[67, -0.4987, 0, 3, 4],
			[80, 2, 1, 5, 6],
			[55, 53, 0, 7, 8],
			[45, 0.07882, 0, 9, 10],
			[55, 96, 0, 11, 12],
			[78, 2, 0, 13, 14],
			[0.01697],
			[-0.03807],
			[85, 1, 0, 15, 16],
			[25, -1013e-6, 1, 17, 18],
			[25, 0.02909, 1, 19, 20],
			[50, 1.305, 1, 21, 22],
			[76, 0.3266, 0, 23, 24],
			[8, 16.24, 0, 25, 26],
			[76, -0.1596, 1, 27, 28],
			[55, 77, 1, 29, 30],
			[39, 0.4593, 1, 31, 32],
			[50, 0.9867, 0, 33, 34],
			[62, -0.0289, 1, 35, 36],
			[54, 86, 1, 37, 38],
			[86, 0.01005, 0, 39, 40],
			[86, 0.02277, 0, 41, 42],
			[79, 5, 0, 43, 44],
			[82, -0.1447, 0, 45, 46],
			[78, 4, 0, 47, 48],
			[50, 0.9302, 1, 49, 50],
			[0.05097],
			[0.09996],
			[-0.03131],
			[0.0416],
			[-0.02634],
			[0.06933],
			[0.02188],
			[-0.0389],
			[-0.01283],
			[7691e-6],
			[-0.01015],
			[-0.01283],
			[-0.01028],
			[-0.01283],
			[0.05157],
			[-0.01283],
			[-0.03677],
			[-0.0872],
			[-0.01283],
			[-0.02525],
			[-0.04194],
			[-0.01858],
			[-0.01283],
			[-0.01283]
		],
		[
			[69, 2.5, 0, 1, 2],
			[80, 6, 0, 3, 4],
			[80, 2, 1, 5, 6],
			[30, 202, 0, 7, 8],
			[59, 18, 1, 9, 10],
			[4, 32.53, 1, 11, 12],
			[78, 2, 0, 13, 14],
			[47, 0.9083, 1, 15, 16],
			[53, -1.593, 0, 17, 18],
			[75, 0.02762, 0, 19, 20],
			[60, -2, 0, 21, 22],
			[59, 5, 1, 23, 24],
			[81, -9034e-6, 0, 25, 26],
			[75, 0.2359, 0, 27, 28],
			[59, 18, 0, 29, 30],
			[60, -3, 1, 31, 32],
			[53, -0.06562, 0, 33, 34],
			[0.01827],
			[81, 0.0215, 0, 35, 36],
			[54, 51, 0, 37, 38],
			[4, 654.3, 1, 39, 40],
			[70, 2, 0, 41, 42],
			[93, 18.94, 0, 43, 44],
			[29, 0.3247, 1, 45, 46],
			[9, 0.4259, 0, 47, 48],
			[59, 2, 1, 49, 50],
			[46, 0.8939, 1, 51, 52],
			[65, -0.1887, 0, 53, 54],
			[24, -8068e-7, 0, 55, 56],
			[55, 63, 0, 57, 58],
			[38, 0.6702, 0, 59, 60],
			[0.01827],
			[0.07172],
			[0.01827],
			[0.03504],
			[0.05594],
			[0.1382],
			[0.01827],
			[-0.01037],
			[-0.04272],
			[0.01827],
			[-0.03901],
			[0.01827],
			[1804e-6],
			[0.01827],
			[-0.01331],
			[0.01216],
			[0.03759],
			[-0.01331],
			[-7551e-6],
			[0.02378],
			[208e-5],
			[-0.01331],
			[-0.01331],
			[-0.0789],
			[-0.01331],
			[-0.03532],
			[-0.01331],
			[-0.014],
			[-0.02142],
			[-0.01331]
		],
		[
			[28, 1451e-6, 1, 1, 2],
			[28, -0.1565, 0, 3, 4],
			[74, 2148e-7, 1, 5, 6],
			[24, 0.1454, 1, 7, 8],
			[78, 1, 0, 9, 10],
			[69, 5.458, 0, 11, 12],
			[92, 5.272, 0, 13, 14],
			[60, 82, 1, 15, 16],
			[82, 0.2039, 0, 17, 18],
			[24, -0.02691, 0, 19, 20],
			[65, 0.199, 0, 21, 22],
			[69, 2.29, 0, 23, 24],
			[47, 1.298, 1, 25, 26],
			[24, 0.02714, 0, 27, 28],
			[83, 41.82, 1, 29, 30],
			[67, -0.08325, 1, 31, 32],
			[69, 5.752, 0, 33, 34],
			[25, 0.03285, 1, 35, 36],
			[16, 12, 0, 37, 38],
			[82, -1875e-6, 0, 39, 40],
			[59, 13, 1, 41, 42],
			[55, 96, 1, 43, 44],
			[78, 13, 0, 45, 46],
			[34, 0.5621, 0, 47, 48],
			[82, 3693e-6, 0, 49, 50],
			[42, 0.8589, 0, 51, 52],
			[65, -0.06725, 0, 53, 54],
			[25, 0.142, 0, 55, 56],
			[60, 4, 1, 57, 58],
			[18, 53, 0, 59, 60],
			[65, -0.1422, 0, 61, 62],
			[-0.04016],
			[-0.01025],
			[0.05553],
			[-4383e-6],
			[0.09339],
			[9782e-6],
			[-0.02175],
			[0.04053],
			[0.08759],
			[4293e-6],
			[-0.0646],
			[-0.01115],
			[0.01246],
			[-0.02541],
			[0.02216],
			[-0.02496],
			[-0.01389],
			[0.059],
			[0.02011],
			[-0.01892],
			[-0.02952],
			[-0.06176],
			[-0.03419],
			[0.04929],
			[-7652e-6],
			[-3611e-6],
			[-0.01985],
			[-0.06626],
			[9428e-6],
			[-3611e-6],
			[9428e-6],
			[0.02816]
		],
		[
			[28, 1451e-6, 1, 1, 2],
			[35, 0.2406, 0, 3, 4],
			[4, 42.33, 0, 5, 6],
			[89, 161.5, 0, 7, 8],
			[49, 0.8658, 0, 9, 10],
			[88, 0.0104, 0, 11, 12],
			[79, 8, 0, 13, 14],
			[4, 654.3, 1, 15, 16],
			[62, -0.04147, 1, 17, 18],
			[74, -0.1524, 1, 19, 20],
			[50, 0.8156, 1, 21, 22],
			[89, 24.07, 0, 23, 24],
			[20, 1054e-6, 0, 25, 26],
			[11, 2, 0, 27, 28],
			[74, -2154e-6, 1, 29, 30],
			[50, 0.9914, 1, 31, 32],
			[41, 1.815, 0, 33, 34],
			[78, 14, 0, 35, 36],
			[26, 0.08307, 0, 37, 38],
			[52, 5.098, 1, 39, 40],
			[41, 0.8696, 0, 41, 42],
			[26, -1919e-6, 0, 43, 44],
			[23, 0.2123, 1, 45, 46],
			[50, 1.136, 1, 47, 48],
			[62, -2657e-6, 0, 49, 50],
			[83, 20.42, 1, 51, 52],
			[88, 0.0473, 1, 53, 54],
			[23, 0.1531, 1, 55, 56],
			[62, -221e-5, 0, 57, 58],
			[22, 0, 1, 59, 60],
			[6, 151.8, 1, 61, 62],
			[-0.0549],
			[-0.0245],
			[-0.03205],
			[-0.01546],
			[6565e-6],
			[-0.01546],
			[0.03908],
			[6565e-6],
			[8447e-6],
			[0.01969],
			[8447e-6],
			[0.02769],
			[6778e-7],
			[8447e-6],
			[1706e-6],
			[-0.02258],
			[-0.04859],
			[-0.01034],
			[-0.01034],
			[0.04907],
			[-0.05011],
			[0.0293],
			[-0.07821],
			[-3681e-7],
			[0.05827],
			[0.01571],
			[-0.01966],
			[0.01548],
			[-0.05036],
			[-0.01211],
			[3466e-6],
			[-0.01247]
		],
		[
			[58, 174, 1, 1, 2],
			[62, -0.01364, 1, 3, 4],
			[46, 0.57, 0, 5, 6],
			[69, 3.718, 0, 7, 8],
			[16, 0, 0, 9, 10],
			[89, 240.8, 0, 11, 12],
			[54, 82, 0, 13, 14],
			[62, -0.07559, 1, 15, 16],
			[24, 0.1454, 1, 17, 18],
			[93, 18.94, 0, 19, 20],
			[49, 0.8798, 0, 21, 22],
			[60, 17, 1, 23, 24],
			[69, 4.843, 0, 25, 26],
			[9, 0.4547, 0, 27, 28],
			[27, -0.05104, 1, 29, 30],
			[27, 0.08192, 1, 31, 32],
			[91, 0.232, 0, 33, 34],
			[35, 0.8397, 0, 35, 36],
			[29, -2299e-6, 0, 37, 38],
			[30, 313, 0, 39, 40],
			[29, 0.04416, 1, 41, 42],
			[80, 2, 1, 43, 44],
			[29, 4951e-6, 1, 45, 46],
			[7, 564.9, 1, 47, 48],
			[33, 0.875, 0, 49, 50],
			[73, -57, 1, 51, 52],
			[29, -0.2943, 0, 53, 54],
			[35, 0.773, 1, 55, 56],
			[32, 0.5971, 1, 57, 58],
			[69, 10.27, 0, 59, 60],
			[75, 0.03051, 0, 61, 62],
			[-0.01714],
			[-6713e-6],
			[-1753e-6],
			[-6713e-6],
			[-7817e-6],
			[-0.02856],
			[-1753e-6],
			[-0.02783],
			[-1753e-6],
			[0.03957],
			[-1753e-6],
			[0.07644],
			[0.02734],
			[0.01257],
			[8591e-6],
			[-1753e-6],
			[-8843e-6],
			[9808e-6],
			[-8843e-6],
			[9808e-6],
			[9808e-6],
			[0.06096],
			[9808e-6],
			[0.0215],
			[-8843e-6],
			[-0.06018],
			[-8843e-6],
			[-8843e-6],
			[-0.02078],
			[-8843e-6],
			[-0.03172],
			[-0.09349]
		],
		[
			[21, 0.02074, 1, 1, 2],
			[58, 174, 1, 3, 4],
			[2, 131, 0, 5, 6],
			[62, -448e-5, 1, 7, 8],
			[22, 0.07399, 1, 9, 10],
			[64, -0.1057, 0, 11, 12],
			[0, 24.86, 0, 13, 14],
			[69, 2.863, 0, 15, 16],
			[56, 79.02, 0, 17, 18],
			[74, 0.2415, 1, 19, 20],
			[9, 0.4827, 0, 21, 22],
			[95, 157, 0, 23, 24],
			[39, 1.082, 1, 25, 26],
			[65, 0.176, 0, 27, 28],
			[9, 0.3989, 0, 29, 30],
			[62, -0.0904, 1, 31, 32],
			[58, 54, 1, 33, 34],
			[16, 4, 0, 35, 36],
			[28, 0.01167, 1, 37, 38],
			[47, 1.034, 1, 39, 40],
			[10, -210.5, 0, 41, 42],
			[47, 2.8, 0, 43, 44],
			[2, 41.43, 1, 45, 46],
			[55, 75, 1, 47, 48],
			[58, -12, 1, 49, 50],
			[16, 34, 0, 51, 52],
			[81, 0.05894, 0, 53, 54],
			[22, -0.04215, 0, 55, 56],
			[-0.02008],
			[91, 0.152, 1, 57, 58],
			[76, 0.07534, 1, 59, 60],
			[-9885e-6],
			[3186e-6],
			[-0.01516],
			[3186e-6],
			[3186e-6],
			[8303e-6],
			[0.02186],
			[3186e-6],
			[-0.03057],
			[-4576e-6],
			[-0.03356],
			[0.05632],
			[-0.04209],
			[0.07398],
			[-0.0564],
			[0.03582],
			[-0.03749],
			[0.01484],
			[0.1526],
			[0.02583],
			[-0.06154],
			[-0.02496],
			[0.01134],
			[-0.04087],
			[0.1526],
			[0.02188],
			[-0.03704],
			[0.02171],
			[0.0173],
			[-0.01697]
		],
		[
			[82, -5696e-6, 0, 1, 2],
			[54, 87, 1, 3, 4],
			[55, 76, 1, 5, 6],
			[60, 3, 1, 7, 8],
			[26, -0.02785, 0, 9, 10],
			[22, -0.01873, 1, 11, 12],
			[26, 0.1379, 0, 13, 14],
			[68, 3657e-6, 0, 15, 16],
			[7, 104.1, 1, 17, 18],
			[42, 0.5838, 0, 19, 20],
			[5, -47.92, 1, 21, 22],
			[22, -0.9303, 0, 23, 24],
			[80, 2, 1, 25, 26],
			[13, 0.01923, 0, 27, 28],
			[4, 26.34, 0, 29, 30],
			[82, -0.0201, 0, 31, 32],
			[2, 392.8, 1, 33, 34],
			[65, -0.1155, 0, 35, 36],
			[78, 1, 0, 37, 38],
			[29, -0.2943, 1, 39, 40],
			[13, 0.01699, 0, 41, 42],
			[0.054],
			[68, 0.01075, 0, 43, 44],
			[68, 0.02706, 0, 45, 46],
			[55, 66, 0, 47, 48],
			[67, -0.1737, 1, 49, 50],
			[7, 299.5, 0, 51, 52],
			[2, 219, 0, 53, 54],
			[2, 55.47, 0, 55, 56],
			[32, 1.857, 0, 57, 58],
			[7, -37.84, 1, 59, 60],
			[-0.04893],
			[5263e-6],
			[-2378e-6],
			[0.03649],
			[0.01285],
			[0.05021],
			[-0.02088],
			[0.01639],
			[6418e-6],
			[0.05175],
			[6418e-6],
			[-0.03578],
			[-0.047],
			[-7565e-6],
			[0.03069],
			[-0.03761],
			[-0.04717],
			[-0.01746],
			[-0.02328],
			[1048e-6],
			[-0.08849],
			[-0.02611],
			[0.01789],
			[-2549e-6],
			[-0.03467],
			[-6048e-6],
			[-0.05096],
			[5716e-6],
			[-0.02958],
			[0.04818]
		],
		[
			[82, -0.1591, 0, 1, 2],
			[6, 145.9, 1, 3, 4],
			[83, 8.828, 0, 5, 6],
			[60, -3, 1, 7, 8],
			[68, 6711e-6, 0, 9, 10],
			[82, 0.02338, 0, 11, 12],
			[78, 1, 0, 13, 14],
			[33, 0.202, 1, 15, 16],
			[21, -0.4324, 1, 17, 18],
			[6, 228.7, 0, 19, 20],
			[62, -0.06599, 0, 21, 22],
			[78, 1, 0, 23, 24],
			[68, 0.01038, 0, 25, 26],
			[28, -0.02394, 0, 27, 28],
			[78, 7, 0, 29, 30],
			[-0.03734],
			[60, -4, 0, 31, 32],
			[79, 1, 0, 33, 34],
			[33, 0.9752, 0, 35, 36],
			[76, 0.2243, 0, 37, 38],
			[82, -0.3115, 0, 39, 40],
			[53, 4.512, 0, 41, 42],
			[60, 4, 1, 43, 44],
			[83, -69.06, 0, 45, 46],
			[20, 0.04379, 1, 47, 48],
			[64, 0.563, 0, 49, 50],
			[21, 0.03605, 0, 51, 52],
			[17, 24, 0, 53, 54],
			[24, 171e-5, 0, 55, 56],
			[5, 17.82, 1, 57, 58],
			[25, 0.02909, 1, 59, 60],
			[0.0705],
			[4779e-6],
			[0.0238],
			[0.1565],
			[-5886e-6],
			[0.08754],
			[0.04555],
			[-0.01682],
			[0.03011],
			[-0.04854],
			[-0.03682],
			[0.01277],
			[0.01277],
			[0.05839],
			[-0.0309],
			[-0.01233],
			[-0.02977],
			[-0.01233],
			[-0.06187],
			[-0.01233],
			[-0.03087],
			[-0.01233],
			[0.02745],
			[-0.01233],
			[8349e-6],
			[-0.01233],
			[-0.01233],
			[0.03001],
			[1487e-6],
			[-0.01233]
		],
		[
			[92, 2.661, 0, 1, 2],
			[20, 0.01117, 0, 3, 4],
			[34, 1.011, 0, 5, 6],
			[96, 2, 0, 7, 8],
			[6, 78.07, 0, 9, 10],
			[25, 0.02262, 1, 11, 12],
			[24, -0.1516, 0, 13, 14],
			[22, -0.3116, 0, 15, 16],
			[5, -2.744, 0, 17, 18],
			[39, 1.488, 0, 19, 20],
			[23, 0.03354, 1, 21, 22],
			[5, 106.4, 0, 23, 24],
			[66, 0.1394, 1, 25, 26],
			[60, 82, 0, 27, 28],
			[9, 0.4085, 0, 29, 30],
			[64, -0.2224, 1, 31, 32],
			[80, 2, 1, 33, 34],
			[79, 12, 0, 35, 36],
			[34, 1.096, 1, 37, 38],
			[60, 7, 1, 39, 40],
			[64, -0.07467, 0, 41, 42],
			[60, -1, 1, 43, 44],
			[60, -7, 0, 45, 46],
			[59, 0, 0, 47, 48],
			[22, 0.08712, 0, 49, 50],
			[22, 0.01845, 1, 51, 52],
			[6, 117, 0, 53, 54],
			[78, 2, 0, 55, 56],
			[23, 0.1427, 0, 57, 58],
			[22, -0.01217, 1, 59, 60],
			[17, 19, 0, 61, 62],
			[-3445e-6],
			[-0.02522],
			[-0.01778],
			[-0.04867],
			[-3445e-6],
			[-3445e-6],
			[-0.03072],
			[-3445e-6],
			[-0.05542],
			[-9074e-6],
			[-0.0495],
			[-3445e-6],
			[-6651e-6],
			[-3445e-6],
			[-3445e-6],
			[-3445e-6],
			[-3445e-6],
			[0.01538],
			[-3445e-6],
			[8128e-6],
			[-3445e-6],
			[-1833e-6],
			[-3445e-6],
			[0.02421],
			[0.03004],
			[-3445e-6],
			[-3445e-6],
			[0.04433],
			[0.01745],
			[-3445e-6],
			[0.02637],
			[7744e-6]
		],
		[
			[21, 0.02074, 1, 1, 2],
			[58, 174, 1, 3, 4],
			[23, 0.02155, 0, 5, 6],
			[61, -0.07988, 0, 7, 8],
			[22, 0.07399, 1, 9, 10],
			[22, -0.02778, 0, 11, 12],
			[23, 0.165, 0, 13, 14],
			[59, 35, 1, 15, 16],
			[3, 47.48, 1, 17, 18],
			[50, 0.75, 0, 19, 20],
			[59, 23, 0, 21, 22],
			[22, -0.1293, 0, 23, 24],
			[-0.02635],
			[24, 0.1178, 1, 25, 26],
			[9, 0.4085, 0, 27, 28],
			[94, 10.96, 0, 29, 30],
			[58, 12, 0, 31, 32],
			[94, 10.27, 0, 33, 34],
			[50, 0.9226, 1, 35, 36],
			[23, 0.1257, 0, 37, 38],
			[75, 0.06725, 1, 39, 40],
			[21, -0.03059, 1, 41, 42],
			[45, 0.04494, 0, 43, 44],
			[0.01477],
			[0.1788],
			[50, 1.76, 1, 45, 46],
			[74, 0.0872, 0, 47, 48],
			[3, 263.7, 0, 49, 50],
			[9, 0.9261, 0, 51, 52],
			[-0.03174],
			[-4481e-6],
			[-4481e-6],
			[-7426e-6],
			[-4481e-6],
			[0.01414],
			[0.02241],
			[4684e-6],
			[-0.05271],
			[0.02325],
			[-0.03875],
			[-6036e-6],
			[-0.02499],
			[0.02055],
			[0.09553],
			[0.02762],
			[-0.02975],
			[-0.1038],
			[-8166e-6],
			[0.1577],
			[0.0113],
			[-0.0415],
			[0.01653],
			[-0.03122]
		],
		[
			[85, 2, 0, 1, 2],
			[34, 1.011, 0, 3, 4],
			[34, 0.949, 0, 5, 6],
			[76, 0.6405, 1, 7, 8],
			[24, -0.1516, 1, 9, 10],
			[4, 167.2, 0, 11, 12],
			[33, 0.8077, 0, 13, 14],
			[92, 21.94, 0, 15, 16],
			[19, -0.1152, 0, 17, 18],
			[56, 83.53, 0, 19, 20],
			[78, 3, 1, 21, 22],
			[76, 0.09579, 0, 23, 24],
			[19, 0.08994, 0, 25, 26],
			[76, 0.1187, 1, 27, 28],
			[59, -3, 0, 29, 30],
			[61, -0.05125, 0, 31, 32],
			[68, 6173e-6, 0, 33, 34],
			[51, 0.1668, 0, 35, 36],
			[9, 0.4642, 0, 37, 38],
			[59, 18, 1, 39, 40],
			[51, 0.1301, 0, 41, 42],
			[68, 0.02339, 0, 43, 44],
			[90, 0, 0, 45, 46],
			[19, -0.01794, 0, 47, 48],
			[24, -8639e-6, 1, 49, 50],
			[5, -2.744, 0, 51, 52],
			[-8773e-6],
			[9, 0.1952, 0, 53, 54],
			[20, -0.1328, 0, 55, 56],
			[9, 0.3013, 0, 57, 58],
			[68, 0.01892, 0, 59, 60],
			[-8773e-6],
			[-3775e-6],
			[869e-5],
			[0.04007],
			[0.1055],
			[5502e-6],
			[0.01449],
			[-8773e-6],
			[-8773e-6],
			[0.03304],
			[-8773e-6],
			[0.02484],
			[741e-5],
			[-8773e-6],
			[0.01471],
			[0.05163],
			[-8773e-6],
			[-0.04846],
			[-0.01905],
			[-8773e-6],
			[-8773e-6],
			[-0.0433],
			[-8773e-6],
			[-0.04638],
			[-0.03115],
			[-8773e-6],
			[-0.02297],
			[-8773e-6],
			[-0.05221],
			[-8773e-6]
		],
		[
			[82, -5696e-6, 0, 1, 2],
			[24, 0.06945, 0, 3, 4],
			[28, 5296e-6, 1, 5, 6],
			[23, 0.0463, 0, 7, 8],
			[23, 0.419, 0, 9, 10],
			[56, 96.98, 0, 11, 12],
			[30, 156, 1, 13, 14],
			[78, 1, 0, 15, 16],
			[67, -0.4987, 1, 17, 18],
			[60, 4, 0, 19, 20],
			[26, 0.06255, 1, 21, 22],
			[67, 0.1267, 0, 23, 24],
			[30, 253, 1, 25, 26],
			[39, 1.125, 1, 27, 28],
			[59, 20, 1, 29, 30],
			[26, 0.04062, 0, 31, 32],
			[19, -0.1152, 1, 33, 34],
			[73, -20, 0, 35, 36],
			[82, -0.2316, 0, 37, 38],
			[93, 9.188, 0, 39, 40],
			[88, 0.01156, 1, 41, 42],
			[60, 0, 1, 43, 44],
			[43, 0.6667, 1, 45, 46],
			[73, 5, 1, 47, 48],
			[59, 18, 0, 49, 50],
			[31, 1.116, 0, 51, 52],
			[41, 2.057, 1, 53, 54],
			[92, 8.574, 0, 55, 56],
			[59, 28, 1, 57, 58],
			[56, 75.34, 0, 59, 60],
			[52, 2.543, 0, 61, 62],
			[0.06535],
			[-0.0285],
			[-4934e-7],
			[-0.03651],
			[0.02375],
			[-0.04664],
			[0.05872],
			[0.01771],
			[-0.0427],
			[0.0152],
			[-0.06938],
			[-0.02007],
			[0.08938],
			[0.0285],
			[7468e-6],
			[-0.0319],
			[9921e-6],
			[-0.01226],
			[-0.02945],
			[0.01004],
			[-0.02435],
			[-0.06782],
			[4185e-7],
			[0.1049],
			[-0.05004],
			[-0.01561],
			[-0.02096],
			[0.02328],
			[-0.01631],
			[7746e-6],
			[-0.06417],
			[-7599e-6]
		],
		[
			[82, -0.3115, 0, 1, 2],
			[45, 0.3873, 0, 3, 4],
			[24, -0.2903, 1, 5, 6],
			[58, -24, 0, 7, 8],
			[54, 62, 0, 9, 10],
			[55, 78, 1, 11, 12],
			[58, 174, 1, 13, 14],
			[25, -0.04512, 1, 15, 16],
			[94, 8.17, 0, 17, 18],
			[47, 0.09574, 0, 19, 20],
			[0.01949],
			[12, 9.044, 0, 21, 22],
			[38, 1.42, 0, 23, 24],
			[61, -0.01289, 0, 25, 26],
			[56, 82.36, 0, 27, 28],
			[0.1529],
			[63, -0.06743, 0, 29, 30],
			[10, -64.92, 0, 31, 32],
			[60, 1, 0, 33, 34],
			[0.01467],
			[-0.04087],
			[27, 0.1139, 1, 35, 36],
			[58, 90, 0, 37, 38],
			[9, 0.8132, 0, 39, 40],
			[89, 58.24, 0, 41, 42],
			[10, 102.6, 0, 43, 44],
			[60, 23, 0, 45, 46],
			[7, 239.8, 0, 47, 48],
			[76, 0.3577, 1, 49, 50],
			[-0.0194],
			[0.06239],
			[-0.03379],
			[0.02652],
			[-0.02414],
			[0.08518],
			[-0.04737],
			[-0.02179],
			[-0.02179],
			[0.02906],
			[186e-5],
			[0.05561],
			[-0.05066],
			[0.04556],
			[-8854e-6],
			[3206e-6],
			[0.0117],
			[3206e-6],
			[-0.02002],
			[0.01331],
			[-0.02172],
			[0.0709]
		],
		[
			[30, 156, 0, 1, 2],
			[75, 0.531, 1, 3, 4],
			[7, 117.6, 0, 5, 6],
			[47, 1.193, 1, 7, 8],
			[27, -0.1092, 1, 9, 10],
			[37, 0.9384, 1, 11, 12],
			[33, 0.8361, 0, 13, 14],
			[65, -0.1422, 1, 15, 16],
			[54, 49, 0, 17, 18],
			[54, 42, 1, 19, 20],
			[54, 36, 0, 21, 22],
			[67, -0.06042, 1, 23, 24],
			[33, 0.8571, 0, 25, 26],
			[75, 4387e-6, 0, 27, 28],
			[9, 0.3892, 0, 29, 30],
			[3, 81.08, 0, 31, 32],
			[92, 11.56, 0, 33, 34],
			[18, 5, 0, 35, 36],
			[23, 0.06699, 0, 37, 38],
			[27, -0.272, 0, 39, 40],
			[62, 0.01706, 0, 41, 42],
			[10, 28.16, 0, 43, 44],
			[29, 0.1615, 0, 45, 46],
			[33, 0.9685, 1, 47, 48],
			[61, -0.03614, 0, 49, 50],
			[64, -0.336, 0, 51, 52],
			[65, 0, 1, 53, 54],
			[49, 0.7765, 1, 55, 56],
			[47, 0.8187, 0, 57, 58],
			[65, -0.2752, 0, 59, 60],
			[9, 0.9536, 0, 61, 62],
			[-0.05318],
			[-0.01519],
			[-0.01504],
			[8007e-6],
			[-0.04113],
			[0.01951],
			[-0.01664],
			[0.02097],
			[0.07826],
			[-0.02282],
			[-0.05344],
			[7361e-6],
			[-0.03444],
			[0.03024],
			[0.09483],
			[-3631e-6],
			[7595e-6],
			[0.01777],
			[7595e-6],
			[0.03064],
			[-0.02308],
			[7595e-6],
			[-0.02142],
			[7187e-6],
			[5666e-6],
			[-0.09526],
			[-0.03379],
			[-4633e-6],
			[0.06173],
			[-0.04091],
			[735e-5],
			[-0.014]
		],
		[
			[82, -5696e-6, 0, 1, 2],
			[58, 150, 1, 3, 4],
			[41, 0.8993, 0, 5, 6],
			[93, 5.36, 0, 7, 8],
			[75, 0.2193, 0, 9, 10],
			[30, 156, 0, 11, 12],
			[28, 8116e-6, 1, 13, 14],
			[20, 0.02259, 0, 15, 16],
			[63, -0.04742, 0, 17, 18],
			[53, 5.029, 1, 19, 20],
			[32, 0.8812, 0, 21, 22],
			[92, 21.94, 0, 23, 24],
			[19, -0.2, 0, 25, 26],
			[83, 22.56, 0, 27, 28],
			[19, 0, 1, 29, 30],
			[83, 18.21, 0, 31, 32],
			[60, 0, 1, 33, 34],
			[23, 0.419, 0, 35, 36],
			[20, 0.04379, 1, 37, 38],
			[6, 441, 0, 39, 40],
			[28, 0.1703, 0, 41, 42],
			[27, -0.272, 0, 43, 44],
			[82, -0.01749, 0, 45, 46],
			[91, -0.068, 0, 47, 48],
			[30, 0, 0, 49, 50],
			[60, 17, 1, 51, 52],
			[36, 0.7632, 0, 53, 54],
			[58, 6, 1, 55, 56],
			[61, -0.0152, 0, 57, 58],
			[66, -0.04767, 0, 59, 60],
			[92, 10.5, 0, 61, 62],
			[-0.0412],
			[-3053e-6],
			[-0.01367],
			[0.07971],
			[-0.01918],
			[6182e-6],
			[0.01668],
			[0.06101],
			[-0.01799],
			[-0.0675],
			[0.03238],
			[-2894e-6],
			[0.0277],
			[-0.03522],
			[0.06893],
			[-8396e-6],
			[-7266e-6],
			[-0.0388],
			[-1465e-6],
			[0.04966],
			[-0.06223],
			[0.02511],
			[5708e-6],
			[-0.01349],
			[-0.01278],
			[-0.04709],
			[-2892e-6],
			[0.01273],
			[0.01007],
			[-0.01411],
			[-0.04077],
			[4122e-6]
		],
		[
			[67, -0.01548, 1, 1, 2],
			[2, 39.94, 1, 3, 4],
			[60, 0, 1, 5, 6],
			[64, -0.01833, 1, 7, 8],
			[54, 100, 0, 9, 10],
			[96, 2, 0, 11, 12],
			[39, 1.082, 0, 13, 14],
			[20, 0.0348, 1, 15, 16],
			[80, 2, 0, 17, 18],
			[86, 8188e-6, 0, 19, 20],
			[51, 0.15, 0, 21, 22],
			[12, 7.044, 0, 23, 24],
			[60, -1, 0, 25, 26],
			[37, 0.9384, 0, 27, 28],
			[83, 20.42, 0, 29, 30],
			[75, 4387e-6, 0, 31, 32],
			[75, 0.05546, 0, 33, 34],
			[21, 0.01782, 0, 35, 36],
			[89, 30, 0, 37, 38],
			[80, 2, 1, 39, 40],
			[28, -0.1944, 1, 41, 42],
			[75, 0.01111, 0, 43, 44],
			[96, 1, 0, 45, 46],
			[20, 0.07871, 1, 47, 48],
			[60, -3, 1, 49, 50],
			[61, -0.1471, 0, 51, 52],
			[16, 56, 0, 53, 54],
			[23, 0.2123, 0, 55, 56],
			[35, 0.87, 1, 57, 58],
			[75, 0.531, 1, 59, 60],
			[33, 0.5423, 0, 61, 62],
			[-6774e-6],
			[-0.07588],
			[0.01978],
			[-0.02657],
			[0.02976],
			[-6641e-6],
			[-0.04819],
			[-0.01017],
			[-4626e-6],
			[-0.05237],
			[-0.02049],
			[9188e-6],
			[-733e-8],
			[-0.05887],
			[-0.02793],
			[0.02639],
			[-0.02302],
			[-9524e-6],
			[-9524e-6],
			[0.01911],
			[-0.01937],
			[0.07557],
			[-0.03275],
			[0.03892],
			[0.01767],
			[-2889e-6],
			[-2889e-6],
			[-0.02673],
			[-0.03239],
			[-4775e-7],
			[-4775e-7],
			[0.02598]
		],
		[
			[54, 86, 0, 1, 2],
			[16, 5, 0, 3, 4],
			[25, 0.01986, 1, 5, 6],
			[9, 0.7854, 0, 7, 8],
			[59, 20, 0, 9, 10],
			[81, -0.2113, 1, 11, 12],
			[74, 0.1117, 0, 13, 14],
			[6, 335.9, 1, 15, 16],
			[25, -0.05397, 1, 17, 18],
			[13, 0.02943, 0, 19, 20],
			[38, 1.857, 1, 21, 22],
			[28, 1451e-6, 1, 23, 24],
			[42, 0.9, 0, 25, 26],
			[36, 0.604, 1, 27, 28],
			[33, 1.026, 1, 29, 30],
			[60, 5, 0, 31, 32],
			[25, -0.03768, 1, 33, 34],
			[87, 0.02075, 0, 35, 36],
			[29, -0.2214, 1, 37, 38],
			[93, 5.905, 0, 39, 40],
			[77, 0, 0, 41, 42],
			[37, 0.5932, 0, 43, 44],
			[87, 0.05114, 0, 45, 46],
			[68, 9259e-6, 0, 47, 48],
			[45, 0.6209, 1, 49, 50],
			[63, -0.02291, 0, 51, 52],
			[47, 1.042, 0, 53, 54],
			[45, 0.07143, 1, 55, 56],
			[68, 3925e-6, 0, 57, 58],
			[93, 7.236, 0, 59, 60],
			[5, 84.18, 0, 61, 62],
			[-0.01711],
			[-0.04086],
			[0.03285],
			[-0.01565],
			[0.02396],
			[-0.0372],
			[0.07019],
			[0.02037],
			[3595e-7],
			[0.01707],
			[-0.03732],
			[3595e-7],
			[0.02689],
			[-0.02366],
			[0.07853],
			[-0.03939],
			[0.01462],
			[-0.01794],
			[-0.01896],
			[0.07545],
			[-0.02342],
			[-1772e-6],
			[-0.06293],
			[-0.02342],
			[0.03521],
			[-0.02374],
			[-0.07143],
			[-0.03405],
			[0.04658],
			[-0.01502],
			[-0.0185],
			[0.1067]
		],
		[
			[2, 46.14, 1, 1, 2],
			[66, 0.02167, 1, 3, 4],
			[66, -0.01867, 0, 5, 6],
			[83, 39.56, 1, 7, 8],
			[21, 0.01782, 1, 9, 10],
			[35, 0.8397, 0, 11, 12],
			[66, 0, 1, 13, 14],
			[88, 554e-5, 0, 15, 16],
			[81, 384e-6, 1, 17, 18],
			[31, 0.6303, 1, 19, 20],
			[66, 0.2383, 0, 21, 22],
			[32, 0.9078, 1, 23, 24],
			[62, 0.01706, 0, 25, 26],
			[5, -2.744, 0, 27, 28],
			[22, -0.3116, 0, 29, 30],
			[61, -6452e-6, 0, 31, 32],
			[1, 39.03, 0, 33, 34],
			[61, -0.03327, 0, 35, 36],
			[82, 0.01786, 1, 37, 38],
			[88, 0.0252, 1, 39, 40],
			[61, -0.01438, 0, 41, 42],
			[52, 7.954, 1, 43, 44],
			[29, -0.1001, 0, 45, 46],
			[34, 0.9216, 0, 47, 48],
			[31, 0.6303, 0, 49, 50],
			[25, -1013e-6, 0, 51, 52],
			[13, 0.03093, 0, 53, 54],
			[25, -3249e-6, 1, 55, 56],
			[93, 19.67, 0, 57, 58],
			[2, 179.8, 0, 59, 60],
			[9, 0.3989, 0, 61, 62],
			[-0.0228],
			[-9219e-6],
			[-9219e-6],
			[-0.04709],
			[-9219e-6],
			[0.05611],
			[-9219e-6],
			[0.0479],
			[-3854e-6],
			[-0.04294],
			[-9835e-6],
			[0.03173],
			[-0.05042],
			[0.02645],
			[0.06017],
			[-0.02551],
			[-4949e-6],
			[0.02823],
			[-0.02596],
			[0.05013],
			[-0.01196],
			[8908e-6],
			[0.04962],
			[0.01878],
			[-3974e-6],
			[0.06652],
			[-0.03242],
			[2008e-6],
			[-191e-5],
			[0.06151],
			[-0.02046],
			[1687e-6]
		],
		[
			[26, -4135e-6, 0, 1, 2],
			[62, 0.02204, 0, 3, 4],
			[2, 41.43, 1, 5, 6],
			[59, 28, 0, 7, 8],
			[78, 14, 0, 9, 10],
			[19, 0.04986, 0, 11, 12],
			[72, 0, 0, 13, 14],
			[28, 1451e-6, 1, 15, 16],
			[41, 1.2, 1, 17, 18],
			[80, 4, 0, 19, 20],
			[32, 1.189, 1, 21, 22],
			[18, 46, 0, 23, 24],
			[75, 0.04088, 1, 25, 26],
			[94, 3.516, 0, 27, 28],
			[41, 0.9595, 1, 29, 30],
			[80, 2, 1, 31, 32],
			[30, 202, 1, 33, 34],
			[53, 2.327, 1, 35, 36],
			[76, 0.1644, 1, 37, 38],
			[59, 4, 0, 39, 40],
			[84, 0.04874, 0, 41, 42],
			[18, 12, 0, 43, 44],
			[73, 42, 0, 45, 46],
			[83, 28.03, 1, 47, 48],
			[19, 7097e-6, 0, 49, 50],
			[27, -0.0372, 0, 51, 52],
			[68, 9259e-6, 0, 53, 54],
			[42, 0.8696, 1, 55, 56],
			[94, 15.09, 0, 57, 58],
			[30, 233, 1, 59, 60],
			[60, -4, 1, 61, 62],
			[2075e-6],
			[-0.03518],
			[-0.0277],
			[-1568e-6],
			[-0.05359],
			[-1634e-6],
			[3609e-6],
			[5883e-6],
			[0.03385],
			[0.07899],
			[5883e-6],
			[0.03166],
			[5883e-6],
			[0.04723],
			[5883e-6],
			[0.02065],
			[-0.02775],
			[0.02674],
			[-0.02156],
			[-0.0819],
			[-0.04081],
			[0.03031],
			[-0.04453],
			[0.02112],
			[0.02962],
			[-3841e-6],
			[2049e-7],
			[0.02553],
			[-0.03817],
			[0.01202],
			[-0.0393],
			[0.01128]
		],
		[
			[56, 93.5, 0, 1, 2],
			[59, 1, 0, 3, 4],
			[4, 302.5, 0, 5, 6],
			[60, -3, 1, 7, 8],
			[78, 1, 0, 9, 10],
			[96, 1, 0, 11, 12],
			[68, 0.0125, 0, 13, 14],
			[20, -0.1145, 1, 15, 16],
			[59, -3, 0, 17, 18],
			[60, 11, 1, 19, 20],
			[46, 0.6617, 1, 21, 22],
			[39, 2.04, 0, 23, 24],
			[45, 0.06195, 0, 25, 26],
			[59, 20, 0, 27, 28],
			[44, 0.3929, 0, 29, 30],
			[17, 30, 0, 31, 32],
			[56, 61.93, 0, 33, 34],
			[13, 0.02899, 0, 35, 36],
			[20, 0.1321, 1, 37, 38],
			[56, 88.72, 0, 39, 40],
			[93, 5.905, 0, 41, 42],
			[41, 0.8166, 0, 43, 44],
			[17, 17, 0, 45, 46],
			[78, 10, 1, 47, 48],
			[93, 4.387, 0, 49, 50],
			[59, 28, 1, 51, 52],
			[74, 0.2415, 0, 53, 54],
			[76, 0.2416, 1, 55, 56],
			[41, 2.057, 1, 57, 58],
			[93, 11.54, 0, 59, 60],
			[74, 0.22, 1, 61, 62],
			[-0.02739],
			[0.03161],
			[0.012],
			[0.1589],
			[0.0505],
			[-0.02556],
			[-0.01419],
			[0.05321],
			[-0.04],
			[0.03537],
			[-0.0276],
			[0.01996],
			[5667e-6],
			[0.0173],
			[5667e-6],
			[-777e-5],
			[-0.03532],
			[4306e-6],
			[-0.02087],
			[0.04792],
			[0.02611],
			[-0.02873],
			[-0.01321],
			[0.06535],
			[-0.03754],
			[0.04401],
			[-0.09005],
			[0.01635],
			[0.01529],
			[-0.03866],
			[0.01752],
			[0.1106]
		],
		[
			[21, 2882e-6, 1, 1, 2],
			[25, 0.02909, 1, 3, 4],
			[90, 0, 0, 5, 6],
			[75, 0.03051, 0, 7, 8],
			[75, 0.01758, 0, 9, 10],
			[46, 0.8939, 1, 11, 12],
			[23, 0.02155, 0, 13, 14],
			[42, 0.9, 1, 15, 16],
			[93, 5.905, 0, 17, 18],
			[46, 0.6181, 1, 19, 20],
			[59, -3, 0, 21, 22],
			[59, 9, 1, 23, 24],
			[42, 0.641, 0, 25, 26],
			[22, -8965e-6, 0, 27, 28],
			[26, -0.1778, 0, 29, 30],
			[10, 25.44, 0, 31, 32],
			[34, 1.061, 0, 33, 34],
			[23, 0.02911, 0, 35, 36],
			[23, 0.1121, 1, 37, 38],
			[19, -0.08777, 0, 39, 40],
			[95, 568.1, 0, 41, 42],
			[34, 0.9735, 0, 43, 44],
			[23, 0.3563, 1, 45, 46],
			[21, 0.01266, 0, 47, 48],
			[65, 0.2517, 0, 49, 50],
			[38, 0.9012, 1, 51, 52],
			[29, -2299e-6, 0, 53, 54],
			[76, 0.06701, 0, 55, 56],
			[-0.02543],
			[48, 0.2006, 1, 57, 58],
			[73, -2, 0, 59, 60],
			[5042e-6],
			[0.02481],
			[-0.03064],
			[5042e-6],
			[-0.03764],
			[-4142e-6],
			[8943e-6],
			[-6151e-6],
			[-0.02705],
			[0.01208],
			[-0.05476],
			[-0.02705],
			[-0.02549],
			[0.1415],
			[-0.01414],
			[0.02816],
			[8463e-7],
			[-0.02138],
			[0.01395],
			[-0.02003],
			[-0.02138],
			[-0.02138],
			[-0.03184],
			[-0.05744],
			[5573e-6],
			[0.1644],
			[0.01103],
			[-0.03665],
			[-0.01039],
			[0.02636]
		],
		[
			[81, -9034e-6, 0, 1, 2],
			[68, 5917e-6, 0, 3, 4],
			[26, -4135e-6, 0, 5, 6],
			[94, 11.62, 0, 7, 8],
			[62, 0.02204, 1, 9, 10],
			[13, 0.02899, 0, 11, 12],
			[29, 4951e-6, 1, 13, 14],
			[80, 2, 0, 15, 16],
			[13, 0.01598, 0, 17, 18],
			[18, 16, 1, 19, 20],
			[16, 1, 0, 21, 22],
			[91, -0.068, 0, 23, 24],
			[57, 498, 0, 25, 26],
			[4, 32.53, 0, 27, 28],
			[10, 53.92, 0, 29, 30],
			[29, 0.3247, 0, 31, 32],
			[9, 0.8132, 0, 33, 34],
			[64, -8667e-6, 0, 35, 36],
			[29, 0.2288, 0, 37, 38],
			[24, 0.1454, 1, 39, 40],
			[73, -5, 0, 41, 42],
			[95, 331.2, 0, 43, 44],
			[23, 0.1951, 0, 45, 46],
			[64, 0.1367, 0, 47, 48],
			[68, 5411e-6, 0, 49, 50],
			[61, -7034e-6, 0, 51, 52],
			[49, 0.7351, 0, 53, 54],
			[5, 162.8, 1, 55, 56],
			[94, 0.7144, 0, 57, 58],
			[94, 11.62, 0, 59, 60],
			[16, 0, 0, 61, 62],
			[0.01405],
			[-0.01726],
			[-0.06196],
			[-0.01726],
			[0.03525],
			[-0.03414],
			[-0.06698],
			[-0.03414],
			[-523e-5],
			[0.02661],
			[0.02661],
			[0.01356],
			[0.02661],
			[0.04121],
			[0.07686],
			[0.02661],
			[0.02147],
			[-0.01525],
			[-0.01666],
			[-2273e-6],
			[-0.03707],
			[-0.02372],
			[-0.01666],
			[-0.01666],
			[-0.0583],
			[5599e-6],
			[0.03573],
			[5122e-6],
			[-0.0245],
			[0.01218],
			[-0.04397],
			[5741e-6]
		],
		[
			[69, 2.5, 0, 1, 2],
			[80, 6, 0, 3, 4],
			[4, 32.53, 1, 5, 6],
			[30, 199, 0, 7, 8],
			[58, 90, 1, 9, 10],
			[34, 2.087, 1, 11, 12],
			[50, 1.169, 0, 13, 14],
			[74, 0.44, 1, 15, 16],
			[22, 0.1042, 0, 17, 18],
			[62, -0.06599, 1, 19, 20],
			[34, 1.109, 0, 21, 22],
			[5, 212.4, 0, 23, 24],
			[52, -13.35, 0, 25, 26],
			[9, 0.9769, 0, 27, 28],
			[24, -5683e-6, 1, 29, 30],
			[22, 0.01645, 1, 31, 32],
			[45, 0.02, 0, 33, 34],
			[17, 24, 0, 35, 36],
			[57, 90, 0, 37, 38],
			[70, 2, 0, 39, 40],
			[22, 0.01444, 1, 41, 42],
			[33, 0, 0, 43, 44],
			[86, 4209e-6, 0, 45, 46],
			[18, 57, 0, 47, 48],
			[74, -0.1524, 1, 49, 50],
			[21, 0.03605, 1, 51, 52],
			[50, 1.192, 0, 53, 54],
			[9, 0.8132, 0, 55, 56],
			[21, -6364e-6, 1, 57, 58],
			[38, 0.3399, 1, 59, 60],
			[21, -0.03059, 0, 61, 62],
			[0.01487],
			[0.03071],
			[0.09484],
			[0.01487],
			[0.1485],
			[0.05424],
			[0.01487],
			[0.04534],
			[-0.04374],
			[-0.01459],
			[0.01487],
			[-0.01459],
			[-0.01029],
			[0.01487],
			[0.01487],
			[-0.02999],
			[-0.05542],
			[-0.01036],
			[-0.01931],
			[0.05172],
			[-0.0447],
			[741e-5],
			[0.06707],
			[741e-5],
			[-4492e-6],
			[0.01379],
			[2848e-6],
			[-0.03279],
			[-0.02543],
			[677e-5],
			[-2427e-6],
			[0.03216]
		],
		[
			[82, -0.1591, 0, 1, 2],
			[22, -0.3116, 1, 3, 4],
			[83, 26.42, 0, 5, 6],
			[0, 71.15, 0, 7, 8],
			[68, 0.01075, 0, 9, 10],
			[69, 2.5, 0, 11, 12],
			[78, 1, 0, 13, 14],
			[86, 2523e-6, 0, 15, 16],
			[27, 0.08192, 1, 17, 18],
			[6, 205.5, 0, 19, 20],
			[30, 196, 0, 21, 22],
			[86, 0.01056, 0, 23, 24],
			[82, -0.07689, 1, 25, 26],
			[28, -0.02394, 0, 27, 28],
			[78, 7, 0, 29, 30],
			[-0.01374],
			[88, 4243e-6, 0, 31, 32],
			[6, 361.7, 1, 33, 34],
			[0.07027],
			[61, -0.06667, 0, 35, 36],
			[88, 0.02869, 0, 37, 38],
			[17, 9, 0, 39, 40],
			[35, 1.117, 0, 41, 42],
			[86, 6221e-6, 0, 43, 44],
			[64, -0.056, 0, 45, 46],
			[78, 1, 0, 47, 48],
			[47, 1.094, 1, 49, 50],
			[17, 24, 0, 51, 52],
			[9, 0.8998, 0, 53, 54],
			[62, -0.06599, 0, 55, 56],
			[61, -0.05125, 0, 57, 58],
			[6553e-7],
			[0.1171],
			[-0.03307],
			[0.02837],
			[-0.036],
			[0.04315],
			[-0.0374],
			[6875e-6],
			[0.0485],
			[-0.0144],
			[0.09349],
			[-0.01561],
			[-0.03098],
			[-8883e-6],
			[-8883e-6],
			[-8883e-6],
			[-8883e-6],
			[-9686e-6],
			[-0.0368],
			[-8883e-6],
			[0.03234],
			[-8883e-6],
			[-8883e-6],
			[-5571e-6],
			[-8883e-6],
			[0.0319],
			[-8883e-6],
			[25e-4]
		],
		[
			[50, 1.082, 0, 1, 2],
			[50, 0.9302, 0, 3, 4],
			[21, -0.09952, 0, 5, 6],
			[67, -0.06042, 1, 7, 8],
			[9, 0.9261, 0, 9, 10],
			[41, 2.833, 1, 11, 12],
			[41, 1.177, 1, 13, 14],
			[31, 1.183, 0, 15, 16],
			[67, 0.1267, 0, 17, 18],
			[13, 0.02549, 0, 19, 20],
			[21, -8014e-6, 1, 21, 22],
			[66, -0.1019, 0, 23, 24],
			[27, -1086e-6, 1, 25, 26],
			[21, 2882e-6, 1, 27, 28],
			[9, 0.5068, 0, 29, 30],
			[8, 239.4, 0, 31, 32],
			[91, -0.168, 0, 33, 34],
			[78, 3, 0, 35, 36],
			[78, 15, 0, 37, 38],
			[20, -0.1145, 1, 39, 40],
			[8, 83.62, 0, 41, 42],
			[26, -9582e-6, 1, 43, 44],
			[78, 8, 0, 45, 46],
			[38, 1.857, 0, 47, 48],
			[20, -0.02368, 0, 49, 50],
			[9, 0.9536, 0, 51, 52],
			[76, -4645e-6, 1, 53, 54],
			[91, 0.168, 0, 55, 56],
			[54, 77, 0, 57, 58],
			[51, 0.1088, 0, 59, 60],
			[51, 0.1715, 0, 61, 62],
			[-0.023],
			[0.02167],
			[-0.05718],
			[0.01165],
			[-0.01279],
			[0.02073],
			[5775e-6],
			[-0.03036],
			[-9425e-6],
			[0.0113],
			[-0.03723],
			[-9425e-6],
			[0.03793],
			[-0.01472],
			[0.0158],
			[-0.04953],
			[0.03541],
			[-0.03994],
			[-0.0365],
			[0.01224],
			[-0.03984],
			[0.01855],
			[-0.02007],
			[0.05365],
			[0.01745],
			[-0.0216],
			[0.01334],
			[-0.02066],
			[0.04457],
			[-0.02224],
			[0.02901],
			[0.06174]
		],
		[
			[7, 98.34, 0, 1, 2],
			[60, 0, 0, 3, 4],
			[59, 9, 1, 5, 6],
			[65, 0.14, 0, 7, 8],
			[50, 0.3462, 0, 9, 10],
			[59, -3, 0, 11, 12],
			[50, 0.75, 0, 13, 14],
			[20, 0.05716, 1, 15, 16],
			[76, 0.5176, 1, 17, 18],
			[76, 0.3577, 1, 19, 20],
			[13, 0.025, 0, 21, 22],
			[60, 2, 0, 23, 24],
			[93, 23.12, 0, 25, 26],
			[35, 0.5017, 0, 27, 28],
			[59, 20, 0, 29, 30],
			[96, 2, 0, 31, 32],
			[47, 1.019, 0, 33, 34],
			[59, 23, 1, 35, 36],
			[46, 0.5155, 0, 37, 38],
			[88, 3058e-6, 1, 39, 40],
			[60, 17, 0, 41, 42],
			[65, -0.044, 1, 43, 44],
			[60, 9, 0, 45, 46],
			[82, -0.03262, 1, 47, 48],
			[64, 0.04667, 0, 49, 50],
			[88, 5995e-6, 1, 51, 52],
			[35, 1.028, 0, 53, 54],
			[55, 83, 0, 55, 56],
			[78, 1, 0, 57, 58],
			[21, -0.06714, 0, 59, 60],
			[50, 1.074, 0, 61, 62],
			[-0.01554],
			[0.0497],
			[0.1503],
			[-0.02611],
			[-0.03963],
			[2583e-6],
			[0.07223],
			[-0.02387],
			[-8966e-6],
			[-0.06617],
			[-0.03387],
			[0.08632],
			[5679e-6],
			[0.02848],
			[-0.02246],
			[5679e-6],
			[0.1389],
			[-0.01099],
			[0.01853],
			[-0.03618],
			[-3939e-6],
			[-0.02347],
			[0.01522],
			[-0.02402],
			[-0.04158],
			[0.01915],
			[-0.01185],
			[0.03412],
			[-0.036],
			[0.01462],
			[-0.02866],
			[0.01005]
		],
		[
			[85, 2, 0, 1, 2],
			[33, 1.1, 0, 3, 4],
			[47, 0.9403, 0, 5, 6],
			[21, 1198e-6, 1, 7, 8],
			[75, 0.016, 0, 9, 10],
			[22, -0.01217, 0, 11, 12],
			[35, 0.7, 0, 13, 14],
			[38, 0.873, 0, 15, 16],
			[35, 0.7409, 0, 17, 18],
			[4, 409.3, 0, 19, 20],
			[49, 1.63, 0, 21, 22],
			[75, 0.1849, 0, 23, 24],
			[20, 0.01117, 1, 25, 26],
			[5, -5.796, 0, 27, 28],
			[81, -0.2113, 0, 29, 30],
			[25, 0.04431, 1, 31, 32],
			[80, 2, 1, 33, 34],
			[16, 22, 0, 35, 36],
			[22, -0.01409, 1, 37, 38],
			[57, 27, 0, 39, 40],
			[50, 1.082, 1, 41, 42],
			[62, -0.03308, 0, 43, 44],
			[67, -0.02667, 1, 45, 46],
			[24, -7108e-6, 0, 47, 48],
			[54, 86, 0, 49, 50],
			[84, 0.1322, 0, 51, 52],
			[84, 0.04613, 0, 53, 54],
			[22, -0.03668, 0, 55, 56],
			[33, 0.8361, 1, 57, 58],
			[58, 234, 0, 59, 60],
			[22, 0.1592, 0, 61, 62],
			[0.01248],
			[-7526e-6],
			[-1258e-6],
			[-7526e-6],
			[-7526e-6],
			[0.02822],
			[-7526e-6],
			[-7526e-6],
			[-7526e-6],
			[0.03439],
			[-7526e-6],
			[0.02889],
			[-1347e-6],
			[0.0105],
			[-7526e-6],
			[-1347e-6],
			[-0.01407],
			[-7526e-6],
			[-0.03102],
			[-7526e-6],
			[-0.04171],
			[-7526e-6],
			[-0.01078],
			[-7526e-6],
			[-7526e-6],
			[-7526e-6],
			[-7526e-6],
			[-0.05015],
			[-7526e-6],
			[-0.0215],
			[-0.04627],
			[-7526e-6]
		],
		[
			[7, 98.34, 0, 1, 2],
			[25, 0.01526, 1, 3, 4],
			[47, 1.019, 0, 5, 6],
			[8, 24.06, 0, 7, 8],
			[83, -118.4, 1, 9, 10],
			[84, 0.2553, 1, 11, 12],
			[84, 5042e-6, 0, 13, 14],
			[20, 0.0348, 1, 15, 16],
			[39, 0.4593, 0, 17, 18],
			[8, 58.77, 0, 19, 20],
			[33, 0.9605, 1, 21, 22],
			[25, 0.0533, 1, 23, 24],
			[40, 1.84, 1, 25, 26],
			[26, -3024e-6, 1, 27, 28],
			[22, -0.01624, 1, 29, 30],
			[82, -0.07689, 1, 31, 32],
			[5, 13.49, 0, 33, 34],
			[25, -2166e-6, 0, 35, 36],
			[49, 0.9558, 1, 37, 38],
			[22, 0.0396, 1, 39, 40],
			[33, 1.058, 0, 41, 42],
			[89, 48.1, 0, 43, 44],
			[17, 26, 0, 45, 46],
			[47, 0.879, 0, 47, 48],
			[51, 0.105, 0, 49, 50],
			[31, 1.116, 0, 51, 52],
			[8, 132.4, 0, 53, 54],
			[51, 0.1392, 0, 55, 56],
			[56, 76, 0, 57, 58],
			[23, -0.04441, 1, 59, 60],
			[56, 69.58, 0, 61, 62],
			[-687e-6],
			[-0.0391],
			[5731e-6],
			[3863e-6],
			[5731e-6],
			[5731e-6],
			[0.02763],
			[6951e-6],
			[-0.04635],
			[-0.0276],
			[-0.0146],
			[-0.0276],
			[-0.0146],
			[0.01443],
			[0.06251],
			[7563e-6],
			[-0.01703],
			[-3918e-6],
			[-0.05992],
			[-0.01245],
			[-1897e-6],
			[0.01762],
			[-1897e-6],
			[0.06353],
			[-0.01268],
			[-0.0551],
			[-0.03193],
			[-8797e-6],
			[0.08906],
			[-8797e-6],
			[-468e-5],
			[0.01699]
		],
		[
			[82, -0.3115, 0, 1, 2],
			[39, 0.4593, 1, 3, 4],
			[82, 0.2039, 1, 5, 6],
			[29, -0.03378, 0, 7, 8],
			[62, -0.06599, 0, 9, 10],
			[11, 1, 0, 11, 12],
			[87, 3799e-6, 0, 13, 14],
			[0.01257],
			[8, 71.69, 0, 15, 16],
			[11, 2, 0, 17, 18],
			[4, 374.4, 1, 19, 20],
			[1, 69.47, 0, 21, 22],
			[34, 1.011, 0, 23, 24],
			[4, 302.5, 1, 25, 26],
			[59, 35, 1, 27, 28],
			[-0.04767],
			[7438e-6],
			[65, -0.3645, 0, 29, 30],
			[60, 8, 0, 31, 32],
			[86, 0.03316, 0, 33, 34],
			[78, 0, 0, 35, 36],
			[55, 87, 0, 37, 38],
			[39, 1.6, 0, 39, 40],
			[84, 0.06655, 1, 41, 42],
			[59, 5, 0, 43, 44],
			[12, 13.35, 0, 45, 46],
			[0.05444],
			[88, 1972e-6, 0, 47, 48],
			[22, 0, 1, 49, 50],
			[-0.01731],
			[0.0347],
			[-0.04251],
			[5314e-6],
			[0.0347],
			[0.07756],
			[0.0347],
			[0.1163],
			[-0.01033],
			[-0.05783],
			[-8761e-6],
			[0.02034],
			[-6893e-6],
			[7683e-6],
			[-9041e-6],
			[0.01273],
			[-0.03136],
			[-4001e-6],
			[-9909e-7],
			[-0.05995],
			[-0.0301],
			[0.04233]
		],
		[
			[40, 0.9709, 1, 1, 2],
			[55, 100, 1, 3, 4],
			[32, 0.8812, 1, 5, 6],
			[37, 0.7614, 0, 7, 8],
			[81, -0.02868, 1, 9, 10],
			[47, 0.9737, 1, 11, 12],
			[76, 0.6405, 1, 13, 14],
			[45, 0.2232, 0, 15, 16],
			[51, 0.1347, 0, 17, 18],
			[81, -0.2113, 0, 19, 20],
			[22, 0.02493, 0, 21, 22],
			[86, 6569e-6, 0, 23, 24],
			[38, 3.095, 0, 25, 26],
			[27, 0.01383, 0, 27, 28],
			[3, -148.7, 0, 29, 30],
			[40, 0.5952, 1, 31, 32],
			[40, 0.6569, 1, 33, 34],
			[59, 18, 1, 35, 36],
			[86, 0.02157, 0, 37, 38],
			[58, -156, 0, 39, 40],
			[27, -0.3984, 0, 41, 42],
			[38, 1.176, 1, 43, 44],
			[72, 0, 0, 45, 46],
			[17, 14, 0, 47, 48],
			[27, -0.06109, 0, 49, 50],
			[60, 68, 0, 51, 52],
			[64, -0.03933, 0, 53, 54],
			[0, 100.5, 0, 55, 56],
			[59, 49, 1, 57, 58],
			[61, -0.01608, 0, 59, 60],
			[81, -0.06797, 1, 61, 62],
			[-3174e-6],
			[0.01893],
			[-3174e-6],
			[-3174e-6],
			[-0.01127],
			[-0.03966],
			[-3174e-6],
			[-0.02917],
			[0.04702],
			[-0.01626],
			[4482e-6],
			[-0.05846],
			[0.06134],
			[-0.01656],
			[-0.0361],
			[6928e-6],
			[0.03598],
			[-0.01385],
			[0.03174],
			[-0.03955],
			[0.0568],
			[-0.03389],
			[-2686e-6],
			[-0.0399],
			[9949e-6],
			[-3393e-6],
			[-0.0151],
			[0.06442],
			[-0.03781],
			[0.035],
			[0.09903],
			[6069e-6]
		],
		[
			[69, 2.29, 0, 1, 2],
			[60, -3, 1, 3, 4],
			[56, 69.58, 0, 5, 6],
			[64, -0.1137, 0, 7, 8],
			[79, 5, 0, 9, 10],
			[74, 0.04986, 0, 11, 12],
			[56, 101.3, 0, 13, 14],
			[70, 2, 0, 15, 16],
			[64, 0.1205, 1, 17, 18],
			[7, 334.9, 1, 19, 20],
			[65, -0.06075, 0, 21, 22],
			[87, 0.1451, 0, 23, 24],
			[2, 428.6, 1, 25, 26],
			[51, 0.2134, 0, 27, 28],
			[41, 1.637, 1, 29, 30],
			[41, 0, 0, 31, 32],
			[4, 455.6, 1, 33, 34],
			[79, 1, 1, 35, 36],
			[74, 0.04266, 0, 37, 38],
			[45, 0.04065, 0, 39, 40],
			[25, 0.01526, 0, 41, 42],
			[87, 0.1451, 1, 43, 44],
			[35, 1.172, 1, 45, 46],
			[57, 15, 1, 47, 48],
			[51, 0.0624, 0, 49, 50],
			[70, 1, 0, 51, 52],
			[74, 0.3113, 1, 53, 54],
			[74, 2148e-7, 1, 55, 56],
			[5, 192.4, 1, 57, 58],
			[55, 84, 0, 59, 60],
			[85, 1, 0, 61, 62],
			[1176e-6],
			[-0.05316],
			[0.02127],
			[-0.0205],
			[-0.01238],
			[0.06929],
			[-4485e-6],
			[-0.04143],
			[0.1317],
			[0.02245],
			[-0.01879],
			[0.04923],
			[-0.01818],
			[0.07047],
			[0.05157],
			[-2091e-6],
			[-0.02997],
			[7467e-6],
			[-5903e-6],
			[-0.05941],
			[-0.03558],
			[91e-4],
			[-0.02652],
			[0.04258],
			[-4556e-6],
			[6353e-6],
			[0.06279],
			[6704e-7],
			[0.02207],
			[-0.03628],
			[0.05652],
			[-0.03327]
		],
		[
			[30, 156, 0, 1, 2],
			[40, 1.03, 1, 3, 4],
			[52, 2.702, 0, 5, 6],
			[28, 1451e-6, 1, 7, 8],
			[60, -3, 1, 9, 10],
			[65, 0, 0, 11, 12],
			[1, 296.3, 0, 13, 14],
			[7, -79.89, 0, 15, 16],
			[51, 0.2005, 0, 17, 18],
			[76, 0.5176, 0, 19, 20],
			[51, 0.0858, 0, 21, 22],
			[7, 98.34, 0, 23, 24],
			[60, 20, 1, 25, 26],
			[32, 0.8953, 1, 27, 28],
			[43, 0.6667, 1, 29, 30],
			[91, 0.152, 0, 31, 32],
			[8, 77.16, 0, 33, 34],
			[60, 17, 1, 35, 36],
			[8, 40.84, 0, 37, 38],
			[6, 228.7, 1, 39, 40],
			[60, -10, 1, 41, 42],
			[69, 2.688, 0, 43, 44],
			[87, 0.03359, 0, 45, 46],
			[51, 0.128, 0, 47, 48],
			[65, -0.08025, 0, 49, 50],
			[60, 3, 0, 51, 52],
			[21, -0.02077, 0, 53, 54],
			[87, 4211e-6, 0, 55, 56],
			[34, 0.439, 0, 57, 58],
			[51, 0.1108, 0, 59, 60],
			[32, 0.9724, 0, 61, 62],
			[0.1153],
			[-0.01487],
			[-0.02353],
			[9501e-7],
			[-0.04678],
			[-0.01394],
			[-0.028],
			[0.04221],
			[-0.04496],
			[-2553e-6],
			[-0.01891],
			[0.0446],
			[0.03656],
			[-0.02855],
			[0.01469],
			[-0.01036],
			[-0.01455],
			[1797e-6],
			[1723e-6],
			[-0.04306],
			[-5685e-6],
			[1797e-6],
			[1797e-6],
			[-0.03194],
			[1797e-6],
			[9566e-6],
			[1797e-6],
			[0.02931],
			[0.0264],
			[2394e-6],
			[1797e-6],
			[1797e-6]
		],
		[
			[67, -0.012, 1, 1, 2],
			[41, 0.6463, 1, 3, 4],
			[82, -0.2316, 0, 5, 6],
			[82, -0.04707, 0, 7, 8],
			[62, 0.02204, 1, 9, 10],
			[34, 2.585, 0, 11, 12],
			[67, 0.1413, 0, 13, 14],
			[9, 0.6478, 0, 15, 16],
			[53, 7.816, 0, 17, 18],
			[28, -2842e-7, 1, 19, 20],
			[4, 62.48, 0, 21, 22],
			[84, 6026e-6, 1, 23, 24],
			[24, -2086e-6, 0, 25, 26],
			[50, 0.9374, 1, 27, 28],
			[88, 0.03138, 1, 29, 30],
			[1, 168.7, 0, 31, 32],
			[38, 0.3399, 0, 33, 34],
			[50, 1.223, 1, 35, 36],
			[14, 0, 0, 37, 38],
			[7, 334.9, 1, 39, 40],
			[50, 0.5231, 0, 41, 42],
			[81, -0.0114, 0, 43, 44],
			[65, -0.5189, 0, 45, 46],
			[34, 0, 0, 47, 48],
			[92, 1.111, 0, 49, 50],
			[87, 0.01245, 0, 51, 52],
			[62, 791e-5, 0, 53, 54],
			[6, 273, 0, 55, 56],
			[9, 0.9536, 0, 57, 58],
			[8, 62.47, 0, 59, 60],
			[50, 1.123, 1, 61, 62],
			[0.1143],
			[0.02007],
			[0.03901],
			[-0.05066],
			[-0.03317],
			[-0.01082],
			[-0.01082],
			[0.07617],
			[6683e-6],
			[-0.01617],
			[-0.03658],
			[-7368e-6],
			[0.01799],
			[0.01184],
			[0.01184],
			[0.04769],
			[0.02052],
			[-0.03512],
			[0.02803],
			[0.08714],
			[0.04361],
			[-0.01685],
			[-0.04361],
			[2706e-6],
			[0.0226],
			[-9745e-6],
			[6388e-6],
			[-0.01951],
			[-0.01879],
			[0.01331],
			[-0.04024],
			[5058e-6]
		],
		[
			[54, 100, 1, 1, 2],
			[28, 1451e-6, 1, 3, 4],
			[30, 223, 1, 5, 6],
			[65, 0.2517, 0, 7, 8],
			[69, 2.29, 0, 9, 10],
			[65, 0.2517, 0, 11, 12],
			[69, 7.673, 0, 13, 14],
			[39, 0.3358, 0, 15, 16],
			[60, 2, 1, 17, 18],
			[30, 208, 0, 19, 20],
			[74, 2148e-7, 1, 21, 22],
			[73, -12, 0, 23, 24],
			[29, -0.2943, 1, 25, 26],
			[12, 7.645, 0, 27, 28],
			[45, 0.3873, 0, 29, 30],
			[65, -0.224, 0, 31, 32],
			[60, -7, 0, 33, 34],
			[75, 0.08736, 0, 35, 36],
			[85, 1, 0, 37, 38],
			[73, -1, 0, 39, 40],
			[87, 0.02177, 0, 41, 42],
			[33, 1.34, 1, 43, 44],
			[54, 62, 0, 45, 46],
			[72, 0, 0, 47, 48],
			[92, 6.511, 0, 49, 50],
			[0.08122],
			[1429e-6],
			[87, 0.04692, 1, 51, 52],
			[61, -0.04848, 0, 53, 54],
			[33, 0.7692, 1, 55, 56],
			[-0.03304],
			[0.0156],
			[-0.02435],
			[0.08135],
			[6093e-6],
			[-0.04341],
			[-8732e-6],
			[0.01652],
			[-0.04067],
			[-0.01809],
			[0.03309],
			[4142e-6],
			[0.09935],
			[-0.02428],
			[0.03444],
			[-0.02231],
			[1328e-6],
			[0.0382],
			[-0.03054],
			[-0.06374],
			[-0.02293],
			[-0.05331],
			[-0.01336],
			[-0.01336],
			[0.03646],
			[-0.0192],
			[0.04467]
		],
		[
			[67, -0.012, 1, 1, 2],
			[2, 39.94, 1, 3, 4],
			[60, 0, 1, 5, 6],
			[64, -0.01833, 1, 7, 8],
			[60, -1, 0, 9, 10],
			[64, 0.1367, 1, 11, 12],
			[11, 1, 0, 13, 14],
			[76, -0.02967, 0, 15, 16],
			[21, 0.01266, 1, 17, 18],
			[21, 0.03605, 0, 19, 20],
			[21, 0.02074, 0, 21, 22],
			[55, 1e9, 0, 23, 24],
			[23, 0.1793, 0, 25, 26],
			[21, -0.01802, 0, 27, 28],
			[1, 101.1, 0, 29, 30],
			[40, 1, 0, 31, 32],
			[1, 39.03, 0, 33, 34],
			[40, 0.1905, 1, 35, 36],
			[88, 3822e-6, 0, 37, 38],
			[23, 0.02155, 1, 39, 40],
			[38, 0.8018, 1, 41, 42],
			[88, 0.0507, 0, 43, 44],
			[52, 12.72, 0, 45, 46],
			[11, 2, 0, 47, 48],
			[88, 2327e-6, 0, 49, 50],
			[67, -5083e-6, 0, 51, 52],
			[55, 94, 0, 53, 54],
			[55, 49, 1, 55, 56],
			[76, -0.06543, 0, 57, 58],
			[21, 0.01055, 1, 59, 60],
			[73, -41, 1, 61, 62],
			[0.03255],
			[-0.03964],
			[-464e-5],
			[-0.07464],
			[-0.05515],
			[4606e-6],
			[-1429e-6],
			[-0.05179],
			[0.03833],
			[-0.01597],
			[-9353e-6],
			[0.1756],
			[-3727e-6],
			[0.02328],
			[-0.02424],
			[0.03953],
			[0.02222],
			[-9125e-6],
			[0.05058],
			[-0.05459],
			[0.0285],
			[-0.04979],
			[-0.02348],
			[0.05908],
			[-0.04784],
			[0.02496],
			[0.01462],
			[-0.0434],
			[0.0367],
			[-344e-5],
			[0.03229],
			[2112e-6]
		],
		[
			[94, 15.09, 0, 1, 2],
			[20, -0.09545, 0, 3, 4],
			[2, 157.2, 1, 5, 6],
			[59, 28, 1, 7, 8],
			[7, -6.048, 0, 9, 10],
			[7, 198.7, 0, 11, 12],
			[7, 93.14, 0, 13, 14],
			[9, 0.8132, 0, 15, 16],
			[64, -0.1327, 1, 17, 18],
			[20, -0.05332, 1, 19, 20],
			[33, 0.6444, 0, 21, 22],
			[51, 0.1914, 0, 23, 24],
			[96, 3, 0, 25, 26],
			[68, 3657e-6, 0, 27, 28],
			[68, 8244e-6, 0, 29, 30],
			[21, -0.05875, 1, 31, 32],
			[6, 172, 1, 33, 34],
			[88, 9859e-6, 0, 35, 36],
			[73, 3, 0, 37, 38],
			[76, 0.183, 1, 39, 40],
			[65, -95e-4, 0, 41, 42],
			[2, 172.4, 0, 43, 44],
			[80, 2, 1, 45, 46],
			[3, -198.4, 0, 47, 48],
			[8, 25.09, 0, 49, 50],
			[48, 0, 1, 51, 52],
			[31, 0.6303, 0, 53, 54],
			[2, 244.8, 0, 55, 56],
			[68, 734e-5, 0, 57, 58],
			[35, 1.198, 1, 59, 60],
			[9, 0.4085, 0, 61, 62],
			[-0.02944],
			[-5871e-6],
			[-0.01711],
			[0.01905],
			[-0.03193],
			[0.05935],
			[-0.03286],
			[0.02685],
			[0.03819],
			[-0.02917],
			[0.1595],
			[-0.01916],
			[-0.04182],
			[-9675e-6],
			[2673e-6],
			[-0.03028],
			[0.063],
			[-57e-4],
			[-0.02446],
			[0.09123],
			[5967e-6],
			[-0.04373],
			[0.03999],
			[-0.0215],
			[0.1893],
			[7001e-6],
			[-531e-5],
			[0.05907],
			[-0.0324],
			[0.02463],
			[-0.02589],
			[0.04332]
		],
		[
			[82, 0.2039, 1, 1, 2],
			[24, 0.2584, 1, 3, 4],
			[21, -0.123, 1, 5, 6],
			[50, 1.067, 0, 7, 8],
			[25, 0.08815, 0, 9, 10],
			[9, 0.3892, 0, 11, 12],
			[9, 0.5966, 0, 13, 14],
			[50, 0.9441, 0, 15, 16],
			[21, -0.09952, 0, 17, 18],
			[21, -8014e-6, 1, 19, 20],
			[29, -0.08653, 0, 21, 22],
			[9836e-6],
			[41, 0, 0, 23, 24],
			[83, 176.4, 0, 25, 26],
			[68, 734e-5, 0, 27, 28],
			[61, -0.05781, 0, 29, 30],
			[90, 0, 0, 31, 32],
			[84, 0.04354, 0, 33, 34],
			[40, 1.444, 1, 35, 36],
			[92, 3.5, 0, 37, 38],
			[68, 3657e-6, 0, 39, 40],
			[50, 0.9374, 1, 41, 42],
			[29, 3752e-6, 1, 43, 44],
			[9, 0.6806, 0, 45, 46],
			[-0.06095],
			[17, 55, 0, 47, 48],
			[5782e-6],
			[-0.01468],
			[9, 0.6806, 0, 49, 50],
			[-0.01435],
			[5299e-6],
			[-0.01853],
			[6838e-6],
			[-0.0311],
			[4736e-6],
			[5595e-6],
			[0.03484],
			[-8936e-6],
			[0.08631],
			[-0.05398],
			[0.02955],
			[-0.01193],
			[0.06589],
			[-0.05784],
			[0.01507],
			[2696e-6],
			[-0.01883],
			[-0.05299],
			[-0.02158],
			[0.09976],
			[8401e-6]
		],
		[
			[69, 2.29, 0, 1, 2],
			[35, 0.2406, 0, 3, 4],
			[80, 2, 1, 5, 6],
			[11, 1, 0, 7, 8],
			[68, 0.02872, 0, 9, 10],
			[35, 0.7409, 0, 11, 12],
			[76, 0.2774, 0, 13, 14],
			[1, 134, 0, 15, 16],
			[3, 177.2, 1, 17, 18],
			[68, 0.01163, 0, 19, 20],
			[81, -0.2722, 1, 21, 22],
			[50, 0.698, 0, 23, 24],
			[50, 0.8156, 0, 25, 26],
			[86, 8631e-6, 0, 27, 28],
			[55, 96, 1, 29, 30],
			[66, 0.1394, 1, 31, 32],
			[-0.02552],
			[1, 66.91, 0, 33, 34],
			[73, 0, 0, 35, 36],
			[43, 0.9618, 1, 37, 38],
			[87, 4996e-6, 0, 39, 40],
			[22, -0.06573, 1, 41, 42],
			[11, 2, 0, 43, 44],
			[95, 444.4, 0, 45, 46],
			[40, 0.7065, 0, 47, 48],
			[81, 1665e-6, 0, 49, 50],
			[23, 0.2123, 0, 51, 52],
			[37, 0.1838, 0, 53, 54],
			[73, -1, 0, 55, 56],
			[22, -0.1293, 0, 57, 58],
			[88, 0.1052, 0, 59, 60],
			[-8214e-6],
			[0.09746],
			[7388e-6],
			[-0.05269],
			[0.03315],
			[-0.03749],
			[0.02491],
			[-0.03272],
			[-2902e-6],
			[0.06567],
			[9511e-6],
			[-0.04856],
			[0.06612],
			[-6616e-6],
			[-9506e-6],
			[0.0488],
			[-7234e-6],
			[0.02795],
			[0.03763],
			[3047e-6],
			[-1257e-6],
			[-9506e-6],
			[-9506e-6],
			[-0.0626],
			[-0.04226],
			[-9506e-6],
			[-9506e-6],
			[-0.01723],
			[-9506e-6],
			[-0.02767]
		],
		[
			[82, -0.1591, 0, 1, 2],
			[94, 7.969, 0, 3, 4],
			[78, 3, 0, 5, 6],
			[32, 3, 1, 7, 8],
			[68, 0.01038, 0, 9, 10],
			[68, 3657e-6, 0, 11, 12],
			[78, 7, 0, 13, 14],
			[51, 0.1108, 0, 15, 16],
			[68, 0.02141, 0, 17, 18],
			[11, 2, 0, 19, 20],
			[87, 0.02488, 1, 21, 22],
			[29, -0.1001, 0, 23, 24],
			[87, 6455e-7, 1, 25, 26],
			[5, 27.34, 1, 27, 28],
			[94, 3.516, 0, 29, 30],
			[38, 1.012, 0, 31, 32],
			[6, 205.5, 0, 33, 34],
			[34, 2.585, 0, 35, 36],
			[-0.03915],
			[94, 11.28, 0, 37, 38],
			[92, 1.35, 0, 39, 40],
			[38, 3.095, 0, 41, 42],
			[38, 0.8882, 0, 43, 44],
			[44, 0.5957, 0, 45, 46],
			[84, 9182e-6, 1, 47, 48],
			[6, 151.8, 1, 49, 50],
			[9, 0.6806, 0, 51, 52],
			[82, -0.0393, 1, 53, 54],
			[65, -0.09625, 0, 55, 56],
			[7, 110.8, 0, 57, 58],
			[6, 58.36, 0, 59, 60],
			[0.04149],
			[-0.02722],
			[5485e-6],
			[-0.04751],
			[0.085],
			[6864e-6],
			[6553e-6],
			[-0.08282],
			[-0.03266],
			[0.03682],
			[0.1233],
			[0.01051],
			[0.05168],
			[-0.01247],
			[-0.02391],
			[0.02943],
			[-0.09352],
			[-0.03545],
			[-0.01713],
			[0.06696],
			[-0.02133],
			[3032e-6],
			[0.08612],
			[-0.04287],
			[-5301e-6],
			[0.03945],
			[0.02105],
			[-2534e-6],
			[-0.01873],
			[-1736e-6]
		],
		[
			[50, 1.091, 1, 1, 2],
			[50, 0.9302, 1, 3, 4],
			[94, 15.09, 0, 5, 6],
			[35, 0.3865, 0, 7, 8],
			[9, 0.9536, 0, 9, 10],
			[21, -0.09952, 0, 11, 12],
			[2, 41.43, 1, 13, 14],
			[95, 568.1, 0, 15, 16],
			[66, 0.1047, 0, 17, 18],
			[41, 0.8372, 1, 19, 20],
			[21, -8014e-6, 1, 21, 22],
			[60, 20, 0, 23, 24],
			[35, 0.8, 0, 25, 26],
			[9, 0.6806, 0, 27, 28],
			[87, 0.03184, 1, 29, 30],
			[94, 18.86, 0, 31, 32],
			[20, -0.1448, 1, 33, 34],
			[29, 4951e-6, 1, 35, 36],
			[83, 83.72, 1, 37, 38],
			[17, 16, 0, 39, 40],
			[35, 0.8, 0, 41, 42],
			[41, 0.8533, 1, 43, 44],
			[78, 9, 0, 45, 46],
			[41, 2.833, 1, 47, 48],
			[55, 96, 0, 49, 50],
			[17, 0, 0, 51, 52],
			[39, 1.082, 1, 53, 54],
			[45, 0.3873, 1, 55, 56],
			[55, 74, 0, 57, 58],
			[94, 17.42, 0, 59, 60],
			[50, 1.223, 0, 61, 62],
			[-0.03435],
			[-3769e-6],
			[-3769e-6],
			[0.04258],
			[0.016],
			[-4379e-6],
			[-0.01593],
			[0.01217],
			[-5257e-7],
			[-0.03458],
			[0.03103],
			[-3913e-6],
			[0.03817],
			[-8453e-6],
			[0.02165],
			[-0.04981],
			[-0.03377],
			[6736e-6],
			[0.04516],
			[-0.03806],
			[-0.02351],
			[0.03048],
			[-0.01218],
			[0.01929],
			[-0.04899],
			[1102e-6],
			[-0.02476],
			[0.05192],
			[0.08635],
			[0.03123],
			[0.03889],
			[-7932e-6]
		],
		[
			[50, 1.091, 1, 1, 2],
			[50, 0.9226, 1, 3, 4],
			[96, 3, 0, 5, 6],
			[67, -0.06042, 1, 7, 8],
			[41, 1.044, 1, 9, 10],
			[10, -126.7, 0, 11, 12],
			[18, 22, 0, 13, 14],
			[26, -9582e-6, 1, 15, 16],
			[67, 0.1014, 0, 17, 18],
			[45, 0.06494, 0, 19, 20],
			[44, 0.1361, 0, 21, 22],
			[18, 4, 0, 23, 24],
			[91, -0.232, 0, 25, 26],
			[70, 0, 0, 27, 28],
			[58, 90, 0, 29, 30],
			[18, 24, 0, 31, 32],
			[10, 53.92, 0, 33, 34],
			[58, 174, 0, 35, 36],
			[82, 8051e-6, 0, 37, 38],
			[27, 0.1872, 0, 39, 40],
			[41, 0.8372, 1, 41, 42],
			[34, 0.8571, 0, 43, 44],
			[16, 6, 0, 45, 46],
			[58, -12, 0, 47, 48],
			[62, 5483e-6, 0, 49, 50],
			[75, 0.3025, 1, 51, 52],
			[84, 0.1149, 1, 53, 54],
			[54, 89, 0, 55, 56],
			[-0.01536],
			[12, -7.503, 0, 57, 58],
			[48, 0.4838, 0, 59, 60],
			[-0.03645],
			[1917e-6],
			[-0.01397],
			[0.01669],
			[0.01973],
			[-6485e-6],
			[0.01596],
			[-0.02041],
			[-0.01008],
			[0.04143],
			[-0.03984],
			[-0.0154],
			[179e-5],
			[-0.0187],
			[179e-5],
			[0.02452],
			[0.05885],
			[-0.01605],
			[-0.05606],
			[0.01253],
			[-0.03821],
			[0.02252],
			[6821e-6],
			[0.03076],
			[0.1063],
			[-0.02],
			[-0.02716],
			[0.06297],
			[0.01739],
			[-0.04692]
		],
		[
			[21, 2882e-6, 1, 1, 2],
			[20, -0.1052, 0, 3, 4],
			[28, 9968e-6, 1, 5, 6],
			[59, 28, 1, 7, 8],
			[59, 20, 0, 9, 10],
			[13, 0.02849, 0, 11, 12],
			[68, 7932e-6, 0, 13, 14],
			[94, 15.09, 0, 15, 16],
			[69, 4.395, 0, 17, 18],
			[13, 0.02348, 0, 19, 20],
			[50, 0.75, 1, 21, 22],
			[59, 4, 1, 23, 24],
			[29, 0.1034, 1, 25, 26],
			[31, 0.8095, 0, 27, 28],
			[82, -0.01352, 0, 29, 30],
			[37, 0.7614, 0, 31, 32],
			[44, 6452e-6, 0, 33, 34],
			[91, -0.232, 1, 35, 36],
			[29, -0.03944, 1, 37, 38],
			[61, -0.06173, 0, 39, 40],
			[8, 77.16, 0, 41, 42],
			[20, -0.06029, 1, 43, 44],
			[50, 1.074, 0, 45, 46],
			[24, 0.1893, 1, 47, 48],
			[11, 1, 0, 49, 50],
			[20, 1e9, 0, 51, 52],
			[67, 0.09067, 0, 53, 54],
			[74, 0.01157, 0, 55, 56],
			[74, -4719e-6, 0, 57, 58],
			[63, -0.04742, 0, 59, 60],
			[59, 8, 0, 61, 62],
			[-2692e-6],
			[-0.02342],
			[-0.03099],
			[0.0324],
			[-0.01579],
			[0.05307],
			[-0.04102],
			[0.01938],
			[7514e-6],
			[0.02011],
			[-0.01219],
			[7514e-6],
			[-5808e-6],
			[0.03114],
			[-0.03273],
			[4854e-6],
			[-8901e-6],
			[0.08323],
			[-8901e-6],
			[0.01408],
			[-0.02941],
			[-8901e-6],
			[-0.01624],
			[-8901e-6],
			[0.01612],
			[-0.04723],
			[-0.09037],
			[-0.03697],
			[-0.02956],
			[0.05621],
			[-0.02886],
			[5839e-6]
		],
		[
			[59, -3, 0, 1, 2],
			[34, 0.9574, 1, 3, 4],
			[59, 0, 1, 5, 6],
			[9, 0.5, 0, 7, 8],
			[96, 0, 0, 9, 10],
			[67, -0.06042, 1, 11, 12],
			[49, 0.9285, 0, 13, 14],
			[81, -6176e-6, 0, 15, 16],
			[34, 0.8395, 1, 17, 18],
			[81, 8345e-6, 0, 19, 20],
			[23, 0.02155, 1, 21, 22],
			[9, 0.6478, 0, 23, 24],
			[60, 3, 1, 25, 26],
			[80, 2, 1, 27, 28],
			[35, 0.7, 0, 29, 30],
			[0.02331],
			[38, 1.105, 1, 31, 32],
			[34, 0.6482, 0, 33, 34],
			[52, 3.663, 0, 35, 36],
			[0.02803],
			[-0.04205],
			[-0.02621],
			[9, 0.473, 0, 37, 38],
			[75, 0.2359, 1, 39, 40],
			[59, -1, 0, 41, 42],
			[38, 1.857, 0, 43, 44],
			[31, 0.5101, 0, 45, 46],
			[56, 101.3, 0, 47, 48],
			[75, 0.3025, 0, 49, 50],
			[9, 0.8132, 0, 51, 52],
			[9, 0.9536, 0, 53, 54],
			[-0.04906],
			[6952e-7],
			[-7282e-6],
			[0.0676],
			[-0.02993],
			[0.01431],
			[0.2022],
			[0.05746],
			[-0.01844],
			[0.02177],
			[0.01929],
			[-0.0488],
			[-167e-5],
			[-0.03635],
			[-0.03692],
			[0.02274],
			[0.01382],
			[7041e-6],
			[2553e-6],
			[7041e-6],
			[-222e-7],
			[2553e-6],
			[-1545e-6],
			[-0.01728]
		],
		[
			[88, 9346e-6, 1, 1, 2],
			[58, 198, 1, 3, 4],
			[82, -2779e-6, 0, 5, 6],
			[59, 2, 1, 7, 8],
			[49, 0.7351, 0, 9, 10],
			[88, 0.03686, 0, 11, 12],
			[10, 121.1, 0, 13, 14],
			[55, 74, 1, 15, 16],
			[21, 0.07907, 0, 17, 18],
			[8, 148.8, 0, 19, 20],
			[22, 0.01444, 0, 21, 22],
			[47, 1.123, 1, 23, 24],
			[42, 0.9726, 0, 25, 26],
			[13, 0.02754, 0, 27, 28],
			[65, 0.2517, 0, 29, 30],
			[64, -0.1057, 1, 31, 32],
			[82, -0.1591, 1, 33, 34],
			[30, 261, 1, 35, 36],
			[30, 180, 0, 37, 38],
			[82, -1875e-6, 0, 39, 40],
			[65, 0.14, 0, 41, 42],
			[46, 0.5435, 0, 43, 44],
			[19, -0.06833, 1, 45, 46],
			[84, 0.1097, 0, 47, 48],
			[56, 76, 0, 49, 50],
			[22, 0.1042, 0, 51, 52],
			[22, -0.1621, 0, 53, 54],
			[65, -0.044, 1, 55, 56],
			[51, 0.1259, 0, 57, 58],
			[22, -0.03189, 0, 59, 60],
			[29, 0.08564, 1, 61, 62],
			[-0.05798],
			[-0.01782],
			[0.0202],
			[-0.02547],
			[8017e-6],
			[0.0343],
			[0.02677],
			[0.08401],
			[0.01612],
			[-4911e-6],
			[0.05005],
			[0.01847],
			[-4911e-6],
			[-0.05116],
			[-0.037],
			[-4911e-6],
			[-0.01109],
			[0.02116],
			[333e-5],
			[0.04534],
			[0.0331],
			[3876e-6],
			[3876e-6],
			[-0.02531],
			[-0.01727],
			[1047e-6],
			[-0.04832],
			[-0.01727],
			[0.05385],
			[3731e-6],
			[-0.02678],
			[0.04199]
		],
		[
			[67, -0.01548, 1, 1, 2],
			[2, 41.43, 1, 3, 4],
			[61, -0.08894, 0, 5, 6],
			[83, 26.42, 1, 7, 8],
			[45, 7547e-6, 1, 9, 10],
			[24, 0.1454, 0, 11, 12],
			[53, -19.35, 1, 13, 14],
			[3, 47.48, 1, 15, 16],
			[87, 0.02075, 0, 17, 18],
			[28, -0.1944, 1, 19, 20],
			[80, 2, 1, 21, 22],
			[22, -0.3116, 1, 23, 24],
			[28, -0.0319, 1, 25, 26],
			[50, 1.054, 1, 27, 28],
			[95, 8.775, 0, 29, 30],
			[20, 1e9, 0, 31, 32],
			[6, 87.93, 0, 33, 34],
			[17, 58, 0, 35, 36],
			[73, 6, 1, 37, 38],
			[67, -0.04392, 1, 39, 40],
			[20, -0.1599, 0, 41, 42],
			[21, -5289e-7, 0, 43, 44],
			[84, 0.07766, 0, 45, 46],
			[50, 0.04831, 0, 47, 48],
			[6, 627.9, 1, 49, 50],
			[61, -0.1943, 0, 51, 52],
			[87, 0.1451, 0, 53, 54],
			[22, -0.1621, 0, 55, 56],
			[87, 0.04332, 1, 57, 58],
			[24, 0.04702, 1, 59, 60],
			[58, 150, 1, 61, 62],
			[-0.06144],
			[-0.01615],
			[-0.01615],
			[-0.04324],
			[0.04197],
			[-5634e-6],
			[-0.01615],
			[8134e-6],
			[-0.04659],
			[0.026],
			[-8513e-6],
			[0.03132],
			[3247e-6],
			[-9808e-6],
			[-0.05262],
			[-0.01699],
			[-0.04889],
			[-4767e-6],
			[-0.03589],
			[-4767e-6],
			[-4767e-6],
			[-4767e-6],
			[-0.03561],
			[-4767e-6],
			[1061e-6],
			[-4767e-6],
			[1061e-6],
			[1061e-6],
			[1061e-6],
			[4598e-6],
			[0.01197],
			[4598e-6]
		],
		[
			[82, -0.1591, 0, 1, 2],
			[74, 0.5201, 0, 3, 4],
			[25, 0.02909, 1, 5, 6],
			[9, 1, 0, 7, 8],
			[81, -0.1616, 0, 9, 10],
			[80, 2, 1, 11, 12],
			[38, 1.512, 0, 13, 14],
			[84, 0.01387, 0, 15, 16],
			[63, -0.04742, 0, 17, 18],
			[-0.01751],
			[81, -0.06797, 1, 19, 20],
			[17, 0, 0, 21, 22],
			[84, 0.1406, 0, 23, 24],
			[50, 0.75, 0, 25, 26],
			[17, 24, 0, 27, 28],
			[9, 0.9536, 0, 29, 30],
			[50, 0.9441, 0, 31, 32],
			[81, -9586e-8, 0, 33, 34],
			[69, 6.866, 0, 35, 36],
			[73, -41, 1, 37, 38],
			[17, 13, 0, 39, 40],
			[95, 378.7, 0, 41, 42],
			[9, 0.9536, 0, 43, 44],
			[95, 125.5, 0, 45, 46],
			[80, 5, 0, 47, 48],
			[31, 0.7888, 0, 49, 50],
			[9, 0.6806, 0, 51, 52],
			[38, 3.8, 1, 53, 54],
			[25, 0.08815, 0, 55, 56],
			[-0.04807],
			[-0.01143],
			[0.03213],
			[-5389e-7],
			[633e-5],
			[-0.02554],
			[0.08186],
			[0.02674],
			[8676e-6],
			[0.1256],
			[0.0596],
			[-0.01154],
			[-0.0119],
			[0.02639],
			[6061e-6],
			[-5402e-6],
			[-0.05479],
			[-0.02342],
			[-0.0119],
			[-0.01549],
			[-0.02119],
			[0.03588],
			[-0.03767],
			[2681e-6],
			[0.07096],
			[3705e-6],
			[-0.02921],
			[0.01895]
		],
		[
			[79, 5, 0, 1, 2],
			[41, 0.3641, 0, 3, 4],
			[41, 0.8372, 0, 5, 6],
			[74, -4719e-6, 0, 7, 8],
			[2, 46.14, 0, 9, 10],
			[82, -785e-5, 0, 11, 12],
			[43, 0.8824, 0, 13, 14],
			[25, -4323e-6, 0, 15, 16],
			[87, 0.02601, 0, 17, 18],
			[58, 30, 0, 19, 20],
			[9, 0.5152, 0, 21, 22],
			[58, 24, 0, 23, 24],
			[45, 0.2647, 0, 25, 26],
			[67, -0.07467, 1, 27, 28],
			[39, 1.082, 0, 29, 30],
			[87, 0.02273, 0, 31, 32],
			[84, 0.01655, 0, 33, 34],
			[20, -2, 1, 35, 36],
			[60, 11, 0, 37, 38],
			[8, 27.15, 0, 39, 40],
			[84, 0.07008, 0, 41, 42],
			[82, -0.0393, 0, 43, 44],
			[8, 26.09, 0, 45, 46],
			[25, 0.01526, 0, 47, 48],
			[83, 20.42, 0, 49, 50],
			[94, 1.133, 0, 51, 52],
			[9, 0.9536, 0, 53, 54],
			[87, 9062e-6, 1, 55, 56],
			[25, 0.03804, 1, 57, 58],
			[58, 198, 0, 59, 60],
			[88, 7008e-7, 0, 61, 62],
			[0.056],
			[-0.01234],
			[-0.06527],
			[0.03104],
			[3548e-6],
			[0.08874],
			[-0.0183],
			[0.04372],
			[-0.017],
			[0.05149],
			[-0.05645],
			[0.03257],
			[0.01752],
			[-0.02625],
			[-0.03288],
			[0.02572],
			[0.01721],
			[0.08792],
			[-0.0418],
			[3866e-6],
			[0.01559],
			[-0.01317],
			[-0.05135],
			[-2207e-6],
			[1142e-6],
			[4293e-6],
			[0.01777],
			[1142e-6],
			[-0.01202],
			[-0.05095],
			[1142e-6],
			[-1605e-6]
		],
		[
			[30, 156, 0, 1, 2],
			[4, 40.84, 0, 3, 4],
			[42, 0.641, 0, 5, 6],
			[28, -0.06627, 0, 7, 8],
			[28, 8116e-6, 1, 9, 10],
			[33, 0.7692, 0, 11, 12],
			[4, 108.1, 0, 13, 14],
			[82, -0.01188, 0, 15, 16],
			[82, 1188e-6, 0, 17, 18],
			[9, 0.9769, 0, 19, 20],
			[82, 0.06832, 0, 21, 22],
			[7, 87.97, 1, 23, 24],
			[50, 0.3462, 0, 25, 26],
			[42, 0.9, 1, 27, 28],
			[33, 1.114, 1, 29, 30],
			[32, 1.374, 0, 31, 32],
			[44, 3, 0, 33, 34],
			[33, 1.058, 0, 35, 36],
			[56, 47.92, 0, 37, 38],
			[60, 17, 1, 39, 40],
			[60, 29, 1, 41, 42],
			[32, 1.374, 0, 43, 44],
			[75, 0.145, 1, 45, 46],
			[32, 0.9419, 1, 47, 48],
			[82, -0.01188, 0, 49, 50],
			[57, 261, 1, 51, 52],
			[32, 0.8953, 1, 53, 54],
			[7, 24.81, 1, 55, 56],
			[32, 1.086, 1, 57, 58],
			[33, 0.7194, 0, 59, 60],
			[32, 0.8812, 0, 61, 62],
			[-7651e-6],
			[0.0808],
			[-0.0275],
			[0.03878],
			[-0.03737],
			[0.01779],
			[0.01732],
			[-0.05956],
			[-6861e-7],
			[0.01862],
			[-5796e-6],
			[-0.04717],
			[-0.01405],
			[0.02064],
			[-0.03971],
			[-4776e-6],
			[3245e-6],
			[0.03258],
			[0.01178],
			[3245e-6],
			[3245e-6],
			[0.02887],
			[836e-5],
			[0.0315],
			[-4579e-6],
			[3245e-6],
			[-0.03057],
			[-4579e-6],
			[3245e-6],
			[-0.01574],
			[3245e-6],
			[1085e-6]
		],
		[
			[82, 0.2039, 1, 1, 2],
			[69, 2.29, 0, 3, 4],
			[75, 0.06725, 0, 5, 6],
			[51, 0.08179, 0, 7, 8],
			[61, -0.07988, 0, 9, 10],
			[75, 0.03716, 0, 11, 12],
			[76, 0.4444, 1, 13, 14],
			[65, 0.09267, 0, 15, 16],
			[59, 18, 0, 17, 18],
			[59, 23, 1, 19, 20],
			[59, 20, 0, 21, 22],
			[-0.03009],
			[26, 0.02782, 0, 23, 24],
			[9, 0.3686, 0, 25, 26],
			[94, 3.863, 0, 27, 28],
			[94, 12.02, 0, 29, 30],
			[7, 82.99, 0, 31, 32],
			[82, -0.3115, 1, 33, 34],
			[34, 0.7143, 0, 35, 36],
			[59, -1, 0, 37, 38],
			[52, 5.639, 1, 39, 40],
			[88, 0.02113, 0, 41, 42],
			[39, 1.488, 0, 43, 44],
			[0.05351],
			[-3917e-6],
			[88, 0.03686, 0, 45, 46],
			[51, 0.1069, 0, 47, 48],
			[-0.02935],
			[0.04747],
			[0.07187],
			[0.01093],
			[0.04196],
			[-0.04865],
			[-0.02861],
			[9779e-6],
			[-3357e-6],
			[0.05662],
			[-7917e-6],
			[-0.02856],
			[-7917e-6],
			[-7917e-6],
			[7756e-6],
			[-5985e-6],
			[-7917e-6],
			[0.01049],
			[-0.02259],
			[0.02264],
			[-0.01255],
			[-0.06059]
		],
		[
			[54, 86, 1, 1, 2],
			[84, 7056e-6, 0, 3, 4],
			[51, 0.1473, 0, 5, 6],
			[80, 1, 0, 7, 8],
			[56, 69.58, 0, 9, 10],
			[46, 0.6404, 0, 11, 12],
			[7, 198.7, 1, 13, 14],
			[50, 1.76, 0, 15, 16],
			[59, 10, 1, 17, 18],
			[31, 1.116, 1, 19, 20],
			[59, 20, 1, 21, 22],
			[51, 0.1108, 0, 23, 24],
			[65, 0.05567, 1, 25, 26],
			[4, 32.53, 1, 27, 28],
			[50, 0.3462, 1, 29, 30],
			[19, -2, 1, 31, 32],
			[35, 0.7409, 0, 33, 34],
			[77, 0, 0, 35, 36],
			[33, 1, 1, 37, 38],
			[59, 28, 1, 39, 40],
			[33, 0.9158, 1, 41, 42],
			[95, 12.36, 0, 43, 44],
			[50, 0.75, 1, 45, 46],
			[38, 0.1774, 0, 47, 48],
			[12, 4.364, 0, 49, 50],
			[94, 3.516, 0, 51, 52],
			[34, 1.061, 0, 53, 54],
			[1, 150.7, 0, 55, 56],
			[59, 0, 1, 57, 58],
			[19, -6696e-6, 1, 59, 60],
			[76, -3106e-6, 0, 61, 62],
			[-0.01069],
			[-2907e-6],
			[-2907e-6],
			[-0.01069],
			[-0.01942],
			[-0.05386],
			[-0.01069],
			[-0.02467],
			[-2907e-6],
			[0.02019],
			[-2907e-6],
			[0.0298],
			[-2907e-6],
			[0.01325],
			[0.02738],
			[-2907e-6],
			[-9441e-6],
			[0.02324],
			[-9441e-6],
			[2015e-6],
			[-9441e-6],
			[-0.03716],
			[-0.01373],
			[-9441e-6],
			[-0.05422],
			[3033e-6],
			[637e-5],
			[0.04807],
			[-0.01397],
			[0.06445],
			[-0.03366],
			[0.01261]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[4, 235.5, 1, 3, 4],
			[35, 0.7409, 0, 5, 6],
			[27, 0.1872, 1, 7, 8],
			[60, 20, 1, 9, 10],
			[45, 0.05917, 0, 11, 12],
			[49, 0.8658, 0, 13, 14],
			[69, 8.902, 0, 15, 16],
			[17, 26, 0, 17, 18],
			[41, 1.177, 1, 19, 20],
			[41, 0.4954, 1, 21, 22],
			[49, 1.933, 0, 23, 24],
			[55, 60, 1, 25, 26],
			[62, -0.0289, 0, 27, 28],
			[69, 2.5, 0, 29, 30],
			[54, 42, 0, 31, 32],
			[16, 14, 0, 33, 34],
			[69, 6.255, 0, 35, 36],
			[-0.03327],
			[80, 3, 0, 37, 38],
			[70, 1, 0, 39, 40],
			[5, -375.3, 1, 41, 42],
			[66, 0.3183, 0, 43, 44],
			[25, 8055e-6, 1, 45, 46],
			[55, 86, 1, 47, 48],
			[82, 1188e-6, 0, 49, 50],
			[79, 5, 1, 51, 52],
			[96, 3, 0, 53, 54],
			[25, 0.0533, 1, 55, 56],
			[23, 0.5348, 0, 57, 58],
			[90, 0, 0, 59, 60],
			[0.033],
			[-0.02966],
			[-0.0754],
			[8827e-6],
			[0.1032],
			[-0.02361],
			[-4194e-6],
			[-0.06777],
			[-0.01204],
			[0.08068],
			[0.03364],
			[-0.03648],
			[0.07296],
			[-0.03222],
			[0.0376],
			[4792e-6],
			[-0.05055],
			[-4566e-6],
			[-4555e-6],
			[-0.05684],
			[0.01731],
			[-0.01536],
			[713e-6],
			[6077e-6],
			[0.01535],
			[6077e-6],
			[713e-6],
			[713e-6],
			[-0.01146],
			[713e-6]
		],
		[
			[24, -0.2903, 1, 1, 2],
			[25, 0.01131, 0, 3, 4],
			[4, 265, 0, 5, 6],
			[94, 0.1223, 0, 7, 8],
			[60, 23, 0, 9, 10],
			[13, 0.02754, 0, 11, 12],
			[68, 9259e-6, 0, 13, 14],
			[74, -0.01242, 1, 15, 16],
			[59, 12, 1, 17, 18],
			[31, 0.9286, 0, 19, 20],
			[1, 349.5, 0, 21, 22],
			[30, 208, 1, 23, 24],
			[51, 0.1473, 0, 25, 26],
			[64, -0.03933, 0, 27, 28],
			[59, 23, 0, 29, 30],
			[61, -4241e-6, 0, 31, 32],
			[22, 418e-5, 1, 33, 34],
			[31, 0.8095, 0, 35, 36],
			[65, -0.0875, 0, 37, 38],
			[0.0767],
			[-471e-5],
			[28, -0.1112, 0, 39, 40],
			[34, 0, 1, 41, 42],
			[34, 1.061, 1, 43, 44],
			[42, 0.7278, 0, 45, 46],
			[77, 0, 0, 47, 48],
			[28, -0.1112, 0, 49, 50],
			[68, 3003e-6, 0, 51, 52],
			[42, 0.5165, 1, 53, 54],
			[65, -95e-4, 0, 55, 56],
			[74, 0.1731, 1, 57, 58],
			[-0.02759],
			[0.01747],
			[0.08062],
			[2899e-6],
			[-0.04467],
			[-626e-5],
			[0.05729],
			[-4405e-6],
			[-885e-5],
			[-0.05578],
			[-0.01958],
			[0.03478],
			[-1799e-6],
			[0.01152],
			[0.02305],
			[1131e-6],
			[-0.04466],
			[-8733e-6],
			[-0.01653],
			[-1799e-6],
			[0.02489],
			[-0.01373],
			[-3439e-6],
			[-0.03897],
			[0.02112],
			[-0.01494],
			[0.01042],
			[0.04993]
		],
		[
			[93, 5.905, 0, 1, 2],
			[26, -0.0685, 1, 3, 4],
			[41, 0.8993, 1, 5, 6],
			[75, 6585e-6, 0, 7, 8],
			[81, -0.06797, 0, 9, 10],
			[82, -1875e-6, 0, 11, 12],
			[13, 0.02754, 0, 13, 14],
			[54, 75, 0, 15, 16],
			[63, -0.01181, 1, 17, 18],
			[68, 7932e-6, 0, 19, 20],
			[66, 0.02167, 1, 21, 22],
			[93, 16.13, 0, 23, 24],
			[17, 26, 0, 25, 26],
			[17, 1, 0, 27, 28],
			[17, 21, 0, 29, 30],
			[-0.02338],
			[63, -7937e-6, 0, 31, 32],
			[41, 0.9595, 0, 33, 34],
			[8, 16.24, 0, 35, 36],
			[63, -1919e-6, 0, 37, 38],
			[0.09735],
			[3, 116.7, 0, 39, 40],
			[32, 0.7512, 1, 41, 42],
			[68, 4632e-6, 0, 43, 44],
			[3, 116.7, 0, 45, 46],
			[30, 135, 0, 47, 48],
			[30, 177, 1, 49, 50],
			[4, 160.8, 1, 51, 52],
			[52, 3.061, 0, 53, 54],
			[82, 0.3256, 0, 55, 56],
			[4, 141.5, 0, 57, 58],
			[-8718e-6],
			[0.077],
			[-0.0208],
			[-0.06273],
			[-0.0208],
			[0.0112],
			[-0.0292],
			[0.01097],
			[-0.03374],
			[-0.08935],
			[0.03297],
			[-0.02465],
			[-0.01391],
			[0.02854],
			[0.01369],
			[-0.01791],
			[-0.0191],
			[2941e-6],
			[-0.03619],
			[-0.01212],
			[-1848e-6],
			[8348e-6],
			[2127e-6],
			[0.01769],
			[-1848e-6],
			[-7426e-6],
			[-0.03706],
			[-3179e-6]
		],
		[
			[24, -0.1516, 1, 1, 2],
			[95, 157, 0, 3, 4],
			[58, 150, 1, 5, 6],
			[19, -0.1725, 1, 7, 8],
			[55, 67, 0, 9, 10],
			[19, -0.2, 0, 11, 12],
			[76, 0.3952, 1, 13, 14],
			[55, 77, 1, 15, 16],
			[40, 0.9907, 1, 17, 18],
			[69, 3.718, 0, 19, 20],
			[44, 1, 0, 21, 22],
			[60, 20, 0, 23, 24],
			[80, 2, 1, 25, 26],
			[55, 94, 1, 27, 28],
			[45, 0.04712, 0, 29, 30],
			[55, 64, 0, 31, 32],
			[58, 18, 0, 33, 34],
			[47, 1.094, 1, 35, 36],
			[55, 93, 1, 37, 38],
			[81, 0.02494, 0, 39, 40],
			[37, 0, 0, 41, 42],
			[41, 1.637, 1, 43, 44],
			[40, 1.138, 0, 45, 46],
			[82, -0.0894, 0, 47, 48],
			[4, 167.2, 0, 49, 50],
			[57, 15, 0, 51, 52],
			[79, 5, 0, 53, 54],
			[60, 23, 0, 55, 56],
			[69, 10.27, 0, 57, 58],
			[19, -0.1725, 1, 59, 60],
			[76, 0.4444, 0, 61, 62],
			[-907e-5],
			[-0.04466],
			[-0.01776],
			[-907e-5],
			[-0.03516],
			[-907e-5],
			[-0.06066],
			[-907e-5],
			[0.05167],
			[-907e-5],
			[9129e-6],
			[-907e-5],
			[-907e-5],
			[0.01259],
			[0.04441],
			[0.01259],
			[0.01065],
			[-0.01703],
			[-0.02557],
			[0.06863],
			[-7507e-6],
			[8905e-6],
			[-7507e-6],
			[-0.06351],
			[-0.01411],
			[4898e-6],
			[-0.05031],
			[0.01086],
			[0.09107],
			[-5389e-6],
			[0.03756],
			[-0.02619]
		],
		[
			[67, -0.012, 1, 1, 2],
			[46, 0.6404, 0, 3, 4],
			[60, 0, 1, 5, 6],
			[55, 68, 0, 7, 8],
			[59, 23, 0, 9, 10],
			[47, 0.9304, 1, 11, 12],
			[50, 1.091, 0, 13, 14],
			[69, 5.644, 0, 15, 16],
			[84, 0.01655, 0, 17, 18],
			[64, -0.06367, 1, 19, 20],
			[67, -0.09267, 0, 21, 22],
			[60, -4, 1, 23, 24],
			[69, 8.188, 0, 25, 26],
			[76, -0.0852, 0, 27, 28],
			[41, 1.2, 0, 29, 30],
			[64, -0.04633, 1, 31, 32],
			[83, 106.6, 1, 33, 34],
			[50, 1.036, 0, 35, 36],
			[83, 353, 0, 37, 38],
			[64, -0.1233, 0, 39, 40],
			[72, 2, 0, 41, 42],
			[67, -0.2528, 0, 43, 44],
			[27, 5192e-6, 1, 45, 46],
			[83, 275.2, 0, 47, 48],
			[3, 161.8, 0, 49, 50],
			[7, -26.76, 0, 51, 52],
			[59, -1, 1, 53, 54],
			[47, 1.042, 0, 55, 56],
			[7, 98.34, 1, 57, 58],
			[69, 7.169, 0, 59, 60],
			[83, 8.828, 0, 61, 62],
			[-4481e-6],
			[8287e-6],
			[-4481e-6],
			[0.02639],
			[2812e-6],
			[-4481e-6],
			[7435e-6],
			[0.03002],
			[-4481e-6],
			[-0.04035],
			[-4481e-6],
			[-4481e-6],
			[-0.03906],
			[-4481e-6],
			[-0.05747],
			[-4481e-6],
			[-0.03593],
			[-3274e-6],
			[9203e-7],
			[0.05496],
			[0.02883],
			[-0.0261],
			[0.06953],
			[-6622e-6],
			[9761e-6],
			[0.04347],
			[9445e-6],
			[-0.01212],
			[0.02083],
			[-7072e-6],
			[-0.02535],
			[0.03542]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[74, 0.1962, 1, 3, 4],
			[35, 0.7409, 0, 5, 6],
			[12, 8.291, 0, 7, 8],
			[93, 5.63, 0, 9, 10],
			[30, 108, 0, 11, 12],
			[34, 1.019, 0, 13, 14],
			[34, 0, 0, 15, 16],
			[62, -0.02319, 1, 17, 18],
			[92, 3.226, 0, 19, 20],
			[58, -186, 1, 21, 22],
			[80, 0, 0, 23, 24],
			[38, 0.6171, 0, 25, 26],
			[37, 0.7614, 0, 27, 28],
			[8, 25.09, 0, 29, 30],
			[26, -7799e-7, 1, 31, 32],
			[79, 1, 0, 33, 34],
			[69, 3.946, 0, 35, 36],
			[34, 0.439, 1, 37, 38],
			[82, -0.3921, 0, 39, 40],
			[5108e-6],
			[5, 391.2, 0, 41, 42],
			[58, -12, 0, 43, 44],
			[10, -2.98, 0, 45, 46],
			[32, 3, 1, 47, 48],
			[8, 25.09, 0, 49, 50],
			[80, 2, 1, 51, 52],
			[30, 156, 0, 53, 54],
			[38, 1.2, 0, 55, 56],
			[37, 1.088, 0, 57, 58],
			[9, 0.3892, 0, 59, 60],
			[-0.0242],
			[-0.0242],
			[-0.0242],
			[-0.05924],
			[-0.01442],
			[-0.0242],
			[-7989e-6],
			[0.04494],
			[-0.01946],
			[-0.04663],
			[-0.03222],
			[0.04974],
			[0.07302],
			[7239e-6],
			[-2183e-6],
			[0.04027],
			[-0.04571],
			[-2183e-6],
			[-0.03429],
			[4737e-6],
			[0.03064],
			[-0.04449],
			[-2277e-6],
			[0.01545],
			[-0.01829],
			[-2277e-6],
			[-5686e-6],
			[-0.03403],
			[-5686e-6],
			[9221e-6]
		],
		[
			[0, -27.06, 0, 1, 2],
			[7, -122.4, 0, 3, 4],
			[8, 25.09, 0, 5, 6],
			[38, 0.8576, 1, 7, 8],
			[24, 0.02083, 1, 9, 10],
			[24, -8639e-6, 1, 11, 12],
			[7, 93.14, 0, 13, 14],
			[93, 11.06, 0, 15, 16],
			[45, 0.1094, 0, 17, 18],
			[8, 20.27, 0, 19, 20],
			[61, -0.02564, 0, 21, 22],
			[69, 9.4, 0, 23, 24],
			[7, -3.173, 0, 25, 26],
			[54, 91, 1, 27, 28],
			[84, 6026e-6, 0, 29, 30],
			[53, 7.816, 0, 31, 32],
			[55, 87, 1, 33, 34],
			[69, 5.152, 0, 35, 36],
			[38, 1.42, 0, 37, 38],
			[74, 0.1339, 0, 39, 40],
			[24, -0.2903, 0, 41, 42],
			[-0.02014],
			[0.1706],
			[41, 1.432, 1, 43, 44],
			[38, 0.9257, 0, 45, 46],
			[93, 9.403, 0, 47, 48],
			[21, 0.04968, 0, 49, 50],
			[62, -448e-5, 1, 51, 52],
			[43, 0.872, 1, 53, 54],
			[24, 0.02276, 0, 55, 56],
			[74, -0.08522, 0, 57, 58],
			[-0.04028],
			[0.01838],
			[0.01087],
			[0.09284],
			[-0.01366],
			[-0.05929],
			[-0.01688],
			[0.043],
			[0.04036],
			[-3172e-6],
			[0.04197],
			[0.08325],
			[-0.04218],
			[-0.01225],
			[-0.02716],
			[-7175e-6],
			[-7175e-6],
			[-7175e-6],
			[-0.01846],
			[-7175e-6],
			[2235e-6],
			[0.02202],
			[-854e-6],
			[-7175e-6],
			[-402e-5],
			[-7175e-6],
			[0.01178],
			[-333e-5]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[27, 0.1872, 1, 3, 4],
			[35, 0.7409, 0, 5, 6],
			[8, 91.56, 0, 7, 8],
			[60, 11, 1, 9, 10],
			[45, 0.06195, 0, 11, 12],
			[69, 2.5, 0, 13, 14],
			[33, 0.7194, 1, 15, 16],
			[9, 0.5426, 0, 17, 18],
			[9, 0.6072, 0, 19, 20],
			[0, 94.54, 0, 21, 22],
			[6, 217.2, 0, 23, 24],
			[81, -0.08132, 1, 25, 26],
			[62, -0.0904, 0, 27, 28],
			[62, -0.01598, 1, 29, 30],
			[6, 273, 1, 31, 32],
			[95, 444.4, 0, 33, 34],
			[93, 27.09, 0, 35, 36],
			[3, 330.3, 0, 37, 38],
			[8437e-6],
			[-0.03711],
			[0.1221],
			[74, 0.22, 1, 39, 40],
			[16, 18, 0, 41, 42],
			[95, 223.4, 0, 43, 44],
			[74, 0.1731, 1, 45, 46],
			[69, 5.365, 0, 47, 48],
			[33, 3.27, 0, 49, 50],
			[60, -3, 0, 51, 52],
			[8, 109.1, 0, 53, 54],
			[7, 98.34, 1, 55, 56],
			[-0.02175],
			[-0.01709],
			[-0.0508],
			[-0.01709],
			[-0.01709],
			[0.01635],
			[-2984e-6],
			[0.0409],
			[-0.0313],
			[0.02301],
			[1853e-6],
			[0.0483],
			[-0.02638],
			[0.02642],
			[0.01709],
			[-0.03083],
			[0.01099],
			[-0.02479],
			[-0.01956],
			[9153e-6],
			[9153e-6],
			[0.03396],
			[-0.02359],
			[-663e-5],
			[702e-5],
			[-6123e-6]
		],
		[
			[40, 0.9709, 1, 1, 2],
			[50, 0.8538, 0, 3, 4],
			[32, 0.8812, 1, 5, 6],
			[56, 76.62, 0, 7, 8],
			[50, 1.192, 0, 9, 10],
			[18, 6, 0, 11, 12],
			[46, 0.9306, 0, 13, 14],
			[6, 45.98, 0, 15, 16],
			[82, -1923e-7, 0, 17, 18],
			[79, 1, 0, 19, 20],
			[74, 0.1117, 1, 21, 22],
			[84, 0.02555, 1, 23, 24],
			[38, 0.5466, 0, 25, 26],
			[78, 1, 0, 27, 28],
			[49, 0.8658, 0, 29, 30],
			[82, -0.01749, 0, 31, 32],
			[74, 0.06694, 0, 33, 34],
			[64, -0.0834, 1, 35, 36],
			[27, -0.2144, 0, 37, 38],
			[91, 0, 0, 39, 40],
			[30, 146, 1, 41, 42],
			[64, 0.01853, 0, 43, 44],
			[79, 5, 0, 45, 46],
			[1, 139.5, 0, 47, 48],
			[29, -0.0631, 1, 49, 50],
			[92, 5.514, 0, 51, 52],
			[22, -0.09175, 0, 53, 54],
			[80, 1, 0, 55, 56],
			[28, 0.02492, 1, 57, 58],
			[8, 47.06, 0, 59, 60],
			[92, 16.17, 0, 61, 62],
			[3553e-6],
			[-0.06307],
			[9897e-6],
			[-0.01708],
			[-0.01584],
			[0.05446],
			[-0.02022],
			[0.01762],
			[-6496e-6],
			[0.06069],
			[-0.03312],
			[-0.01161],
			[0.02396],
			[-5757e-6],
			[0.03681],
			[-0.02616],
			[-0.01689],
			[-0.05875],
			[0.0368],
			[-0.01689],
			[-0.03404],
			[0.01484],
			[-0.01473],
			[0.05714],
			[0.03439],
			[-8957e-6],
			[8231e-6],
			[-8957e-6],
			[-0.01317],
			[-8957e-6],
			[-0.03626],
			[-0.01947]
		],
		[
			[79, 5, 0, 1, 2],
			[62, 2709e-6, 1, 3, 4],
			[41, 0.8844, 0, 5, 6],
			[47, 1.193, 1, 7, 8],
			[6, 335.9, 0, 9, 10],
			[72, 0, 0, 11, 12],
			[61, -0.08894, 0, 13, 14],
			[6, 41.29, 0, 15, 16],
			[60, 2, 1, 17, 18],
			[41, 0.4954, 0, 19, 20],
			[62, 0.05054, 0, 21, 22],
			[6, 441, 0, 23, 24],
			[26, -0.1065, 0, 25, 26],
			[81, -0.08132, 0, 27, 28],
			[46, 0.9031, 0, 29, 30],
			[73, -1, 1, 31, 32],
			[84, 0.2553, 0, 33, 34],
			[73, 3, 1, 35, 36],
			[13, 0.03303, 0, 37, 38],
			[81, -0.05595, 0, 39, 40],
			[26, -0.133, 1, 41, 42],
			[26, -1919e-6, 0, 43, 44],
			[47, 1.415, 0, 45, 46],
			[82, -1057e-6, 0, 47, 48],
			[50, 1.048, 0, 49, 50],
			[50, 1.496, 1, 51, 52],
			[56, 64.16, 0, 53, 54],
			[10, 133.4, 0, 55, 56],
			[30, 270, 0, 57, 58],
			[30, 126, 0, 59, 60],
			[24, 0.09672, 1, 61, 62],
			[-0.06843],
			[7883e-6],
			[-5211e-6],
			[0.01399],
			[0.01399],
			[-0.04042],
			[0.01399],
			[-0.02884],
			[0.01399],
			[0.08605],
			[0.01399],
			[0.03395],
			[0.01399],
			[0.01399],
			[0.05868],
			[0.02347],
			[0.01506],
			[-636e-5],
			[-0.01247],
			[-0.07018],
			[-5835e-6],
			[0.05941],
			[-9612e-7],
			[-0.03494],
			[-0.01036],
			[-6207e-6],
			[-0.02261],
			[-6207e-6],
			[-2626e-7],
			[0.0102],
			[-6207e-6],
			[-2626e-7]
		],
		[
			[56, 93.5, 0, 1, 2],
			[24, -0.1516, 1, 3, 4],
			[94, 16.06, 0, 5, 6],
			[56, 83.53, 0, 7, 8],
			[26, -4135e-6, 0, 9, 10],
			[74, 0.01615, 0, 11, 12],
			[21, -0.123, 0, 13, 14],
			[58, 90, 1, 15, 16],
			[19, -0.5318, 1, 17, 18],
			[81, -9034e-6, 0, 19, 20],
			[67, 0.7443, 0, 21, 22],
			[54, 100, 0, 23, 24],
			[58, -264, 1, 25, 26],
			[26, 0.03346, 0, 27, 28],
			[67, -5083e-6, 0, 29, 30],
			[21, -0.4324, 0, 31, 32],
			[12, 17.06, 0, 33, 34],
			[88, 0.0134, 0, 35, 36],
			[94, 16.06, 0, 37, 38],
			[54, 74, 0, 39, 40],
			[78, 1, 0, 41, 42],
			[94, 0.7144, 0, 43, 44],
			[27, 0.01383, 1, 45, 46],
			[58, 174, 0, 47, 48],
			[92, 5.819, 0, 49, 50],
			[24, -3282e-6, 1, 51, 52],
			[21, -0.3198, 0, 53, 54],
			[39, 0.161, 1, 55, 56],
			[42, 0.3333, 0, 57, 58],
			[27, -0.02701, 0, 59, 60],
			[87, 9571e-6, 0, 61, 62],
			[0.02877],
			[-0.03768],
			[-7534e-6],
			[0.03642],
			[0.07427],
			[0.01246],
			[-0.01631],
			[0.05415],
			[0.02934],
			[-1197e-6],
			[-0.04838],
			[-6764e-6],
			[0.03063],
			[5709e-6],
			[-0.0396],
			[0.01608],
			[0.01269],
			[-0.0155],
			[-0.04084],
			[-6113e-6],
			[0.07455],
			[-0.02255],
			[-0.07178],
			[-0.02832],
			[-5691e-6],
			[0.09575],
			[0.02015],
			[-0.03436],
			[-0.04949],
			[0.01201],
			[-0.01907],
			[0.04667]
		],
		[
			[47, 1.05, 0, 1, 2],
			[7, 104.1, 1, 3, 4],
			[59, 5, 1, 5, 6],
			[25, 0.01526, 0, 7, 8],
			[9, 0.3989, 0, 9, 10],
			[57, 54, 1, 11, 12],
			[54, 51, 0, 13, 14],
			[20, 0.0348, 0, 15, 16],
			[2, 62.44, 0, 17, 18],
			[7, 564.9, 0, 19, 20],
			[87, 0.01887, 1, 21, 22],
			[50, 0.9302, 0, 23, 24],
			[87, 0.03184, 0, 25, 26],
			[47, 1.163, 0, 27, 28],
			[26, -2, 1, 29, 30],
			[92, 16.17, 0, 31, 32],
			[7, 21.57, 0, 33, 34],
			[82, -4627e-6, 0, 35, 36],
			[20, -0.02049, 1, 37, 38],
			[76, 0.02556, 1, 39, 40],
			[66, 0.112, 0, 41, 42],
			[35, 0.7409, 1, 43, 44],
			[86, 1796e-6, 0, 45, 46],
			[76, -0.1067, 1, 47, 48],
			[35, 0.8841, 0, 49, 50],
			[59, -2, 0, 51, 52],
			[86, 0.01826, 0, 53, 54],
			[87, 0.01127, 0, 55, 56],
			[78, 2, 1, 57, 58],
			[86, 0.01558, 0, 59, 60],
			[78, 3, 1, 61, 62],
			[1499e-6],
			[0.05506],
			[0.09232],
			[0.02265],
			[0.01609],
			[-0.04751],
			[-0.0193],
			[0.02048],
			[-0.05615],
			[-176e-5],
			[-6776e-6],
			[0.08453],
			[508e-5],
			[-0.01489],
			[-0.02055],
			[613e-5],
			[-7746e-6],
			[-0.04578],
			[-7746e-6],
			[-0.01855],
			[0.0953],
			[0.01084],
			[-2442e-6],
			[-7746e-6],
			[-0.03144],
			[0.068],
			[-0.0485],
			[-1013e-6],
			[0.05658],
			[-4933e-6],
			[284e-5],
			[0.02686]
		],
		[
			[59, -3, 0, 1, 2],
			[0, 48.48, 0, 3, 4],
			[0, -27.06, 0, 5, 6],
			[67, -5083e-6, 0, 7, 8],
			[87, 0.02601, 1, 9, 10],
			[55, 87, 1, 11, 12],
			[9, 0.4085, 0, 13, 14],
			[93, 7.687, 0, 15, 16],
			[0.03411],
			[58, -24, 0, 17, 18],
			[10, 13.68, 0, 19, 20],
			[37, 1.559, 1, 21, 22],
			[40, 0.9026, 1, 23, 24],
			[70, 1, 0, 25, 26],
			[4, 32.53, 0, 27, 28],
			[-2952e-6],
			[-0.04619],
			[88, 0.02869, 0, 29, 30],
			[7, 217.5, 1, 31, 32],
			[0.05982],
			[13, 0.01336, 0, 33, 34],
			[9, -0.01828, 0, 35, 36],
			[73, -10, 0, 37, 38],
			[69, 5.152, 0, 39, 40],
			[70, 0, 0, 41, 42],
			[88, 7843e-6, 1, 43, 44],
			[68, 0.01622, 0, 45, 46],
			[55, 58, 0, 47, 48],
			[67, 695e-5, 1, 49, 50],
			[-0.02524],
			[0.05674],
			[0.1584],
			[0.03162],
			[0.0272],
			[-0.03506],
			[-135e-5],
			[0.0396],
			[-0.01004],
			[-0.05018],
			[0.06657],
			[-0.02282],
			[0.07718],
			[-0.01596],
			[-3893e-6],
			[-0.03543],
			[-0.01039],
			[0.08058],
			[0.0305],
			[-0.04029],
			[-3573e-6],
			[5612e-6]
		],
		[
			[79, 5, 0, 1, 2],
			[17, 21, 0, 3, 4],
			[80, 2, 1, 5, 6],
			[33, 1.153, 1, 7, 8],
			[60, 0, 0, 9, 10],
			[41, 0.8372, 0, 11, 12],
			[75, 0.3025, 0, 13, 14],
			[68, 9259e-6, 0, 15, 16],
			[58, 36, 0, 17, 18],
			[2, 337.7, 1, 19, 20],
			[84, 0.1406, 0, 21, 22],
			[51, 0.2005, 0, 23, 24],
			[43, 0.872, 0, 25, 26],
			[87, 1803e-6, 0, 27, 28],
			[24, -8068e-7, 0, 29, 30],
			[31, 1.075, 0, 31, 32],
			[51, 0.1369, 0, 33, 34],
			[48, 2.678, 1, 35, 36],
			[60, 3, 1, 37, 38],
			[50, 0.7879, 0, 39, 40],
			[60, -4, 0, 41, 42],
			[80, 3, 0, 43, 44],
			[21, 0.02074, 0, 45, 46],
			[78, 4, 0, 47, 48],
			[21, 0.02381, 1, 49, 50],
			[17, 58, 0, 51, 52],
			[96, 2, 0, 53, 54],
			[47, 1.026, 0, 55, 56],
			[84, 0.1149, 0, 57, 58],
			[2, 392.8, 1, 59, 60],
			[58, -12, 0, 61, 62],
			[-0.01979],
			[0.01586],
			[0.0575],
			[0.0132],
			[0.1371],
			[0.01816],
			[-0.03734],
			[0.05842],
			[-9692e-7],
			[-0.04726],
			[-0.02564],
			[0.06343],
			[8198e-6],
			[-0.03556],
			[0.0712],
			[0.02351],
			[8046e-6],
			[-0.01409],
			[0.03997],
			[-0.01804],
			[256e-5],
			[0.02047],
			[-4959e-6],
			[256e-5],
			[-0.01804],
			[-0.01804],
			[-0.07419],
			[-0.01804],
			[-0.01804],
			[-0.01804],
			[-0.03831],
			[-0.01804]
		],
		[
			[50, 1.067, 0, 1, 2],
			[22, -0.1621, 0, 3, 4],
			[96, 3, 0, 5, 6],
			[32, 0.8812, 1, 7, 8],
			[53, -20.05, 0, 9, 10],
			[75, 0.1239, 0, 11, 12],
			[18, 22, 0, 13, 14],
			[78, 1, 0, 15, 16],
			[2, 164.8, 0, 17, 18],
			[87, 0.07315, 0, 19, 20],
			[11, 1, 0, 21, 22],
			[34, 0.439, 0, 23, 24],
			[84, 0.04109, 0, 25, 26],
			[29, 0.01106, 0, 27, 28],
			[29, 0.01681, 0, 29, 30],
			[5, 88.99, 0, 31, 32],
			[16, 43, 0, 33, 34],
			[87, 1164e-6, 1, 35, 36],
			[60, 9, 0, 37, 38],
			[94, 9.346, 0, 39, 40],
			[25, 0.06522, 1, 41, 42],
			[50, 0.9226, 0, 43, 44],
			[7, 87.97, 1, 45, 46],
			[88, 0.0473, 0, 47, 48],
			[87, 0.03359, 1, 49, 50],
			[54, 76, 1, 51, 52],
			[9, 0.473, 0, 53, 54],
			[78, 7, 1, 55, 56],
			[19, -0.7866, 1, 57, 58],
			[83, -118.4, 1, 59, 60],
			[51, 0.159, 0, 61, 62],
			[0.0827],
			[-0.03024],
			[-0.04108],
			[0.01637],
			[0.03754],
			[-0.01655],
			[0.01988],
			[0.06631],
			[-0.04797],
			[-0.01631],
			[-0.01631],
			[-0.01631],
			[-604e-5],
			[-0.01631],
			[7678e-6],
			[-4934e-6],
			[-0.04679],
			[9824e-6],
			[0.01505],
			[-0.01254],
			[-0.03481],
			[-8473e-6],
			[-8473e-6],
			[0.02089],
			[0.09673],
			[-5867e-6],
			[-0.02969],
			[0.01884],
			[-0.04419],
			[0.0119],
			[0.07121],
			[-0.02635]
		],
		[
			[59, -3, 0, 1, 2],
			[8, 22.22, 0, 3, 4],
			[59, 0, 0, 5, 6],
			[21, -0.2645, 0, 7, 8],
			[76, -8807e-6, 0, 9, 10],
			[9, 0.717, 0, 11, 12],
			[78, 1, 0, 13, 14],
			[0.01192],
			[2, 57.53, 0, 15, 16],
			[76, -0.1274, 0, 17, 18],
			[13, 0.02899, 0, 19, 20],
			[4, 52.87, 0, 21, 22],
			[96, 3, 0, 23, 24],
			[75, 0.03347, 0, 25, 26],
			[51, 0.1831, 0, 27, 28],
			[-3476e-6],
			[-0.04283],
			[54, 86, 0, 29, 30],
			[35, 0.6452, 0, 31, 32],
			[2, 337.7, 0, 33, 34],
			[25, 8055e-6, 0, 35, 36],
			[38, 3.095, 0, 37, 38],
			[66, 0.09521, 0, 39, 40],
			[91, -0.124, 0, 41, 42],
			[46, 0.4583, 0, 43, 44],
			[8, 100.1, 0, 45, 46],
			[66, -0.0834, 0, 47, 48],
			[41, 0.8372, 0, 49, 50],
			[75, 0.05546, 1, 51, 52],
			[0.04948],
			[0.01192],
			[0.03113],
			[0.01192],
			[0.1357],
			[0.05839],
			[0.01192],
			[0.02082],
			[-0.04293],
			[0.01551],
			[6576e-6],
			[-0.0198],
			[9028e-6],
			[-0.04378],
			[0.05997],
			[-0.01151],
			[-0.08425],
			[-6371e-6],
			[0.03731],
			[-0.01378],
			[-888e-5],
			[3416e-6],
			[0.03633],
			[-2414e-6]
		],
		[
			[33, 1.132, 0, 1, 2],
			[21, 1198e-6, 1, 3, 4],
			[85, 2, 0, 5, 6],
			[93, 5.905, 0, 7, 8],
			[9, 0.9536, 0, 9, 10],
			[3, 16.09, 1, 11, 12],
			[35, 0.9179, 0, 13, 14],
			[9, 0.9261, 0, 15, 16],
			[25, 0.04431, 1, 17, 18],
			[0, 12.6, 0, 19, 20],
			[42, 0.6124, 0, 21, 22],
			[4, 455.6, 0, 23, 24],
			[25, -0.02021, 0, 25, 26],
			[9, 0.3455, 0, 27, 28],
			[48, 0.369, 0, 29, 30],
			[88, 7008e-7, 1, 31, 32],
			[33, 0.9263, 0, 33, 34],
			[24, 0.2584, 1, 35, 36],
			[20, -0.01775, 0, 37, 38],
			[47, 0.879, 0, 39, 40],
			[12, 3.234, 0, 41, 42],
			[40, 0.6569, 1, 43, 44],
			[35, 1.019, 1, 45, 46],
			[30, 163, 1, 47, 48],
			[5, -9.142, 0, 49, 50],
			[21, 0.1149, 1, 51, 52],
			[88, 0.01534, 0, 53, 54],
			[25, -9799e-6, 0, 55, 56],
			[-0.03722],
			[-0.01425],
			[51, 0.07532, 0, 57, 58],
			[0.01077],
			[-0.04032],
			[-0.01289],
			[0.02727],
			[35e-4],
			[0.05816],
			[8143e-7],
			[-0.04024],
			[0.1064],
			[-352e-5],
			[-0.02398],
			[8595e-7],
			[-0.02942],
			[0.0163],
			[-0.07443],
			[-0.02942],
			[-0.01425],
			[2527e-6],
			[0.07979],
			[-9498e-6],
			[2158e-6],
			[-0.01425],
			[0.02908],
			[905e-5],
			[-0.01425],
			[-0.01425],
			[-0.03251],
			[-0.05519]
		],
		[
			[67, -0.8403, 1, 1, 2],
			[81, 0.1411, 1, 3, 4],
			[94, 15.09, 0, 5, 6],
			[51, 0.2134, 0, 7, 8],
			[32, 0.5971, 1, 9, 10],
			[94, 3.516, 0, 11, 12],
			[23, 0.02402, 1, 13, 14],
			[23, -0.04441, 1, 15, 16],
			[0.03232],
			[-0.01961],
			[40, 0.7065, 0, 17, 18],
			[60, 7, 0, 19, 20],
			[24, 0.2584, 1, 21, 22],
			[89, -5.34, 0, 23, 24],
			[68, 8244e-6, 0, 25, 26],
			[66, 0.3183, 1, 27, 28],
			[38, 1.857, 1, 29, 30],
			[0.05992],
			[-6656e-6],
			[60, 1, 0, 31, 32],
			[79, 5, 1, 33, 34],
			[47, 0.09574, 1, 35, 36],
			[94, 11.28, 0, 37, 38],
			[55, 85, 1, 39, 40],
			[55, 86, 0, 41, 42],
			[34, 1.257, 1, 43, 44],
			[55, 78, 1, 45, 46],
			[0.0538],
			[-0.03244],
			[-0.05723],
			[-0.01159],
			[2878e-6],
			[0.02755],
			[8041e-6],
			[-0.0156],
			[-0.02185],
			[-2886e-6],
			[0.0418],
			[-0.01621],
			[-8391e-6],
			[0.05989],
			[0.1552],
			[0.06683],
			[-0.02413],
			[0.02312],
			[4832e-6],
			[0.03896]
		],
		[
			[59, -3, 0, 1, 2],
			[12, 2.474, 0, 3, 4],
			[59, 1, 1, 5, 6],
			[65, -0.161, 0, 7, 8],
			[72, 3, 0, 9, 10],
			[65, -0.0556, 1, 11, 12],
			[65, -0.08025, 0, 13, 14],
			[-0.04192],
			[978e-5],
			[9, 0.8412, 0, 15, 16],
			[978e-5],
			[9, 0.5325, 0, 17, 18],
			[92, 2.508, 0, 19, 20],
			[29, 0.1615, 1, 21, 22],
			[34, 1.042, 0, 23, 24],
			[47, 0.995, 1, 25, 26],
			[23, 0.233, 1, 27, 28],
			[40, 1.138, 0, 29, 30],
			[69, 9.119, 0, 31, 32],
			[69, 3.192, 0, 33, 34],
			[57, 30, 1, 35, 36],
			[29, 0.01935, 1, 37, 38],
			[24, 0.04239, 0, 39, 40],
			[23, 0.2123, 1, 41, 42],
			[53, -17.5, 0, 43, 44],
			[0.01544],
			[0.09562],
			[978e-5],
			[978e-5],
			[6153e-6],
			[-0.02387],
			[-0.03188],
			[0.01323],
			[-2179e-6],
			[-0.02244],
			[-2179e-6],
			[0.02643],
			[7334e-6],
			[0.03081],
			[-157e-5],
			[-0.05504],
			[-8491e-8],
			[-0.01463],
			[-0.01642],
			[8783e-6]
		],
		[
			[39, 1.082, 0, 1, 2],
			[42, 0.9, 0, 3, 4],
			[56, 73.27, 0, 5, 6],
			[1, 313, 0, 7, 8],
			[38, 0.9381, 1, 9, 10],
			[92, 11.56, 0, 11, 12],
			[94, 21.2, 0, 13, 14],
			[39, 0.4593, 0, 15, 16],
			[44, 1.222, 0, 17, 18],
			[39, 0.9407, 0, 19, 20],
			[40, 1.374, 0, 21, 22],
			[74, 0.3113, 0, 23, 24],
			[87, 8507e-6, 1, 25, 26],
			[87, 0.07315, 1, 27, 28],
			[69, 6.758, 0, 29, 30],
			[62, 9517e-6, 0, 31, 32],
			[42, 0.641, 0, 33, 34],
			[56, 55.83, 0, 35, 36],
			[88, 0.02302, 0, 37, 38],
			[61, -885e-5, 0, 39, 40],
			[56, 72.54, 0, 41, 42],
			[87, 0.01493, 1, 43, 44],
			[1, 197.8, 0, 45, 46],
			[74, 0.06694, 0, 47, 48],
			[27, 0.01002, 0, 49, 50],
			[23, 0.1257, 1, 51, 52],
			[53, -13.3, 1, 53, 54],
			[56, 96.98, 0, 55, 56],
			[19, -3373e-6, 0, 57, 58],
			[87, 3799e-6, 0, 59, 60],
			[10, -64.92, 0, 61, 62],
			[-0.01251],
			[0.01338],
			[0.01344],
			[-1532e-6],
			[-738e-5],
			[-0.01251],
			[-738e-5],
			[0.01222],
			[-0.01251],
			[-0.01251],
			[-0.01251],
			[-0.02908],
			[-0.04438],
			[-0.01549],
			[-0.01251],
			[-0.02344],
			[-641e-5],
			[-0.038],
			[-0.01168],
			[-1248e-6],
			[0.03884],
			[-1248e-6],
			[-1248e-6],
			[0.03242],
			[0.01022],
			[-0.01037],
			[7475e-6],
			[-0.07168],
			[-0.01784],
			[0.07929],
			[-0.02483],
			[0.03577]
		],
		[
			[67, -0.012, 1, 1, 2],
			[59, 0, 1, 3, 4],
			[68, 3357e-6, 0, 5, 6],
			[22, 0.07399, 1, 7, 8],
			[46, 0.6181, 0, 9, 10],
			[9, 0.9536, 0, 11, 12],
			[12, 2.287, 0, 13, 14],
			[67, -0.03028, 1, 15, 16],
			[60, 0, 0, 17, 18],
			[41, 0.7692, 0, 19, 20],
			[68, 4632e-6, 0, 21, 22],
			[24, 0.02276, 0, 23, 24],
			[18, 18, 0, 25, 26],
			[69, 3.83, 0, 27, 28],
			[9, 0.3892, 0, 29, 30],
			[19, -0.05959, 0, 31, 32],
			[19, -0.08777, 0, 33, 34],
			[69, 5.858, 0, 35, 36],
			[10, 19.85, 0, 37, 38],
			[24, -0.01036, 0, 39, 40],
			[29, -1034e-6, 1, 41, 42],
			[45, 0.48, 0, 43, 44],
			[24, 0.09672, 1, 45, 46],
			[94, 11.62, 0, 47, 48],
			[9, 0.3989, 0, 49, 50],
			[38, 1.857, 0, 51, 52],
			[49, 0.902, 0, 53, 54],
			[60, 1, 1, 55, 56],
			[5, -65.5, 0, 57, 58],
			[35, 0.773, 0, 59, 60],
			[90, 0, 0, 61, 62],
			[-7993e-6],
			[-0.04013],
			[-0.03597],
			[0.02565],
			[0.1002],
			[-0.01814],
			[0.05515],
			[-0.01198],
			[0.01802],
			[6214e-7],
			[0.02479],
			[6214e-7],
			[-0.02741],
			[6214e-7],
			[-243e-5],
			[6214e-7],
			[0.02267],
			[0.08003],
			[-0.03456],
			[0.0134],
			[0.03514],
			[-0.01316],
			[0.02067],
			[-0.03547],
			[-4856e-6],
			[-4856e-6],
			[-4856e-6],
			[-0.02558],
			[7174e-6],
			[-4856e-6],
			[-3978e-7],
			[0.01626]
		],
		[
			[79, 5, 0, 1, 2],
			[41, 0.3641, 0, 3, 4],
			[55, 100, 1, 5, 6],
			[5, 150.1, 1, 7, 8],
			[1, 41.58, 0, 9, 10],
			[68, 2442e-6, 0, 11, 12],
			[40, 3.564, 1, 13, 14],
			[56, 75.34, 0, 15, 16],
			[51, 0.1831, 0, 17, 18],
			[20, -2424e-6, 0, 19, 20],
			[9, 0.5966, 0, 21, 22],
			[56, 71.13, 0, 23, 24],
			[81, -9034e-6, 0, 25, 26],
			[27, -0.2144, 0, 27, 28],
			[56, 91.69, 0, 29, 30],
			[81, -1409e-6, 1, 31, 32],
			[87, 1702e-7, 1, 33, 34],
			[56, 69.58, 0, 35, 36],
			[11, 2, 0, 37, 38],
			[5194e-6],
			[-0.06496],
			[72, 3, 0, 39, 40],
			[63, -0.04742, 0, 41, 42],
			[96, 3, 0, 43, 44],
			[51, 0.0858, 0, 45, 46],
			[72, 0, 0, 47, 48],
			[12, 3.234, 0, 49, 50],
			[55, 104, 0, 51, 52],
			[20, 0.01439, 1, 53, 54],
			[51, 0.2005, 0, 55, 56],
			[27, 3824e-6, 0, 57, 58],
			[-0.02907],
			[0.04638],
			[-0.01381],
			[0.08733],
			[-0.03024],
			[0.03727],
			[0.01434],
			[-0.04465],
			[-8552e-6],
			[0.05273],
			[-0.01827],
			[0.02518],
			[-0.04025],
			[0.05824],
			[-3587e-6],
			[0.01815],
			[0.01243],
			[-8255e-6],
			[-0.01334],
			[-138e-5],
			[-0.03102],
			[0.06428],
			[-0.04564],
			[-5343e-6],
			[0.07633],
			[-0.02377],
			[-0.01877],
			[0.03186]
		],
		[
			[69, 2.5, 0, 1, 2],
			[31, 1.116, 0, 3, 4],
			[54, 53, 0, 5, 6],
			[82, 0.2039, 0, 7, 8],
			[35, 0.5017, 0, 9, 10],
			[82, 0.03992, 0, 11, 12],
			[58, 150, 1, 13, 14],
			[82, 0.03992, 0, 15, 16],
			[9, 0.8412, 0, 17, 18],
			[19, -0.02102, 0, 19, 20],
			[73, 5, 1, 21, 22],
			[35, 0.8, 1, 23, 24],
			[84, 0.09576, 0, 25, 26],
			[24, -0.1516, 1, 27, 28],
			[35, 1.948, 1, 29, 30],
			[73, 42, 1, 31, 32],
			[19, 0, 1, 33, 34],
			[87, 0.1451, 1, 35, 36],
			[28, -0.09322, 1, 37, 38],
			[58, -96, 0, 39, 40],
			[58, 84, 1, 41, 42],
			[36, 1.148, 1, 43, 44],
			[89, 325.3, 0, 45, 46],
			[23, 0.3563, 0, 47, 48],
			[36, 3.105, 0, 49, 50],
			[9, 1.078, 0, 51, 52],
			[89, 8.953, 0, 53, 54],
			[55, 77, 1, 55, 56],
			[24, 0.09672, 0, 57, 58],
			[52, 4.833, 0, 59, 60],
			[49, 0.8912, 1, 61, 62],
			[1421e-6],
			[0.07832],
			[0.07946],
			[-0.01075],
			[-0.04019],
			[0.02083],
			[-0.02832],
			[0.04715],
			[-0.01969],
			[0.04134],
			[-0.04521],
			[1311e-7],
			[0.0688],
			[-0.02099],
			[-0.02944],
			[0.01816],
			[-0.04026],
			[0.01493],
			[0.03502],
			[-0.0145],
			[-0.04302],
			[-0.014],
			[-0.014],
			[0.04653],
			[-0.03219],
			[7059e-6],
			[2722e-6],
			[0.02615],
			[-0.01655],
			[338e-5],
			[0.04368],
			[-8433e-7]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[6, 151.8, 1, 3, 4],
			[56, 96.98, 0, 5, 6],
			[88, 8331e-6, 0, 7, 8],
			[35, 2.336, 0, 9, 10],
			[28, -2842e-7, 1, 11, 12],
			[10, -266, 0, 13, 14],
			[16, 16, 0, 15, 16],
			[2, -74.42, 0, 17, 18],
			[65, -0.224, 0, 19, 20],
			[62, -0.02319, 0, 21, 22],
			[65, 0.2517, 0, 23, 24],
			[82, -0.1447, 0, 25, 26],
			[25, -0.1048, 1, 27, 28],
			[1, 216.4, 0, 29, 30],
			[48, 0.369, 0, 31, 32],
			[2, 107.6, 0, 33, 34],
			[88, 0.03489, 0, 35, 36],
			[65, -0.5189, 0, 37, 38],
			[39, 0.161, 0, 39, 40],
			[39, 0.161, 0, 41, 42],
			[-0.02896],
			[88, 0.03138, 1, 43, 44],
			[60, -7, 0, 45, 46],
			[79, 7, 0, 47, 48],
			[88, 0.03311, 0, 49, 50],
			[91, 0.252, 0, 51, 52],
			[56, 98.97, 0, 53, 54],
			[44, 0.3583, 0, 55, 56],
			[37, 0.8894, 0, 57, 58],
			[76, 0.3266, 1, 59, 60],
			[0.01265],
			[-0.04501],
			[0.03757],
			[-0.01373],
			[0.03811],
			[-0.03351],
			[0.01792],
			[-0.04197],
			[0.02847],
			[-0.02483],
			[-0.03507],
			[9858e-6],
			[0.08579],
			[0.01976],
			[0.08979],
			[7011e-6],
			[8927e-6],
			[-0.0233],
			[4022e-6],
			[0.05058],
			[-2927e-6],
			[-0.02566],
			[-0.02911],
			[0.0548],
			[-0.04343],
			[0.02498],
			[0.01882],
			[-0.01788],
			[-0.03452],
			[0.04889]
		],
		[
			[26, -4135e-6, 0, 1, 2],
			[91, -0.068, 0, 3, 4],
			[93, 11.3, 0, 5, 6],
			[67, -0.1321, 1, 7, 8],
			[68, 5411e-6, 0, 9, 10],
			[54, 71.5, 0, 11, 12],
			[23, 0.02402, 0, 13, 14],
			[93, 27.09, 0, 15, 16],
			[70, 1, 0, 17, 18],
			[9, 0.9769, 0, 19, 20],
			[2, 46.14, 0, 21, 22],
			[78, 1, 1, 23, 24],
			[8, 26.09, 0, 25, 26],
			[10, -126.7, 0, 27, 28],
			[9, 0.3892, 0, 29, 30],
			[78, 13, 0, 31, 32],
			[39, 0.782, 0, 33, 34],
			[7, 299.5, 0, 35, 36],
			[53, 5.029, 1, 37, 38],
			[9, 0.8132, 0, 39, 40],
			[74, 392e-5, 1, 41, 42],
			[31, 0.9685, 1, 43, 44],
			[70, 3, 0, 45, 46],
			[2, 137.7, 0, 47, 48],
			[8, 28.3, 0, 49, 50],
			[78, 1, 0, 51, 52],
			[2, 74.23, 0, 53, 54],
			[67, -5083e-6, 0, 55, 56],
			[59, 1, 0, 57, 58],
			[31, 0.7888, 0, 59, 60],
			[8, 20.27, 0, 61, 62],
			[-7144e-7],
			[-0.05292],
			[0.0906],
			[-551e-6],
			[0.02139],
			[-8848e-7],
			[-0.03777],
			[0.02143],
			[-0.0205],
			[0.0136],
			[-0.06279],
			[-8943e-6],
			[-0.04781],
			[-1535e-6],
			[2228e-7],
			[0.05385],
			[-719e-5],
			[-0.05291],
			[-0.02706],
			[0.04265],
			[-3773e-6],
			[-0.02083],
			[-3773e-6],
			[0.01667],
			[-0.02162],
			[0.03356],
			[8336e-6],
			[0.09236],
			[0.01372],
			[-0.05038],
			[-0.03187],
			[656e-5]
		],
		[
			[67, 0.01003, 1, 1, 2],
			[59, 18, 0, 3, 4],
			[65, 0.0139, 0, 5, 6],
			[80, 1, 1, 7, 8],
			[46, 0.6404, 0, 9, 10],
			[2, 44.42, 1, 11, 12],
			[4, 58.45, 0, 13, 14],
			[88, 9859e-6, 1, 15, 16],
			[78, 3, 0, 17, 18],
			[40, 0.3629, 1, 19, 20],
			[88, 0.01929, 0, 21, 22],
			[48, 0.8486, 1, 23, 24],
			[40, 0.9026, 0, 25, 26],
			[67, 0.0417, 0, 27, 28],
			[88, 0.03489, 1, 29, 30],
			[57, 12, 0, 31, 32],
			[66, 0.1394, 1, 33, 34],
			[65, -0.1155, 0, 35, 36],
			[54, 57.5, 0, 37, 38],
			[16, 20, 0, 39, 40],
			[76, 0.03505, 0, 41, 42],
			[67, -0.09267, 0, 43, 44],
			[40, 1.122, 1, 45, 46],
			[81, 0.01436, 0, 47, 48],
			[24, -0.05908, 1, 49, 50],
			[51, 0.1145, 0, 51, 52],
			[59, 2, 0, 53, 54],
			[19, -0.0286, 0, 55, 56],
			[81, 0.01874, 1, 57, 58],
			[66, 0.2383, 1, 59, 60],
			[65, 0.2517, 0, 61, 62],
			[-0.01],
			[0.01868],
			[-1567e-7],
			[-0.01],
			[-0.01],
			[-0.05294],
			[-0.01],
			[-0.01],
			[-0.01073],
			[-0.01073],
			[0.02401],
			[-0.01073],
			[-0.01073],
			[-0.0429],
			[-0.01073],
			[-0.01073],
			[0.06424],
			[-0.01602],
			[-0.01919],
			[-0.05408],
			[-0.01951],
			[0.01972],
			[3351e-7],
			[0.03587],
			[-0.03887],
			[0.02286],
			[-0.02997],
			[0.03864],
			[2233e-6],
			[0.03348],
			[2085e-6],
			[-0.03721]
		],
		[
			[22, -0.01409, 1, 1, 2],
			[34, 0.8571, 0, 3, 4],
			[9, 0.3989, 0, 5, 6],
			[21, 649e-5, 1, 7, 8],
			[82, -361e-5, 1, 9, 10],
			[21, -0.02077, 1, 11, 12],
			[34, 0.9873, 0, 13, 14],
			[88, 0.03311, 0, 15, 16],
			[20, -0.04095, 0, 17, 18],
			[23, 0.1531, 1, 19, 20],
			[68, 7033e-6, 0, 21, 22],
			[34, 0.9113, 1, 23, 24],
			[68, 0.01622, 0, 25, 26],
			[9, 0.9536, 0, 27, 28],
			[59, 3, 0, 29, 30],
			[20, -0.06029, 1, 31, 32],
			[4, 123.8, 1, 33, 34],
			[29, -0.03378, 1, 35, 36],
			[78, 14, 1, 37, 38],
			[82, -0.2316, 1, 39, 40],
			[4, 374.4, 1, 41, 42],
			[45, 0.1176, 0, 43, 44],
			[49, 0.7765, 1, 45, 46],
			[26, 0.0101, 1, 47, 48],
			[59, -3, 0, 49, 50],
			[26, 1e9, 0, 51, 52],
			[9, 0.3568, 0, 53, 54],
			[76, 0.1254, 0, 55, 56],
			[21, -4847e-6, 0, 57, 58],
			[22, 0.03293, 0, 59, 60],
			[49, 0.9432, 0, 61, 62],
			[-0.01683],
			[0.01301],
			[-3117e-6],
			[0.03018],
			[-0.01658],
			[0.146],
			[0.03661],
			[-0.02081],
			[-6341e-6],
			[0.01844],
			[-0.02736],
			[0.01459],
			[-0.06755],
			[-7206e-6],
			[0.03397],
			[-0.02116],
			[0.07494],
			[-0.01927],
			[0.09562],
			[-0.04205],
			[-0.0464],
			[0.03863],
			[0.06625],
			[-0.01453],
			[4188e-6],
			[-0.01906],
			[-7891e-7],
			[-0.03912],
			[-0.02895],
			[9214e-6],
			[0.02568],
			[7262e-6]
		],
		[
			[28, 1451e-6, 1, 1, 2],
			[56, 96.98, 0, 3, 4],
			[66, -0.04767, 0, 5, 6],
			[56, 69.58, 0, 7, 8],
			[50, 0, 0, 9, 10],
			[30, 163, 1, 11, 12],
			[79, 14, 0, 13, 14],
			[18, 10, 0, 15, 16],
			[60, -7, 0, 17, 18],
			[2, 107.6, 1, 19, 20],
			[30, 253, 1, 21, 22],
			[39, 1.082, 1, 23, 24],
			[95, 58.35, 0, 25, 26],
			[47, 1.034, 1, 27, 28],
			[17, 1, 0, 29, 30],
			[10, 147.4, 0, 31, 32],
			[30, 253, 1, 33, 34],
			[69, 3.83, 0, 35, 36],
			[47, 1.05, 0, 37, 38],
			[-0.01138],
			[47, 1.042, 0, 39, 40],
			[23, -0.04441, 0, 41, 42],
			[39, 0.9286, 1, 43, 44],
			[21, -0.4324, 1, 45, 46],
			[9, 0.6806, 0, 47, 48],
			[50, 1.151, 0, 49, 50],
			[21, 1198e-6, 1, 51, 52],
			[69, 2.29, 0, 53, 54],
			[4, 123.8, 0, 55, 56],
			[21, -0.01331, 0, 57, 58],
			[92, 5.514, 0, 59, 60],
			[-0.0272],
			[9802e-7],
			[5497e-7],
			[0.037],
			[-2043e-6],
			[0.1296],
			[1177e-6],
			[0.0128],
			[0.09247],
			[9445e-6],
			[0.04436],
			[-0.03061],
			[-2347e-6],
			[0.0515],
			[0.02799],
			[-0.03231],
			[-0.0203],
			[0.03676],
			[-0.02458],
			[3912e-6],
			[0.02889],
			[3912e-6],
			[0.04704],
			[-7896e-6],
			[0.07021],
			[8598e-6],
			[-0.01127],
			[-0.06136],
			[-0.02476],
			[-4773e-6]
		],
		[
			[21, 2882e-6, 1, 1, 2],
			[20, -0.09545, 0, 3, 4],
			[9, 0.9536, 0, 5, 6],
			[9, 0.7854, 0, 7, 8],
			[0, -3.712, 0, 9, 10],
			[23, 0.1427, 1, 11, 12],
			[51, 0.1768, 0, 13, 14],
			[2, 428.6, 1, 15, 16],
			[4, 174.2, 1, 17, 18],
			[21, -0.06714, 0, 19, 20],
			[23, 0.2123, 1, 21, 22],
			[28, 9968e-6, 0, 23, 24],
			[88, 0.0507, 0, 25, 26],
			[91, 0.252, 0, 27, 28],
			[56, 80.12, 0, 29, 30],
			[38, 0.8228, 0, 31, 32],
			[3, 330.3, 0, 33, 34],
			[75, 0.05546, 0, 35, 36],
			[56, 93.5, 0, 37, 38],
			[28, -0.04211, 1, 39, 40],
			[88, 7408e-6, 0, 41, 42],
			[78, 2, 0, 43, 44],
			[88, 0.02205, 1, 45, 46],
			[62, -7143e-6, 0, 47, 48],
			[91, 0, 1, 49, 50],
			[86, 5171e-6, 0, 51, 52],
			[9, 0.6981, 0, 53, 54],
			[20, 1054e-6, 0, 55, 56],
			[16, 12, 0, 57, 58],
			[65, -0.0725, 0, 59, 60],
			[23, 0.0619, 0, 61, 62],
			[-4523e-7],
			[-0.0268],
			[0.03073],
			[-0.01522],
			[0.03293],
			[-0.02467],
			[0.02801],
			[-0.03353],
			[-4982e-6],
			[0.105],
			[0.04926],
			[-0.02348],
			[-0.02144],
			[0.0102],
			[-0.01377],
			[0.01687],
			[-0.02425],
			[9853e-6],
			[-0.04576],
			[-2947e-6],
			[-381e-5],
			[0.02541],
			[-0.02609],
			[0.02923],
			[-0.04191],
			[-5058e-6],
			[-0.02036],
			[0.04408],
			[0.03226],
			[-0.02963],
			[-0.02091],
			[0.05496]
		],
		[
			[62, 0.02204, 1, 1, 2],
			[67, -0.03028, 1, 3, 4],
			[22, 0.1592, 0, 5, 6],
			[22, 0.07399, 1, 7, 8],
			[37, 0.9275, 0, 9, 10],
			[2, 81.35, 0, 11, 12],
			[82, 0.2039, 0, 13, 14],
			[17, 3, 0, 15, 16],
			[87, 6455e-7, 0, 17, 18],
			[67, 0.1584, 0, 19, 20],
			[67, 695e-5, 0, 21, 22],
			[88, 7408e-6, 1, 23, 24],
			[64, -0.2873, 1, 25, 26],
			[32, 1.321, 0, 27, 28],
			[58, 282, 1, 29, 30],
			[47, 0.09574, 0, 31, 32],
			[52, 6.545, 1, 33, 34],
			[73, -1, 0, 35, 36],
			[73, -4, 1, 37, 38],
			[23, 0.1793, 1, 39, 40],
			[82, -0.0281, 1, 41, 42],
			[6, 179.1, 0, 43, 44],
			[60, -4, 1, 45, 46],
			[23, 0.07568, 1, 47, 48],
			[38, 0.6702, 1, 49, 50],
			[82, 0.02032, 1, 51, 52],
			[58, 114, 0, 53, 54],
			[17, 39, 0, 55, 56],
			[75, 0.2847, 1, 57, 58],
			[22, 1e9, 0, 59, 60],
			[38, 1.512, 1, 61, 62],
			[5568e-6],
			[-0.03371],
			[-7225e-6],
			[5568e-6],
			[5568e-6],
			[-0.08242],
			[-0.0156],
			[5568e-6],
			[5568e-6],
			[1706e-6],
			[1706e-6],
			[2887e-6],
			[-6014e-7],
			[-0.03406],
			[-0.01948],
			[1706e-6],
			[5568e-6],
			[0.06037],
			[5568e-6],
			[5568e-6],
			[5568e-6],
			[0.06585],
			[0.05928],
			[0.01654],
			[0.07401],
			[5568e-6],
			[5568e-6],
			[0.03412],
			[5568e-6],
			[5568e-6],
			[5568e-6],
			[0.05609]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[76, 0.183, 1, 3, 4],
			[35, 0.7409, 0, 5, 6],
			[27, 0.1872, 1, 7, 8],
			[3, 147.1, 0, 9, 10],
			[39, 0.681, 0, 11, 12],
			[50, 0.8156, 0, 13, 14],
			[12, 9.044, 0, 15, 16],
			[67, -0.05467, 0, 17, 18],
			[0, 114, 0, 19, 20],
			[67, 0.7443, 0, 21, 22],
			[51, 0.1914, 0, 23, 24],
			[50, 0.5231, 0, 25, 26],
			[54, 76, 0, 27, 28],
			[49, 0.8658, 0, 29, 30],
			[34, 0, 0, 31, 32],
			[21, -0.1864, 1, 33, 34],
			[0.09222],
			[-0.01869],
			[17, 5, 0, 35, 36],
			[82, -1057e-6, 1, 37, 38],
			[21, 0.1955, 0, 39, 40],
			[39, 3.56, 0, 41, 42],
			[8, 25.09, 0, 43, 44],
			[20, -0.02368, 0, 45, 46],
			[50, 0.04831, 0, 47, 48],
			[30, 108, 0, 49, 50],
			[82, 5826e-6, 0, 51, 52],
			[25, 0, 1, 53, 54],
			[25, 0.0533, 1, 55, 56],
			[90, 0, 0, 57, 58],
			[-0.02309],
			[-0.04745],
			[-0.02309],
			[0.01046],
			[0.02961],
			[-0.02158],
			[-0.04708],
			[8738e-6],
			[0.08674],
			[-0.03273],
			[0.01676],
			[-0.0365],
			[-0.03479],
			[-5686e-6],
			[-0.02072],
			[0.05259],
			[0.04792],
			[-0.05736],
			[-0.01918],
			[0.02731],
			[0.01347],
			[-0.01398],
			[8847e-6],
			[0.04135],
			[0.01017],
			[-1867e-7],
			[-0.01165],
			[-1867e-7]
		],
		[
			[35, 0.2406, 0, 1, 2],
			[68, 3003e-6, 0, 3, 4],
			[35, 0.7409, 0, 5, 6],
			[3, 370.2, 1, 7, 8],
			[21, -0.03059, 0, 9, 10],
			[45, 0.06195, 0, 11, 12],
			[3, 294.9, 1, 13, 14],
			[45, 0.09132, 0, 15, 16],
			[33, 0.8896, 0, 17, 18],
			[21, -0.3198, 0, 19, 20],
			[58, 198, 1, 21, 22],
			[72, 1, 0, 23, 24],
			[30, 183, 0, 25, 26],
			[91, -0.068, 0, 27, 28],
			[32, 1.114, 0, 29, 30],
			[3, -148.7, 1, 31, 32],
			[45, 0.1262, 0, 33, 34],
			[-4265e-6],
			[0.02447],
			[32, 1.062, 1, 35, 36],
			[88, 0.0607, 0, 37, 38],
			[51, 0.05577, 0, 39, 40],
			[93, 27.09, 0, 41, 42],
			[75, 0.1849, 1, 43, 44],
			[88, 0.03138, 0, 45, 46],
			[92, 11.56, 0, 47, 48],
			[34, 0.7949, 0, 49, 50],
			[84, 6026e-6, 0, 51, 52],
			[74, -0.01537, 0, 53, 54],
			[48, 0.4324, 0, 55, 56],
			[35, 1.037, 1, 57, 58],
			[-0.0123],
			[-0.08496],
			[0.02821],
			[-0.01939],
			[-0.04463],
			[7514e-6],
			[0.0122],
			[0.0817],
			[0.02914],
			[-0.03239],
			[-7279e-6],
			[0.04449],
			[0.03314],
			[-5444e-6],
			[-0.03917],
			[0.03522],
			[-0.02088],
			[0.02054],
			[-5263e-6],
			[0.02807],
			[-9166e-6],
			[0.02315],
			[-0.01677],
			[3933e-7],
			[0.0101],
			[-0.02845],
			[0.02315],
			[-9643e-6]
		],
		[
			[7, 98.34, 0, 1, 2],
			[2, 669.5, 1, 3, 4],
			[3, 81.08, 0, 5, 6],
			[62, -448e-5, 1, 7, 8],
			[68, 6711e-6, 0, 9, 10],
			[24, 0.03844, 0, 11, 12],
			[78, 1, 0, 13, 14],
			[12, 3.234, 0, 15, 16],
			[24, 0, 0, 17, 18],
			[31, 0.3548, 0, 19, 20],
			[63, -0.01529, 0, 21, 22],
			[62, -0.01149, 1, 23, 24],
			[89, 240.8, 0, 25, 26],
			[81, -0.03976, 1, 27, 28],
			[9, 0.3989, 0, 29, 30],
			[76, 0.05805, 1, 31, 32],
			[30, 212, 1, 33, 34],
			[29, 7868e-6, 1, 35, 36],
			[69, 3.472, 0, 37, 38],
			[-0.02575],
			[0.02635],
			[414e-5],
			[0.1399],
			[78, 1, 0, 39, 40],
			[41, 0, 1, 41, 42],
			[63, 0.08978, 0, 43, 44],
			[0.04622],
			[73, -1, 1, 45, 46],
			[81, 0.1076, 0, 47, 48],
			[21, -0.05875, 1, 49, 50],
			[22, -0.01409, 0, 51, 52],
			[-0.02993],
			[-4113e-6],
			[-4104e-6],
			[2611e-6],
			[9965e-6],
			[2611e-6],
			[2611e-6],
			[0.02614],
			[-0.01861],
			[-0.05212],
			[0.03338],
			[-9321e-6],
			[-0.04671],
			[1352e-6],
			[-0.02251],
			[0.01391],
			[-0.05496],
			[0.02707],
			[0.04485],
			[-0.03082],
			[-8773e-6],
			[6034e-6]
		],
		[
			[94, 15.09, 0, 1, 2],
			[20, -0.09545, 0, 3, 4],
			[70, 0, 0, 5, 6],
			[74, 0.3879, 0, 7, 8],
			[7, -3.173, 0, 9, 10],
			[55, 69, 0, 11, 12],
			[48, 0, 1, 13, 14],
			[22, 0.03293, 0, 15, 16],
			[21, -0.1372, 0, 17, 18],
			[20, -8667e-7, 1, 19, 20],
			[22, -0.01409, 0, 21, 22],
			[21, -0.01802, 1, 23, 24],
			[40, 1.66, 1, 25, 26],
			[64, 0.1367, 0, 27, 28],
			[5, 162.8, 0, 29, 30],
			[10, 133.4, 0, 31, 32],
			[80, 3, 0, 33, 34],
			[60, 20, 1, 35, 36],
			[64, 0.01233, 1, 37, 38],
			[42, 0.8476, 0, 39, 40],
			[47, 0.4889, 0, 41, 42],
			[81, -9034e-6, 0, 43, 44],
			[33, 0.6444, 0, 45, 46],
			[42, 0.88, 0, 47, 48],
			[81, 0.02494, 0, 49, 50],
			[19, 0.03165, 1, 51, 52],
			[60, -3, 1, 53, 54],
			[17, 26, 0, 55, 56],
			[0.0106],
			[40, 0.9026, 0, 57, 58],
			[22, 418e-5, 1, 59, 60],
			[-0.0105],
			[0.02469],
			[6168e-6],
			[-0.04266],
			[-6245e-6],
			[0.0306],
			[0.05439],
			[-0.01693],
			[0.03897],
			[-0.0364],
			[3344e-6],
			[0.144],
			[0.01611],
			[-0.01794],
			[-0.02949],
			[4075e-6],
			[0.03082],
			[-0.03842],
			[-6108e-7],
			[-0.04172],
			[3985e-6],
			[0.06335],
			[-5839e-6],
			[0.0681],
			[0.08409],
			[0.0106],
			[-0.03744],
			[0.0106],
			[-0.06701],
			[-8005e-6]
		],
		[
			[94, 15.09, 0, 1, 2],
			[16, 0, 0, 3, 4],
			[2, 157.2, 1, 5, 6],
			[6, 241.7, 0, 7, 8],
			[94, 3.684, 0, 9, 10],
			[27, -0.0173, 1, 11, 12],
			[23, 0.1951, 1, 13, 14],
			[24, -7108e-6, 0, 15, 16],
			[82, -0.04707, 1, 17, 18],
			[42, 0.9615, 1, 19, 20],
			[56, 89.35, 0, 21, 22],
			[68, 7932e-6, 0, 23, 24],
			[23, 0.09453, 1, 25, 26],
			[19, -0.4305, 1, 27, 28],
			[68, 7932e-6, 0, 29, 30],
			[69, 7.549, 0, 31, 32],
			[74, 0.3113, 0, 33, 34],
			[60, 20, 1, 35, 36],
			[35, 0.02553, 0, 37, 38],
			[9, 0.4353, 0, 39, 40],
			[35, 1.152, 1, 41, 42],
			[30, 163, 1, 43, 44],
			[6, 335.9, 1, 45, 46],
			[33, 1.178, 1, 47, 48],
			[45, 0.1677, 1, 49, 50],
			[8, 23.2, 0, 51, 52],
			[62, -0.04486, 0, 53, 54],
			[82, -0.1591, 1, 55, 56],
			[35, 2.336, 0, 57, 58],
			[65, -0.08025, 0, 59, 60],
			[9, 0.4547, 0, 61, 62],
			[-0.0301],
			[0.02307],
			[-0.08271],
			[-1776e-6],
			[-0.02922],
			[0.01937],
			[-0.01012],
			[0.05692],
			[-5877e-7],
			[0.01383],
			[-0.03742],
			[-5877e-7],
			[-7994e-6],
			[5675e-6],
			[-6656e-6],
			[-0.03845],
			[-0.0564],
			[0.01393],
			[0.01391],
			[-0.03159],
			[-0.01083],
			[0.05643],
			[-0.03912],
			[2539e-6],
			[-0.02597],
			[0.07354],
			[0.04142],
			[0.1268],
			[0.01006],
			[-0.06156],
			[-8928e-6],
			[0.04183]
		],
		[
			[67, 0.7443, 0, 1, 2],
			[51, 0.2134, 0, 3, 4],
			[87, 1471e-6, 0, 5, 6],
			[22, -0.9303, 0, 7, 8],
			[22, -0.06573, 1, 9, 10],
			[26, -0.02785, 1, 11, 12],
			[59, 35, 1, 13, 14],
			[64, -0.1327, 1, 15, 16],
			[67, -0.8403, 0, 17, 18],
			[58, -156, 1, 19, 20],
			[69, 4.17, 0, 21, 22],
			[-0.01922],
			[0.05927],
			[1, 667.5, 0, 23, 24],
			[58, -156, 0, 25, 26],
			[4, 200.1, 0, 27, 28],
			[87, 0.03184, 1, 29, 30],
			[78, 5, 0, 31, 32],
			[13, 0.02849, 0, 33, 34],
			[26, -0.0113, 0, 35, 36],
			[34, 0.6482, 0, 37, 38],
			[54, 62, 0, 39, 40],
			[58, 234, 0, 41, 42],
			[69, 7.673, 0, 43, 44],
			[51, 0.1831, 0, 45, 46],
			[50, 0.8941, 0, 47, 48],
			[4, 409.3, 1, 49, 50],
			[0.01672],
			[0.1078],
			[-0.04109],
			[0.01208],
			[3703e-6],
			[-0.04609],
			[1031e-6],
			[-75e-4],
			[-71e-4],
			[0.05306],
			[3578e-6],
			[-0.04682],
			[-0.04389],
			[0.02054],
			[0.05433],
			[-0.01664],
			[-0.05039],
			[8147e-7],
			[0.03943],
			[-0.02352],
			[7284e-7],
			[-0.04153],
			[0.04377],
			[-0.02946]
		],
		[
			[67, -0.012, 1, 1, 2],
			[60, -1, 0, 3, 4],
			[65, -0.03479, 0, 5, 6],
			[2, 259.9, 1, 7, 8],
			[59, 0, 1, 9, 10],
			[45, 0.1529, 1, 11, 12],
			[51, 0.1768, 0, 13, 14],
			[47, 0.92, 0, 15, 16],
			[59, 10, 0, 17, 18],
			[9, 0.5426, 0, 19, 20],
			[65, -0.161, 0, 21, 22],
			[37, 0.9384, 0, 23, 24],
			[55, 53, 0, 25, 26],
			[88, 8331e-6, 1, 27, 28],
			[63, -0.05882, 1, 29, 30],
			[35, 0.7409, 0, 31, 32],
			[45, 0.1028, 1, 33, 34],
			[57, 78, 0, 35, 36],
			[74, 0.09711, 0, 37, 38],
			[88, 0.03886, 1, 39, 40],
			[67, -0.04392, 1, 41, 42],
			[2, 74.23, 1, 43, 44],
			[2, 219, 1, 45, 46],
			[26, 0, 0, 47, 48],
			[75, 0.1239, 0, 49, 50],
			[9, 0.6981, 0, 51, 52],
			[88, 8331e-6, 0, 53, 54],
			[93, 24.9, 0, 55, 56],
			[45, 0.3163, 0, 57, 58],
			[59, 49, 1, 59, 60],
			[47, 0.6239, 1, 61, 62],
			[-0.02559],
			[0.06852],
			[-0.03706],
			[0.0226],
			[0.01052],
			[0.1818],
			[0.0168],
			[-0.03227],
			[-8779e-6],
			[0.02097],
			[-0.03271],
			[353e-5],
			[-0.01493],
			[0.02802],
			[1015e-6],
			[-0.01809],
			[0.01186],
			[0.04535],
			[8257e-6],
			[-0.02898],
			[-0.03811],
			[147e-5],
			[5076e-6],
			[0.08617],
			[789e-5],
			[-0.02241],
			[-3919e-6],
			[-0.03069],
			[-0.04746],
			[-0.01077],
			[-1715e-6],
			[0.02872]
		],
		[
			[69, 2.863, 0, 1, 2],
			[30, 208, 0, 3, 4],
			[72, 1, 0, 5, 6],
			[75, 0.4567, 1, 7, 8],
			[35, 0.5017, 0, 9, 10],
			[35, 0.7409, 0, 11, 12],
			[69, 4.504, 0, 13, 14],
			[13, 0.02943, 0, 15, 16],
			[72, 0, 0, 17, 18],
			[38, 0.3399, 0, 19, 20],
			[25, 0.03285, 1, 21, 22],
			[39, 0.681, 0, 23, 24],
			[50, 0.8156, 0, 25, 26],
			[34, 0.8992, 1, 27, 28],
			[7, 564.9, 0, 29, 30],
			[29, -0.02194, 0, 31, 32],
			[23, 0.5348, 0, 33, 34],
			[5, -97.53, 0, 35, 36],
			[86, 0.0495, 0, 37, 38],
			[50, 1.031, 0, 39, 40],
			[81, 0.05894, 0, 41, 42],
			[23, 0.1121, 1, 43, 44],
			[23, 0.1531, 1, 45, 46],
			[50, 1.305, 1, 47, 48],
			[80, 2, 1, 49, 50],
			[80, 1, 0, 51, 52],
			[23, 0.2123, 0, 53, 54],
			[64, -0.8773, 0, 55, 56],
			[7, 267.7, 1, 57, 58],
			[35, 0.8959, 1, 59, 60],
			[10, 64.26, 0, 61, 62],
			[0.02852],
			[-5255e-6],
			[-0.03948],
			[-87e-4],
			[-8788e-6],
			[0.09579],
			[-0.02734],
			[0.03384],
			[-8481e-6],
			[0.06414],
			[6465e-6],
			[-0.04198],
			[0.09146],
			[0.03344],
			[-0.03812],
			[0.02464],
			[-0.015],
			[0.026],
			[0.02262],
			[-0.03261],
			[0.0317],
			[1152e-6],
			[-1628e-6],
			[-0.01651],
			[0.04854],
			[-0.02354],
			[0.04131],
			[-0.02157],
			[-0.04508],
			[-0.01562],
			[-0.03395],
			[0.02224]
		],
		[
			[28, 1451e-6, 1, 1, 2],
			[56, 96.98, 0, 3, 4],
			[69, 2.29, 0, 5, 6],
			[78, 1, 0, 7, 8],
			[43, 0.1343, 0, 9, 10],
			[66, 0.072, 0, 11, 12],
			[66, -0.01867, 0, 13, 14],
			[41, 0.6463, 0, 15, 16],
			[28, -2, 0, 17, 18],
			[69, 8.902, 0, 19, 20],
			[34, 1.257, 1, 21, 22],
			[31, 1.075, 1, 23, 24],
			[93, 27.09, 0, 25, 26],
			[68, 6173e-6, 0, 27, 28],
			[66, -0.01067, 1, 29, 30],
			[75, 0.08736, 1, 31, 32],
			[94, 1.504, 0, 33, 34],
			[69, 5.55, 0, 35, 36],
			[61, -0.08894, 0, 37, 38],
			[95, 112.3, 0, 39, 40],
			[88, 4674e-6, 0, 41, 42],
			[66, -0.1617, 0, 43, 44],
			[85, 1, 0, 45, 46],
			[20, -0.01117, 1, 47, 48],
			[87, 0.04046, 1, 49, 50],
			[91, 0.38, 0, 51, 52],
			[91, 0.092, 0, 53, 54],
			[94, 1.133, 0, 55, 56],
			[94, 15.09, 0, 57, 58],
			[43, 0.7439, 0, 59, 60],
			[94, 3.516, 0, 61, 62],
			[-9819e-6],
			[0.05505],
			[-0.08226],
			[-0.01486],
			[6334e-6],
			[-0.03548],
			[-0.01047],
			[7824e-6],
			[8296e-6],
			[0.07023],
			[0.02049],
			[8296e-6],
			[8296e-6],
			[-0.03112],
			[8296e-6],
			[-0.04005],
			[-0.04854],
			[6064e-7],
			[2563e-6],
			[0.07718],
			[0.08286],
			[-6257e-6],
			[0.01713],
			[-0.03621],
			[0.03579],
			[-9855e-6],
			[6401e-6],
			[0.03425],
			[0.01322],
			[-0.06256],
			[7685e-6],
			[-0.01593]
		],
		[
			[40, 0.9709, 1, 1, 2],
			[30, 156, 0, 3, 4],
			[93, 5.905, 0, 5, 6],
			[22, 0.06326, 1, 7, 8],
			[37, 0.916, 1, 9, 10],
			[59, 10, 0, 11, 12],
			[24, -0.1516, 0, 13, 14],
			[17, 26, 0, 15, 16],
			[59, 18, 0, 17, 18],
			[67, 0.1584, 0, 19, 20],
			[59, 20, 1, 21, 22],
			[34, 0.995, 1, 23, 24],
			[29, -0.03378, 1, 25, 26],
			[75, 0.1849, 0, 27, 28],
			[67, 0.1267, 0, 29, 30],
			[79, 5, 0, 31, 32],
			[23, -0.01042, 1, 33, 34],
			[6, 396.4, 0, 35, 36],
			[34, 0.9312, 0, 37, 38],
			[34, 0.9873, 1, 39, 40],
			[25, 0.01131, 0, 41, 42],
			[25, -0.03768, 1, 43, 44],
			[16, 12, 0, 45, 46],
			[6, 78.07, 0, 47, 48],
			[16, 2, 0, 49, 50],
			[17, 44, 0, 51, 52],
			[9, 0.9536, 0, 53, 54],
			[40, 1.156, 0, 55, 56],
			[59, 3, 1, 57, 58],
			[23, 8658e-6, 1, 59, 60],
			[59, 23, 0, 61, 62],
			[0.02562],
			[-0.01617],
			[0.04594],
			[-0.03442],
			[0.01282],
			[-0.03386],
			[-0.01201],
			[0.0634],
			[711e-6],
			[0.0145],
			[-4223e-6],
			[0.01914],
			[-4223e-6],
			[-0.01087],
			[-4223e-6],
			[-0.05671],
			[0.03591],
			[-0.02313],
			[8229e-6],
			[-0.06478],
			[0.03646],
			[-0.03998],
			[-0.03679],
			[0.01882],
			[-0.01465],
			[-0.05607],
			[-0.02811],
			[0.03463],
			[0.03237],
			[6626e-6],
			[-0.01558],
			[0.01733]
		],
		[
			[92, 21.94, 0, 1, 2],
			[82, -905e-5, 0, 3, 4],
			[9, 0.4172, 0, 5, 6],
			[51, 0.07315, 0, 7, 8],
			[55, 78, 1, 9, 10],
			[68, 0.01818, 0, 11, 12],
			[6, 133.7, 0, 13, 14],
			[41, 1.081, 1, 15, 16],
			[72, 0, 0, 17, 18],
			[10, 95.08, 0, 19, 20],
			[72, 1, 0, 21, 22],
			[55, 104, 0, 23, 24],
			[68, 0.02562, 0, 25, 26],
			[21, 8436e-6, 0, 27, 28],
			[83, 230.4, 0, 29, 30],
			[0, 61.78, 0, 31, 32],
			[0, 27.36, 0, 33, 34],
			[45, 0.02564, 0, 35, 36],
			[5, 519.5, 0, 37, 38],
			[86, 0.0148, 0, 39, 40],
			[68, 9657e-6, 0, 41, 42],
			[46, 0.6617, 1, 43, 44],
			[68, 4412e-6, 0, 45, 46],
			[53, 7.816, 1, 47, 48],
			[0.03802],
			[55, 87, 1, 49, 50],
			[66, 0.194, 0, 51, 52],
			[82, -905e-5, 0, 53, 54],
			[21, 0.01516, 0, 55, 56],
			[46, 0.7192, 0, 57, 58],
			[26, 6755e-6, 1, 59, 60],
			[6717e-6],
			[6717e-6],
			[-0.04095],
			[6717e-6],
			[6717e-6],
			[4654e-7],
			[-0.01538],
			[6717e-6],
			[-9065e-6],
			[-0.02686],
			[-5607e-6],
			[6717e-6],
			[6717e-6],
			[-275e-5],
			[-0.0645],
			[-0.01384],
			[6717e-6],
			[7449e-6],
			[0.09715],
			[0.01173],
			[6717e-6],
			[8495e-6],
			[6717e-6],
			[0.07754],
			[6717e-6],
			[0.04237],
			[0.01287],
			[6717e-6],
			[0.0141],
			[0.05211]
		],
		[
			[25, 0.02909, 1, 1, 2],
			[66, 0.1047, 0, 3, 4],
			[41, 1.044, 0, 5, 6],
			[59, 20, 1, 7, 8],
			[59, 23, 1, 9, 10],
			[17, 21, 0, 11, 12],
			[93, 16.13, 0, 13, 14],
			[62, -0.01598, 1, 15, 16],
			[58, 18, 1, 17, 18],
			[45, 0.1927, 0, 19, 20],
			[41, 2.057, 0, 21, 22],
			[58, 6, 0, 23, 24],
			[21, 0.07907, 1, 25, 26],
			[29, -0.01227, 1, 27, 28],
			[67, 0.4061, 0, 29, 30],
			[69, 3.718, 0, 31, 32],
			[49, 0.9782, 0, 33, 34],
			[9, 0.634, 0, 35, 36],
			[49, 0.7765, 0, 37, 38],
			[59, 6, 0, 39, 40],
			[78, 4, 1, 41, 42],
			[33, 1.033, 1, 43, 44],
			[9, 0.7602, 0, 45, 46],
			[78, 15, 0, 47, 48],
			[9, 0.4923, 0, 49, 50],
			[30, 261, 0, 51, 52],
			[41, 0.8993, 0, 53, 54],
			[3, 194.5, 1, 55, 56],
			[66, -0.01867, 0, 57, 58],
			[10, -56.42, 0, 59, 60],
			[79, 1, 0, 61, 62],
			[1496e-6],
			[-0.01536],
			[0.0172],
			[1496e-6],
			[-8086e-6],
			[0.05905],
			[0.01177],
			[-0.01883],
			[-0.02106],
			[1738e-6],
			[-0.0397],
			[9965e-6],
			[-0.01416],
			[0.02741],
			[61e-4],
			[0.06049],
			[0.08067],
			[-0.01615],
			[0.01578],
			[-0.02688],
			[-0.05228],
			[-6146e-6],
			[-0.01382],
			[0.06951],
			[-0.0342],
			[0.01625],
			[2975e-6],
			[-0.04655],
			[-0.04161],
			[0.03043],
			[0.02412],
			[-0.04184]
		],
		[
			[25, 0.03804, 1, 1, 2],
			[8, 25.09, 0, 3, 4],
			[39, 1.07, 0, 5, 6],
			[20, 0.0348, 1, 7, 8],
			[9, 0.3989, 0, 9, 10],
			[59, 49, 1, 11, 12],
			[8, 83.62, 0, 13, 14],
			[78, 2, 1, 15, 16],
			[6, 81.2, 1, 17, 18],
			[2, 337.7, 0, 19, 20],
			[7, 38.21, 0, 21, 22],
			[22, 0.04376, 1, 23, 24],
			[2, -74.42, 1, 25, 26],
			[59, -3, 0, 27, 28],
			[67, 0.4061, 0, 29, 30],
			[2, 669.5, 0, 31, 32],
			[7, -53.77, 0, 33, 34],
			[87, 0.04692, 0, 35, 36],
			[25, -0.02353, 0, 37, 38],
			[27, 0.02565, 0, 39, 40],
			[59, 1, 0, 41, 42],
			[18, 46, 0, 43, 44],
			[9, 0.9769, 0, 45, 46],
			[19, -0.1725, 0, 47, 48],
			[37, 0.5932, 0, 49, 50],
			[-0.02164],
			[69, 8.706, 0, 51, 52],
			[-171e-6],
			[25, 0.142, 0, 53, 54],
			[87, 0.02273, 1, 55, 56],
			[55, 98, 0, 57, 58],
			[-3854e-6],
			[-2126e-6],
			[-2126e-6],
			[-0.03302],
			[-0.02739],
			[-2126e-6],
			[-0.0262],
			[-2126e-6],
			[-2126e-6],
			[0.0161],
			[0.0485],
			[-2126e-6],
			[0.05662],
			[-1061e-6],
			[5895e-6],
			[-2126e-6],
			[0.02006],
			[-0.04919],
			[0.03085],
			[-0.01887],
			[0.06125],
			[-0.01152],
			[-0.0283],
			[-171e-6],
			[7197e-6],
			[0.0488],
			[-171e-6],
			[0.02823]
		],
		[
			[35, 1.317, 1, 1, 2],
			[52, 0.1334, 0, 3, 4],
			[70, 0, 0, 5, 6],
			[34, 0.8992, 0, 7, 8],
			[25, 0.0533, 1, 9, 10],
			[59, 13, 1, 11, 12],
			[74, -0.0189, 0, 13, 14],
			[59, 28, 1, 15, 16],
			[72, 2, 0, 17, 18],
			[21, 0.02381, 1, 19, 20],
			[20, -0.1239, 1, 21, 22],
			[78, 4, 1, 23, 24],
			[17, 21, 0, 25, 26],
			[63, 0.04943, 0, 27, 28],
			[73, -10, 1, 29, 30],
			[52, -3.734, 0, 31, 32],
			[-0.02402],
			[39, 1.266, 0, 33, 34],
			[63, -0.05263, 0, 35, 36],
			[4, 32.53, 1, 37, 38],
			[60, 2, 0, 39, 40],
			[87, 0.02488, 1, 41, 42],
			[58, 54, 0, 43, 44],
			[56, 88.72, 0, 45, 46],
			[53, -2.778, 0, 47, 48],
			[56, 69.58, 0, 49, 50],
			[69, 6.552, 0, 51, 52],
			[93, 9.188, 0, 53, 54],
			[43, 2.717, 0, 55, 56],
			[69, 3.03, 0, 57, 58],
			[53, -6.268, 0, 59, 60],
			[-0.02206],
			[-975e-5],
			[-0.04856],
			[-0.01178],
			[-0.0266],
			[-975e-5],
			[-975e-5],
			[363e-5],
			[0.0152],
			[-975e-5],
			[0.04326],
			[-975e-5],
			[0.01695],
			[-975e-5],
			[-0.02081],
			[0.0159],
			[0.01058],
			[0.06957],
			[0.01495],
			[0.0589],
			[-6345e-6],
			[0.03536],
			[-0.01274],
			[-0.0557],
			[0.0485],
			[-0.01274],
			[6569e-6],
			[-0.03975],
			[-0.01049],
			[0.0276]
		],
		[
			[39, 1.082, 0, 1, 2],
			[25, 0.03804, 1, 3, 4],
			[55, 79, 1, 5, 6],
			[42, 0.9, 0, 7, 8],
			[75, 0.3025, 1, 9, 10],
			[67, -0.2071, 1, 11, 12],
			[26, -0.05588, 1, 13, 14],
			[41, 0.8844, 1, 15, 16],
			[47, 1.06, 1, 17, 18],
			[94, 17.42, 0, 19, 20],
			[94, 5.566, 0, 21, 22],
			[31, 0, 0, 23, 24],
			[93, 21.84, 0, 25, 26],
			[69, 5.858, 0, 27, 28],
			[49, 0.9619, 0, 29, 30],
			[8, 24.06, 0, 31, 32],
			[80, 1, 1, 33, 34],
			[38, 0.9381, 1, 35, 36],
			[25, 0.01526, 1, 37, 38],
			[58, 150, 0, 39, 40],
			[26, 0.04941, 0, 41, 42],
			[58, 66, 0, 43, 44],
			[38, 0.5466, 0, 45, 46],
			[60, 17, 0, 47, 48],
			[83, 230.4, 1, 49, 50],
			[75, 0.04533, 0, 51, 52],
			[45, 0.01626, 0, 53, 54],
			[25, -0.1048, 1, 55, 56],
			[8, 16.24, 0, 57, 58],
			[75, 0.1683, 0, 59, 60],
			[69, 9.758, 0, 61, 62],
			[-0.01053],
			[-2153e-6],
			[0.01041],
			[-0.01053],
			[-0.01053],
			[-0.04504],
			[-0.01053],
			[-0.01053],
			[-0.02023],
			[-0.05502],
			[0.03456],
			[-0.029],
			[6581e-6],
			[-0.02996],
			[-6297e-6],
			[0.1019],
			[0.075],
			[-0.01499],
			[-0.04093],
			[0.0119],
			[8002e-6],
			[-0.01423],
			[-4617e-6],
			[0.0275],
			[-0.02395],
			[0.02203],
			[-0.01378],
			[0.03868],
			[0.02293],
			[5028e-6],
			[1904e-6],
			[-0.04039]
		],
		[
			[7, 93.14, 1, 1, 2],
			[54, 91, 1, 3, 4],
			[3, 81.08, 0, 5, 6],
			[23, 0.04417, 0, 7, 8],
			[51, 0.1473, 0, 9, 10],
			[9, 0.8132, 0, 11, 12],
			[9, 0.4085, 0, 13, 14],
			[34, 0.9113, 0, 15, 16],
			[65, 0.377, 0, 17, 18],
			[41, 0.9595, 0, 19, 20],
			[27, 0, 0, 21, 22],
			[30, 186, 1, 23, 24],
			[82, 0.03992, 0, 25, 26],
			[38, 1.352, 1, 27, 28],
			[80, 2, 1, 29, 30],
			[38, 0.8018, 0, 31, 32],
			[38, 0.8228, 0, 33, 34],
			[82, -5696e-6, 0, 35, 36],
			[69, 6.866, 0, 37, 38],
			[91, 0.068, 0, 39, 40],
			[9, 0.9261, 0, 41, 42],
			[34, 0.5621, 1, 43, 44],
			[65, -0.044, 0, 45, 46],
			[0, 346.8, 0, 47, 48],
			[84, 7056e-6, 0, 49, 50],
			[69, 6.052, 0, 51, 52],
			[38, 3.8, 0, 53, 54],
			[19, -0.05959, 0, 55, 56],
			[26, -0.1065, 0, 57, 58],
			[59, 20, 1, 59, 60],
			[59, 23, 0, 61, 62],
			[-0.01424],
			[0.03175],
			[0.01626],
			[-0.02426],
			[0.02794],
			[704e-5],
			[-0.03725],
			[0.02734],
			[-0.02134],
			[0.03187],
			[-0.02294],
			[-0.06952],
			[-0.01834],
			[0.0755],
			[-0.04273],
			[3675e-6],
			[-0.052],
			[0.03069],
			[-0.05818],
			[4607e-6],
			[0.05456],
			[-6262e-6],
			[-0.02953],
			[0.0339],
			[6068e-6],
			[-0.04773],
			[0.06427],
			[1522e-6],
			[6884e-6],
			[-5417e-6],
			[-0.03561],
			[-7977e-6]
		],
		[
			[17, 13, 0, 1, 2],
			[17, 3, 0, 3, 4],
			[46, 0.9031, 0, 5, 6],
			[33, 7463e-6, 1, 7, 8],
			[16, 4, 0, 9, 10],
			[13, 0.03145, 0, 11, 12],
			[72, 2, 0, 13, 14],
			[88, 7843e-6, 0, 15, 16],
			[75, 0.04533, 0, 17, 18],
			[32, 3.627, 1, 19, 20],
			[32, 0.8478, 0, 21, 22],
			[25, 0.0533, 0, 23, 24],
			[34, 0, 0, 25, 26],
			[34, 0.5621, 0, 27, 28],
			[55, 87, 0, 29, 30],
			[81, -0.03976, 1, 31, 32],
			[60, 68, 0, 33, 34],
			[25, -0.06543, 1, 35, 36],
			[88, 4674e-6, 0, 37, 38],
			[2, 196.5, 1, 39, 40],
			[29, 6377e-6, 0, 41, 42],
			[34, 0.6482, 0, 43, 44],
			[34, 1.257, 1, 45, 46],
			[17, 58, 0, 47, 48],
			[69, 4.726, 0, 49, 50],
			[27, -0.0372, 0, 51, 52],
			[81, -0.1334, 1, 53, 54],
			[88, 0.01277, 1, 55, 56],
			[69, 7.784, 0, 57, 58],
			[33, 0.8571, 0, 59, 60],
			[-0.03167],
			[0.05673],
			[-0.0238],
			[0.01139],
			[-0.02463],
			[-252e-5],
			[-0.04014],
			[0.02047],
			[-813e-5],
			[-8884e-6],
			[-0.04743],
			[0.03703],
			[-0.02041],
			[-5781e-7],
			[0.03871],
			[3038e-6],
			[0.04117],
			[-196e-5],
			[9415e-6],
			[1371e-6],
			[-2535e-6],
			[-7745e-6],
			[-2535e-6],
			[-7745e-6],
			[-2535e-6],
			[-7745e-6],
			[-0.0118],
			[-0.01442],
			[-0.03881],
			[-0.01771],
			[-7745e-6]
		],
		[
			[0, -27.06, 0, 1, 2],
			[3, -107.4, 0, 3, 4],
			[9, 0.4085, 0, 5, 6],
			[73, -20, 0, 7, 8],
			[61, -0.02807, 0, 9, 10],
			[76, 0.02556, 0, 11, 12],
			[23, 0.04417, 0, 13, 14],
			[54, 53, 1, 15, 16],
			[1, 105, 0, 17, 18],
			[26, 0.01695, 1, 19, 20],
			[24, 0.02083, 1, 21, 22],
			[38, 1.2, 1, 23, 24],
			[94, 9.929, 0, 25, 26],
			[76, 0.1112, 1, 27, 28],
			[78, 2, 0, 29, 30],
			[17, 21, 0, 31, 32],
			[73, -41, 0, 33, 34],
			[26, 0.02782, 0, 35, 36],
			[94, 15.09, 0, 37, 38],
			[73, 32, 1, 39, 40],
			[24, -0.07587, 0, 41, 42],
			[38, 3.095, 1, 43, 44],
			[0.1311],
			[17, 4, 0, 45, 46],
			[17, 44, 0, 47, 48],
			[76, 0.3577, 0, 49, 50],
			[79, 8, 1, 51, 52],
			[19, 0.03943, 1, 53, 54],
			[94, 9.346, 0, 55, 56],
			[24, 7303e-6, 0, 57, 58],
			[78, 7, 0, 59, 60],
			[-0.03244],
			[0.02308],
			[-7039e-6],
			[0.09965],
			[-0.01028],
			[0.05909],
			[-0.0315],
			[0.0134],
			[-0.0235],
			[0.01783],
			[-0.01898],
			[0.01783],
			[0.03845],
			[0.01783],
			[6965e-6],
			[-0.05825],
			[-0.03156],
			[0.03664],
			[-0.03421],
			[0.03286],
			[0.05878],
			[-0.03295],
			[-0.03138],
			[0.05176],
			[-6091e-7],
			[0.04697],
			[0.01157],
			[-0.03118],
			[0.02381],
			[4449e-7]
		],
		[
			[7, 93.14, 1, 1, 2],
			[24, -8639e-6, 1, 3, 4],
			[59, 8, 0, 5, 6],
			[25, 0.01311, 0, 7, 8],
			[61, -0.0122, 0, 9, 10],
			[59, -3, 0, 11, 12],
			[73, -5, 0, 13, 14],
			[73, -14, 1, 15, 16],
			[59, -1, 0, 17, 18],
			[30, 196, 1, 19, 20],
			[11, 1, 0, 21, 22],
			[82, -0.03262, 1, 23, 24],
			[12, 7.044, 0, 25, 26],
			[29, 0.1034, 0, 27, 28],
			[59, 20, 0, 29, 30],
			[2, 259.9, 0, 31, 32],
			[58, 90, 1, 33, 34],
			[16, 24, 0, 35, 36],
			[88, 9912e-7, 0, 37, 38],
			[34, 1.773, 1, 39, 40],
			[88, 0.0507, 0, 41, 42],
			[16, 34, 0, 43, 44],
			[78, 3, 0, 45, 46],
			[54, 89, 1, 47, 48],
			[7, 133.8, 0, 49, 50],
			[61, -0.01289, 0, 51, 52],
			[21, -0.04574, 1, 53, 54],
			[24, 0.01507, 1, 55, 56],
			[75, 817e-5, 0, 57, 58],
			[37, 1.118, 1, 59, 60],
			[58, -6, 0, 61, 62],
			[0.01152],
			[0.05735],
			[-8402e-6],
			[0.02428],
			[-0.01196],
			[0.05952],
			[0.02718],
			[-0.03876],
			[-0.01454],
			[8975e-6],
			[8975e-6],
			[8975e-6],
			[0.01411],
			[8975e-6],
			[8975e-6],
			[0.02767],
			[0.08674],
			[-8494e-6],
			[0.0272],
			[-0.03128],
			[-0.03103],
			[-0.01211],
			[-0.01211],
			[1233e-6],
			[6526e-6],
			[-0.01599],
			[0.01508],
			[-0.05183],
			[0.02321],
			[-4738e-6],
			[0.03023],
			[-8012e-6]
		],
		[
			[82, -0.07689, 0, 1, 2],
			[20, 0.04379, 0, 3, 4],
			[78, 3, 0, 5, 6],
			[51, 0.07532, 0, 7, 8],
			[27, -0.1319, 0, 9, 10],
			[27, -0.02701, 0, 11, 12],
			[78, 8, 0, 13, 14],
			[43, 0.928, 0, 15, 16],
			[75, 0.2359, 1, 17, 18],
			[54, 97, 1, 19, 20],
			[15, 1, 0, 21, 22],
			[55, 98, 0, 23, 24],
			[86, 0.01918, 0, 25, 26],
			[3, 27.52, 1, 27, 28],
			[75, 0.1849, 1, 29, 30],
			[78, 11, 0, 31, 32],
			[34, 1.257, 0, 33, 34],
			[4, 222.9, 0, 35, 36],
			[38, 1.352, 0, 37, 38],
			[82, -0.1867, 0, 39, 40],
			[0.02781],
			[54, 85, 0, 41, 42],
			[27, 0.06422, 0, 43, 44],
			[9, 0.5152, 0, 45, 46],
			[41, 0.9701, 0, 47, 48],
			[27, 0.06422, 1, 49, 50],
			[74, 0.02249, 0, 51, 52],
			[82, -0.0201, 0, 53, 54],
			[61, -0.05781, 0, 55, 56],
			[90, 0, 0, 57, 58],
			[34, 0.1261, 0, 59, 60],
			[0.05207],
			[0.01285],
			[-0.03076],
			[0.01285],
			[4142e-6],
			[-0.02658],
			[-6449e-6],
			[0.04241],
			[-2078e-8],
			[-0.04933],
			[0.104],
			[0.04466],
			[-0.03134],
			[0.02554],
			[-0.02727],
			[6653e-6],
			[1012e-6],
			[0.1065],
			[-0.05512],
			[0.01077],
			[-0.04123],
			[0.01882],
			[0.05556],
			[-0.03505],
			[-0.01033],
			[0.03199],
			[-2695e-6],
			[9722e-6],
			[0.01677],
			[-0.01587]
		],
		[
			[24, 0.2584, 1, 1, 2],
			[79, 5, 0, 3, 4],
			[25, 0.08815, 0, 5, 6],
			[17, 21, 0, 7, 8],
			[65, 0.199, 0, 9, 10],
			[74, -0.06363, 0, 11, 12],
			[29, -0.2214, 0, 13, 14],
			[62, 5483e-6, 1, 15, 16],
			[66, -0.2243, 0, 17, 18],
			[41, 0.8533, 0, 19, 20],
			[50, 1.151, 1, 21, 22],
			[50, 1.042, 1, 23, 24],
			[72, 2, 0, 25, 26],
			[84, 0.06017, 1, 27, 28],
			[29, 0.06042, 1, 29, 30],
			[88, 0.03886, 1, 31, 32],
			[50, 0.8816, 1, 33, 34],
			[53, -2.778, 0, 35, 36],
			[40, 0.4932, 0, 37, 38],
			[22, 0.1274, 1, 39, 40],
			[67, -0.012, 0, 41, 42],
			[22, 7302e-6, 0, 43, 44],
			[8, 49.57, 0, 45, 46],
			[-0.04568],
			[999e-5],
			[45, 0.1379, 1, 47, 48],
			[74, 0.03092, 0, 49, 50],
			[-0.02657],
			[86, 0.01918, 0, 51, 52],
			[74, -3409e-6, 0, 53, 54],
			[40, 2.112, 1, 55, 56],
			[2342e-6],
			[0.02793],
			[0.02793],
			[0.073],
			[-8836e-6],
			[0.07125],
			[-0.0434],
			[-2426e-6],
			[-0.01009],
			[0.01532],
			[-2649e-6],
			[7953e-6],
			[-3606e-6],
			[-0.03715],
			[-0.0283],
			[0.02323],
			[0.06934],
			[0.01106],
			[0.01379],
			[-0.03703],
			[0.01999],
			[0.09243],
			[8054e-6],
			[-0.04169],
			[-0.01521],
			[0.06674]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[58, 366, 0, 3, 4],
			[17, 13, 0, 5, 6],
			[73, -5, 0, 7, 8],
			[17, 1, 0, 9, 10],
			[17, 3, 0, 11, 12],
			[46, 0.9031, 0, 13, 14],
			[65, -0.5189, 0, 15, 16],
			[91, 0.068, 0, 17, 18],
			[66, 0.01867, 0, 19, 20],
			[82, 3693e-6, 0, 21, 22],
			[73, -1, 1, 23, 24],
			[16, 4, 0, 25, 26],
			[13, 0.03145, 0, 27, 28],
			[34, 0.6482, 0, 29, 30],
			[88, 0.01929, 1, 31, 32],
			[65, 0.2517, 0, 33, 34],
			[20, 5454e-6, 1, 35, 36],
			[19, -0.08777, 1, 37, 38],
			[94, 9.085, 0, 39, 40],
			[34, 0.6482, 0, 41, 42],
			[0.0169],
			[6, 627.9, 1, 43, 44],
			[94, 21.2, 0, 45, 46],
			[58, 132, 0, 47, 48],
			[32, 3.627, 1, 49, 50],
			[32, 0.8478, 0, 51, 52],
			[93, 5.905, 0, 53, 54],
			[82, 0.1317, 0, 55, 56],
			[73, 2, 0, 57, 58],
			[45, 0, 0, 59, 60],
			[-0.03512],
			[0.04765],
			[-0.04692],
			[0.02045],
			[-0.02499],
			[6313e-6],
			[-0.02059],
			[0.02574],
			[0.07507],
			[-9847e-7],
			[0.04176],
			[-0.04638],
			[-0.06099],
			[1546e-6],
			[2685e-6],
			[0.07717],
			[-0.03183],
			[7106e-6],
			[-0.02793],
			[0.01544],
			[0.03603],
			[0.01126],
			[-1698e-6],
			[4625e-6],
			[-1698e-6],
			[-6586e-6],
			[-6586e-6],
			[-0.01511],
			[-6586e-6],
			[-0.01916]
		],
		[
			[67, 0.01003, 1, 1, 2],
			[30, 246, 1, 3, 4],
			[68, 3657e-6, 0, 5, 6],
			[54, 100, 1, 7, 8],
			[73, -5, 1, 9, 10],
			[54, 75, 1, 11, 12],
			[78, 9, 0, 13, 14],
			[80, 1, 1, 15, 16],
			[75, 5825e-6, 1, 17, 18],
			[67, -0.01548, 0, 19, 20],
			[3, 294.9, 1, 21, 22],
			[25, 6613e-6, 1, 23, 24],
			[40, 0.9282, 1, 25, 26],
			[83, -69.06, 0, 27, 28],
			[51, 0.1768, 0, 29, 30],
			[78, 1, 0, 31, 32],
			[62, 0.01136, 1, 33, 34],
			[30, 118, 1, 35, 36],
			[78, 0, 0, 37, 38],
			[51, 0.1369, 0, 39, 40],
			[3, 59.75, 1, 41, 42],
			[67, -0.4987, 0, 43, 44],
			[41, 2.057, 0, 45, 46],
			[40, 1.22, 0, 47, 48],
			[84, 0.04613, 0, 49, 50],
			[71, 0, 0, 51, 52],
			[36, 2.566, 0, 53, 54],
			[84, 0.1097, 0, 55, 56],
			[75, 0.2359, 1, 57, 58],
			[4, 58.45, 0, 59, 60],
			[54, 53, 0, 61, 62],
			[0.04225],
			[-3456e-6],
			[-0.02755],
			[-0.0104],
			[-0.02833],
			[0.02996],
			[0.02414],
			[-0.04946],
			[1722e-7],
			[-0.04478],
			[-0.01724],
			[0.04387],
			[-0.03035],
			[0.02393],
			[-0.01853],
			[0.05145],
			[-0.04824],
			[-4546e-6],
			[-0.02328],
			[0.07341],
			[8245e-6],
			[-0.05094],
			[0.04815],
			[-0.01956],
			[-0.036],
			[-632e-6],
			[6972e-6],
			[0.03119],
			[-0.02469],
			[-5475e-6],
			[-0.02034],
			[0.0214]
		],
		[
			[96, 3, 0, 1, 2],
			[13, 0.02849, 0, 3, 4],
			[38, 0.9012, 1, 5, 6],
			[23, 0.1793, 1, 7, 8],
			[59, 10, 0, 9, 10],
			[75, 0.1371, 1, 11, 12],
			[55, 73, 0, 13, 14],
			[50, 0.5231, 1, 15, 16],
			[67, -0.09267, 0, 17, 18],
			[27, 0.1139, 1, 19, 20],
			[67, -0.03492, 1, 21, 22],
			[50, 1.007, 0, 23, 24],
			[67, 0.05911, 0, 25, 26],
			[29, -6122e-6, 0, 27, 28],
			[30, 196, 0, 29, 30],
			[59, 14, 1, 31, 32],
			[1, 313, 0, 33, 34],
			[67, -0.8403, 0, 35, 36],
			[50, 0.8156, 0, 37, 38],
			[17, 8, 0, 39, 40],
			[42, 0.5838, 1, 41, 42],
			[78, 2, 1, 43, 44],
			[4, 32.53, 0, 45, 46],
			[27, -0.08897, 0, 47, 48],
			[87, 0.01187, 0, 49, 50],
			[78, 3, 1, 51, 52],
			[40, 1, 1, 53, 54],
			[79, 7, 0, 55, 56],
			[59, 4, 0, 57, 58],
			[17, 47, 0, 59, 60],
			[40, 0.95, 0, 61, 62],
			[-2566e-6],
			[0.03508],
			[9472e-6],
			[-2566e-6],
			[-2566e-6],
			[0.02192],
			[753e-5],
			[-2566e-6],
			[-6299e-6],
			[-0.0319],
			[-2566e-6],
			[-2566e-6],
			[-0.02835],
			[-2566e-6],
			[-0.03623],
			[-2566e-6],
			[8835e-6],
			[-0.07812],
			[0.03472],
			[-0.02179],
			[0.06129],
			[-0.02946],
			[-0.03888],
			[595e-5],
			[8393e-6],
			[-0.04668],
			[-0.0158],
			[0.03857],
			[0.08427],
			[0.02966],
			[-0.03526],
			[0.01937]
		],
		[
			[85, 2, 0, 1, 2],
			[34, 0.9873, 0, 3, 4],
			[47, 0.9083, 1, 5, 6],
			[69, 4.952, 0, 7, 8],
			[35, 0.9286, 0, 9, 10],
			[34, 1.163, 0, 11, 12],
			[62, 0.02204, 0, 13, 14],
			[60, -4, 1, 15, 16],
			[13, 0.01734, 0, 17, 18],
			[1, 58.25, 0, 19, 20],
			[49, 0.9499, 0, 21, 22],
			[39, 1.183, 0, 23, 24],
			[42, 0, 0, 25, 26],
			[35, 0.5804, 0, 27, 28],
			[78, 14, 0, 29, 30],
			[55, 104, 1, 31, 32],
			[41, 1.515, 1, 33, 34],
			[3, 63.05, 1, 35, 36],
			[42, 0.6889, 0, 37, 38],
			[54, 84, 0, 39, 40],
			[54, 72, 0, 41, 42],
			[62, -0.0289, 0, 43, 44],
			[42, 0.9198, 1, 45, 46],
			[47, 0.7837, 1, 47, 48],
			[66, 0.0556, 0, 49, 50],
			[66, 0.0834, 0, 51, 52],
			[-0.05124],
			[39, 0.8077, 0, 53, 54],
			[3, 1.202, 1, 55, 56],
			[-5253e-6],
			[-0.0177],
			[-5253e-6],
			[0.03984],
			[5044e-6],
			[0.03378],
			[0.0184],
			[-1905e-6],
			[-5253e-6],
			[-5253e-6],
			[0.0144],
			[-5253e-6],
			[-4262e-6],
			[0.02531],
			[1206e-6],
			[0.01182],
			[1206e-6],
			[-5253e-6],
			[-5253e-6],
			[-0.01666],
			[-5253e-6],
			[-5253e-6],
			[-5253e-6],
			[-0.0202],
			[-0.03371],
			[-0.0177],
			[-0.0196],
			[-0.04714]
		],
		[
			[59, -3, 0, 1, 2],
			[22, 0.03293, 1, 3, 4],
			[21, 2882e-6, 1, 5, 6],
			[21, -0.3198, 0, 7, 8],
			[69, 2.688, 0, 9, 10],
			[6, 217.2, 0, 11, 12],
			[96, 2, 0, 13, 14],
			[0.0478],
			[47, 1.069, 1, 15, 16],
			[82, 8051e-6, 0, 17, 18],
			[76, -8807e-6, 0, 19, 20],
			[22, -0.05716, 0, 21, 22],
			[24, 0.02276, 0, 23, 24],
			[9, 0.9769, 0, 25, 26],
			[28, -0.07854, 1, 27, 28],
			[47, 0.8421, 0, 29, 30],
			[32, 1.321, 0, 31, 32],
			[57, -12, 0, 33, 34],
			[21, 0.03605, 0, 35, 36],
			[24, 5912e-6, 0, 37, 38],
			[6, 335.9, 0, 39, 40],
			[82, -0.1113, 0, 41, 42],
			[38, 0.1774, 0, 43, 44],
			[22, -0.9303, 0, 45, 46],
			[5, 266, 1, 47, 48],
			[59, 9, 1, 49, 50],
			[19, 0.08994, 0, 51, 52],
			[38, 1.304, 0, 53, 54],
			[51, 0.103, 0, 55, 56],
			[-4983e-6],
			[-0.04666],
			[0.04476],
			[-0.02025],
			[-0.01189],
			[0.04045],
			[-0.04021],
			[1026e-7],
			[0.01946],
			[-0.04039],
			[0.1223],
			[4711e-6],
			[0.01939],
			[-0.01447],
			[-0.01638],
			[8027e-6],
			[0.0435],
			[9502e-7],
			[-0.02895],
			[2976e-6],
			[-0.01262],
			[8083e-6],
			[-0.0394],
			[0.01966],
			[7103e-6],
			[0.06984],
			[0.02474],
			[-0.01464]
		],
		[
			[65, 0.199, 0, 1, 2],
			[55, 100, 1, 3, 4],
			[88, 0.02744, 0, 5, 6],
			[35, 1.317, 1, 7, 8],
			[76, 0.3577, 1, 9, 10],
			[55, 94, 0, 11, 12],
			[24, -0.01036, 0, 13, 14],
			[44, 6452e-6, 0, 15, 16],
			[24, 0.09672, 1, 17, 18],
			[63, 8901e-6, 0, 19, 20],
			[33, 0.9356, 0, 21, 22],
			[81, -0.0114, 0, 23, 24],
			[81, 3044e-6, 0, 25, 26],
			[47, 1, 1, 27, 28],
			[54, 95, 0, 29, 30],
			[34, 0.8395, 0, 31, 32],
			[23, 0.08248, 1, 33, 34],
			[94, 21.2, 0, 35, 36],
			[23, 0.165, 1, 37, 38],
			[19, 0.04986, 1, 39, 40],
			[27, -0.02339, 1, 41, 42],
			[69, 3.946, 0, 43, 44],
			[-0.01723],
			[24, 0.06025, 0, 45, 46],
			[55, 56, 0, 47, 48],
			[93, 19.67, 0, 49, 50],
			[88, 1626e-6, 0, 51, 52],
			[94, 9.346, 0, 53, 54],
			[93, 8.118, 0, 55, 56],
			[27, 0.01914, 1, 57, 58],
			[93, 9.403, 0, 59, 60],
			[-7859e-6],
			[-0.0223],
			[7847e-6],
			[-1796e-6],
			[4412e-6],
			[0.05683],
			[0.1117],
			[0.0159],
			[-0.04201],
			[-0.01666],
			[-0.01666],
			[0.0259],
			[-2347e-6],
			[0.07479],
			[-7055e-6],
			[0.06063],
			[0.04302],
			[-0.0286],
			[0.09353],
			[-0.02296],
			[0.06837],
			[-4489e-6],
			[-1937e-6],
			[0.05208],
			[0.0352],
			[-0.04439],
			[-0.04034],
			[8765e-6],
			[0.03733],
			[-0.02386]
		],
		[
			[70, 3, 0, 1, 2],
			[82, 0.3256, 1, 3, 4],
			[42, 0.88, 1, 5, 6],
			[51, 0.2134, 0, 7, 8],
			[-0.05445],
			[76, -6561e-6, 0, 9, 10],
			[7, 82.99, 0, 11, 12],
			[65, 0.199, 0, 13, 14],
			[1, 156.8, 0, 15, 16],
			[51, 0.06808, 0, 17, 18],
			[51, 0.2005, 0, 19, 20],
			[7, 46.75, 0, 21, 22],
			[74, 0.3879, 1, 23, 24],
			[67, 0.01003, 0, 25, 26],
			[59, 13, 1, 27, 28],
			[74, 0.05845, 0, 29, 30],
			[65, -0.1285, 0, 31, 32],
			[0.0199],
			[23, 0.08997, 0, 33, 34],
			[78, 13, 0, 35, 36],
			[78, 0, 1, 37, 38],
			[-0.02125],
			[84, 0.01024, 0, 39, 40],
			[82, -0.01749, 0, 41, 42],
			[7159e-6],
			[-3393e-6],
			[449e-5],
			[-0.03193],
			[4722e-6],
			[0.06653],
			[-0.02504],
			[-0.04526],
			[6369e-6],
			[8096e-6],
			[7159e-6],
			[0.01116],
			[0.06795],
			[7159e-6],
			[7159e-6],
			[-7492e-6],
			[7159e-6],
			[7159e-6],
			[-0.06924]
		],
		[
			[69, 2.5, 0, 1, 2],
			[82, 0.2039, 0, 3, 4],
			[54, 53, 1, 5, 6],
			[82, 0.03279, 0, 7, 8],
			[75, 0.03716, 0, 9, 10],
			[8, 109.1, 0, 11, 12],
			[20, 0.07871, 0, 13, 14],
			[88, 9859e-6, 0, 15, 16],
			[64, -0.04633, 0, 17, 18],
			[54, 63, 0, 19, 20],
			[22, 0.01077, 0, 21, 22],
			[75, 7397e-6, 0, 23, 24],
			[82, 0.3256, 0, 25, 26],
			[34, 1.257, 1, 27, 28],
			[75, 0.1371, 0, 29, 30],
			[25, -0.02021, 0, 31, 32],
			[34, 1.188, 1, 33, 34],
			[5, 303.3, 1, 35, 36],
			[22, 0.2103, 1, 37, 38],
			[66, 0.05933, 0, 39, 40],
			[8, 239.4, 0, 41, 42],
			[34, 1.019, 0, 43, 44],
			[4, 455.6, 0, 45, 46],
			[48, 2.08, 0, 47, 48],
			[22, 0.05568, 0, 49, 50],
			[61, -0.1943, 0, 51, 52],
			[84, 0.09576, 0, 53, 54],
			[88, 0.03886, 0, 55, 56],
			[23, 0.05253, 0, 57, 58],
			[88, 0.05485, 1, 59, 60],
			[66, -0.0834, 0, 61, 62],
			[0.02587],
			[-0.03283],
			[0.03074],
			[-0.01693],
			[-0.03074],
			[0.0542],
			[0.1318],
			[-0.01405],
			[0.08695],
			[-9513e-6],
			[-0.02899],
			[0.02212],
			[-0.02096],
			[0.05155],
			[-0.05169],
			[1236e-7],
			[-7921e-6],
			[-0.01769],
			[-0.01062],
			[-0.04509],
			[-7921e-6],
			[0.03989],
			[-7921e-6],
			[0.04067],
			[-4553e-6],
			[6087e-6],
			[-0.02111],
			[0.01409],
			[0.02854],
			[-0.02425],
			[9448e-6],
			[-0.03745]
		],
		[
			[82, 0.3256, 1, 1, 2],
			[4, 32.53, 0, 3, 4],
			[4, 18.36, 0, 5, 6],
			[59, 5, 1, 7, 8],
			[7, 154.9, 1, 9, 10],
			[59, 35, 0, 11, 12],
			[-0.0548],
			[16, 56, 0, 13, 14],
			[59, 20, 0, 15, 16],
			[27, 6658e-6, 1, 17, 18],
			[53, 5.029, 0, 19, 20],
			[-0.02537],
			[0.04491],
			[56, 57.59, 0, 21, 22],
			[65, 0.06239, 0, 23, 24],
			[45, 0.08667, 0, 25, 26],
			[63, 2796e-6, 0, 27, 28],
			[16, 0, 0, 29, 30],
			[66, -0.07467, 0, 31, 32],
			[75, 0.3025, 1, 33, 34],
			[56, 68.76, 0, 35, 36],
			[1515e-6],
			[-0.05497],
			[-0.02663],
			[0.03721],
			[0.05007],
			[-3976e-6],
			[-0.04582],
			[0.01173],
			[-0.01967],
			[7005e-6],
			[0.01064],
			[-9803e-6],
			[-7176e-6],
			[3938e-6],
			[3938e-6],
			[0.02704]
		],
		[
			[67, 0.7443, 0, 1, 2],
			[23, 0.5348, 0, 3, 4],
			[87, 1471e-6, 0, 5, 6],
			[5, 346.3, 1, 7, 8],
			[68, 8244e-6, 0, 9, 10],
			[36, 3.105, 0, 11, 12],
			[79, 2, 1, 13, 14],
			[20, 0.0348, 0, 15, 16],
			[52, 4.833, 0, 17, 18],
			[34, 0.6482, 1, 19, 20],
			[34, 0, 0, 21, 22],
			[0.0563],
			[-0.01766],
			[68, 0.01299, 0, 23, 24],
			[44, 2.481, 0, 25, 26],
			[62, -0.0904, 0, 27, 28],
			[13, 0.0153, 0, 29, 30],
			[67, 0.0185, 0, 31, 32],
			[20, -0.1239, 1, 33, 34],
			[1, 555.1, 0, 35, 36],
			[26, -1919e-6, 0, 37, 38],
			[20, -0.1328, 1, 39, 40],
			[67, -0.8403, 0, 41, 42],
			[73, 6, 0, 43, 44],
			[54, 93, 1, 45, 46],
			[-0.05698],
			[94, 7.779, 0, 47, 48],
			[-0.02197],
			[-4431e-8],
			[0.05337],
			[3345e-6],
			[-0.03106],
			[-7201e-6],
			[0.05026],
			[-4945e-6],
			[-0.06866],
			[118e-5],
			[-0.02141],
			[0.0284],
			[-0.02765],
			[0.03836],
			[-0.0173],
			[0.04814],
			[0.04568],
			[-0.02309],
			[-0.03817],
			[0.01377],
			[0.02137],
			[-0.01848]
		],
		[
			[28, 1451e-6, 1, 1, 2],
			[73, 24, 1, 3, 4],
			[68, 7932e-6, 0, 5, 6],
			[13, 0.01734, 0, 7, 8],
			[9, 0.3455, 0, 9, 10],
			[50, 0.5231, 0, 11, 12],
			[59, 28, 1, 13, 14],
			[23, 0.165, 0, 15, 16],
			[17, 12, 0, 17, 18],
			[23, -4713e-6, 0, 19, 20],
			[6, 122.2, 1, 21, 22],
			[3, 213.6, 1, 23, 24],
			[6, 158.5, 0, 25, 26],
			[83, -53.66, 1, 27, 28],
			[66, 0.2131, 0, 29, 30],
			[20, -0.05332, 1, 31, 32],
			[50, 0.698, 0, 33, 34],
			[67, -0.04392, 1, 35, 36],
			[87, 0.04046, 1, 37, 38],
			[86, 0.03316, 0, 39, 40],
			[66, -0.03367, 1, 41, 42],
			[2, 89.53, 0, 43, 44],
			[9, 0.6806, 0, 45, 46],
			[20, -0.1844, 1, 47, 48],
			[56, 79.59, 0, 49, 50],
			[32, 1.189, 0, 51, 52],
			[9, 0.7854, 0, 53, 54],
			[66, 0, 0, 55, 56],
			[93, 10.61, 0, 57, 58],
			[6, 195.7, 1, 59, 60],
			[86, 1147e-6, 0, 61, 62],
			[4091e-6],
			[0.02948],
			[0.02308],
			[4091e-6],
			[-7374e-6],
			[4091e-6],
			[-984e-5],
			[4091e-6],
			[-0.0394],
			[0.03166],
			[-6923e-6],
			[0.08832],
			[-9452e-6],
			[-0.04896],
			[-0.01748],
			[0.02052],
			[-6983e-6],
			[-0.05889],
			[-0.02739],
			[0.04451],
			[-5874e-6],
			[0.02719],
			[-0.02757],
			[1031e-6],
			[-6801e-7],
			[-0.02733],
			[-6801e-7],
			[0.0197],
			[-0.01772],
			[0.03796],
			[-1694e-6],
			[0.08382]
		],
		[
			[54, 86, 1, 1, 2],
			[7, 104.1, 0, 3, 4],
			[76, 0.2039, 0, 5, 6],
			[91, 0.2, 0, 7, 8],
			[1, 113.6, 0, 9, 10],
			[22, -0.01055, 0, 11, 12],
			[4, 118.3, 1, 13, 14],
			[42, 0.9615, 0, 15, 16],
			[93, 10.85, 0, 17, 18],
			[35, 0.8218, 0, 19, 20],
			[82, 6755e-6, 1, 21, 22],
			[1, 64.64, 0, 23, 24],
			[86, 0.02157, 0, 25, 26],
			[88, 0.0104, 0, 27, 28],
			[88, 7408e-6, 1, 29, 30],
			[67, -0.06042, 0, 31, 32],
			[49, 0.9675, 0, 33, 34],
			[83, 11.29, 1, 35, 36],
			[43, 1, 0, 37, 38],
			[54, 86, 0, 39, 40],
			[88, 6911e-6, 0, 41, 42],
			[45, 0.2647, 1, 43, 44],
			[82, 0.3256, 0, 45, 46],
			[76, 0.07534, 0, 47, 48],
			[46, 0.8457, 0, 49, 50],
			[76, 0.01364, 0, 51, 52],
			[93, 19.67, 0, 53, 54],
			[29, -0.01227, 0, 55, 56],
			[86, 3595e-6, 0, 57, 58],
			[26, -0.02381, 1, 59, 60],
			[22, -0.1079, 0, 61, 62],
			[4246e-6],
			[0.01704],
			[4246e-6],
			[-0.01786],
			[-0.03555],
			[0.03016],
			[0.01542],
			[-0.022],
			[-0.06577],
			[0.03251],
			[0.02099],
			[-0.024],
			[-461e-7],
			[-0.01873],
			[0.01592],
			[-0.0435],
			[-0.06008],
			[0.03299],
			[-3002e-6],
			[-0.02892],
			[5642e-6],
			[-0.02338],
			[-0.04368],
			[7711e-6],
			[0.05363],
			[-0.01965],
			[5704e-6],
			[-0.0433],
			[5177e-6],
			[0.1239],
			[-0.02016],
			[0.03986]
		],
		[
			[79, 5, 0, 1, 2],
			[32, 0.5971, 0, 3, 4],
			[20, -0.1145, 0, 5, 6],
			[3, 147.1, 1, 7, 8],
			[33, 1.153, 1, 9, 10],
			[9, 0.7854, 0, 11, 12],
			[7, -26.76, 0, 13, 14],
			[33, 2.259, 0, 15, 16],
			[33, 1.077, 0, 17, 18],
			[84, 0.2553, 0, 19, 20],
			[52, -13.35, 0, 21, 22],
			[59, 35, 0, 23, 24],
			[64, 3e-3, 0, 25, 26],
			[52, 1.079, 1, 27, 28],
			[76, 0.2416, 1, 29, 30],
			[55, 71, 1, 31, 32],
			[7, -213.3, 1, 33, 34],
			[20, 3367e-6, 0, 35, 36],
			[27, -2, 0, 37, 38],
			[95, 45.39, 0, 39, 40],
			[33, 1.019, 0, 41, 42],
			[33, 3.27, 0, 43, 44],
			[20, 0.02259, 1, 45, 46],
			[84, 0.03467, 1, 47, 48],
			[87, 0.03359, 0, 49, 50],
			[60, 53, 1, 51, 52],
			[87, 4996e-6, 0, 53, 54],
			[27, -0.0129, 0, 55, 56],
			[27, 0.03008, 0, 57, 58],
			[81, -6176e-6, 1, 59, 60],
			[60, 68, 1, 61, 62],
			[0.03882],
			[0.09425],
			[0.01624],
			[-0.03069],
			[0.0129],
			[-0.04431],
			[-0.01746],
			[0.05232],
			[-0.04017],
			[-3873e-6],
			[0.03963],
			[8108e-6],
			[4365e-6],
			[-0.04365],
			[0.05251],
			[4365e-6],
			[-0.04057],
			[-8938e-6],
			[0.04678],
			[-7873e-6],
			[0.01899],
			[-0.04603],
			[0.02992],
			[-0.03254],
			[0.02025],
			[-0.04722],
			[0.08545],
			[0.02025],
			[4052e-6],
			[-788e-5],
			[-0.03412],
			[0.027]
		],
		[
			[59, -3, 0, 1, 2],
			[34, 0.9658, 1, 3, 4],
			[28, -2, 0, 5, 6],
			[55, 86, 0, 7, 8],
			[60, 2, 0, 9, 10],
			[62, 9517e-6, 0, 11, 12],
			[17, 21, 0, 13, 14],
			[33, 1.114, 0, 15, 16],
			[34, 0.76, 0, 17, 18],
			[70, 0, 0, 19, 20],
			[62, -0.06599, 0, 21, 22],
			[33, 1.48, 1, 23, 24],
			[31, 0.8681, 0, 25, 26],
			[59, 1, 1, 27, 28],
			[46, 0.9031, 0, 29, 30],
			[31, 1.275, 0, 31, 32],
			[0.02085],
			[27, -0.1319, 0, 33, 34],
			[-0.02442],
			[31, 0.5969, 0, 35, 36],
			[8341e-7],
			[55, 61.5, 1, 37, 38],
			[0, 46.81, 0, 39, 40],
			[50, 1.76, 1, 41, 42],
			[32, 0.3527, 0, 43, 44],
			[19, 0.06555, 0, 45, 46],
			[3, 294.9, 0, 47, 48],
			[50, 1.022, 0, 49, 50],
			[54, 53, 0, 51, 52],
			[65, 0.2517, 0, 53, 54],
			[62, 0.01382, 1, 55, 56],
			[-0.04061],
			[0.01223],
			[9372e-6],
			[0.07462],
			[-3622e-6],
			[0.1306],
			[8052e-7],
			[-0.03996],
			[8052e-7],
			[0.05483],
			[-0.03546],
			[-5123e-6],
			[-0.01261],
			[-5123e-6],
			[0.05098],
			[-5123e-6],
			[-5123e-6],
			[0.04598],
			[-0.01814],
			[566e-5],
			[-0.0135],
			[0.01094],
			[2233e-6],
			[-7126e-6],
			[-0.01827],
			[-7126e-6]
		],
		[
			[50, 1.091, 0, 1, 2],
			[90, 0, 0, 3, 4],
			[21, -0.09952, 0, 5, 6],
			[50, 0.9226, 0, 7, 8],
			[20, -0.09545, 0, 9, 10],
			[18, 38, 0, 11, 12],
			[58, 36, 1, 13, 14],
			[88, 0.01403, 0, 15, 16],
			[69, 4.615, 0, 17, 18],
			[92, 1.232, 0, 19, 20],
			[80, 1, 1, 21, 22],
			[23, -0.1048, 0, 23, 24],
			[10, -145.4, 0, 25, 26],
			[13, 0.02208, 0, 27, 28],
			[29, -0.1357, 0, 29, 30],
			[55, 66, 1, 31, 32],
			[58, 90, 1, 33, 34],
			[30, 186, 1, 35, 36],
			[13, 0.01631, 0, 37, 38],
			[88, 0.01929, 1, 39, 40],
			[5, 71.64, 1, 41, 42],
			[23, 0.233, 0, 43, 44],
			[68, 0.01038, 0, 45, 46],
			[88, 0.02869, 1, 47, 48],
			[69, 5.858, 0, 49, 50],
			[9, 1.423, 0, 51, 52],
			[69, 5.254, 0, 53, 54],
			[10, -95.99, 0, 55, 56],
			[48, 0.6351, 1, 57, 58],
			[29, -0.4031, 0, 59, 60],
			[9, 0.3989, 0, 61, 62],
			[-0.01196],
			[0.01749],
			[-0.01583],
			[7694e-6],
			[-6817e-6],
			[0.02783],
			[-722e-5],
			[-0.02921],
			[-0.05294],
			[-0.01778],
			[0.01939],
			[-0.01537],
			[0.02664],
			[2336e-7],
			[-0.03719],
			[2336e-7],
			[0.08246],
			[-6129e-6],
			[8738e-6],
			[-0.02177],
			[-0.058],
			[8073e-6],
			[-0.03805],
			[0.01185],
			[0.02012],
			[0.04127],
			[0.02012],
			[-7436e-6],
			[8207e-7],
			[-0.02946],
			[-0.0265],
			[0.01055]
		],
		[
			[96, 3, 0, 1, 2],
			[30, 135, 0, 3, 4],
			[50, 1.091, 1, 5, 6],
			[91, 0.12, 0, 7, 8],
			[55, 100, 1, 9, 10],
			[55, 88, 1, 11, 12],
			[9, 0.4172, 0, 13, 14],
			[93, 14.94, 0, 15, 16],
			[60, 17, 1, 17, 18],
			[50, 0.8941, 1, 19, 20],
			[88, 2662e-6, 0, 21, 22],
			[91, 0.168, 0, 23, 24],
			[55, 100, 0, 25, 26],
			[75, 0.1683, 0, 27, 28],
			[69, 7.296, 0, 29, 30],
			[96, 0, 0, 31, 32],
			[75, 0.01219, 0, 33, 34],
			[60, 4, 0, 35, 36],
			[75, 0.145, 1, 37, 38],
			[9, 0.869, 0, 39, 40],
			[72, 2, 0, 41, 42],
			[60, 8, 0, 43, 44],
			[55, 112, 0, 45, 46],
			[64, -0.01233, 0, 47, 48],
			[60, 4, 0, 49, 50],
			[87, 0.03795, 0, 51, 52],
			[89, 16.23, 0, 53, 54],
			[-0.03927],
			[83, -118.4, 0, 55, 56],
			[29, 0.1253, 0, 57, 58],
			[64, -0.0834, 0, 59, 60],
			[-0.0304],
			[-3248e-6],
			[0.02262],
			[1014e-6],
			[-9487e-6],
			[-0.04651],
			[-0.02284],
			[0.03392],
			[9046e-7],
			[0.01944],
			[-2839e-6],
			[0.04223],
			[-0.01772],
			[0.04885],
			[-0.04359],
			[6774e-6],
			[-0.05579],
			[-6841e-7],
			[-0.02655],
			[0.04304],
			[0.0681],
			[-5627e-6],
			[-0.02747],
			[2263e-6],
			[-0.02264],
			[0.04535],
			[0.08661],
			[-8555e-6],
			[0.04932],
			[-0.04555]
		],
		[
			[19, 0.04986, 0, 1, 2],
			[93, 5.905, 0, 3, 4],
			[19, 0.1533, 1, 5, 6],
			[28, -0.02394, 1, 7, 8],
			[74, 2148e-7, 0, 9, 10],
			[54, 89, 0, 11, 12],
			[74, 0.04986, 1, 13, 14],
			[69, 7.9, 0, 15, 16],
			[76, 0.1323, 1, 17, 18],
			[54, 66, 0, 19, 20],
			[56, 93.5, 0, 21, 22],
			[30, 219, 1, 23, 24],
			[67, -0.04392, 1, 25, 26],
			[41, 0.7692, 1, 27, 28],
			[66, 0.2383, 0, 29, 30],
			[68, 0.01205, 0, 31, 32],
			[4, 222.9, 0, 33, 34],
			[82, -5696e-6, 0, 35, 36],
			[87, 2447e-6, 0, 37, 38],
			[19, -0.3607, 0, 39, 40],
			[23, 0.3163, 1, 41, 42],
			[3, -107.4, 0, 43, 44],
			[6, 335.9, 0, 45, 46],
			[76, 0.1515, 0, 47, 48],
			[31, 1.183, 0, 49, 50],
			[52, 7.009, 1, 51, 52],
			[93, 7.687, 0, 53, 54],
			[4, 78.14, 0, 55, 56],
			[52, 2.875, 0, 57, 58],
			[76, 0.3952, 0, 59, 60],
			[0.02641],
			[-0.01343],
			[0.03368],
			[0.04247],
			[-0.02741],
			[-0.01703],
			[-0.05097],
			[0.03246],
			[-0.01651],
			[-0.0294],
			[0.01546],
			[-4142e-6],
			[-0.02506],
			[-0.01495],
			[6563e-6],
			[-4398e-7],
			[-0.03478],
			[0.03544],
			[-7887e-6],
			[-0.0385],
			[8791e-6],
			[-0.0523],
			[0.03588],
			[0.02029],
			[-9187e-6],
			[0.01202],
			[-0.04848],
			[-4095e-6],
			[0.04269],
			[-0.06129],
			[286e-5]
		],
		[
			[21, 2882e-6, 1, 1, 2],
			[24, 0.06945, 0, 3, 4],
			[9, 0.9536, 0, 5, 6],
			[25, 0.08815, 0, 7, 8],
			[74, 0.04266, 1, 9, 10],
			[90, 0, 0, 11, 12],
			[19, 0.08994, 1, 13, 14],
			[20, -0.1052, 0, 15, 16],
			[88, 8331e-6, 0, 17, 18],
			[7, 154.9, 0, 19, 20],
			[74, 0.3113, 0, 21, 22],
			[8, 77.16, 0, 23, 24],
			[22, -0.02778, 0, 25, 26],
			[30, 193, 1, 27, 28],
			[32, 1.01, 0, 29, 30],
			[9, 0.7854, 0, 31, 32],
			[9, 0.9769, 0, 33, 34],
			[19, -0.1233, 0, 35, 36],
			[87, 0.01719, 0, 37, 38],
			[25, 0.02909, 0, 39, 40],
			[30, 142, 1, 41, 42],
			[69, 5.858, 0, 43, 44],
			[24, 0.1178, 1, 45, 46],
			[62, -0.01042, 0, 47, 48],
			[87, 5373e-6, 1, 49, 50],
			[20, -0.03614, 0, 51, 52],
			[7, 334.9, 1, 53, 54],
			[20, 1054e-6, 0, 55, 56],
			[0, 346.8, 0, 57, 58],
			[-0.02452],
			[88, 4674e-6, 0, 59, 60],
			[-0.01475],
			[9026e-6],
			[958e-5],
			[-5035e-6],
			[0.1042],
			[0.03662],
			[0.02969],
			[-0.02007],
			[0.04316],
			[-0.02577],
			[0.01129],
			[-0.02018],
			[-0.04889],
			[-2301e-6],
			[-0.02555],
			[0.03259],
			[-0.03164],
			[-6098e-6],
			[-5433e-6],
			[0.01143],
			[0.1175],
			[0.01409],
			[0.01841],
			[-0.01141],
			[-0.05172],
			[7515e-6],
			[-0.0171],
			[0.06711],
			[5121e-6],
			[0.06249]
		],
		[
			[51, 0.1627, 0, 1, 2],
			[41, 0.8844, 0, 3, 4],
			[72, 1, 0, 5, 6],
			[79, 5, 0, 7, 8],
			[43, 0.872, 0, 9, 10],
			[5, 192.4, 1, 11, 12],
			[87, 0.01493, 0, 13, 14],
			[55, 84, 0, 15, 16],
			[50, 0.8941, 1, 17, 18],
			[25, 0.0533, 1, 19, 20],
			[55, 53, 0, 21, 22],
			[55, 87, 1, 23, 24],
			[87, 0.07315, 1, 25, 26],
			[87, 9571e-6, 0, 27, 28],
			[3, 412.3, 1, 29, 30],
			[8, 26.09, 0, 31, 32],
			[35, 1.103, 1, 33, 34],
			[55, 90, 1, 35, 36],
			[64, 0.02667, 1, 37, 38],
			[51, 0.06808, 0, 39, 40],
			[87, 7069e-6, 0, 41, 42],
			[27, -0.01502, 1, 43, 44],
			[51, 0.0858, 0, 45, 46],
			[8, 25.09, 0, 47, 48],
			[13, 0.03145, 0, 49, 50],
			[24, 0.03844, 0, 51, 52],
			[5, 236.8, 0, 53, 54],
			[5, -65.5, 0, 55, 56],
			[7, 98.34, 0, 57, 58],
			[3, -148.7, 0, 59, 60],
			[54, 84, 0, 61, 62],
			[-8418e-6],
			[0.03815],
			[-0.02963],
			[0.0524],
			[-4625e-6],
			[0.03536],
			[-7389e-6],
			[-0.02747],
			[0.03543],
			[5407e-6],
			[0.02184],
			[1857e-6],
			[-0.01053],
			[1857e-6],
			[-0.01422],
			[-2962e-7],
			[-0.01912],
			[0.01579],
			[0.0582],
			[-0.01077],
			[6816e-6],
			[-0.0236],
			[-0.0351],
			[0.0591],
			[0.04418],
			[-0.03164],
			[-7482e-6],
			[0.09302],
			[-6215e-7],
			[-0.0523],
			[-0.0207],
			[0.03616]
		],
		[
			[51, 0.2005, 0, 1, 2],
			[74, 2148e-7, 1, 3, 4],
			[20, -0.1239, 1, 5, 6],
			[90, 0, 0, 7, 8],
			[56, 93.5, 0, 9, 10],
			[56, 79.02, 0, 11, 12],
			[55, 69, 1, 13, 14],
			[56, 55.83, 0, 15, 16],
			[18, 57, 1, 17, 18],
			[54, 62, 0, 19, 20],
			[51, 0.08385, 0, 21, 22],
			[81, -2165e-6, 1, 23, 24],
			[34, 2.087, 1, 25, 26],
			[76, -6561e-6, 1, 27, 28],
			[3, 177.2, 0, 29, 30],
			[68, 0.01163, 0, 31, 32],
			[76, -0.0852, 0, 33, 34],
			[68, 7634e-6, 0, 35, 36],
			[59, 16, 0, 37, 38],
			[59, 28, 1, 39, 40],
			[59, 49, 1, 41, 42],
			[6, 241.7, 0, 43, 44],
			[54, 83, 0, 45, 46],
			[87, 0.1451, 1, 47, 48],
			[56, 51.27, 0, 49, 50],
			[92, 3.742, 0, 51, 52],
			[42, 3.865, 0, 53, 54],
			[45, 0.2232, 0, 55, 56],
			[55, 53, 1, 57, 58],
			[68, 5411e-6, 0, 59, 60],
			[22, -7428e-6, 0, 61, 62],
			[-0.01305],
			[0.02758],
			[7827e-7],
			[-0.01495],
			[9517e-6],
			[-0.0179],
			[0.03546],
			[-8977e-6],
			[-0.01312],
			[0.02709],
			[5185e-6],
			[0.03804],
			[-0.0251],
			[-0.0694],
			[0.03041],
			[-0.0121],
			[-0.0498],
			[0.02901],
			[-0.02729],
			[0.05328],
			[-0.04689],
			[0.02188],
			[0.0819],
			[-8996e-6],
			[0.0479],
			[-0.0227],
			[-0.05114],
			[-5963e-6],
			[6568e-6],
			[0.07051],
			[-0.03442],
			[0.02569]
		],
		[
			[7, 93.14, 1, 1, 2],
			[25, 0.01735, 0, 3, 4],
			[59, 9, 0, 5, 6],
			[25, 0, 0, 7, 8],
			[6, 78.07, 1, 9, 10],
			[91, 0.12, 0, 11, 12],
			[50, 0.75, 0, 13, 14],
			[23, 0.04417, 0, 15, 16],
			[94, 9.929, 0, 17, 18],
			[94, 2.884, 0, 19, 20],
			[73, -4, 0, 21, 22],
			[92, 3.397, 0, 23, 24],
			[9, 0.3455, 0, 25, 26],
			[35, 0.3865, 1, 27, 28],
			[72, 2, 0, 29, 30],
			[42, 0.7604, 1, 31, 32],
			[94, 5.566, 0, 33, 34],
			[50, 0.8156, 0, 35, 36],
			[81, 7158e-6, 0, 37, 38],
			[37, 3.581, 0, 39, 40],
			[83, 16.29, 1, 41, 42],
			[88, 0.0134, 0, 43, 44],
			[76, 0.4444, 0, 45, 46],
			[80, 1, 0, 47, 48],
			[9, 0.4085, 0, 49, 50],
			[64, -0.07467, 0, 51, 52],
			[68, 6173e-6, 0, 53, 54],
			[92, 1.627, 0, 55, 56],
			[69, 3.83, 0, 57, 58],
			[59, 20, 1, 59, 60],
			[73, -4, 1, 61, 62],
			[2043e-6],
			[-0.02511],
			[0.01669],
			[5437e-7],
			[0.037],
			[14e-4],
			[-6459e-6],
			[0.08989],
			[0.02961],
			[-0.04281],
			[-0.05077],
			[-7475e-6],
			[5647e-6],
			[-0.04142],
			[0.01653],
			[-0.03225],
			[-0.01238],
			[-0.03753],
			[-0.01238],
			[4498e-6],
			[0.1037],
			[-0.02341],
			[-0.05979],
			[-0.01598],
			[-0.05838],
			[-7482e-6],
			[-5401e-6],
			[0.02826],
			[4409e-6],
			[-0.01213],
			[-0.01071],
			[0.06023]
		],
		[
			[24, 0.2584, 1, 1, 2],
			[62, -0.0904, 1, 3, 4],
			[73, 24, 1, 5, 6],
			[21, 0.04968, 1, 7, 8],
			[69, 2.5, 0, 9, 10],
			[34, 1.019, 0, 11, 12],
			[34, 0, 0, 13, 14],
			[31, 1.444, 0, 15, 16],
			[4, 409.3, 0, 17, 18],
			[81, 0.01874, 1, 19, 20],
			[4, 32.53, 1, 21, 22],
			[41, 1.2, 1, 23, 24],
			[3, 537.9, 1, 25, 26],
			[21, -0.3198, 1, 27, 28],
			[37, 0.1838, 0, 29, 30],
			[20, 0.0348, 1, 31, 32],
			[21, -0.07696, 0, 33, 34],
			[96, 0, 0, 35, 36],
			[69, 3.946, 0, 37, 38],
			[93, 18.94, 0, 39, 40],
			[34, 1.163, 1, 41, 42],
			[34, 2.087, 1, 43, 44],
			[33, 1.132, 0, 45, 46],
			[16, 34, 0, 47, 48],
			[75, 0.02524, 1, 49, 50],
			[70, 0, 0, 51, 52],
			[20, -3974e-6, 0, 53, 54],
			[-0.0284],
			[0.06114],
			[-1955e-6],
			[-0.05531],
			[-0.03462],
			[-7366e-6],
			[-7366e-6],
			[-0.01132],
			[-0.02377],
			[-7366e-6],
			[-0.05336],
			[-7366e-6],
			[-7366e-6],
			[0.01993],
			[0.08011],
			[-4551e-6],
			[-7366e-6],
			[0.01648],
			[-2287e-6],
			[6523e-6],
			[-0.04574],
			[0.01485],
			[0.06555],
			[-5e-3],
			[0.08036],
			[7069e-6],
			[0.02598],
			[-0.02546]
		],
		[
			[28, -2842e-7, 1, 1, 2],
			[84, 5042e-6, 0, 3, 4],
			[68, 6173e-6, 0, 5, 6],
			[21, -0.01331, 0, 7, 8],
			[55, 96, 1, 9, 10],
			[7, 154.9, 0, 11, 12],
			[30, 202, 1, 13, 14],
			[40, 1.84, 0, 15, 16],
			[59, 35, 0, 17, 18],
			[47, 1.019, 0, 19, 20],
			[40, 1.84, 1, 21, 22],
			[4, 60.52, 1, 23, 24],
			[12, 17.06, 0, 25, 26],
			[18, 46, 0, 27, 28],
			[58, 48, 0, 29, 30],
			[76, -0.0113, 0, 31, 32],
			[7, 98.34, 0, 33, 34],
			[59, 10, 0, 35, 36],
			[36, 0.9807, 0, 37, 38],
			[43, 0.782, 0, 39, 40],
			[30, 85, 0, 41, 42],
			[3, 213.6, 1, 43, 44],
			[25, 8055e-6, 1, 45, 46],
			[88, 554e-5, 0, 47, 48],
			[88, 0.06911, 0, 49, 50],
			[59, 9, 1, 51, 52],
			[28, 268e-5, 0, 53, 54],
			[75, 0.3025, 1, 55, 56],
			[58, 234, 0, 57, 58],
			[88, 0.03886, 0, 59, 60],
			[25, 0.0533, 0, 61, 62],
			[-2568e-6],
			[-2568e-6],
			[-2568e-6],
			[-0.03884],
			[-0.02068],
			[-2568e-6],
			[-0.02076],
			[-0.06375],
			[7573e-6],
			[-2568e-6],
			[-2568e-6],
			[0.01495],
			[-2568e-6],
			[-2568e-6],
			[-2568e-6],
			[0.03678],
			[0.01972],
			[-0.03662],
			[-6449e-7],
			[0.05071],
			[-0.05592],
			[-0.02526],
			[0.03717],
			[-0.01784],
			[-1556e-6],
			[0.02354],
			[-0.02187],
			[0.036],
			[-9696e-6],
			[0.02968],
			[0.02847],
			[-0.02086]
		],
		[
			[40, 1.041, 1, 1, 2],
			[43, 0.7647, 0, 3, 4],
			[93, 5.905, 0, 5, 6],
			[41, 0.6988, 1, 7, 8],
			[72, 2, 0, 9, 10],
			[81, -6176e-6, 1, 11, 12],
			[65, 0.3243, 0, 13, 14],
			[79, 7, 0, 15, 16],
			[25, 6613e-6, 1, 17, 18],
			[94, 1.133, 0, 19, 20],
			[27, 0, 1, 21, 22],
			[47, 0.92, 0, 23, 24],
			[33, 1.764, 0, 25, 26],
			[25, 0.142, 0, 27, 28],
			[88, 0.03138, 1, 29, 30],
			[81, -9034e-6, 0, 31, 32],
			[51, 0.2134, 0, 33, 34],
			[55, 67, 0, 35, 36],
			[6, 60.37, 0, 37, 38],
			[55, 76, 1, 39, 40],
			[92, 7.141, 0, 41, 42],
			[92, 4.495, 0, 43, 44],
			[13, 0.03672, 0, 45, 46],
			[88, 0.05485, 0, 47, 48],
			[33, 1.019, 0, 49, 50],
			[47, 1.143, 1, 51, 52],
			[2, 179.8, 0, 53, 54],
			[17, 1, 0, 55, 56],
			[19, -2, 0, 57, 58],
			[55, 98, 1, 59, 60],
			[31, 0.5556, 0, 61, 62],
			[-2962e-6],
			[0.02702],
			[-2962e-6],
			[0.03014],
			[-2962e-6],
			[0.02186],
			[-2962e-6],
			[1403e-6],
			[-0.0149],
			[-2962e-6],
			[-0.02029],
			[-3561e-6],
			[-0.02981],
			[-2962e-6],
			[-2962e-6],
			[-4766e-6],
			[-0.04575],
			[0.02809],
			[0.04651],
			[-0.01176],
			[-0.05817],
			[-4864e-6],
			[-0.01981],
			[0.03262],
			[-0.01877],
			[6298e-6],
			[-0.01651],
			[0.06686],
			[-0.0124],
			[0.03491],
			[-0.02117],
			[-0.07003]
		],
		[
			[59, -3, 0, 1, 2],
			[22, 0.03293, 1, 3, 4],
			[96, 3, 0, 5, 6],
			[35, 0.6452, 0, 7, 8],
			[68, 0.02706, 0, 9, 10],
			[25, 0.03285, 1, 11, 12],
			[20, -0.1448, 0, 13, 14],
			[89, -31.59, 0, 15, 16],
			[29, -0.1162, 0, 17, 18],
			[58, 114, 0, 19, 20],
			[19, -1545e-6, 0, 21, 22],
			[80, 2, 1, 23, 24],
			[75, 0.01111, 0, 25, 26],
			[58, -222, 0, 27, 28],
			[76, 7654e-6, 0, 29, 30],
			[-0.01055],
			[0.05386],
			[0.01786],
			[32, 0.5971, 0, 31, 32],
			[72, 3, 0, 33, 34],
			[19, -0.1152, 0, 35, 36],
			[-0.03114],
			[613e-5],
			[63, -0.05882, 1, 37, 38],
			[75, 0.2359, 0, 39, 40],
			[68, 4902e-6, 0, 41, 42],
			[17, 21, 0, 43, 44],
			[39, 2.881, 1, 45, 46],
			[74, 0.02249, 1, 47, 48],
			[25, -0.06543, 0, 49, 50],
			[76, 0.1644, 0, 51, 52],
			[387e-5],
			[-0.049],
			[0.1045],
			[-0.01936],
			[0.043],
			[-0.03505],
			[-6448e-6],
			[1795e-6],
			[-0.03443],
			[-6448e-6],
			[-0.07273],
			[-0.02272],
			[9968e-6],
			[-0.01315],
			[-0.03177],
			[0.01729],
			[-0.01731],
			[0.06552],
			[-0.02119],
			[0.03291],
			[-0.06156],
			[0.01271]
		],
		[
			[61, -0.08894, 0, 1, 2],
			[59, 35, 0, 3, 4],
			[74, 2148e-7, 1, 5, 6],
			[87, 0.04692, 0, 7, 8],
			[87, 0.01127, 0, 9, 10],
			[90, 0, 0, 11, 12],
			[93, 5.905, 0, 13, 14],
			[10, 147.4, 0, 15, 16],
			[9, 0.717, 0, 17, 18],
			[17, 16, 0, 19, 20],
			[29, -0.08653, 0, 21, 22],
			[51, 0.1914, 0, 23, 24],
			[67, -0.03938, 1, 25, 26],
			[73, 2, 0, 27, 28],
			[10, -145.4, 0, 29, 30],
			[64, 0.242, 1, 31, 32],
			[23, 0.233, 1, 33, 34],
			[9, 0.6478, 0, 35, 36],
			[74, 0.2623, 0, 37, 38],
			[87, 4996e-6, 0, 39, 40],
			[74, 0.01373, 1, 41, 42],
			[74, 0.02249, 1, 43, 44],
			[64, -0.336, 1, 45, 46],
			[67, 0.1014, 0, 47, 48],
			[9, 0.6981, 0, 49, 50],
			[74, -0.03785, 1, 51, 52],
			[9, 0.3989, 0, 53, 54],
			[87, 0.02488, 1, 55, 56],
			[88, 9912e-7, 0, 57, 58],
			[78, 0, 0, 59, 60],
			[29, 0.1615, 1, 61, 62],
			[-0.03658],
			[-4176e-6],
			[-4176e-6],
			[-0.01499],
			[-4176e-6],
			[-4176e-6],
			[-0.03822],
			[-4176e-6],
			[-4176e-6],
			[-4176e-6],
			[-0.03437],
			[-4176e-6],
			[-4176e-6],
			[-0.021],
			[-0.04908],
			[-4176e-6],
			[-4176e-6],
			[-4176e-6],
			[-5504e-7],
			[0.04469],
			[-4176e-6],
			[0.02084],
			[-4176e-6],
			[0.02109],
			[-4176e-6],
			[0.03008],
			[0.05948],
			[-2619e-6],
			[0.04434],
			[-4176e-6],
			[8441e-6],
			[-4176e-6]
		],
		[
			[0, -52.15, 0, 1, 2],
			[7, -122.4, 1, 3, 4],
			[4, 32.53, 0, 5, 6],
			[68, 565e-5, 0, 7, 8],
			[40, 0.4932, 1, 9, 10],
			[58, 282, 1, 11, 12],
			[9, 0.3892, 0, 13, 14],
			[40, 0.4932, 0, 15, 16],
			[34, 0.8199, 0, 17, 18],
			[49, 0.8798, 0, 19, 20],
			[33, 0.989, 0, 21, 22],
			[16, 37, 0, 23, 24],
			[31, 0.4185, 0, 25, 26],
			[94, 9.929, 0, 27, 28],
			[94, 3.684, 0, 29, 30],
			[58, -132, 0, 31, 32],
			[45, 0.1176, 1, 33, 34],
			[88, 7408e-6, 0, 35, 36],
			[33, 0.9032, 1, 37, 38],
			[31, 1.016, 0, 39, 40],
			[88, 5995e-6, 0, 41, 42],
			[31, 1.204, 0, 43, 44],
			[61, -0.02564, 0, 45, 46],
			[69, 3.192, 0, 47, 48],
			[40, 1.122, 0, 49, 50],
			[62, -9723e-7, 0, 51, 52],
			[-0.01842],
			[7, 564.9, 0, 53, 54],
			[74, 0.04986, 1, 55, 56],
			[7, 110.8, 0, 57, 58],
			[13, 0.03198, 0, 59, 60],
			[0.03296],
			[-9549e-6],
			[-0.05041],
			[6552e-6],
			[0.03027],
			[-0.03588],
			[0.0945],
			[0.01201],
			[0.04193],
			[-7661e-6],
			[-7661e-6],
			[-0.0428],
			[0.07623],
			[3305e-7],
			[-0.01704],
			[0.03331],
			[0.0154],
			[-0.0459],
			[0.02379],
			[-0.03406],
			[-3615e-6],
			[0.08767],
			[-0.03169],
			[0.03543],
			[-0.02658],
			[0.03909],
			[0.01657],
			[-2405e-6],
			[3481e-7],
			[-0.01579]
		],
		[
			[40, 0.9709, 0, 1, 2],
			[43, 0.7647, 0, 3, 4],
			[24, -0.1516, 1, 5, 6],
			[25, 0.0533, 0, 7, 8],
			[93, 11.3, 0, 9, 10],
			[25, -2, 1, 11, 12],
			[32, 0.9814, 0, 13, 14],
			[82, -1923e-7, 1, 15, 16],
			[76, 0.01364, 1, 17, 18],
			[25, -0.05397, 1, 19, 20],
			[64, 3e-3, 0, 21, 22],
			[83, 353, 1, 23, 24],
			[16, 12, 0, 25, 26],
			[24, 0.0816, 0, 27, 28],
			[93, 5.905, 0, 29, 30],
			[32, 0.6623, 1, 31, 32],
			[8, 40.84, 0, 33, 34],
			[29, -0.186, 0, 35, 36],
			[27, -1086e-6, 0, 37, 38],
			[88, 4674e-6, 0, 39, 40],
			[82, -361e-5, 0, 41, 42],
			[31, 1.444, 0, 43, 44],
			[94, 6.459, 0, 45, 46],
			[62, 0.03125, 1, 47, 48],
			[0.04127],
			[61, -0.02352, 0, 49, 50],
			[69, 4.281, 0, 51, 52],
			[66, 0.1205, 1, 53, 54],
			[82, -0.0393, 1, 55, 56],
			[16, 20, 0, 57, 58],
			[49, 0.9675, 0, 59, 60],
			[-2736e-6],
			[0.01261],
			[-5852e-6],
			[-9153e-7],
			[0.01335],
			[-5852e-6],
			[-5852e-6],
			[0.03326],
			[-5852e-6],
			[-0.01625],
			[-5852e-6],
			[-0.04411],
			[-5852e-6],
			[-5852e-6],
			[-5852e-6],
			[-0.03463],
			[-0.05042],
			[-1873e-6],
			[-0.01446],
			[0.0281],
			[0.01507],
			[-0.04411],
			[0.02446],
			[-0.01291],
			[-0.02583],
			[0.02316],
			[-2344e-6],
			[-0.04772],
			[923e-5],
			[-2433e-6]
		],
		[
			[28, -2, 0, 1, 2],
			[73, -2, 0, 3, 4],
			[66, -0.0834, 0, 5, 6],
			[35, 1.198, 1, 7, 8],
			[22, 0.02756, 1, 9, 10],
			[74, 6632e-6, 1, 11, 12],
			[28, -1508e-6, 0, 13, 14],
			[67, -0.08325, 0, 15, 16],
			[58, 150, 0, 17, 18],
			[58, 6, 0, 19, 20],
			[16, 11, 0, 21, 22],
			[38, 1.105, 0, 23, 24],
			[56, 70.35, 0, 25, 26],
			[73, 0, 1, 27, 28],
			[16, 52, 0, 29, 30],
			[12, 11.92, 0, 31, 32],
			[93, 36.71, 0, 33, 34],
			[24, -0.03216, 0, 35, 36],
			[73, -24, 0, 37, 38],
			[21, 1198e-6, 0, 39, 40],
			[73, -1, 1, 41, 42],
			[57, 282, 0, 43, 44],
			[24, -0.0389, 1, 45, 46],
			[54, 91, 1, 47, 48],
			[79, 6, 0, 49, 50],
			[67, 0.07365, 0, 51, 52],
			[78, 0, 1, 53, 54],
			[78, 2, 0, 55, 56],
			[96, 2, 0, 57, 58],
			[3, 12.94, 1, 59, 60],
			[22, 0.01444, 0, 61, 62],
			[-0.03821],
			[0.01747],
			[-0.06397],
			[6876e-6],
			[96e-4],
			[-0.03786],
			[0.05547],
			[-6914e-6],
			[0.07229],
			[-0.02845],
			[0.02412],
			[-0.04343],
			[-0.02992],
			[0.024],
			[-2609e-6],
			[0.0737],
			[-527e-5],
			[0.03519],
			[0.03049],
			[-0.0422],
			[-0.03441],
			[0.01531],
			[0.02864],
			[6867e-6],
			[-0.01589],
			[0.01215],
			[-8136e-6],
			[0.0115],
			[-0.01431],
			[3992e-6],
			[-0.01943],
			[4527e-6]
		],
		[
			[4, 32.53, 0, 1, 2],
			[35, 2.336, 1, 3, 4],
			[35, 0.7409, 1, 5, 6],
			[92, 6.875, 0, 7, 8],
			[35, 3.5, 0, 9, 10],
			[67, -0.06042, 1, 11, 12],
			[40, 1.03, 1, 13, 14],
			[63, 0.03448, 1, 15, 16],
			[40, 1.122, 0, 17, 18],
			[7, 299.5, 1, 19, 20],
			[88, 9346e-6, 1, 21, 22],
			[34, 0.1261, 0, 23, 24],
			[34, 0.439, 1, 25, 26],
			[34, 1.019, 0, 27, 28],
			[35, 0.8218, 0, 29, 30],
			[76, -0.0852, 0, 31, 32],
			[-0.01405],
			[40, 0.8416, 0, 33, 34],
			[35, 1.227, 0, 35, 36],
			[-0.01365],
			[0.1155],
			[-0.03911],
			[81, 0.2376, 0, 37, 38],
			[7, 87.97, 1, 39, 40],
			[81, -0.01622, 0, 41, 42],
			[96, 0, 0, 43, 44],
			[73, -12, 0, 45, 46],
			[33, 1.012, 0, 47, 48],
			[35, 0.9286, 0, 49, 50],
			[13, 0.01923, 0, 51, 52],
			[72, 2, 0, 53, 54],
			[-0.02752],
			[-0.05431],
			[-895e-5],
			[0.05313],
			[-0.01405],
			[-143e-5],
			[0.05275],
			[-0.01583],
			[0.07464],
			[-9706e-7],
			[0.01528],
			[-0.01718],
			[0.01209],
			[-0.01261],
			[-0.01804],
			[0.02527],
			[-6806e-6],
			[-0.02348],
			[0.02041],
			[-2479e-6],
			[0.04681],
			[-1939e-6],
			[1191e-7],
			[0.02933]
		],
		[
			[84, 7056e-6, 1, 1, 2],
			[59, 10, 1, 3, 4],
			[50, 1.101, 0, 5, 6],
			[24, 0.01686, 0, 7, 8],
			[86, 0.01731, 0, 9, 10],
			[23, 0.1793, 1, 11, 12],
			[91, 0.252, 0, 13, 14],
			[45, 0.07143, 1, 15, 16],
			[93, 11.78, 0, 17, 18],
			[86, 0.01056, 0, 19, 20],
			[3, 370.2, 1, 21, 22],
			[24, 0.09672, 0, 23, 24],
			[50, 0.75, 0, 25, 26],
			[24, -0.02301, 1, 27, 28],
			[75, 0.2669, 0, 29, 30],
			[45, 0.03704, 0, 31, 32],
			[93, 8.118, 0, 33, 34],
			[75, 0.6796, 0, 35, 36],
			[59, 1, 1, 37, 38],
			[59, 14, 0, 39, 40],
			[50, 1.192, 0, 41, 42],
			[16, 2, 0, 43, 44],
			[16, 24, 0, 45, 46],
			[25, 0.01311, 0, 47, 48],
			[30, 212, 0, 49, 50],
			[23, 0.233, 0, 51, 52],
			[65, -0.0875, 0, 53, 54],
			[25, 0.02909, 0, 55, 56],
			[5, -13.14, 0, 57, 58],
			[59, 28, 1, 59, 60],
			[89, 39.14, 0, 61, 62],
			[-5907e-6],
			[-2787e-6],
			[-2787e-6],
			[-0.03681],
			[-0.05353],
			[-2787e-6],
			[-0.03546],
			[-2787e-6],
			[-2787e-6],
			[-4775e-6],
			[-2787e-6],
			[-0.0206],
			[-2787e-6],
			[-0.04272],
			[-0.01696],
			[-2787e-6],
			[3268e-6],
			[-2787e-6],
			[0.05525],
			[-2787e-6],
			[-2787e-6],
			[0.01979],
			[9452e-6],
			[-2787e-6],
			[3142e-6],
			[-2787e-6],
			[0.0555],
			[0.01124],
			[-2787e-6],
			[0.01873],
			[-2787e-6],
			[0.05138]
		],
		[
			[94, 0.7144, 0, 1, 2],
			[75, 6585e-6, 0, 3, 4],
			[1, 50.48, 0, 5, 6],
			[21, -1988e-6, 0, 7, 8],
			[93, 1.518, 0, 9, 10],
			[40, 1.079, 0, 11, 12],
			[13, 0.02943, 0, 13, 14],
			[21, -4847e-6, 0, 15, 16],
			[32, 0.8478, 0, 17, 18],
			[21, -0.0155, 0, 19, 20],
			[4, 167.2, 0, 21, 22],
			[50, 1.223, 1, 23, 24],
			[37, 1.443, 1, 25, 26],
			[23, 0.2123, 1, 27, 28],
			[60, 10, 1, 29, 30],
			[28, -2748e-6, 1, 31, 32],
			[55, 89, 1, 33, 34],
			[35, 0.9641, 1, 35, 36],
			[27, -8032e-6, 0, 37, 38],
			[35, 0.3865, 1, 39, 40],
			[19, -0.01277, 0, 41, 42],
			[60, 68, 0, 43, 44],
			[74, 0.1185, 1, 45, 46],
			[13, 0.01336, 0, 47, 48],
			[48, 0.8073, 0, 49, 50],
			[60, 2, 1, 51, 52],
			[75, 0.1371, 1, 53, 54],
			[20, -0.06827, 1, 55, 56],
			[67, -0.09267, 0, 57, 58],
			[12, 7.645, 0, 59, 60],
			[21, 0.02074, 0, 61, 62],
			[-0.03026],
			[0.04366],
			[-0.05997],
			[6573e-6],
			[0.02556],
			[-0.05605],
			[-0.01132],
			[0.06527],
			[0.04273],
			[-0.01668],
			[0.02497],
			[-0.04298],
			[0.03878],
			[-8724e-6],
			[-0.02862],
			[0.03898],
			[5838e-6],
			[-0.0417],
			[0.05995],
			[-0.02136],
			[188e-5],
			[0.04961],
			[-0.04094],
			[188e-5],
			[-3008e-6],
			[9038e-6],
			[0.01512],
			[-3008e-6],
			[-0.02243],
			[-3008e-6],
			[-3008e-6],
			[-0.01494]
		],
		[
			[21, 0.02074, 1, 1, 2],
			[85, 2, 0, 3, 4],
			[96, 2, 0, 5, 6],
			[34, 0.8729, 0, 7, 8],
			[34, 0.949, 0, 9, 10],
			[64, 0.04667, 0, 11, 12],
			[55, 85, 1, 13, 14],
			[76, 0.6405, 1, 15, 16],
			[35, 0.8841, 0, 17, 18],
			[40, 1.196, 1, 19, 20],
			[0, -3.712, 0, 21, 22],
			[0, 24.86, 0, 23, 24],
			[34, 1.311, 1, 25, 26],
			[45, 0.09132, 1, 27, 28],
			[19, 2274e-6, 1, 29, 30],
			[88, 0.03886, 0, 31, 32],
			[87, 1803e-6, 1, 33, 34],
			[83, 4.214, 0, 35, 36],
			[38, 0.9012, 1, 37, 38],
			[87, 6455e-7, 0, 39, 40],
			[87, 0.0101, 0, 41, 42],
			[87, 0.01976, 0, 43, 44],
			[55, 63, 1, 45, 46],
			[67, 0.05275, 0, 47, 48],
			[27, -0.3984, 0, 49, 50],
			[82, -0.0393, 0, 51, 52],
			[94, 12.02, 0, 53, 54],
			[67, 0.0655, 0, 55, 56],
			[19, -0.2846, 0, 57, 58],
			[45, 0.07882, 0, 59, 60],
			[45, 0.03311, 0, 61, 62],
			[-5085e-6],
			[4753e-6],
			[-5085e-6],
			[0.05352],
			[-5085e-6],
			[0.01679],
			[7107e-6],
			[-3803e-6],
			[-5085e-6],
			[-0.01267],
			[-5085e-6],
			[-0.01764],
			[-0.02667],
			[-5085e-6],
			[-5085e-6],
			[-0.05627],
			[0.07575],
			[-0.02484],
			[0.0226],
			[-0.01024],
			[0.02165],
			[-0.04365],
			[-0.02158],
			[0.02748],
			[0.0322],
			[-0.01774],
			[0.01289],
			[-0.04727],
			[0.01258],
			[0.08073],
			[0.01568],
			[-0.03001]
		],
		[
			[82, 0.3256, 1, 1, 2],
			[69, 2.863, 0, 3, 4],
			[39, 0, 0, 5, 6],
			[68, 3925e-6, 0, 7, 8],
			[56, 51.27, 0, 9, 10],
			[7, 334.9, 1, 11, 12],
			[-0.05349],
			[52, 5.374, 1, 13, 14],
			[62, -0.1698, 1, 15, 16],
			[8, 148.8, 0, 17, 18],
			[7, 93.14, 1, 19, 20],
			[-0.02911],
			[0.03662],
			[22, 0.2103, 1, 21, 22],
			[81, 375e-5, 0, 23, 24],
			[81, -0.05595, 0, 25, 26],
			[9, 0.4259, 0, 27, 28],
			[13, 0.01299, 0, 29, 30],
			[41, 2.414, 0, 31, 32],
			[21, 0.06044, 1, 33, 34],
			[22, -0.01409, 0, 35, 36],
			[-0.06515],
			[-0.02531],
			[0.03359],
			[-0.02531],
			[3356e-6],
			[-0.01925],
			[3356e-6],
			[0.02183],
			[-0.02449],
			[-0.04677],
			[-0.02449],
			[0.04747],
			[1965e-6],
			[0.05881],
			[-0.01326],
			[-4389e-7]
		],
		[
			[66, -0.01867, 0, 1, 2],
			[2, 46.14, 1, 3, 4],
			[66, 0, 1, 5, 6],
			[69, 6.149, 0, 7, 8],
			[50, 0.967, 1, 9, 10],
			[5, -2.744, 0, 11, 12],
			[16, 7, 0, 13, 14],
			[88, 1972e-6, 1, 15, 16],
			[88, 9346e-6, 1, 17, 18],
			[59, 4, 0, 19, 20],
			[22, 0.02756, 0, 21, 22],
			[73, -5, 1, 23, 24],
			[19, 0.01258, 0, 25, 26],
			[50, 0.9914, 0, 27, 28],
			[10, -73.99, 0, 29, 30],
			[69, 5.953, 0, 31, 32],
			[73, 1, 1, 33, 34],
			[59, 3, 0, 35, 36],
			[68, 0.01446, 0, 37, 38],
			[51, 0.06808, 0, 39, 40],
			[92, 0.3025, 0, 41, 42],
			[74, 6632e-6, 0, 43, 44],
			[76, 0.1515, 0, 45, 46],
			[2, 187.7, 0, 47, 48],
			[81, -0.02142, 1, 49, 50],
			[43, 0.7219, 0, 51, 52],
			[30, 69, 1, 53, 54],
			[74, 0.1962, 0, 55, 56],
			[59, 28, 1, 57, 58],
			[95, 167, 0, 59, 60],
			[59, 28, 0, 61, 62],
			[-0.04853],
			[824e-5],
			[0.05502],
			[-0.01625],
			[-0.05099],
			[61e-4],
			[-0.05411],
			[-137e-5],
			[0.04179],
			[-58e-4],
			[-0.02143],
			[0.02433],
			[-0.02679],
			[293e-5],
			[0.0278],
			[-0.01454],
			[-0.03849],
			[0.01976],
			[0.07986],
			[-4739e-6],
			[-6261e-6],
			[-0.03548],
			[0.06588],
			[-2295e-6],
			[-0.02886],
			[4329e-6],
			[-382e-5],
			[0.02684],
			[-0.03094],
			[8262e-6],
			[0.01004],
			[-0.01175]
		],
		[
			[7, 93.14, 1, 1, 2],
			[94, 14.32, 0, 3, 4],
			[91, 0.12, 0, 5, 6],
			[62, -221e-5, 1, 7, 8],
			[19, 0.03165, 0, 9, 10],
			[9, 0.4085, 0, 11, 12],
			[22, -0.1621, 0, 13, 14],
			[23, 0.09982, 0, 15, 16],
			[26, 6755e-6, 1, 17, 18],
			[45, 0.8364, 1, 19, 20],
			[56, 76.62, 0, 21, 22],
			[35, 1.317, 1, 23, 24],
			[22, -0.01409, 0, 25, 26],
			[81, 0.1076, 0, 27, 28],
			[82, 0.03279, 0, 29, 30],
			[43, 0.7647, 1, 31, 32],
			[83, -2.89, 0, 33, 34],
			[57, 42, 0, 35, 36],
			[19, 4435e-6, 1, 37, 38],
			[40, 0.8214, 0, 39, 40],
			[58, -222, 0, 41, 42],
			[81, -2866e-6, 1, 43, 44],
			[19, 0.1533, 0, 45, 46],
			[70, 1, 0, 47, 48],
			[4, 62.48, 1, 49, 50],
			[58, 6, 0, 51, 52],
			[84, 6026e-6, 1, 53, 54],
			[82, -0.2316, 0, 55, 56],
			[4, 129.7, 1, 57, 58],
			[82, 281e-5, 0, 59, 60],
			[56, 74, 0, 61, 62],
			[3343e-7],
			[-0.01919],
			[-0.03664],
			[3343e-7],
			[3343e-7],
			[0.01727],
			[3343e-7],
			[3343e-7],
			[-0.01735],
			[0.01561],
			[-0.02203],
			[0.1252],
			[-0.0223],
			[0.05218],
			[0.1425],
			[5199e-6],
			[-0.04445],
			[0.03708],
			[0.06207],
			[-7114e-6],
			[0.01997],
			[-0.01847],
			[-0.01092],
			[5853e-6],
			[0.01085],
			[-0.03173],
			[-0.02168],
			[0.07418],
			[-4901e-6],
			[0.04962],
			[-0.05577],
			[-0.01256]
		],
		[
			[71, 0, 0, 1, 2],
			[65, 0.199, 0, 3, 4],
			[30, 261, 1, 5, 6],
			[60, 1, 0, 7, 8],
			[59, 13, 1, 9, 10],
			[59, 49, 1, 11, 12],
			[29, -1034e-6, 1, 13, 14],
			[21, 0.06044, 1, 15, 16],
			[21, 0.03116, 1, 17, 18],
			[50, 1.151, 1, 19, 20],
			[70, 0, 0, 21, 22],
			[86, 1147e-6, 0, 23, 24],
			[50, 1.042, 0, 25, 26],
			[67, -0.02667, 0, 27, 28],
			[93, 12.79, 0, 29, 30],
			[59, 3, 0, 31, 32],
			[78, 4, 1, 33, 34],
			[68, 6173e-6, 0, 35, 36],
			[4, 211.7, 1, 37, 38],
			[29, 238e-5, 1, 39, 40],
			[68, 8547e-6, 0, 41, 42],
			[88, 0.0507, 1, 43, 44],
			[60, 0, 1, 45, 46],
			[29, -0.01626, 1, 47, 48],
			[93, 30.34, 0, 49, 50],
			[63, -2397e-6, 0, 51, 52],
			[73, -4, 1, 53, 54],
			[60, 29, 0, 55, 56],
			[60, 23, 0, 57, 58],
			[59, 11, 0, 59, 60],
			[2, 46.14, 0, 61, 62],
			[-8515e-6],
			[0.0181],
			[0.1074],
			[-5451e-7],
			[-4267e-6],
			[7167e-6],
			[-0.03077],
			[2095e-6],
			[-0.0419],
			[-1808e-6],
			[0.05569],
			[-0.02306],
			[0.023],
			[-0.01988],
			[-0.04435],
			[0.03049],
			[-0.03551],
			[0.02403],
			[-0.02561],
			[0.01172],
			[-5107e-6],
			[0.0715],
			[0.02064],
			[-0.03213],
			[0.03544],
			[-8093e-6],
			[-0.04426],
			[0.01566],
			[-0.02442],
			[0.02466],
			[-4358e-6],
			[0.08663]
		],
		[
			[51, 0.2134, 0, 1, 2],
			[74, 0.5201, 1, 3, 4],
			[74, 0.0872, 1, 5, 6],
			[67, 0.1584, 0, 7, 8],
			[51, 0.0858, 0, 9, 10],
			[3, 177.2, 1, 11, 12],
			[67, 0.02225, 0, 13, 14],
			[67, 0.01003, 0, 15, 16],
			[38, 1.352, 0, 17, 18],
			[81, -8094e-7, 0, 19, 20],
			[54, 62, 1, 21, 22],
			[54, 51, 1, 23, 24],
			[41, 2.833, 0, 25, 26],
			[93, 4.387, 0, 27, 28],
			[43, 1.189, 1, 29, 30],
			[41, 0.6988, 0, 31, 32],
			[64, -0.06367, 0, 33, 34],
			[80, 3, 0, 35, 36],
			[41, 2.414, 1, 37, 38],
			[0.01606],
			[-0.0482],
			[89, -90.36, 0, 39, 40],
			[81, -0.1159, 1, 41, 42],
			[17, 21, 0, 43, 44],
			[92, 0.3025, 0, 45, 46],
			[67, -0.03938, 0, 47, 48],
			[68, 0.02706, 0, 49, 50],
			[0.02323],
			[57, 405, 1, 51, 52],
			[35, 1.091, 0, 53, 54],
			[17, 22, 0, 55, 56],
			[-0.01686],
			[-2454e-7],
			[0.01804],
			[8533e-7],
			[-988e-6],
			[-0.035],
			[0.01197],
			[-0.01306],
			[-0.02239],
			[0.02653],
			[0.08282],
			[-2116e-6],
			[-0.04256],
			[2238e-6],
			[-0.02064],
			[0.0805],
			[6007e-6],
			[-0.03747],
			[0.04844],
			[-0.01851],
			[-0.06562],
			[-3664e-6],
			[-1914e-6],
			[0.05364],
			[-0.03811],
			[-1914e-6]
		],
		[
			[59, -3, 0, 1, 2],
			[89, -37.42, 0, 3, 4],
			[7, 98.34, 0, 5, 6],
			[38, 1.352, 0, 7, 8],
			[20, 0.05716, 1, 9, 10],
			[94, 3.516, 0, 11, 12],
			[68, 5917e-6, 0, 13, 14],
			[54, 89, 1, 15, 16],
			[0.01178],
			[58, -30, 0, 17, 18],
			[21, -0.05875, 1, 19, 20],
			[47, 1.012, 1, 21, 22],
			[54, 91, 1, 23, 24],
			[34, 1.22, 0, 25, 26],
			[59, 13, 0, 27, 28],
			[-0.04265],
			[32e-4],
			[20, 7992e-6, 1, 29, 30],
			[7, 36.3, 0, 31, 32],
			[0.01178],
			[0.01178],
			[38, 0.1774, 0, 33, 34],
			[42, 0.9726, 0, 35, 36],
			[93, 11.06, 0, 37, 38],
			[75, 0.06115, 1, 39, 40],
			[94, 11.28, 0, 41, 42],
			[54, 77, 1, 43, 44],
			[65, 0.176, 0, 45, 46],
			[58, -54, 1, 47, 48],
			[0.01178],
			[0.04635],
			[0.01178],
			[0.08265],
			[-0.03637],
			[9281e-6],
			[0.04497],
			[5592e-6],
			[-915e-5],
			[6874e-6],
			[-0.03622],
			[0.01312],
			[-809e-5],
			[-0.03632],
			[-0.01018],
			[0.02257],
			[-1957e-6],
			[-0.02844],
			[0.03182],
			[4764e-6]
		],
		[
			[67, 0.7443, 0, 1, 2],
			[67, 0.01003, 0, 3, 4],
			[24, 0.01021, 0, 5, 6],
			[41, 0.6463, 1, 7, 8],
			[65, 0.0139, 0, 9, 10],
			[28, -3854e-6, 1, 11, 12],
			[28, -0.01595, 0, 13, 14],
			[82, -0.04707, 0, 15, 16],
			[86, 8188e-6, 0, 17, 18],
			[50, 0.9775, 1, 19, 20],
			[8, 26.09, 0, 21, 22],
			[54, 42, 0, 23, 24],
			[28, 0.09879, 0, 25, 26],
			[84, 0.03271, 1, 27, 28],
			[91, 0.324, 1, 29, 30],
			[64, -0.019, 0, 31, 32],
			[26, -2, 1, 33, 34],
			[56, 53.79, 0, 35, 36],
			[91, 0.38, 0, 37, 38],
			[35, 0.3865, 0, 39, 40],
			[26, 0.04062, 0, 41, 42],
			[28, -0.09322, 0, 43, 44],
			[50, 1.091, 1, 45, 46],
			[0.01568],
			[10, 206.8, 0, 47, 48],
			[69, 4.952, 0, 49, 50],
			[-0.01615],
			[39, 0.9172, 0, 51, 52],
			[96, 0, 0, 53, 54],
			[-0.05677],
			[2098e-6],
			[0.05959],
			[-5843e-6],
			[209e-5],
			[-0.02365],
			[0.03031],
			[-6653e-6],
			[7769e-6],
			[-0.02639],
			[-0.02552],
			[0.03205],
			[3642e-6],
			[-0.03921],
			[-9591e-6],
			[-0.03063],
			[-2512e-6],
			[0.01626],
			[-0.04162],
			[0.01637],
			[0.06483],
			[-4362e-6],
			[-0.01136],
			[-0.04343],
			[-0.01136],
			[0.03693]
		],
		[
			[82, -0.01188, 0, 1, 2],
			[23, 0.1184, 1, 3, 4],
			[28, 5296e-6, 1, 5, 6],
			[23, 0.0546, 0, 7, 8],
			[86, 0.01414, 0, 9, 10],
			[65, 0.1559, 0, 11, 12],
			[21, 2882e-6, 1, 13, 14],
			[76, 0.3577, 0, 15, 16],
			[65, 0.377, 0, 17, 18],
			[86, 8631e-6, 0, 19, 20],
			[28, 0.03385, 0, 21, 22],
			[67, 695e-5, 0, 23, 24],
			[83, 49.11, 1, 25, 26],
			[82, 0.1317, 0, 27, 28],
			[76, 0.04897, 1, 29, 30],
			[26, -7799e-7, 0, 31, 32],
			[51, 0.1715, 0, 33, 34],
			[76, 0.01364, 0, 35, 36],
			[86, 0.01414, 0, 37, 38],
			[36, 0.3897, 0, 39, 40],
			[4, 129.7, 1, 41, 42],
			[68, 734e-5, 0, 43, 44],
			[23, 0.233, 0, 45, 46],
			[26, -4135e-6, 0, 47, 48],
			[68, 3657e-6, 0, 49, 50],
			[54, 79, 0, 51, 52],
			[29, -0.01626, 0, 53, 54],
			[68, 0.03843, 0, 55, 56],
			[66, -0.0834, 0, 57, 58],
			[65, -0.02175, 1, 59, 60],
			[32, 0.9202, 0, 61, 62],
			[0.01999],
			[-0.01651],
			[0.05065],
			[-0.02267],
			[0.01376],
			[0.04473],
			[0.02406],
			[-0.03381],
			[0.03045],
			[-0.01555],
			[-0.02455],
			[0.03499],
			[-0.03784],
			[-8241e-6],
			[-0.01697],
			[0.03815],
			[-8684e-6],
			[3303e-6],
			[0.02172],
			[1514e-6],
			[-0.02612],
			[-2779e-6],
			[0.03154],
			[-2779e-6],
			[6329e-6],
			[0.07508],
			[9993e-6],
			[-0.01623],
			[-0.04273],
			[-0.01161],
			[0.0211],
			[-0.01835]
		],
		[
			[81, 0.01874, 1, 1, 2],
			[81, -9034e-6, 1, 3, 4],
			[87, 8507e-6, 1, 5, 6],
			[59, -1, 0, 7, 8],
			[54, 82, 0, 9, 10],
			[87, 2447e-6, 0, 11, 12],
			[64, -0.056, 0, 13, 14],
			[64, -0.056, 0, 15, 16],
			[45, 0.2232, 1, 17, 18],
			[80, 3, 0, 19, 20],
			[22, -2533e-7, 1, 21, 22],
			[59, 13, 0, 23, 24],
			[68, 644e-5, 0, 25, 26],
			[9, 0.5966, 0, 27, 28],
			[64, 3e-3, 1, 29, 30],
			[25, 1312e-6, 1, 31, 32],
			[6, 139.6, 1, 33, 34],
			[39, 1.082, 1, 35, 36],
			[84, 0.09576, 0, 37, 38],
			[22, 0.06326, 1, 39, 40],
			[76, 0.3266, 0, 41, 42],
			[64, 0.04067, 0, 43, 44],
			[76, -1594e-6, 1, 45, 46],
			[47, 0.995, 1, 47, 48],
			[50, 0.75, 0, 49, 50],
			[32, 0.9419, 1, 51, 52],
			[54, 72, 0, 53, 54],
			[68, 0.02872, 0, 55, 56],
			[56, 61.93, 0, 57, 58],
			[32, 1.242, 1, 59, 60],
			[54, 49, 0, 61, 62],
			[-0.01549],
			[0.03284],
			[5157e-6],
			[0.06526],
			[-2281e-6],
			[6941e-6],
			[-0.01775],
			[0.01693],
			[-319e-5],
			[0.02242],
			[-0.05967],
			[-0.01691],
			[-0.04228],
			[-3747e-7],
			[-0.02218],
			[0.01451],
			[-0.02852],
			[0.01895],
			[1004e-6],
			[0.06069],
			[-0.06282],
			[-8338e-6],
			[-0.03137],
			[0.02367],
			[-0.03911],
			[0.02394],
			[-0.01519],
			[0.06005],
			[0.08531],
			[-0.01197],
			[-0.0219],
			[0.02512]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[58, 366, 0, 3, 4],
			[17, 19, 0, 5, 6],
			[87, 7985e-6, 1, 7, 8],
			[16, 2, 0, 9, 10],
			[68, 0.01038, 0, 11, 12],
			[25, 0.02909, 0, 13, 14],
			[66, -0.1019, 1, 15, 16],
			[65, -0.224, 0, 17, 18],
			[87, 0.03359, 1, 19, 20],
			[68, 7634e-6, 0, 21, 22],
			[31, 1.039, 1, 23, 24],
			[78, 15, 0, 25, 26],
			[25, 0, 0, 27, 28],
			[68, 6173e-6, 0, 29, 30],
			[20, -5671e-6, 1, 31, 32],
			[9, 0.6981, 0, 33, 34],
			[58, -96, 0, 35, 36],
			[73, -5, 1, 37, 38],
			[20, 0.01439, 0, 39, 40],
			[86, 0.02277, 0, 41, 42],
			[73, -2, 1, 43, 44],
			[9, 0.473, 0, 45, 46],
			[51, 0.0858, 0, 47, 48],
			[20, 7992e-6, 1, 49, 50],
			[28, -0.02098, 1, 51, 52],
			[31, 1.102, 1, 53, 54],
			[49, 1.933, 0, 55, 56],
			[87, 0.04332, 0, 57, 58],
			[51, 0.09718, 0, 59, 60],
			[1, 58.25, 0, 61, 62],
			[-0.03305],
			[7466e-6],
			[-0.01216],
			[-0.06128],
			[-0.02401],
			[0.04391],
			[-0.04032],
			[-1821e-7],
			[0.09153],
			[-9405e-6],
			[0.01822],
			[-0.02517],
			[9126e-6],
			[-0.07197],
			[-0.02036],
			[0.04259],
			[-0.02171],
			[0.01014],
			[-2393e-6],
			[-0.04342],
			[0.03808],
			[9713e-6],
			[-8686e-6],
			[0.02192],
			[-25e-4],
			[-0.0352],
			[4626e-6],
			[0.03447],
			[-0.05429],
			[-314e-5],
			[-0.05617],
			[905e-6]
		],
		[
			[67, 0.7443, 0, 1, 2],
			[23, 0.5348, 0, 3, 4],
			[66, 0.2383, 1, 5, 6],
			[55, 79, 1, 7, 8],
			[4, 455.6, 1, 9, 10],
			[87, 1471e-6, 0, 11, 12],
			[64, -0.65, 1, 13, 14],
			[82, -5696e-6, 0, 15, 16],
			[51, 0.08179, 0, 17, 18],
			[35, 0.5017, 0, 19, 20],
			[43, 0.8824, 0, 21, 22],
			[0.03722],
			[39, 0, 0, 23, 24],
			[76, 0.5176, 1, 25, 26],
			[10, 475.5, 0, 27, 28],
			[65, -0.3645, 0, 29, 30],
			[93, 21.84, 0, 31, 32],
			[9, 0.9261, 0, 33, 34],
			[66, 0.01867, 1, 35, 36],
			[21, 0.07907, 1, 37, 38],
			[93, 8.742, 0, 39, 40],
			[21, 0.07907, 1, 41, 42],
			[45, 0.1529, 1, 43, 44],
			[74, 0.1259, 0, 45, 46],
			[55, 112, 1, 47, 48],
			[45, 0.48, 0, 49, 50],
			[0.01561],
			[74, 0.1117, 0, 51, 52],
			[29, -0.2943, 0, 53, 54],
			[-0.0328],
			[7402e-6],
			[-0.01004],
			[5917e-6],
			[155e-5],
			[-0.0293],
			[-156e-5],
			[0.0112],
			[-0.02704],
			[0.03509],
			[0.1117],
			[0.02694],
			[0.03584],
			[-6648e-6],
			[-0.05084],
			[-6648e-6],
			[0.02896],
			[-0.0198],
			[-0.05224],
			[-1109e-6],
			[-0.03796],
			[-4418e-6],
			[3505e-6],
			[0.08782],
			[0.02256],
			[-0.0341]
		],
		[
			[30, 156, 0, 1, 2],
			[91, 0.272, 0, 3, 4],
			[45, 0.2232, 1, 5, 6],
			[45, 0.1176, 0, 7, 8],
			[4, 409.3, 1, 9, 10],
			[53, -8.174, 0, 11, 12],
			[55, 79, 1, 13, 14],
			[34, 1.22, 0, 15, 16],
			[17, 0, 0, 17, 18],
			[34, 0, 0, 19, 20],
			[21, -0.3198, 1, 21, 22],
			[5, 67.94, 0, 23, 24],
			[34, 0.9873, 1, 25, 26],
			[22, -0.02778, 0, 27, 28],
			[22, -0.02446, 0, 29, 30],
			[13, 0.01493, 0, 31, 32],
			[5, 46.4, 1, 33, 34],
			[5, -13.14, 1, 35, 36],
			[45, 0.3163, 0, 37, 38],
			[56, 61.93, 0, 39, 40],
			[94, 25.27, 0, 41, 42],
			[25, 0.01311, 0, 43, 44],
			[34, 1.143, 0, 45, 46],
			[30, 177, 0, 47, 48],
			[34, 1.535, 1, 49, 50],
			[23, 0.08248, 1, 51, 52],
			[22, -0.01055, 0, 53, 54],
			[5, 64.81, 1, 55, 56],
			[94, 25.27, 0, 57, 58],
			[22, -0.1079, 0, 59, 60],
			[5, 120.6, 0, 61, 62],
			[2064e-6],
			[-0.01346],
			[-0.02212],
			[9651e-6],
			[0.0415],
			[-0.03908],
			[0.01761],
			[2277e-7],
			[-0.02099],
			[0.05314],
			[-0.04631],
			[0.01493],
			[0.07234],
			[-0.01342],
			[-0.03425],
			[0.01586],
			[-0.01876],
			[-0.01876],
			[-0.06035],
			[-0.01876],
			[972e-5],
			[-6785e-6],
			[-2416e-6],
			[0.01339],
			[-0.03146],
			[0.03286],
			[-0.04605],
			[6024e-6],
			[0.01354],
			[-0.04627],
			[0.03846],
			[-0.0151]
		],
		[
			[7, 334.9, 1, 1, 2],
			[90, 0, 0, 3, 4],
			[31, 0.5969, 1, 5, 6],
			[6, 441, 1, 7, 8],
			[20, -0.04665, 0, 9, 10],
			[65, 0.6298, 0, 11, 12],
			[73, 14, 0, 13, 14],
			[28, -2, 0, 15, 16],
			[65, -0.04, 0, 17, 18],
			[65, -0.161, 0, 19, 20],
			[78, 1, 0, 21, 22],
			[73, 0, 1, 23, 24],
			[28, -0.04211, 1, 25, 26],
			[74, 0.02249, 0, 27, 28],
			[50, 0.5231, 0, 29, 30],
			[3, 235.8, 0, 31, 32],
			[19, 0.04986, 0, 33, 34],
			[20, -0.08593, 1, 35, 36],
			[50, 1.017, 0, 37, 38],
			[34, 0.5621, 1, 39, 40],
			[24, 0.04702, 1, 41, 42],
			[73, -1, 1, 43, 44],
			[7, 110.8, 0, 45, 46],
			[78, 0, 0, 47, 48],
			[28, -0.1944, 1, 49, 50],
			[68, 0.02047, 0, 51, 52],
			[-0.05396],
			[53, 5.029, 0, 53, 54],
			[74, 0.3449, 1, 55, 56],
			[40, 0, 0, 57, 58],
			[29, -0.4031, 0, 59, 60],
			[-0.04327],
			[9117e-6],
			[-3681e-6],
			[9673e-6],
			[0.06953],
			[4904e-6],
			[-0.02501],
			[0.02361],
			[-0.02875],
			[0.0225],
			[-4106e-6],
			[-0.02755],
			[-0.03965],
			[0.01956],
			[0.04891],
			[0.0152],
			[-0.02693],
			[0.03924],
			[0.02494],
			[-0.0198],
			[0.01925],
			[-0.03805],
			[-6695e-6],
			[0.0279],
			[-0.03334],
			[0.02706],
			[-0.02966],
			[0.01898],
			[0.0112],
			[-0.04769]
		],
		[
			[85, 2, 0, 1, 2],
			[22, -0.01409, 1, 3, 4],
			[47, 0.9083, 1, 5, 6],
			[68, 0.0112, 0, 7, 8],
			[57, 21, 0, 9, 10],
			[91, 0, 1, 11, 12],
			[75, 0.08736, 0, 13, 14],
			[93, 14.94, 0, 15, 16],
			[75, 0.2024, 0, 17, 18],
			[69, 4.615, 0, 19, 20],
			[47, 0.6239, 0, 21, 22],
			[81, 4451e-6, 1, 23, 24],
			[93, 10.61, 0, 25, 26],
			[66, 0.1657, 0, 27, 28],
			[46, 0.6404, 0, 29, 30],
			[69, 5.152, 0, 31, 32],
			[76, 0.1644, 1, 33, 34],
			[87, 0.03795, 1, 35, 36],
			[91, 0.568, 0, 37, 38],
			[55, 80, 1, 39, 40],
			[47, 1.193, 1, 41, 42],
			[22, 0.01845, 0, 43, 44],
			[13, 0.02849, 0, 45, 46],
			[68, 3657e-6, 0, 47, 48],
			[-4838e-6],
			[81, -1409e-6, 1, 49, 50],
			[73, -10, 1, 51, 52],
			[56, 59.16, 0, 53, 54],
			[18, 6, 0, 55, 56],
			[91, 0.2, 0, 57, 58],
			[93, 12.52, 0, 59, 60],
			[-4838e-6],
			[5578e-6],
			[-4838e-6],
			[5497e-6],
			[-4838e-6],
			[0.02036],
			[0.02911],
			[-4838e-6],
			[-4838e-6],
			[-3502e-7],
			[-4838e-6],
			[-3502e-7],
			[0.01112],
			[-3502e-7],
			[7983e-6],
			[-3502e-7],
			[-4838e-6],
			[-0.04125],
			[-0.03621],
			[-4838e-6],
			[-0.02326],
			[-4838e-6],
			[-4838e-6],
			[-0.05528],
			[-0.02129],
			[-4838e-6],
			[-4838e-6],
			[-0.01886],
			[-0.04553],
			[-0.01886]
		],
		[
			[7, 93.14, 1, 1, 2],
			[11, 1, 0, 3, 4],
			[3, 81.08, 0, 5, 6],
			[55, 88, 0, 7, 8],
			[61, -0.01016, 0, 9, 10],
			[79, 5, 0, 11, 12],
			[78, 1, 0, 13, 14],
			[19, -0.09834, 0, 15, 16],
			[5, 79.71, 1, 17, 18],
			[93, 17.1, 0, 19, 20],
			[10, -110.2, 0, 21, 22],
			[39, 0.9172, 0, 23, 24],
			[54, 76, 0, 25, 26],
			[81, -0.02478, 1, 27, 28],
			[81, 0.01874, 1, 29, 30],
			[6, 36.94, 1, 31, 32],
			[39, 1.058, 0, 33, 34],
			[66, 0.05933, 1, 35, 36],
			[54, 85, 1, 37, 38],
			[81, -0.02142, 0, 39, 40],
			[61, -0.06667, 0, 41, 42],
			[5, 9.067, 0, 43, 44],
			[56, 73.27, 0, 45, 46],
			[92, 1.525, 0, 47, 48],
			[10, 95.08, 0, 49, 50],
			[28, 0.03926, 1, 51, 52],
			[3, 3.852, 0, 53, 54],
			[81, -0.2722, 1, 55, 56],
			[28, 0.07941, 1, 57, 58],
			[3, 294.9, 0, 59, 60],
			[56, 51.27, 0, 61, 62],
			[0.01689],
			[-0.039],
			[-98e-4],
			[0.02361],
			[-0.05206],
			[0.01024],
			[-0.01812],
			[0.05261],
			[6918e-6],
			[-9244e-6],
			[-0.0123],
			[6918e-6],
			[6918e-6],
			[0.02694],
			[6918e-6],
			[0.02485],
			[-0.03152],
			[0.04046],
			[-0.05149],
			[0.01455],
			[-0.02174],
			[-0.06311],
			[0.0145],
			[-0.03244],
			[0.03704],
			[-6338e-6],
			[-0.04991],
			[0.01871],
			[296e-5],
			[-7836e-6],
			[-0.01269],
			[0.04304]
		],
		[
			[24, 0.02276, 0, 1, 2],
			[67, -0.4987, 1, 3, 4],
			[80, 1, 1, 5, 6],
			[34, 0.1261, 0, 7, 8],
			[50, 0.8816, 1, 9, 10],
			[76, 0.2416, 1, 11, 12],
			[24, 0.09672, 1, 13, 14],
			[75, 0.145, 0, 15, 16],
			[9, -0.2895, 0, 17, 18],
			[50, 0.5231, 0, 19, 20],
			[50, 1.026, 0, 21, 22],
			[90, 0, 0, 23, 24],
			[74, 0.3449, 0, 25, 26],
			[41, 0.3641, 0, 27, 28],
			[29, -0.07323, 0, 29, 30],
			[-0.03447],
			[82, -1923e-7, 0, 31, 32],
			[0.01512],
			[29, 0.08564, 1, 33, 34],
			[8, 67.11, 0, 35, 36],
			[67, 0.08133, 0, 37, 38],
			[40, 0.875, 0, 39, 40],
			[40, 1.374, 1, 41, 42],
			[27, -0.01502, 1, 43, 44],
			[1, 190, 0, 45, 46],
			[9, -0.01828, 0, 47, 48],
			[27, -8032e-6, 1, 49, 50],
			[94, 8.17, 0, 51, 52],
			[87, 0.05114, 1, 53, 54],
			[80, 5, 0, 55, 56],
			[51, 0.1108, 0, 57, 58],
			[-2838e-6],
			[0.09478],
			[-0.04485],
			[-0.01141],
			[-0.02563],
			[0.01738],
			[0.01966],
			[-8932e-6],
			[-0.02201],
			[-2335e-6],
			[8493e-7],
			[0.02313],
			[-0.01015],
			[2843e-6],
			[0.03232],
			[-2341e-6],
			[0.04321],
			[-0.01015],
			[-0.01015],
			[0.03354],
			[-0.01015],
			[-0.02394],
			[-0.0508],
			[-0.01015],
			[-0.01015],
			[-0.01015],
			[-0.01015],
			[-0.03294]
		],
		[
			[22, -0.01409, 1, 1, 2],
			[78, 11, 1, 3, 4],
			[12, 2.948, 0, 5, 6],
			[94, 14.32, 0, 7, 8],
			[51, 0.1473, 0, 9, 10],
			[51, 0.1831, 0, 11, 12],
			[60, 7, 0, 13, 14],
			[0, -10.45, 0, 15, 16],
			[86, 1358e-6, 0, 17, 18],
			[30, 219, 0, 19, 20],
			[88, 0.02113, 1, 21, 22],
			[30, 122, 0, 23, 24],
			[0, 38.66, 0, 25, 26],
			[1, 86.65, 0, 27, 28],
			[1, 64.64, 0, 29, 30],
			[20, -0.06029, 1, 31, 32],
			[54, 75, 1, 33, 34],
			[75, 0.3025, 0, 35, 36],
			[41, 0.7692, 1, 37, 38],
			[45, 0.1529, 0, 39, 40],
			[90, 0, 0, 41, 42],
			[22, -0.03668, 1, 43, 44],
			[50, 1.496, 0, 45, 46],
			[94, 13.63, 0, 47, 48],
			[62, -7143e-6, 0, 49, 50],
			[28, -0.1565, 0, 51, 52],
			[1, 150.7, 0, 53, 54],
			[78, 2, 0, 55, 56],
			[88, 0.02302, 0, 57, 58],
			[51, 0.1473, 0, 59, 60],
			[25, 8055e-6, 1, 61, 62],
			[-1088e-7],
			[0.05507],
			[-0.01415],
			[-9071e-7],
			[0.09587],
			[4267e-7],
			[-0.0131],
			[0.01984],
			[-0.04563],
			[4415e-6],
			[0.02759],
			[-0.03926],
			[-0.03017],
			[0.02508],
			[0.05275],
			[-0.02522],
			[-0.05231],
			[-2256e-6],
			[-0.02793],
			[-2256e-6],
			[-2256e-6],
			[-0.03033],
			[-2256e-6],
			[-2256e-6],
			[-2256e-6],
			[0.03763],
			[0.01266],
			[-2256e-6],
			[-2256e-6],
			[0.02789],
			[-2256e-6],
			[0.01164]
		],
		[
			[81, 0.01874, 1, 1, 2],
			[28, 5296e-6, 1, 3, 4],
			[23, 0.0546, 0, 5, 6],
			[73, 5, 1, 7, 8],
			[74, 0.3113, 1, 9, 10],
			[41, 0.5882, 0, 11, 12],
			[55, 68, 1, 13, 14],
			[22, -0.01409, 1, 15, 16],
			[64, -0.07467, 0, 17, 18],
			[23, 0.2123, 1, 19, 20],
			[40, 3.564, 1, 21, 22],
			[22, -0.02446, 0, 23, 24],
			[78, 0, 0, 25, 26],
			[69, 2.5, 0, 27, 28],
			[68, 5153e-6, 0, 29, 30],
			[47, 0.9882, 0, 31, 32],
			[34, 0.76, 0, 33, 34],
			[62, -0.06599, 0, 35, 36],
			[41, 2.057, 1, 37, 38],
			[73, -2, 0, 39, 40],
			[52, 2.253, 1, 41, 42],
			[62, 0.02204, 0, 43, 44],
			[93, 8.961, 0, 45, 46],
			[40, 0, 0, 47, 48],
			[-0.02722],
			[76, 0.3577, 1, 49, 50],
			[69, 8.038, 0, 51, 52],
			[47, 1.081, 1, 53, 54],
			[62, -0.01042, 0, 55, 56],
			[26, 0.0142, 0, 57, 58],
			[76, 0.5176, 1, 59, 60],
			[7024e-6],
			[-0.01151],
			[-0.01135],
			[8904e-6],
			[-0.03969],
			[0.02495],
			[-0.01662],
			[0.01037],
			[-0.01403],
			[511e-5],
			[-0.03807],
			[-6549e-6],
			[-8594e-6],
			[0.04302],
			[-8859e-6],
			[0.07411],
			[-4343e-6],
			[0.08186],
			[-0.01292],
			[0.02641],
			[-0.05042],
			[-3756e-6],
			[0.05776],
			[-0.03027],
			[-0.03336],
			[8311e-6],
			[-0.02777],
			[0.02466],
			[0.04695],
			[-0.02388]
		],
		[
			[24, 0.2584, 1, 1, 2],
			[24, 0.02276, 0, 3, 4],
			[26, 0.1379, 0, 5, 6],
			[25, 0.08815, 0, 7, 8],
			[60, 4, 0, 9, 10],
			[35, 1.39, 1, 11, 12],
			[17, 2, 0, 13, 14],
			[60, 0, 0, 15, 16],
			[93, 15.68, 0, 17, 18],
			[24, 0.04239, 0, 19, 20],
			[60, 23, 1, 21, 22],
			[65, -0.03025, 0, 23, 24],
			[88, 0.02992, 1, 25, 26],
			[3, -7.232, 1, 27, 28],
			[54, 78, 1, 29, 30],
			[20, 0.04379, 0, 31, 32],
			[58, -156, 1, 33, 34],
			[82, -0.1447, 1, 35, 36],
			[66, 0.2687, 0, 37, 38],
			[73, 3, 0, 39, 40],
			[23, 0.05947, 0, 41, 42],
			[65, -6333e-6, 1, 43, 44],
			[73, -10, 0, 45, 46],
			[3, 235.8, 0, 47, 48],
			[64, -0.0834, 1, 49, 50],
			[55, 91, 0, 51, 52],
			[54, 61, 0, 53, 54],
			[-0.02943],
			[37, 2.88, 0, 55, 56],
			[59, 18, 1, 57, 58],
			[9201e-6],
			[-0.01984],
			[0.02507],
			[0.03792],
			[8737e-7],
			[0.02408],
			[-0.03767],
			[0.07905],
			[-675e-5],
			[5405e-7],
			[-0.0432],
			[0.06888],
			[7586e-6],
			[-0.0293],
			[-7911e-6],
			[-0.03635],
			[0.02751],
			[-0.02809],
			[0.04874],
			[0.02187],
			[-0.03524],
			[0.1011],
			[8543e-6],
			[-0.02973],
			[0.03562],
			[0.03859],
			[-0.01387],
			[-3268e-6],
			[-0.0555]
		],
		[
			[30, 156, 0, 1, 2],
			[39, 1.488, 0, 3, 4],
			[42, 0.641, 1, 5, 6],
			[28, 0.02897, 1, 7, 8],
			[30, 135, 0, 9, 10],
			[47, 0.7222, 0, 11, 12],
			[23, 0.2123, 1, 13, 14],
			[23, 8658e-6, 1, 15, 16],
			[78, 4, 1, 17, 18],
			[55, 95, 1, 19, 20],
			[88, 0.02302, 1, 21, 22],
			[0, 43.74, 0, 23, 24],
			[64, 0.1517, 0, 25, 26],
			[93, 10.85, 0, 27, 28],
			[88, 0.0252, 1, 29, 30],
			[93, 10.35, 0, 31, 32],
			[57, 45, 0, 33, 34],
			[60, 17, 1, 35, 36],
			[42, 0.6667, 0, 37, 38],
			[93, 15.68, 0, 39, 40],
			[22, 0.07399, 0, 41, 42],
			[1, 452.7, 0, 43, 44],
			[41, 1.122, 0, 45, 46],
			[28, -0.02767, 1, 47, 48],
			[79, 4, 0, 49, 50],
			[82, -4627e-6, 1, 51, 52],
			[11, 1, 0, 53, 54],
			[23, 0.03354, 1, 55, 56],
			[47, 0.7837, 1, 57, 58],
			[47, 1.026, 1, 59, 60],
			[93, 23.12, 0, 61, 62],
			[-0.01326],
			[0.05384],
			[-0.0289],
			[-2607e-6],
			[-0.05686],
			[-953e-5],
			[0.0351],
			[-0.03286],
			[-0.01283],
			[6515e-6],
			[0.04057],
			[-0.01459],
			[0.05],
			[-0.02226],
			[0.04041],
			[-0.03794],
			[0.0579],
			[1708e-6],
			[0.01858],
			[1708e-6],
			[0.01825],
			[1708e-6],
			[0.02651],
			[1708e-6],
			[-0.02999],
			[6455e-7],
			[1708e-6],
			[1708e-6],
			[-0.02898],
			[-6728e-7],
			[1708e-6],
			[-0.03385]
		],
		[
			[61, -0.08894, 0, 1, 2],
			[38, 0.3399, 1, 3, 4],
			[38, 0.1774, 0, 5, 6],
			[19, -4977e-6, 0, 7, 8],
			[21, 0.04968, 0, 9, 10],
			[68, 6173e-6, 0, 11, 12],
			[24, 0.02276, 0, 13, 14],
			[31, 1.075, 0, 15, 16],
			[19, 0.01635, 1, 17, 18],
			[88, 0.02205, 0, 19, 20],
			[22, 0.08712, 0, 21, 22],
			[72, 0, 0, 23, 24],
			[56, 85.74, 0, 25, 26],
			[25, 0.08815, 0, 27, 28],
			[25, 0.0533, 0, 29, 30],
			[73, -12, 0, 31, 32],
			[1, 313, 0, 33, 34],
			[24, 0.1454, 0, 35, 36],
			[24, -2, 0, 37, 38],
			[73, 10, 0, 39, 40],
			[27, 0.08192, 1, 41, 42],
			[27, 5192e-6, 0, 43, 44],
			[9, 0.4259, 0, 45, 46],
			[21, -0.01136, 1, 47, 48],
			[88, 2662e-6, 1, 49, 50],
			[12, 9.044, 0, 51, 52],
			[21, 0.01055, 0, 53, 54],
			[51, 0.1627, 0, 55, 56],
			[33, 1.005, 0, 57, 58],
			[9, 0.8998, 0, 59, 60],
			[38, 1.09, 1, 61, 62],
			[-4345e-6],
			[-0.02771],
			[-4345e-6],
			[-4345e-6],
			[-0.03521],
			[-4345e-6],
			[-4345e-6],
			[-0.01246],
			[-0.03793],
			[-4345e-6],
			[-0.01344],
			[-4345e-6],
			[-4345e-6],
			[-0.02011],
			[-4345e-6],
			[-0.03799],
			[-4345e-6],
			[-4345e-6],
			[0.02094],
			[-4345e-6],
			[-4345e-6],
			[0.01152],
			[0.04359],
			[-4345e-6],
			[2186e-7],
			[0.01575],
			[0.05718],
			[9086e-6],
			[-2965e-6],
			[0.03263],
			[-4345e-6],
			[0.01248]
		],
		[
			[81, 0.01874, 1, 1, 2],
			[81, -0.01013, 1, 3, 4],
			[87, 8507e-6, 1, 5, 6],
			[88, 7408e-6, 0, 7, 8],
			[54, 82, 0, 9, 10],
			[86, 0.02545, 0, 11, 12],
			[81, 0.1411, 0, 13, 14],
			[51, 0.0858, 0, 15, 16],
			[70, 3, 0, 17, 18],
			[85, 2, 0, 19, 20],
			[76, -1594e-6, 0, 21, 22],
			[68, 7634e-6, 0, 23, 24],
			[86, 0.05709, 0, 25, 26],
			[23, 0.0546, 1, 27, 28],
			[94, 6.848, 0, 29, 30],
			[69, 4.395, 0, 31, 32],
			[58, -324, 1, 33, 34],
			[91, -0.232, 1, 35, 36],
			[83, 275.2, 0, 37, 38],
			[74, 0.2415, 1, 39, 40],
			[91, 0.124, 1, 41, 42],
			[1, 48.27, 0, 43, 44],
			[68, 3925e-6, 0, 45, 46],
			[27, 0.03542, 0, 47, 48],
			[88, 0.01464, 1, 49, 50],
			[76, 0.3952, 1, 51, 52],
			[94, 8.384, 0, 53, 54],
			[32, 0.8812, 0, 55, 56],
			[19, 0.03165, 1, 57, 58],
			[1, 264.8, 0, 59, 60],
			[4, 211.7, 0, 61, 62],
			[0.02696],
			[-0.01671],
			[0.07263],
			[0.01209],
			[-0.01825],
			[-122e-5],
			[-0.02266],
			[0.04194],
			[-8939e-7],
			[0.02859],
			[-0.04675],
			[-0.0139],
			[0.03573],
			[-0.03296],
			[-0.02971],
			[2979e-6],
			[-0.03928],
			[0.01213],
			[-3398e-6],
			[0.05575],
			[-0.04813],
			[6075e-6],
			[0.03947],
			[-0.01834],
			[0.04806],
			[-0.03592],
			[0.0445],
			[-1423e-6],
			[0.03223],
			[-0.0296],
			[-0.04459],
			[0.01165]
		],
		[
			[67, 0.7443, 0, 1, 2],
			[24, 0.2584, 1, 3, 4],
			[27, 0.01383, 1, 5, 6],
			[79, 11, 0, 7, 8],
			[25, 0.06522, 1, 9, 10],
			[9, 1, 0, 11, 12],
			[38, 2.542, 1, 13, 14],
			[75, 2472e-6, 0, 15, 16],
			[13, 0.02699, 0, 17, 18],
			[25, 0.01311, 1, 19, 20],
			[64, -0.06967, 1, 21, 22],
			[41, 0.6463, 0, 23, 24],
			[0.03471],
			[95, 568.1, 0, 25, 26],
			[68, 0.01968, 0, 27, 28],
			[68, 5411e-6, 0, 29, 30],
			[63, -0.04742, 0, 31, 32],
			[29, 3752e-6, 0, 33, 34],
			[51, 0.1347, 0, 35, 36],
			[29, 0.01935, 0, 37, 38],
			[50, 1.101, 0, 39, 40],
			[64, -0.2873, 0, 41, 42],
			[51, 0.1126, 0, 43, 44],
			[64, -0.196, 0, 45, 46],
			[79, 1, 0, 47, 48],
			[-0.03514],
			[1682e-6],
			[0.06934],
			[-8919e-6],
			[-0.05712],
			[2912e-6],
			[-0.01839],
			[0.0118],
			[4211e-6],
			[-4166e-6],
			[-0.0248],
			[-4166e-6],
			[0.02817],
			[-0.02009],
			[0.0786],
			[-0.01305],
			[-0.01991],
			[0.03804],
			[5636e-6],
			[-0.04348],
			[0.02764],
			[-0.02453],
			[7377e-6],
			[-0.04883]
		],
		[
			[31, 1.638, 1, 1, 2],
			[31, 1.444, 1, 3, 4],
			[38, 0.6171, 1, 5, 6],
			[91, 0.2, 0, 7, 8],
			[91, 0.14, 0, 9, 10],
			[28, 0.01582, 1, 11, 12],
			[68, 0.02339, 0, 13, 14],
			[72, 1, 0, 15, 16],
			[24, 0.1454, 1, 17, 18],
			[88, 0.02992, 0, 19, 20],
			[28, 5296e-6, 1, 21, 22],
			[68, 0.01559, 0, 23, 24],
			[16, 56, 0, 25, 26],
			[83, 36.2, 0, 27, 28],
			[-0.05487],
			[37, 0.7296, 0, 29, 30],
			[68, 4412e-6, 0, 31, 32],
			[24, 8736e-6, 0, 33, 34],
			[56, 71.86, 0, 35, 36],
			[72, 1, 0, 37, 38],
			[88, 0.05485, 0, 39, 40],
			[39, 1.207, 0, 41, 42],
			[39, 0.8913, 0, 43, 44],
			[56, 72.54, 0, 45, 46],
			[4, 113.1, 1, 47, 48],
			[64, 0.04667, 1, 49, 50],
			[68, 3357e-6, 0, 51, 52],
			[37, 0.7614, 0, 53, 54],
			[0, 245.5, 0, 55, 56],
			[9324e-6],
			[-4115e-7],
			[-0.04005],
			[-2965e-6],
			[-2658e-6],
			[-0.03406],
			[-4134e-7],
			[0.07373],
			[9447e-6],
			[0.06671],
			[-0.04293],
			[2395e-6],
			[0.1102],
			[6321e-6],
			[-0.02054],
			[0.04328],
			[8532e-6],
			[-0.04612],
			[-0.03272],
			[0.02649],
			[-0.04318],
			[995e-5],
			[8806e-7],
			[0.0763],
			[-7143e-6],
			[-0.04804],
			[0.02835],
			[-7143e-6]
		],
		[
			[82, -1875e-6, 0, 1, 2],
			[69, 6.651, 0, 3, 4],
			[91, 0.252, 0, 5, 6],
			[56, 60.6, 0, 7, 8],
			[5, 266, 1, 9, 10],
			[24, -0.02691, 1, 11, 12],
			[59, 35, 1, 13, 14],
			[30, 135, 1, 15, 16],
			[33, 1.026, 1, 17, 18],
			[33, 1.1, 1, 19, 20],
			[32, 0.7512, 1, 21, 22],
			[59, 11, 1, 23, 24],
			[17, 0, 0, 25, 26],
			[82, 0.02338, 0, 27, 28],
			[1, 369.8, 0, 29, 30],
			[5, 212.4, 1, 31, 32],
			[21, -0.01136, 0, 33, 34],
			[47, 1.094, 1, 35, 36],
			[24, 0.06945, 0, 37, 38],
			[69, 8.902, 0, 39, 40],
			[85, 2, 0, 41, 42],
			[59, 35, 0, 43, 44],
			[19, 0.02519, 1, 45, 46],
			[61, -0.01438, 0, 47, 48],
			[69, 8.902, 0, 49, 50],
			[1, 492.8, 0, 51, 52],
			[5, -65.5, 1, 53, 54],
			[25, -1013e-6, 0, 55, 56],
			[42, 0, 0, 57, 58],
			[69, 4.843, 0, 59, 60],
			[27, -9715e-6, 0, 61, 62],
			[-0.0308],
			[0.01956],
			[0.02398],
			[-892e-5],
			[0.01574],
			[0.04787],
			[0.01068],
			[-0.02591],
			[1454e-7],
			[-0.02891],
			[0.03265],
			[-0.03948],
			[0.0208],
			[-0.03473],
			[-0.05915],
			[0.01329],
			[-0.02865],
			[-345e-5],
			[0.0155],
			[-0.03015],
			[-0.04267],
			[0.02275],
			[0.04425],
			[1994e-6],
			[0.06836],
			[2633e-6],
			[1506e-6],
			[-0.03455],
			[-0.02708],
			[0.03149],
			[-0.01415],
			[0.07782]
		],
		[
			[20, 0.0348, 0, 1, 2],
			[59, -3, 0, 3, 4],
			[7, 38.21, 0, 5, 6],
			[87, 0.01361, 1, 7, 8],
			[92, 2.661, 0, 9, 10],
			[73, -9, 1, 11, 12],
			[73, -10, 0, 13, 14],
			[82, -0.03262, 1, 15, 16],
			[7, 82.99, 1, 17, 18],
			[59, 10, 1, 19, 20],
			[85, 2, 0, 21, 22],
			[8, 16.24, 0, 23, 24],
			[13, 0.02599, 0, 25, 26],
			[19, -0.05959, 0, 27, 28],
			[19, -0.1725, 0, 29, 30],
			[8, -0.4245, 0, 31, 32],
			[94, 7.779, 0, 33, 34],
			[81, -0.01013, 1, 35, 36],
			[13, 0.02849, 0, 37, 38],
			[94, 10.27, 0, 39, 40],
			[35, 1.133, 1, 41, 42],
			[59, 20, 1, 43, 44],
			[3, -20.2, 0, 45, 46],
			[36, 0.7327, 0, 47, 48],
			[56, 79.02, 0, 49, 50],
			[94, 18.86, 0, 51, 52],
			[-0.01082],
			[25, -0.01746, 1, 53, 54],
			[7, 82.99, 0, 55, 56],
			[63, 0.03448, 1, 57, 58],
			[59, 49, 0, 59, 60],
			[-0.01122],
			[0.09398],
			[0.02552],
			[-0.02302],
			[-0.04505],
			[9966e-6],
			[0.0336],
			[-0.02755],
			[-0.02071],
			[-4278e-6],
			[-4278e-6],
			[-4278e-6],
			[2873e-6],
			[-2026e-6],
			[-2026e-6],
			[-4278e-6],
			[4145e-6],
			[-0.04711],
			[4145e-6],
			[0.05392],
			[0.1231],
			[0.05111],
			[0.0497],
			[-8098e-6],
			[0.01043],
			[-0.04037],
			[-0.04253],
			[0.05703],
			[0.0131],
			[-6597e-6]
		],
		[
			[39, 0.3358, 0, 1, 2],
			[62, 9517e-6, 1, 3, 4],
			[17, 13, 0, 5, 6],
			[57, 354, 0, 7, 8],
			[74, -0.0189, 0, 9, 10],
			[32, 0.8647, 0, 11, 12],
			[46, 0.9031, 0, 13, 14],
			[50, 1.305, 1, 15, 16],
			[22, 0.03029, 0, 17, 18],
			[69, 4.843, 0, 19, 20],
			[17, 1, 0, 21, 22],
			[35, 0.2406, 1, 23, 24],
			[33, 3.27, 0, 25, 26],
			[3, 294.9, 0, 27, 28],
			[72, 2, 0, 29, 30],
			[44, 5.852, 0, 31, 32],
			[75, 0.1239, 1, 33, 34],
			[74, -0.06363, 1, 35, 36],
			[84, 0.02088, 1, 37, 38],
			[9, 0.7602, 0, 39, 40],
			[50, 1.496, 1, 41, 42],
			[3, -292.8, 0, 43, 44],
			[33, 0.9263, 1, 45, 46],
			[96, 1, 0, 47, 48],
			[50, 1.76, 1, 49, 50],
			[68, 9657e-6, 0, 51, 52],
			[75, 0.01919, 0, 53, 54],
			[57, -138, 0, 55, 56],
			[65, -0.0875, 0, 57, 58],
			[21, -0.2645, 0, 59, 60],
			[51, 0.08179, 0, 61, 62],
			[-0.03308],
			[-0.01275],
			[-0.01275],
			[-0.02285],
			[-3202e-6],
			[-0.01275],
			[-0.01216],
			[-3202e-6],
			[-3202e-6],
			[0.03279],
			[-3202e-6],
			[0.01028],
			[-3202e-6],
			[0.04524],
			[-3202e-6],
			[0.0177],
			[5944e-6],
			[-0.04705],
			[0.02411],
			[-0.03865],
			[-0.01031],
			[7436e-6],
			[0.036],
			[4718e-6],
			[-571e-5],
			[4118e-6],
			[0.02885],
			[-571e-5],
			[-571e-5],
			[-0.01802],
			[-571e-5],
			[-0.02493]
		],
		[
			[67, 0.1584, 0, 1, 2],
			[64, -0.252, 0, 3, 4],
			[9, 0.6478, 0, 5, 6],
			[19, 0.06555, 1, 7, 8],
			[80, 1, 1, 9, 10],
			[6, 179.1, 1, 11, 12],
			[73, 8, 0, 13, 14],
			[73, -20, 0, 15, 16],
			[67, 0.0185, 0, 17, 18],
			[9, 0.9536, 0, 19, 20],
			[68, 9259e-6, 0, 21, 22],
			[82, -0.057, 0, 23, 24],
			[31, 0.8305, 0, 25, 26],
			[75, 0.01331, 0, 27, 28],
			[12, 2.287, 0, 29, 30],
			[75, 0.2024, 1, 31, 32],
			[66, -0.2243, 1, 33, 34],
			[9047e-6],
			[0.1359],
			[78, 2, 0, 35, 36],
			[19, 0.02049, 0, 37, 38],
			[26, 0.012, 1, 39, 40],
			[30, 223, 1, 41, 42],
			[61, -0.1471, 0, 43, 44],
			[75, 6585e-6, 1, 45, 46],
			[29, -748e-5, 0, 47, 48],
			[73, 3, 0, 49, 50],
			[43, 0.5409, 0, 51, 52],
			[67, 0.1761, 1, 53, 54],
			[75, 0.1071, 0, 55, 56],
			[66, -0.619, 1, 57, 58],
			[1403e-6],
			[0.06363],
			[0.05923],
			[-7873e-6],
			[0.03221],
			[287e-5],
			[-4323e-6],
			[0.01238],
			[-0.03442],
			[-4323e-6],
			[-4323e-6],
			[-4323e-6],
			[-0.03112],
			[0.02217],
			[-0.01211],
			[-0.04279],
			[0.0328],
			[-0.01651],
			[-0.0324],
			[0.01749],
			[0.01671],
			[-0.04522],
			[-0.03536],
			[9591e-6],
			[0.01378],
			[-0.03692],
			[0.01378],
			[0.05123]
		],
		[
			[3, 294.9, 1, 1, 2],
			[55, 79, 1, 3, 4],
			[65, -0.0875, 0, 5, 6],
			[51, 0.06808, 0, 7, 8],
			[51, 0.1831, 0, 9, 10],
			[20, -0.1145, 0, 11, 12],
			[35, 0.8, 1, 13, 14],
			[37, 0.9384, 0, 15, 16],
			[20, 0.01117, 0, 17, 18],
			[40, 0.1905, 0, 19, 20],
			[35, 0.02553, 1, 21, 22],
			[65, -0.161, 0, 23, 24],
			[31, 0.6927, 0, 25, 26],
			[55, 92, 0, 27, 28],
			[70, 0, 0, 29, 30],
			[40, 0.8008, 1, 31, 32],
			[62, 0.03125, 0, 33, 34],
			[35, 0.5017, 1, 35, 36],
			[29, -0.05376, 1, 37, 38],
			[65, -6333e-6, 0, 39, 40],
			[29, 3752e-6, 1, 41, 42],
			[89, 108.4, 0, 43, 44],
			[63, -0.01181, 0, 45, 46],
			[31, 1.224, 1, 47, 48],
			[55, 81, 0, 49, 50],
			[41, 0.8696, 1, 51, 52],
			[31, 0.9424, 1, 53, 54],
			[84, 0.03271, 1, 55, 56],
			[40, 1.444, 0, 57, 58],
			[65, 0.113, 1, 59, 60],
			[29, -2299e-6, 1, 61, 62],
			[8219e-6],
			[0.03984],
			[-0.01562],
			[8219e-6],
			[-0.02141],
			[-5334e-6],
			[-0.01147],
			[0.01598],
			[-0.06166],
			[-5519e-6],
			[859e-5],
			[-4491e-6],
			[-0.04669],
			[0.0294],
			[2394e-6],
			[0.0493],
			[-0.04712],
			[0.01834],
			[0.03291],
			[-0.01634],
			[8257e-6],
			[0.1001],
			[-0.02418],
			[0.03194],
			[1723e-6],
			[0.02744],
			[-0.03844],
			[-3414e-6],
			[-0.02223],
			[195e-5],
			[-0.04132],
			[0.01773]
		],
		[
			[0, -52.15, 0, 1, 2],
			[3, -107.4, 0, 3, 4],
			[4, 26.34, 0, 5, 6],
			[60, 5, 1, 7, 8],
			[21, -0.1372, 1, 9, 10],
			[83, 16.29, 1, 11, 12],
			[82, 0.3256, 1, 13, 14],
			[47, 0.4889, 1, 15, 16],
			[69, 5.152, 0, 17, 18],
			[76, 0.4444, 0, 19, 20],
			[76, 0.08582, 1, 21, 22],
			[64, -0.1761, 0, 23, 24],
			[74, -0.02357, 0, 25, 26],
			[94, 3.684, 0, 27, 28],
			[-0.05146],
			[19, -0.5318, 1, 29, 30],
			[20, -0.06827, 1, 31, 32],
			[30, 126, 1, 33, 34],
			[32, 1.321, 0, 35, 36],
			[30, 156, 1, 37, 38],
			[53, -8.174, 0, 39, 40],
			[96, 1, 0, 41, 42],
			[94, 9.346, 0, 43, 44],
			[57, 240, 0, 45, 46],
			[0, -20.11, 0, 47, 48],
			[0.07607],
			[803e-5],
			[23, 0.1057, 1, 49, 50],
			[24, 0.1893, 1, 51, 52],
			[0.05585],
			[-0.02569],
			[-0.0412],
			[0.03633],
			[663e-5],
			[0.0804],
			[-0.04301],
			[0.02558],
			[-0.03664],
			[0.01895],
			[-974e-5],
			[0.07193],
			[-0.03607],
			[0.03162],
			[0.0144],
			[0.1201],
			[-0.01291],
			[803e-5],
			[803e-5],
			[-0.04717],
			[0.01546],
			[-1254e-6],
			[-285e-5],
			[0.01604]
		],
		[
			[24, 0.02276, 0, 1, 2],
			[60, 0, 0, 3, 4],
			[60, 4, 0, 5, 6],
			[21, 0.042, 1, 7, 8],
			[58, -156, 1, 9, 10],
			[24, 0.09672, 0, 11, 12],
			[60, 23, 1, 13, 14],
			[94, 14.32, 0, 15, 16],
			[58, -114, 0, 17, 18],
			[59, 1, 1, 19, 20],
			[24, 0, 0, 21, 22],
			[94, 4.172, 0, 23, 24],
			[9, 0.4448, 0, 25, 26],
			[76, 0.02556, 0, 27, 28],
			[78, 15, 0, 29, 30],
			[50, 0.8538, 0, 31, 32],
			[91, 0.2, 0, 33, 34],
			[-0.03677],
			[76, -0.1067, 1, 35, 36],
			[11, 2, 0, 37, 38],
			[29, -2, 0, 39, 40],
			[69, 5.644, 0, 41, 42],
			[54, 73, 1, 43, 44],
			[9, 0.4448, 0, 45, 46],
			[7, 82.99, 1, 47, 48],
			[91, 0.168, 1, 49, 50],
			[29, 0.1253, 0, 51, 52],
			[39, 1.161, 0, 53, 54],
			[78, 2, 1, 55, 56],
			[69, 6.149, 0, 57, 58],
			[27, -5549e-6, 0, 59, 60],
			[0.01523],
			[-0.03107],
			[0.02963],
			[-0.02735],
			[-0.01365],
			[0.1156],
			[0.03003],
			[-0.03076],
			[-0.02553],
			[0.05474],
			[6857e-6],
			[-6052e-6],
			[-4569e-6],
			[0.01683],
			[-0.02604],
			[0.02932],
			[3082e-6],
			[-0.02488],
			[-9198e-6],
			[0.06592],
			[0.03516],
			[-0.04464],
			[-0.01911],
			[0.01473],
			[-0.03619],
			[0.01095],
			[0.02174],
			[-0.03089],
			[7701e-6],
			[0.05243]
		],
		[
			[64, 3e-3, 0, 1, 2],
			[2, 44.42, 0, 3, 4],
			[60, 20, 1, 5, 6],
			[51, 0.1914, 0, 7, 8],
			[73, -3, 0, 9, 10],
			[58, 174, 1, 11, 12],
			[49, 0.7765, 0, 13, 14],
			[70, 0, 0, 15, 16],
			[3, 9.903, 1, 17, 18],
			[28, -9072e-6, 1, 19, 20],
			[52, 2.253, 0, 21, 22],
			[16, 7, 0, 23, 24],
			[28, 0.02492, 0, 25, 26],
			[58, 72, 0, 27, 28],
			[34, 0.9405, 1, 29, 30],
			[81, -1409e-6, 0, 31, 32],
			[34, 0.995, 0, 33, 34],
			[88, 0.02023, 1, 35, 36],
			[8, 27.15, 0, 37, 38],
			[29, -2, 1, 39, 40],
			[88, 0.03886, 0, 41, 42],
			[31, 1.05, 0, 43, 44],
			[17, 0, 0, 45, 46],
			[70, 0, 0, 47, 48],
			[34, 1.399, 1, 49, 50],
			[64, 0.01233, 0, 51, 52],
			[56, 95.69, 0, 53, 54],
			[20, 0.02831, 1, 55, 56],
			[8, 55.63, 0, 57, 58],
			[31, 0.9286, 1, 59, 60],
			[88, 0.0252, 0, 61, 62],
			[4362e-7],
			[-0.03574],
			[-0.02767],
			[0.05156],
			[-0.02311],
			[6524e-6],
			[-0.01864],
			[0.09236],
			[-0.02378],
			[0.01402],
			[-0.01193],
			[8556e-6],
			[6129e-6],
			[-0.01809],
			[6399e-6],
			[0.01613],
			[-311e-5],
			[-0.0331],
			[4791e-6],
			[0.0405],
			[-0.06002],
			[-0.0142],
			[0.03458],
			[-0.03503],
			[-4628e-6],
			[0.02403],
			[-4628e-6],
			[0.03482],
			[-0.0124],
			[-0.05583],
			[-0.01574],
			[-4628e-6]
		],
		[
			[67, -0.4987, 1, 1, 2],
			[55, 78, 1, 3, 4],
			[25, 0.0533, 1, 5, 6],
			[93, 7.008, 0, 7, 8],
			[93, 13.06, 0, 9, 10],
			[55, 100, 1, 11, 12],
			[75, 0.3025, 1, 13, 14],
			[12, 7.044, 0, 15, 16],
			[22, 0.2103, 1, 17, 18],
			[18, 12, 0, 19, 20],
			[54, 100, 0, 21, 22],
			[49, 0.8658, 0, 23, 24],
			[41, 3.406, 1, 25, 26],
			[58, 42, 0, 27, 28],
			[55, 84, 0, 29, 30],
			[28, 0.02897, 1, 31, 32],
			[45, 0.02, 0, 33, 34],
			[54, 49, 0, 35, 36],
			[69, 4.281, 0, 37, 38],
			[8682e-6],
			[-0.03299],
			[33, 1, 1, 39, 40],
			[-0.01773],
			[80, 2, 1, 41, 42],
			[69, 3.718, 0, 43, 44],
			[76, 0.6405, 0, 45, 46],
			[69, 4.843, 0, 47, 48],
			[54, 53, 1, 49, 50],
			[8, 168, 0, 51, 52],
			[21, -2, 0, 53, 54],
			[58, 150, 1, 55, 56],
			[-0.03079],
			[0.01224],
			[0.06375],
			[0.01628],
			[0.01196],
			[-0.04679],
			[-0.02048],
			[0.0549],
			[0.08128],
			[5591e-6],
			[0.01002],
			[3349e-6],
			[3349e-6],
			[-2636e-6],
			[-0.02898],
			[0.02889],
			[0.06161],
			[-0.01298],
			[-0.01701],
			[0.02993],
			[-0.04049],
			[7627e-7],
			[-0.0113],
			[0.08131],
			[-0.02325],
			[0.03296]
		],
		[
			[82, -0.07689, 0, 1, 2],
			[45, 0.02927, 1, 3, 4],
			[78, 3, 0, 5, 6],
			[93, 13.66, 0, 7, 8],
			[51, 0.103, 0, 9, 10],
			[60, 10, 1, 11, 12],
			[78, 7, 0, 13, 14],
			[84, 7056e-6, 1, 15, 16],
			[39, 0.9628, 0, 17, 18],
			[45, 0.03704, 0, 19, 20],
			[76, 0.09579, 1, 21, 22],
			[81, -0.08132, 1, 23, 24],
			[66, 0.2131, 0, 25, 26],
			[82, -0.04707, 1, 27, 28],
			[76, 0.26, 1, 29, 30],
			[60, 9, 1, 31, 32],
			[51, 0.1715, 0, 33, 34],
			[84, 0.0864, 0, 35, 36],
			[35, 1.067, 1, 37, 38],
			[22, 0, 0, 39, 40],
			[22, -0.01055, 1, 41, 42],
			[81, -0.03319, 0, 43, 44],
			[34, 0, 1, 45, 46],
			[13, 0.02849, 0, 47, 48],
			[66, 0.2131, 1, 49, 50],
			[21, -0.02694, 0, 51, 52],
			[82, -0.01749, 0, 53, 54],
			[57, -27, 1, 55, 56],
			[83, 24.45, 0, 57, 58],
			[60, 13, 1, 59, 60],
			[51, 0.1627, 0, 61, 62],
			[-0.03649],
			[0.01868],
			[0.05484],
			[0.01868],
			[-0.05485],
			[3325e-6],
			[0.03219],
			[-0.01858],
			[-0.05657],
			[0.01207],
			[0.01152],
			[0.06215],
			[-5592e-6],
			[0.04723],
			[0.02724],
			[-0.01955],
			[0.01226],
			[-0.03823],
			[-0.05278],
			[-1017e-6],
			[-0.01417],
			[0.02366],
			[0.01941],
			[-0.03927],
			[-0.01255],
			[0.07891],
			[-0.02665],
			[0.02089],
			[3732e-6],
			[-5445e-6],
			[-0.02308],
			[0.017]
		],
		[
			[91, -0.068, 0, 1, 2],
			[70, 1, 0, 3, 4],
			[25, -5638e-6, 1, 5, 6],
			[88, 0.06911, 1, 7, 8],
			[13, 0.01336, 0, 9, 10],
			[25, -8301e-6, 1, 11, 12],
			[74, 0.5201, 1, 13, 14],
			[19, 0.02519, 0, 15, 16],
			[30, 113, 0, 17, 18],
			[75, 0.2024, 0, 19, 20],
			[41, 1.107, 1, 21, 22],
			[60, -1, 0, 23, 24],
			[6, 81.2, 0, 25, 26],
			[30, 282, 1, 27, 28],
			[51, 0.1088, 0, 29, 30],
			[78, 14, 0, 31, 32],
			[13, 0.01664, 0, 33, 34],
			[9, 0.4085, 0, 35, 36],
			[30, 199, 1, 37, 38],
			[48, 0.872, 1, 39, 40],
			[-1011e-6],
			[7, 93.14, 0, 41, 42],
			[19, -3373e-6, 1, 43, 44],
			[10, 147.4, 0, 45, 46],
			[92, 21.94, 0, 47, 48],
			[47, 0.981, 0, 49, 50],
			[13, 0.01493, 0, 51, 52],
			[31, 1.13, 1, 53, 54],
			[65, 0.0139, 0, 55, 56],
			[19, -0.1233, 1, 57, 58],
			[86, 6221e-6, 0, 59, 60],
			[0.01563],
			[-3665e-6],
			[0.04615],
			[0.01231],
			[3286e-6],
			[-0.0584],
			[0.02795],
			[-0.02293],
			[0.0456],
			[4007e-6],
			[-9938e-6],
			[-0.05989],
			[-0.02914],
			[-1011e-6],
			[3727e-6],
			[0.06495],
			[-7548e-6],
			[0.02179],
			[-0.03477],
			[0.02993],
			[-1328e-6],
			[-0.04875],
			[2318e-6],
			[-9247e-6],
			[0.02962],
			[-0.01668],
			[-0.03264],
			[0.03089],
			[-0.01202],
			[0.05976]
		],
		[
			[2, 60.1, 1, 1, 2],
			[13, 0.01664, 0, 3, 4],
			[20, 0.01117, 0, 5, 6],
			[65, -0.09625, 1, 7, 8],
			[69, 5.365, 0, 9, 10],
			[96, 2, 0, 11, 12],
			[88, 0.01156, 0, 13, 14],
			[47, 0.9659, 1, 15, 16],
			[24, 4404e-6, 0, 17, 18],
			[29, 0.06042, 1, 19, 20],
			[94, 3.516, 0, 21, 22],
			[25, 0, 0, 23, 24],
			[25, 8055e-6, 0, 25, 26],
			[73, -10, 0, 27, 28],
			[29, -0.05376, 0, 29, 30],
			[50, 0.7879, 0, 31, 32],
			[5, 44.1, 0, 33, 34],
			[47, 0.09574, 0, 35, 36],
			[2, 44.42, 1, 37, 38],
			[83, 28.03, 1, 39, 40],
			[73, 5, 1, 41, 42],
			[31, 1.306, 0, 43, 44],
			[47, 1.298, 1, 45, 46],
			[38, 0.873, 0, 47, 48],
			[50, 0.8156, 0, 49, 50],
			[19, 0.01258, 1, 51, 52],
			[32, 2.52, 0, 53, 54],
			[49, 0.7765, 0, 55, 56],
			[60, 1, 0, 57, 58],
			[69, 4.17, 0, 59, 60],
			[31, 1.521, 0, 61, 62],
			[-4884e-7],
			[0.034],
			[3952e-6],
			[-4884e-7],
			[-4884e-7],
			[0.04213],
			[-4884e-7],
			[0.02795],
			[-0.01568],
			[-4884e-7],
			[-4884e-7],
			[-0.02288],
			[-4884e-7],
			[-0.03354],
			[-0.0319],
			[-4884e-7],
			[169e-6],
			[-0.01113],
			[0.01977],
			[3849e-7],
			[0.02015],
			[-0.02532],
			[-0.02126],
			[0.02727],
			[0.01131],
			[-0.04767],
			[0.07064],
			[0.02266],
			[-0.03819],
			[-7374e-6],
			[4576e-6],
			[0.06044]
		],
		[
			[67, -0.8403, 1, 1, 2],
			[66, 0.2131, 1, 3, 4],
			[25, -5638e-6, 1, 5, 6],
			[66, 6667e-7, 1, 7, 8],
			[38, 1.649, 1, 9, 10],
			[25, -8301e-6, 1, 11, 12],
			[26, -4135e-6, 0, 13, 14],
			[88, 0.03138, 1, 15, 16],
			[32, 0.8281, 1, 17, 18],
			[19, 0.02049, 1, 19, 20],
			[0.02965],
			[92, 1.35, 0, 21, 22],
			[26, 0.012, 0, 23, 24],
			[34, 1.535, 1, 25, 26],
			[56, 90.83, 0, 27, 28],
			[-0.03781],
			[-3636e-6],
			[64, -0.4013, 1, 29, 30],
			[54, 75, 1, 31, 32],
			[7, -213.3, 0, 33, 34],
			[-2442e-6],
			[20, 0.02259, 1, 35, 36],
			[85, 2, 0, 37, 38],
			[64, 0.06533, 0, 39, 40],
			[95, 132.6, 0, 41, 42],
			[25, 0.142, 0, 43, 44],
			[56, 73.27, 0, 45, 46],
			[60, -4, 0, 47, 48],
			[51, 0.1473, 0, 49, 50],
			[6553e-6],
			[0.07985],
			[0.01182],
			[-0.02563],
			[-3858e-6],
			[-0.05182],
			[-0.02113],
			[-743e-5],
			[1655e-6],
			[-743e-5],
			[-0.03881],
			[0.01111],
			[-0.01209],
			[0.05586],
			[-0.01025],
			[0.03763],
			[-0.01054],
			[0.0348],
			[-0.01924],
			[8626e-6],
			[-0.01551],
			[0.02066]
		],
		[
			[28, -2, 0, 1, 2],
			[10, 57.08, 0, 3, 4],
			[10, -6.722, 0, 5, 6],
			[83, 176.4, 1, 7, 8],
			[23, 0.1531, 0, 9, 10],
			[10, -73.99, 0, 11, 12],
			[81, 0.01874, 1, 13, 14],
			[87, 2119e-6, 0, 15, 16],
			[0.03251],
			[5, 13.49, 1, 17, 18],
			[35, 1.172, 1, 19, 20],
			[12, 20.48, 0, 21, 22],
			[18, 53, 0, 23, 24],
			[56, 104.4, 0, 25, 26],
			[87, 0.07315, 0, 27, 28],
			[76, 0.1036, 1, 29, 30],
			[0, 29.77, 0, 31, 32],
			[5, -47.92, 0, 33, 34],
			[87, 9062e-6, 0, 35, 36],
			[41, 0, 1, 37, 38],
			[47, 1.081, 0, 39, 40],
			[47, 0.09574, 0, 41, 42],
			[47, 0, 1, 43, 44],
			[26, 0.04941, 1, 45, 46],
			[26, -7799e-7, 1, 47, 48],
			[67, -0.2528, 1, 49, 50],
			[25, -0.08107, 1, 51, 52],
			[26, -0.1065, 0, 53, 54],
			[39, 0.161, 0, 55, 56],
			[-0.01122],
			[-3675e-6],
			[-0.01077],
			[-0.05327],
			[-854e-5],
			[0.09615],
			[0.03222],
			[-0.02372],
			[-0.03385],
			[0.01757],
			[0.04288],
			[-0.03028],
			[0.01659],
			[-5598e-6],
			[0.02653],
			[0.07435],
			[7283e-6],
			[-0.03932],
			[0.05124],
			[0.01068],
			[-0.01744],
			[-1147e-6],
			[-0.06693],
			[-3143e-6],
			[-0.0388],
			[0.0275],
			[0.02734],
			[-0.04196]
		],
		[
			[41, 0.8844, 1, 1, 2],
			[22, 0.1274, 1, 3, 4],
			[38, 0.873, 1, 5, 6],
			[76, -0.1067, 1, 7, 8],
			[76, 0.2981, 0, 9, 10],
			[34, 0.8729, 1, 11, 12],
			[24, 0.2584, 0, 13, 14],
			[49, 1.129, 1, 15, 16],
			[26, -3024e-6, 0, 17, 18],
			[9, 0.4085, 0, 19, 20],
			[59, 20, 0, 21, 22],
			[76, 0.1644, 1, 23, 24],
			[67, -0.05467, 0, 25, 26],
			[62, -0.0904, 0, 27, 28],
			[86, 0.02889, 0, 29, 30],
			[58, 114, 0, 31, 32],
			[18, 28, 0, 33, 34],
			[62, 791e-5, 0, 35, 36],
			[33, 1.114, 1, 37, 38],
			[18, 1, 0, 39, 40],
			[26, 0.06255, 1, 41, 42],
			[53, 9.456, 1, 43, 44],
			[68, 0.01818, 0, 45, 46],
			[28, -0.09322, 0, 47, 48],
			[29, -8969e-6, 0, 49, 50],
			[91, 0.068, 0, 51, 52],
			[26, 0.02371, 1, 53, 54],
			[94, 5.738, 0, 55, 56],
			[26, 0.08307, 0, 57, 58],
			[26, 0.1379, 1, 59, 60],
			[54, 89, 0, 61, 62],
			[0.0329],
			[-4159e-6],
			[-0.04489],
			[-5404e-6],
			[-0.02114],
			[4945e-6],
			[-5448e-6],
			[0.02282],
			[0.04399],
			[-0.03471],
			[0.03556],
			[-0.03205],
			[-0.04661],
			[0.03335],
			[-3233e-6],
			[0.06735],
			[0.01337],
			[-0.02867],
			[0.06199],
			[-5278e-6],
			[-9702e-6],
			[0.02497],
			[0.03204],
			[-0.01922],
			[-0.04645],
			[-0.01113],
			[-1926e-6],
			[0.0204],
			[0.04724],
			[-0.02181],
			[-0.03877],
			[0.02721]
		],
		[
			[66, -0.01867, 0, 1, 2],
			[22, -0.3116, 0, 3, 4],
			[66, 0, 1, 5, 6],
			[58, 18, 0, 7, 8],
			[11, 1, 0, 9, 10],
			[7, -3.173, 0, 11, 12],
			[66, 6333e-6, 0, 13, 14],
			[41, 0.9259, 0, 15, 16],
			[10, 163.3, 0, 17, 18],
			[93, 14.94, 0, 19, 20],
			[58, 0, 0, 21, 22],
			[64, -0.0834, 0, 23, 24],
			[54, 46, 0, 25, 26],
			[76, 0.04897, 0, 27, 28],
			[13, 0.02943, 0, 29, 30],
			[10, -95.99, 0, 31, 32],
			[26, -0.01733, 0, 33, 34],
			[26, 0.03346, 0, 35, 36],
			[1527e-6],
			[0, 106.8, 0, 37, 38],
			[24, -0.07587, 0, 39, 40],
			[94, 10.27, 0, 41, 42],
			[7, 93.14, 1, 43, 44],
			[93, 9.854, 0, 45, 46],
			[33, 0.9444, 0, 47, 48],
			[75, 0.145, 0, 49, 50],
			[58, 60, 0, 51, 52],
			[51, 0.1392, 0, 53, 54],
			[10, -16.29, 0, 55, 56],
			[8, 19.23, 0, 57, 58],
			[17, 47, 0, 59, 60],
			[0.05758],
			[-0.01562],
			[0.01672],
			[-0.03356],
			[-0.06484],
			[-2907e-6],
			[-0.01376],
			[0.0338],
			[0.01572],
			[-0.05718],
			[-0.01944],
			[0.01433],
			[0.01801],
			[2396e-6],
			[-0.03467],
			[0.0258],
			[0.0915],
			[8252e-6],
			[0.06848],
			[-9357e-6],
			[-8237e-6],
			[-0.03008],
			[2665e-6],
			[0.04205],
			[-0.01545],
			[0.108],
			[-4608e-6],
			[3289e-6],
			[-5075e-6],
			[-0.02684]
		],
		[
			[1, 60.26, 0, 1, 2],
			[20, 7992e-6, 1, 3, 4],
			[20, 0.01117, 0, 5, 6],
			[60, 9, 1, 7, 8],
			[93, 13.66, 0, 9, 10],
			[40, 0.3629, 1, 11, 12],
			[7, 42.34, 0, 13, 14],
			[5, 27.34, 1, 15, 16],
			[51, 0.1445, 0, 17, 18],
			[25, -2166e-6, 0, 19, 20],
			[96, 0, 0, 21, 22],
			[69, 3.83, 0, 23, 24],
			[62, -0.0904, 0, 25, 26],
			[41, 2.414, 0, 27, 28],
			[88, 0.01217, 0, 29, 30],
			[69, 9.4, 0, 31, 32],
			[60, 0, 0, 33, 34],
			[88, 5114e-6, 1, 35, 36],
			[26, 0.1379, 0, 37, 38],
			[25, -5638e-6, 0, 39, 40],
			[0, 38.66, 0, 41, 42],
			[0, 50.44, 0, 43, 44],
			[41, 0.8372, 0, 45, 46],
			[54, 46, 1, 47, 48],
			[54, 75, 1, 49, 50],
			[52, 6.218, 0, 51, 52],
			[93, 5.63, 0, 53, 54],
			[93, 20.63, 0, 55, 56],
			[48, 0.6351, 0, 57, 58],
			[60, -1, 0, 59, 60],
			[69, 6.149, 0, 61, 62],
			[-0.03325],
			[0.01144],
			[-0.02009],
			[0.02528],
			[-1622e-6],
			[-0.05469],
			[0.02977],
			[-0.02845],
			[-0.0369],
			[0.03892],
			[-0.02151],
			[-0.06812],
			[0.02891],
			[-0.02639],
			[0.01122],
			[-0.03834],
			[0.04908],
			[-3477e-6],
			[-0.03891],
			[-5932e-6],
			[-0.02635],
			[-8332e-6],
			[-8332e-6],
			[2034e-6],
			[0.1033],
			[-0.01858],
			[0.04634],
			[-0.02232],
			[0.05588],
			[0.01298],
			[-0.01213],
			[5813e-6]
		],
		[
			[30, 156, 0, 1, 2],
			[10, 102.6, 0, 3, 4],
			[67, 0.1413, 0, 5, 6],
			[87, 6191e-6, 0, 7, 8],
			[9, 0.9769, 0, 9, 10],
			[21, -6364e-6, 1, 11, 12],
			[50, 1.257, 0, 13, 14],
			[18, 22, 0, 15, 16],
			[40, 1.02, 1, 17, 18],
			[5, 150.1, 1, 19, 20],
			[49, 0.685, 1, 21, 22],
			[6, 217.2, 0, 23, 24],
			[9, 0.9536, 0, 25, 26],
			[81, 627e-5, 0, 27, 28],
			[50, 1.378, 0, 29, 30],
			[9, 0.717, 0, 31, 32],
			[81, -0.03976, 0, 33, 34],
			[80, 3, 0, 35, 36],
			[61, -0.08894, 0, 37, 38],
			[21, -0.02694, 1, 39, 40],
			[9, 0.6806, 0, 41, 42],
			[5, 94.18, 1, 43, 44],
			[81, 627e-5, 0, 45, 46],
			[67, -0.03492, 0, 47, 48],
			[21, -0.3198, 1, 49, 50],
			[67, -0.07467, 0, 51, 52],
			[10, -33.23, 0, 53, 54],
			[72, 0, 0, 55, 56],
			[0, 158.9, 0, 57, 58],
			[0, 41.13, 0, 59, 60],
			[9, 0.634, 0, 61, 62],
			[-4766e-6],
			[0.03933],
			[0.04049],
			[-0.01395],
			[-0.01311],
			[-0.03638],
			[-0.03229],
			[-1745e-6],
			[-0.01078],
			[0.03597],
			[-5059e-6],
			[0.01877],
			[-2439e-6],
			[0.05096],
			[-0.07756],
			[-0.01817],
			[3024e-6],
			[0.01825],
			[-0.0355],
			[1527e-6],
			[-0.0113],
			[7454e-6],
			[0.02119],
			[-0.02072],
			[0.01584],
			[-0.02726],
			[-0.04295],
			[-2609e-6],
			[-8869e-6],
			[0.06807],
			[-0.02107],
			[0.02309]
		],
		[
			[66, -0.01867, 0, 1, 2],
			[42, 0.9856, 0, 3, 4],
			[66, 0, 1, 5, 6],
			[31, 0.3548, 0, 7, 8],
			[33, 3.27, 1, 9, 10],
			[31, 0.7671, 1, 11, 12],
			[3, 32.8, 0, 13, 14],
			[55, 53, 1, 15, 16],
			[40, 1.092, 0, 17, 18],
			[1, 54.3, 0, 19, 20],
			[66, -0.04767, 0, 21, 22],
			[33, 0.9356, 0, 23, 24],
			[58, 60, 0, 25, 26],
			[69, 6.352, 0, 27, 28],
			[3, 330.3, 1, 29, 30],
			[3, 177.2, 0, 31, 32],
			[86, 1147e-6, 0, 33, 34],
			[1, 58.25, 0, 35, 36],
			[69, 7.06, 0, 37, 38],
			[84, 0.04613, 0, 39, 40],
			[65, -0.014, 1, 41, 42],
			[96, 0, 0, 43, 44],
			[1, 190, 0, 45, 46],
			[4, 347.8, 0, 47, 48],
			[65, 0.02775, 0, 49, 50],
			[4, 54.73, 0, 51, 52],
			[73, -20, 1, 53, 54],
			[41, 0.9133, 1, 55, 56],
			[65, -0.1887, 0, 57, 58],
			[55, 79, 1, 59, 60],
			[40, 1.25, 0, 61, 62],
			[0.03274],
			[-3233e-6],
			[0.01766],
			[-3233e-6],
			[-3233e-6],
			[5913e-6],
			[612e-5],
			[0.0378],
			[-0.01326],
			[-3233e-6],
			[-0.03973],
			[-5827e-6],
			[-0.02224],
			[-3233e-6],
			[-3233e-6],
			[-0.04119],
			[0.06222],
			[-0.02308],
			[9097e-6],
			[-0.02726],
			[-0.02769],
			[4243e-6],
			[0.02283],
			[-0.03644],
			[-0.02841],
			[6799e-6],
			[0.01429],
			[-0.04271],
			[-1887e-6],
			[0.01183],
			[-0.01856],
			[5054e-6]
		]
	],
	strength: { intercept: -3.3, slope: 1.236, slipsPerThousandKm: 20 }
};

// src/lib/slip/strengthOfSigns.ts
function strengthOfSigns(logOdds) {
	const { intercept, slope } = scorer_default.strength;
	return 1 / (1 + Math.exp(-(intercept + slope * logOdds)));
}

// src/lib/slip/reportSizeDeg.ts
function reportSizeDeg(context, placed) {
	const long = excessDeg(context.signals, placed.from, placed.to, context.base.before7[placed.from]);
	return Number.isNaN(long) ? placed.carefulDeg : Math.max(placed.carefulDeg, long);
}

// src/lib/slip/scoreCandidate.ts
function scoreCandidate(features) {
	return treeLogOdds(scorer_default, features);
}

// src/lib/slip/takeEvents.ts
function takeEvents(context) {
	const strong = [];
	for (const candidate of context.candidates) {
		const placed = placeCandidate(context, candidate);
		if (reportSizeDeg(context, placed) < LEAST_REPORTED_DEG) continue;
		const logOdds = scoreCandidate(candidateFeatures(context, placed));
		if (logOdds >= LEAST_LOG_ODDS) strong.push({ placed, logOdds });
	}
	strong.sort((a, b) => b.logOdds - a.logOdds);
	const taken = [];
	for (const one of strong) {
		if (taken.every((other) => Math.abs(other.placed.from - one.placed.from) >= SAME_SLIP_S)) taken.push(one);
	}
	return taken.sort((a, b) => a.placed.from - b.placed.from);
}

// src/lib/slip/findTyreSpins.ts
var LEAST_GAIN_MPS = 0.7;
var LEAST_GAIN = 0.14;
var LEAST_MASS_KG2 = 60;
var RADIUS_M = 0.33;
var PEAK = 1.3;
var SLOWEST_MPS = 1.5;
var FASTEST_MPS3 = 6;
var LEAST_HUB_TORQUE_NM2 = 30;
var TOGETHER = 0.05;
var BACK_WITHIN_S = 3;
var BACK_SHARE = 0.4;
function findTyreSpins(context, powerAt) {
	const { signals } = context;
	const { speedMps, logRatio, pressing, grid } = signals;
	const spins = [];
	for (let t2 = 3; t2 + BACK_WITHIN_S + 1 < grid.seconds; t2++) {
		const before = speedMps[t2 - 1];
		const gainMps = speedMps[t2] - before;
		if (!(gainMps >= Math.max(LEAST_GAIN_MPS, LEAST_GAIN * before))) continue;
		if (!(before >= SLOWEST_MPS && before <= FASTEST_MPS3) || !pressing[t2 - 1] || !pressing[t2 - 2])
			continue;
		if (!(Math.abs(speedMps[t2 - 2] - before) < BACK_SHARE * gainMps)) continue;
		if (!(Math.abs(logRatio[t2] - logRatio[t2 - 1]) < TOGETHER)) continue;
		const torqueNm = onsetTorque(context, t2, powerAt);
		if (!(torqueNm >= LEAST_HUB_TORQUE_NM2)) continue;
		if (gainMps < (PEAK * torqueNm) / (RADIUS_M * LEAST_MASS_KG2)) continue;
		let to = t2;
		while (to <= t2 + BACK_WITHIN_S && speedMps[to] - before > BACK_SHARE * gainMps) to++;
		if (to > t2 + BACK_WITHIN_S || !(Math.abs(logRatio[to] - logRatio[t2 - 1]) < TOGETHER)) continue;
		spins.push({ from: t2, to: to - 1, gainMps });
		t2 = to;
	}
	return spins;
}

// src/lib/slip/tyreSpinEvents.ts
var UNKNOWN_STRENGTH = 0.5;
var SIZE_DOUBT = 0.4;
function tyreSpinEvents(context, isObserved2, powerAt) {
	return findTyreSpins(context, powerAt).map((spin) => {
		const gear = onsetGear(context, spin.from);
		const torques = onsetTorques(context, spin.from, powerAt);
		const crankDeg = gainOnGround(context, spin);
		return {
			startS: spin.from,
			endS: spin.to + 1,
			kind: 'possible tyre spin',
			overrunCrankDeg: {
				value: crankDeg,
				lower: (1 - SIZE_DOUBT) * crankDeg,
				upper: (1 + SIZE_DOUBT) * crankDeg
			},
			overrunHubDeg: crankDeg * (gear?.ratio ?? 1),
			gear,
			hubTorqueNm: torques.length
				? { value: mean2(torques), lower: Math.min(...torques), upper: Math.max(...torques) }
				: null,
			powerLost: null,
			strength: UNKNOWN_STRENGTH,
			atM: context.signals.grid.distanceM[spin.from],
			observed: isObserved2(spin.from),
			reasons: [
				`For a tyre that spun: wheel and crank sped up together by ${(3.6 * spin.gainMps).toFixed(1)} km/h within a second, more than the drive can have moved bicycle and rider, and fell back.`,
				'Against a slip: crank and wheel stayed in the proportion of the gear.'
			]
		};
	});
}
function gainOnGround(context, { from, to }) {
	const { cadenceRpm } = context.signals.grid;
	let sum = 0;
	for (let t2 = from; t2 <= to; t2++) sum += 6 * Math.max(0, cadenceRpm[t2] - cadenceRpm[from - 1]);
	return sum;
}
function mean2(values) {
	return values.reduce((sum, value) => sum + value, 0) / values.length;
}

// src/lib/slip/analyseRide.ts
var SLIP2 = DRIVE_STATES.indexOf('slip');
function analyseRide(ride, bike = {}) {
	const grid = secondGrid(ride, bike.circumferenceM ?? DEFAULT_CIRCUMFERENCE_M);
	const context = rideContext(driveSignals(grid), bike);
	const { named } = context;
	const powerAt = bike.powerAt ?? 'crank';
	const logger = isLoggerRide(ride);
	const limitDeg = logger ? loggerDetectionLimit(context) : detectionLimit(context);
	if (ride.trainer || ride.motorAssisted || !speedFollowsHub(ride, bike)) limitDeg.fill(NaN);
	const observed = observedStretches(grid, limitDeg);
	const taken = logger ? [] : takeEvents(context);
	const states = driveStates(
		context,
		taken.map(({ placed }) => placed)
	);
	const learning = rideLearning(ride, context.signals, named, bike);
	const facts = {
		powerAt,
		followsHub: speedFollowsHub(ride, bike),
		byTurn: learning.cadenceByTurn
	};
	const seen = (second) => isObserved(observed, second);
	const found = logger
		? loggerEvents(ride, context, named.gears, bike)
		: taken.map(({ placed, logOdds }) =>
				describeEvent(context, placed, strengthOfSigns(logOdds), seen, facts)
			);
	const spins = logger || !facts.followsHub ? [] : tyreSpinEvents(context, seen, powerAt);
	const events = [...nameChainSkips(found, named.gears), ...spins].sort((a, b) => a.startS - b.startS);
	for (const event of found) states.fill(SLIP2, Math.floor(event.startS), Math.ceil(event.endS));
	const marksS = ride.marks.map((mark) => mark.timeS);
	return {
		analysisVersion: ANALYSIS_VERSION,
		totalM: grid.distanceM[grid.seconds - 1] ?? 0,
		observedM: observed.reduce((sum, stretch) => sum + stretch.endM - stretch.startM, 0),
		drivenM: drivenDistance(grid, states),
		observed,
		events,
		gears: named.gears,
		warnings: [...ride.warnings, ...rideWarnings(ride, context, bike, named, learning)],
		learning,
		marksS,
		gaps: ride.gaps,
		exposure: rideExposure(context, states, observed, marksS, powerAt),
		traces: driveTraces(context, named.gears, states, limitDeg, powerAt)
	};
}
function isObserved(observed, second) {
	return observed.some((stretch) => second >= stretch.startS && second < stretch.endS);
}
var UNDER_DRIVE2 = DRIVE_STATES.map((state) => ['driving', 'shifting', 'picking up', 'slip'].includes(state));
function drivenDistance(grid, states) {
	let sum = 0;
	for (let t2 = 0; t2 + 1 < grid.seconds; t2++) {
		if (UNDER_DRIVE2[states[t2]]) sum += grid.distanceM[t2 + 1] - grid.distanceM[t2];
	}
	return sum;
}

// tests/bench/zz-prof.ts
var rides = [...(await labelledRides('real')), ...(await labelledRides('simulated'))];
var s = 0;
for (const r of rides.slice(0, 4)) analyseRide(r.ride, r.bike);
var t = process.cpuUsage().user;
var m = performance.now();
for (let k = 0; k < 2; k++)
	for (const r of rides) {
		analyseRide(r.ride, r.bike);
		s += r.ride.durationS;
	}
var u = (process.cpuUsage().user - t) / 1e6;
console.log(
	'samples',
	s,
	'user',
	u.toFixed(2),
	'wall',
	((performance.now() - m) / 1e3).toFixed(2),
	Math.round(s / u / 1e3),
	'k/s'
);
/*! Bundled license information:

xmlchars/xml/1.0/ed5.js:
  (**
   * Character classes and associated utilities for the 5th edition of XML 1.0.
   *
   * @author Louis-Dominique Dubeau
   * @license MIT
   * @copyright Louis-Dominique Dubeau
   *)

xmlchars/xml/1.1/ed2.js:
  (**
   * Character classes and associated utilities for the 2nd edition of XML 1.1.
   *
   * @author Louis-Dominique Dubeau
   * @license MIT
   * @copyright Louis-Dominique Dubeau
   *)

xmlchars/xmlns/1.0/ed3.js:
  (**
   * Character class utilities for XML NS 1.0 edition 3.
   *
   * @author Louis-Dominique Dubeau
   * @license MIT
   * @copyright Louis-Dominique Dubeau
   *)
*/
