import type { AgainstReference, BuildAgainstBuild, BuildTold } from '$lib/server';
import { createFormats } from '$lib/ui/formats';
import { rateWords } from '$lib/ui/rateWords';
import { againstWords, expectedFigure, limitsWords } from '$lib/ui/againstWords';
import { intervalWords } from '$lib/ui/intervalWords';
import { correctedWords, detectionWords } from '$lib/ui/detectionWords';
import { feltWords } from '$lib/ui/feltWords';
import { pickUpWords } from '$lib/ui/pickUpWords';
import { policyWords } from '$lib/ui/policyWords';
import { trendWords } from '$lib/ui/trendWords';

/** The comparison of two builds as lines for a terminal: the sentences of the page, in plain spaces. */
export function evidenceAsText(told: BuildAgainstBuild, analysisVersion: number): string {
	const formats = createFormats('en-GB', 'UTC');
	const [before, after] = told.builds;
	const [against] = told.against;
	const lines = [
		`${after.name} against ${before.name} (${policyWords(told.policy)}; analysis version ${analysisVersion})`,
		'',
		againstWords(
			against,
			{
				build: after.name,
				reference: before.name,
				buildObservedM: after.observedM,
				referenceObservedM: before.observedM,
				referenceUnreviewed: before.unreviewed,
				referenceConfirmed: before.best.pooled.count,
				buildUnreviewed: after.unreviewed
			},
			formats
		),
		'',
		...told.builds.flatMap((build) => [...linesOf(build), '']),
		...caseLines('Unreviewed events count on the new build, not on the old one', against.decides),
		...(against.corrected
			? [
					`  corrected for slips not found: times as often ${correctedWords(against.corrected.decides.ratio, formats)}, counted / expected ${correctedWords(against.corrected.decides.expected, formats)}`
				]
			: []),
		...(before.unreviewed + after.unreviewed > 0
			? caseLines('Unreviewed events count on both', against.asFound)
			: []),
		'',
		'It tells what these rides support and is no certificate; a build that slips less may still slip.'
	];
	return lines.join('\n').replaceAll('\u00a0', ' ');

	function linesOf(build: BuildTold): string[] {
		const open = build.unreviewed > 0 ? ` (${build.unreviewed} not reviewed, counted here)` : '';
		return [
			`${build.name}: ${rateWords(build.worst.pooled, formats, build.unreviewed).sentence}${open}`,
			`  ${intervalWords(build.worst, formats)}`,
			`  ${trendWords(build.life.trend, formats, told.policy.shown === 'found' ? build.unreviewed : 0)}`,
			`  ${pickUpWords(build.pickUps, formats)}`,
			...(told.policy.detection === 'corrected' ? correctedLines(build) : []),
			...(build.feltAndFound ? feltWords(build.feltAndFound, formats).map((line) => `  ${line}`) : [])
		];
	}

	function correctedLines({ corrected }: BuildTold): string[] {
		const rate = corrected
			? [`  corrected for slips not found: ${correctedWords(corrected.worst, formats)} per 100 observed km`]
			: [];
		return [...rate, `  ${detectionWords(corrected, formats)}`];
	}

	function caseLines(name: string, { ratio, expected }: AgainstReference['decides']): string[] {
		const count = (value: number) => (value === 0 ? 'none' : `about ${expectedFigure(value, formats)}`);
		return [
			`${name}:`,
			`  times as often per observed km: ${limitsWords(ratio, formats)}`,
			`  at the same torque and age, on ${formats.km(expected.comparedM)} of ${formats.km(expected.comparedM + expected.notComparedM)}: counted ${expected.counted === 0 ? 'none' : formats.number(expected.counted)}, expected ${count(expected.expected)}, ratio ${limitsWords(expected, formats)}`
		];
	}
}
