import type { VerifyReport } from '$lib/server';

const SHOWN = 20;

/** A report for the terminal: one line a part, what was found under it, and the answer last. */
export function verifyAsText(report: VerifyReport): string {
	const lines: string[] = [];
	for (const { name, state, sentence, findings, damages, notes } of report.parts) {
		lines.push(`${name}: ${state}. ${sentence}`);
		// damage first: a screen may end before the notes do
		const sorted = [...findings].sort(
			(a, b) => Number(a.severity === 'note') - Number(b.severity === 'note')
		);
		for (const { severity, subject, sentence: said } of sorted.slice(0, SHOWN))
			lines.push(`  ${severity === 'damage' ? 'NOT WHOLE' : 'note'} ${subject}: ${said}`);
		const more = damages + notes - Math.min(SHOWN, sorted.length);
		if (more > 0) lines.push(`  and ${more} more (--json lists up to 200)`);
	}
	const broken = report.parts.filter(({ state }) => state === 'damaged').map(({ name }) => name);
	lines.push(
		report.whole
			? `All is whole (${report.seconds} s, seed ${report.seed}).`
			: `Not whole: ${broken.join(', ')}. All else that was looked at is (${report.seconds} s, seed ${report.seed}).`
	);
	return lines.map((line) => line.replace(/\p{Cc}/gu, '?')).join('\n');
}
