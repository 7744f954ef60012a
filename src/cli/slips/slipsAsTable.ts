import { REFERENCE_SLIP_CRANK_DEG, type RideAnalysis } from '$lib/slip/analysis';

const CAUTION =
	'Any slip that is felt ends the test: do not stand, sprint or enter traffic again; walk, or ride home softly\n' +
	'seated; the hub is opened before the next ride.';

/** Plain text for a terminal: what was found, what the ride could have shown, and what to do. */
export function slipsAsTable(file: string, analysis: RideAnalysis): string {
	const share = analysis.totalM > 0 ? analysis.observedM / analysis.totalM : 0;
	const lines = [
		`${file}: ${km(analysis.totalM)} km, ${km(analysis.drivenM)} km of it driven, ${km(analysis.observedM)} km observed`
	];
	for (const warning of analysis.warnings) lines.push(`Note: ${warning.sentence}`);
	if (analysis.events.length > 0) {
		lines.push('', row(['time', 'km', 'kind', 'crank deg', 'hub Nm', 'gear', 'signs', 'observed']));
		for (const event of analysis.events) {
			const { value, lower, upper } = event.overrunCrankDeg;
			lines.push(
				row([
					clock(event.startS),
					km(event.atM),
					event.kind,
					`${value.toFixed(0)} (${lower.toFixed(0)}-${upper.toFixed(0)})`,
					event.hubTorqueNm ? event.hubTorqueNm.value.toFixed(0) : 'not known',
					event.gear?.label ?? 'not known',
					event.strength.toFixed(2),
					event.observed ? 'yes' : 'no'
				])
			);
		}
		lines.push('');
	}
	// the same count as the ledger's rate: other kinds, smaller ones and those elsewhere stand in the list alone
	const large = analysis.events.filter(
		({ kind, observed, overrunCrankDeg }) =>
			kind === 'slip' && observed && overrunCrankDeg.value >= REFERENCE_SLIP_CRANK_DEG
	).length;
	const where = `on the ${percent(share)} of this ride that could have shown one`;
	lines.push(
		share <= 0
			? 'This ride could not have shown a slip of the reference size: it says nothing about the hub.'
			: large > 0
				? `${large} ${large === 1 ? 'slip' : 'slips'} of the reference size (${REFERENCE_SLIP_CRANK_DEG} crank degrees) or more ${where}.`
				: `No slip of the reference size was found ${where}.`
	);
	lines.push(CAUTION);
	return lines.join('\n');
}

const WIDTHS = [9, 7, 22, 17, 11, 11, 7, 8];

function row(cells: readonly string[]): string {
	return cells
		.map((cell, i) => cell.padEnd(WIDTHS[i]))
		.join('')
		.trimEnd();
}

function km(metres: number): string {
	return (metres / 1000).toFixed(1);
}

function clock(seconds: number): string {
	const whole = Math.floor(seconds);
	const pad = (value: number) => String(value).padStart(2, '0');
	return `${Math.floor(whole / 3600)}:${pad(Math.floor(whole / 60) % 60)}:${pad(whole % 60)}`;
}

/** never rounded up to "100 %" or down to "0 %" while a part is left */
function percent(share: number): string {
	const rounded = Math.round(share * 100);
	if (rounded >= 100 && share < 1) return 'more than 99 %';
	return rounded === 0 ? 'less than 1 %' : `${rounded} %`;
}
