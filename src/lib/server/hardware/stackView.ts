import { chooseSpacers, type SpacerChoice } from '$lib/hardware/chooseSpacers';
import { rimShift } from '$lib/hardware/rimShift';
import { rimShiftOfSpacer } from '$lib/hardware/rimShiftOfSpacer';
import { STACK_SIDES, type StackSide } from '$lib/hardware/stackElement';
import { stackUp, type StackUp } from '$lib/hardware/stackUp';
import { stackWarnings, type StackWarning } from '$lib/hardware/stackWarnings';
import type { Ledger } from '../ledger/openLedger';
import { buildLock } from './buildLock';
import { listSpacers, type StockedSpacer } from './spacersStock';
import { hardwareLimits, type HardwareLimits } from './stackLimits';
import { stacksOfBuild, type StackRecord } from './stackRows';
import { wheelsOfBuild, type WheelForStack } from './stackWheels';

/** Where the rim comes to stand on a stack, millimetres from the midplane, positive towards the drive side. */
export interface RimView {
	offsetMm: number | null;
	/** measured on this stack, or worked out from the one on which the wheel was dished */
	from: 'measured' | 'worked out' | 'not known';
	/** shift against the stack on which the wheel was dished; null when there is none or the hub differs */
	shiftMm: number | null;
	dishedOn: string | null;
	wantedMm: number | null;
}

/** What spacers would have to add. */
export interface SpacerNeed {
	/** over-locknut distance less the built total; negative = too wide */
	neededMm: number;
	/** the total that it is held against was measured, or else is by the drawings */
	from: 'measured' | 'drawn';
	/** null = the drawer makes no such width, or none helps */
	choice: SpacerChoice | null;
	/** how far the rim moves when what the drawer gives, or else what is needed, is added on one side; null when
	 *  nothing is added */
	rimShiftMm: { left: number; right: number } | null;
}

/** One stack with everything that follows from it. */
export interface StackView extends StackRecord {
	/** what it is held against; null = not known, or the build's wheels differ */
	wantedOverLocknutMm: number | null;
	sums: StackUp;
	spacers: SpacerNeed | null;
	rim: RimView;
	warnings: StackWarning[];
	/** what could not be judged, and what is missing for it */
	notJudged: string[];
}

export interface StackPage {
	stacks: StackView[];
	wheels: WheelForStack[];
	limits: HardwareLimits;
	drawer: StockedSpacer[];
	/** why the stacks of the build are only completed, a clause; null = they may be changed */
	lock: string | null;
	sides: readonly StackSide[];
}

/** All stacks of a build, side by side, with the drawer and the workshop's limits. */
export function stackPage(ledger: Ledger, buildId: number): StackPage {
	const records = stacksOfBuild(ledger, buildId);
	const wheels = wheelsOfBuild(ledger, buildId);
	const limits = hardwareLimits(ledger);
	const drawer = listSpacers(ledger);
	return {
		stacks: records.map((record) => viewOf(record, records, wheels, limits, drawer)),
		wheels,
		limits,
		drawer,
		lock: buildLock(ledger, buildId),
		sides: STACK_SIDES
	};
}

function viewOf(
	record: StackRecord,
	all: readonly StackRecord[],
	wheels: readonly WheelForStack[],
	limits: HardwareLimits,
	drawer: readonly StockedSpacer[]
): StackView {
	const sums = stackUp(record.elements);
	const wantedOverLocknutMm = record.overLocknutMm ?? onlyValue(wheels.map((wheel) => wheel.overLocknutMm));
	const rim = rimOf(record, all, onlyValue(wheels.map((wheel) => wheel.rimOffsetWantedMm)));
	const spacers = wantedOverLocknutMm === null ? null : spacerNeed(sums, wantedOverLocknutMm, limits, drawer);
	const wanted = {
		overLocknutMm: wantedOverLocknutMm,
		rimOffsetMm: rim.offsetMm,
		rimOffsetWantedMm: rim.wantedMm
	};
	return {
		...record,
		wantedOverLocknutMm,
		sums,
		spacers,
		rim,
		warnings: stackWarnings(sums, wanted, limits),
		notJudged: notJudged(sums, wantedOverLocknutMm, rim, wheels, limits)
	};
}

