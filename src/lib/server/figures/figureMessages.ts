import type { FigureKey } from './figureKey';
import type { FigureKind } from './figureKinds';

/** Asks the child process for figures. */
export interface FigureRequest {
	readonly requestId: number;
	readonly kind: FigureKind;
	readonly asked: unknown;
	/** how figures are written in sentences: the browser's language, the workshop's zone */
	readonly locale: string;
	readonly zone: string;
}

/** What the child process computed. */
export interface ComputedFigures {
	readonly kind: 'computed';
	readonly requestId: number;
	/** how the ledger stood */
	readonly key: FigureKey;
	/** the figures by `packFigures`, kept as bytes: most of them are asked for seldom */
	readonly bytes: Uint8Array;
}

export type FigureAnswer =
	| ComputedFigures
	| { readonly kind: 'refused'; readonly requestId: number; readonly code: string; readonly sentence: string }
	| { readonly kind: 'failed'; readonly requestId: number; readonly detail: string };
