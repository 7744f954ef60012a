/** A logger's table for tests: even pedalling with its ripple, a wheel in one gear, and slips. */
export interface LoggerTable {
	readonly rateHz: number;
	readonly seconds: number;
	/** onsets of slips, seconds: for 0.3 s the crank runs at twice its speed and torque is gone */
	readonly slipsS: readonly number[];
	/** instant of the first row */
	readonly startedAt?: string;
}

const RATIO = 3;
const SLIP_S = 0.3;

/** What the table says at an instant: rpm, rpm, Nm. Two ripples a crank turn, as legs have it. */
export function loggerValues({ slipsS }: LoggerTable, timeS: number): [number, number, number] {
	const mean = 80 + 4 * Math.sin(timeS / 40);
	const ripple = Math.sin(2 * Math.PI * 2 * (80 / 60) * timeS);
	const slips = slipsS.some((onset) => timeS >= onset && timeS < onset + SLIP_S);
	return [
		mean * (slips ? 2 : 1 + 0.05 * ripple),
		mean * RATIO * (1 + 0.05 * ripple * (slips ? 0 : 1)),
		slips ? 0 : 30 + 20 * ripple
	];
}

/** The table as a file. */
export function loggerTable(table: LoggerTable): Buffer {
	const lines = [
		`# started_at: ${table.startedAt ?? '2026-05-04T08:00:00Z'}`,
		'time_s,crank_rpm,wheel_rpm,crank_torque_nm'
	];
	for (let i = 0; i < table.seconds * table.rateHz; i++) {
		const timeS = i / table.rateHz;
		const [crank, wheel, torque] = loggerValues(table, timeS);
		lines.push(`${timeS.toFixed(3)},${crank.toFixed(2)},${wheel.toFixed(2)},${torque.toFixed(2)}`);
	}
	return Buffer.from(lines.join('\n') + '\n');
}
