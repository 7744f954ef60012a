import { liesBetweenFaces, type ChainSign, type StackElement } from './stackElement';
import { toleranceStack, type ToleranceStack } from './toleranceStack';

/** One chain through the elements: the width over the faces, the engagement depth or the end float. */
export interface Chain {
	/** by the drawings */
	readonly drawn: ToleranceStack;
	/** measured lengths where there are some, tolerances for the rest */
	readonly built: ToleranceStack;
	/** sum of the measured lengths; null until every element of the chain is measured */
	readonly measuredMm: number | null;
	/** labels of the elements that are not measured */
	readonly notMeasured: readonly string[];
}

export interface StackUp {
	/** over-locknut distance that the elements come to */
	readonly total: Chain;
	/** null when no element says what it does to it */
	readonly engagementDepth: Chain | null;
	readonly endFloat: Chain | null;
}

/**
 * Adds up the axial elements of a hub: the width over the locknut or end-cap faces, and, where elements say
 * what a thicker one does to them, the engagement depth and the end float that are left.
 *
 * @param elements in any order, lengths in millimetres
 * @returns chains with their limits; engagement depth and end float null when no element is part of them
 * @throws RangeError for negative tolerances or lengths that are not numbers
 * @example stackUp([{ label: 'shell', side: 'hub', nominalMm: 130, minusMm: 0, plusMm: 0.2,
 *   measuredMm: null, inEngagement: 0, inEndFloat: 0 }]).total.drawn.worstCase.highestMm // 130.2
 * Source: see toleranceStack.
 */
export function stackUp(elements: readonly StackElement[]): StackUp {
	return {
		total: chain(elements, (element) => (liesBetweenFaces(element.side) ? 1 : 0)),
		engagementDepth: chainOrNull(elements, ({ inEngagement }) => inEngagement),
		endFloat: chainOrNull(elements, ({ inEndFloat }) => inEndFloat)
	};
}

function chainOrNull(
	elements: readonly StackElement[],
	signOf: (element: StackElement) => ChainSign
): Chain | null {
	return elements.some((element) => signOf(element) !== 0) ? chain(elements, signOf) : null;
}

function chain(elements: readonly StackElement[], signOf: (element: StackElement) => ChainSign): Chain {
	const links = elements.flatMap((element) => {
		const sign = signOf(element);
		return sign === 0 ? [] : [{ ...element, sign }];
	});
	const notMeasured = links.filter(({ measuredMm }) => measuredMm === null).map(({ label }) => label);
	const built = toleranceStack(
		links.map((link) =>
			link.measuredMm === null ? link : { ...link, nominalMm: link.measuredMm, minusMm: 0, plusMm: 0 }
		)
	);
	return {
		drawn: toleranceStack(links),
		built,
		measuredMm: links.length > 0 && notMeasured.length === 0 ? built.nominalMm : null,
		notMeasured
	};
}