/** The value that all wheels agree on; null when one has none or they differ. */
function onlyValue(values: readonly (number | null)[]): number | null {
	return values.length > 0 && values.every((value) => value === values[0]) ? values[0] : null;
}

function rimOf(record: StackRecord, all: readonly StackRecord[], wantedMm: number | null): RimView {
	const dished = all.find(({ id }) => id === record.dishedOnId) ?? null;
	const shiftMm = dished ? rimShift(dished.elements, record.elements) : null;
	const base = { shiftMm, dishedOn: dished?.variant ?? null, wantedMm };
	if (record.rimOffsetMm !== null) return { ...base, offsetMm: record.rimOffsetMm, from: 'measured' };
	if (shiftMm !== null && dished !== null && dished.rimOffsetMm !== null)
		return { ...base, offsetMm: dished.rimOffsetMm + shiftMm, from: 'worked out' };
	return { ...base, offsetMm: null, from: 'not known' };
}

function spacerNeed(
	sums: StackUp,
	wantedMm: number,
	limits: HardwareLimits,
	drawer: readonly StockedSpacer[]
): SpacerNeed {
	const { measuredMm, built } = sums.total;
	const neededMm = wantedMm - (measuredMm ?? built.nominalMm);
	// beyond that it is no question of spacers
	const sensible = Math.abs(neededMm) <= 50;
	const choice = sensible ? chooseSpacers(neededMm, limits.spacerToleranceMm, drawer) : null;
	const addedMm = choice?.totalMm ?? neededMm;
	return {
		neededMm,
		from: measuredMm === null ? 'drawn' : 'measured',
		choice,
		rimShiftMm:
			addedMm > 0
				? {
						left: rimShiftOfSpacer(addedMm, 'added on the left'),
						right: rimShiftOfSpacer(addedMm, 'added on the right')
					}
				: null
	};
}

function notJudged(
	sums: StackUp,
	wantedMm: number | null,
	rim: RimView,
	wheels: readonly WheelForStack[],
	limits: HardwareLimits
): string[] {
	const missing: string[] = [];
	if (wantedMm === null) missing.push(whyNoWidth(wheels));
	else if (limits.tooWideMm === null) missing.push('Width: the workshop has set no limit.');
	if (sums.engagementDepth === null)
		missing.push('Engagement depth: no element says what a thicker one does to it.');
	else if (limits.engagementDepthMm === null)
		missing.push('Engagement depth: the workshop has set no limit; the maker may give one.');
	if (sums.endFloat === null) missing.push('End float: no element says what a thicker one does to it.');
	if (rim.offsetMm === null)
		missing.push('Rim: where it stands was not measured on this stack nor on the one it was dished on.');
	else if (rim.wantedMm === null) missing.push(whyNoRim(wheels));
	return missing;
}

function whyNoRim(wheels: readonly WheelForStack[]): string {
	const known = wheels.filter((wheel) => wheel.rimOffsetWantedMm !== null);
	if (known.length === 0) return 'Rim: no wheel of this build says where it is wanted.';
	return 'Rim: the wheels of this build want it at different places; hold it against each wheel.';
}

function whyNoWidth(wheels: readonly WheelForStack[]): string {
	if (wheels.length === 0)
		return 'Width: the build is on no wheel yet; write the over-locknut distance down with the stack.';
	const known = wheels.filter((wheel) => wheel.overLocknutMm !== null);
	if (known.length === 0)
		return 'Width: no over-locknut distance is written down with the wheel or the stack.';
	return 'Width: the wheels of this build differ; write the over-locknut distance down with the stack.';
}
