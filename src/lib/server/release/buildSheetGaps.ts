import { billView, torqueView } from '../hardware/billViews';
import { buildContents } from '../hardware/buildContents';
import { stacksOfBuild } from '../hardware/stackRows';
import type { Ledger } from '../ledger/openLedger';

/** What is missing on a build sheet, in words. */
export function buildSheetGaps(ledger: Ledger, buildId: number): string[] {
	const build = buildContents(ledger, buildId);
	const torques = torqueView(ledger, buildId);
	const gaps: string[] = [];
	const say = (missing: boolean, words: string) => {
		if (missing) gaps.push(words);
	};
	say(billView(ledger, buildId).length === 0, 'parts');
	say(torques.length === 0, 'assembly torques');
	for (const { joint, recordedNm } of torques) say(recordedNm === null, `torque of ${joint}`);
	const stacks = stacksOfBuild(ledger, buildId);
	say(stacks.length === 0, 'axial stack');
	for (const { variant, elements } of stacks)
		say(
			elements.some(({ measuredMm }) => measuredMm === null),
			`measured lengths on ${variant}`
		);
	say(!build?.preload, 'preload');
	say((build?.endFloatMm ?? null) === null, 'end float');
	say((build?.builtMs ?? null) === null, 'who built it, and when');
	return gaps;
}
