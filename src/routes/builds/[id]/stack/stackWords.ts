import type { StackView } from '$lib/server';
import type { Formats } from '$lib/ui/formats';

type Chain = StackView['sums']['total'];
type Range = Chain['drawn']['worstCase'];

/** One line of the table that sets stacks side by side. */
export interface StackRow {
	readonly name: string;
	/** what is counted, where the name does not say it */
	readonly hint?: string;
	readonly value: string;
	readonly strong?: boolean;
}

/** Millimetres as a caliper or micrometer gives them. */
export function mm(value: number, formats: Formats): string {
	return `${formats.number(value, 2)}\u00a0mm`;
}

/** Everything that follows from a stack, in the order in which it is looked at. */
export function stackRows(stack: StackView, formats: Formats): StackRow[] {
	const { total, engagementDepth, endFloat } = stack.sums;
	return [
		{ name: 'Over-locknut distance wanted', value: orNot(stack.wantedOverLocknutMm, formats) },
		{ name: 'Total by the drawings', value: mm(total.drawn.nominalMm, formats) },
		{ name: 'Worst case', hint: 'all at their limits at once', value: range(total.drawn.worstCase, formats) },
		{
			name: 'Root sum square',
			hint: 'nearly all assemblies, if lengths vary each for itself',
			value: range(total.drawn.rootSumSquare, formats)
		},
		{ name: 'Total measured', value: measured(total, formats), strong: true },
		{ name: 'Spacer needed', value: spacerWords(stack, formats), strong: true },
		{ name: 'From the drawer', value: drawerWords(stack, formats) },
		{ name: 'That spacer moves the rim', value: shiftWords(stack, formats) },
		{ name: 'Rim offset', hint: '+ is towards the drive side', value: rimWords(stack, formats) },
		{ name: 'Engagement depth left', value: chainWords(engagementDepth, formats), strong: true },
		{ name: 'End float left', value: chainWords(endFloat, formats), strong: true }
	];
}

function range({ lowestMm, highestMm }: Range, formats: Formats): string {
	return `${formats.number(lowestMm, 2)} to ${mm(highestMm, formats)}`;
}

function orNot(value: number | null, formats: Formats): string {
	return value === null ? 'not known' : mm(value, formats);
}

function measured(chain: Chain, formats: Formats): string {
	if (chain.measuredMm !== null) return mm(chain.measuredMm, formats);
	const missing = chain.notMeasured.length;
	return `${formats.number(missing)} not measured: ${range(chain.built.worstCase, formats)}`;
}

function chainWords(chain: Chain | null, formats: Formats): string {
	if (chain === null) return 'not known';
	if (chain.measuredMm !== null) return `${mm(chain.measuredMm, formats)} measured`;
	return `${range(chain.built.worstCase, formats)}, worst case`;
}

function spacerWords({ spacers }: StackView, formats: Formats): string {
	if (spacers === null) return 'not known';
	const { neededMm, from } = spacers;
	const by = from === 'measured' ? 'by what was measured' : 'by the drawings';
	if (Math.abs(neededMm) < 0.005) return `none, ${by}`;
	if (neededMm < 0) return `${mm(-neededMm, formats)} too wide, ${by}`;
	return `${mm(neededMm, formats)}, ${by}`;
}

function drawerWords({ spacers }: StackView, formats: Formats): string {
	if (spacers === null) return 'not known';
	if (spacers.choice === null)
		return spacers.neededMm < 0 ? 'no spacer helps' : 'the drawer makes no such width';
	const { spacers: chosen, differenceMm } = spacers.choice;
	if (chosen.length === 0) return 'none needed';
	const off = Math.abs(differenceMm) < 0.005 ? '' : `, ${signed(differenceMm, formats)} off`;
	return `${chosen.map(({ count, thicknessMm }) => `${formats.number(count)} × ${mm(thicknessMm, formats)}`).join(' + ')}${off}`;
}

function shiftWords({ spacers }: StackView, formats: Formats): string {
	if (spacers === null) return 'not known';
	if (spacers.rimShiftMm === null) return 'nothing is added';
	const { left, right } = spacers.rimShiftMm;
	return `${signed(left, formats)} added on the left, ${signed(right, formats)} on the right`;
}

function rimWords({ rim }: StackView, formats: Formats): string {
	const wanted = rim.wantedMm === null ? '' : `; wanted ${signed(rim.wantedMm, formats)}`;
	if (rim.offsetMm === null) {
		if (rim.shiftMm !== null)
			return `moves by ${signed(rim.shiftMm, formats)} against "${rim.dishedOn}"${wanted}`;
		return `not known${wanted}`;
	}
	const how = rim.from === 'measured' ? 'measured' : `worked out from "${rim.dishedOn}"`;
	return `${signed(rim.offsetMm, formats)}, ${how}${wanted}`;
}

export function signed(value: number, formats: Formats): string {
	const sign = value < -0.005 ? '−' : value > 0.005 ? '+' : '';
	return `${sign}${mm(Math.abs(value), formats)}`;
}
