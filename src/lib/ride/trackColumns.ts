import { READ_LIMITS } from './limits';
import type { Columns } from './recordedRide';
import { refusal } from './refusal';
import type { ChannelName } from './ride';

/** One point of a track file while it is read: what it does not name is missing. */
export type TrackPoint = { -readonly [name in ChannelName]?: number } & { atMs?: number };

const READ = [
	'speedMps',
	'distanceM',
	'cadenceRpm',
	'powerW',
	'altitudeM',
	'temperatureC',
	'latitudeDeg',
	'longitudeDeg'
] as const satisfies readonly ChannelName[];

/** Collects the points of a track file (TCX, GPX) as columns. */
export class TrackColumns {
	private readonly atMs: number[] = [];

	/** @param most points that are taken */
	constructor(private readonly most = READ_LIMITS.records) {}

	private readonly values = READ.map(() => [] as number[]);

	get length(): number {
		return this.atMs.length;
	}

	/** instant of the last point that was added; NaN = none */
	get lastAtMs(): number {
		return this.atMs.at(-1) ?? NaN;
	}

	/** @throws RideRefused 'too-large' past the bound on records */
	add(point: TrackPoint): void {
		if (this.atMs.length >= this.most) throw refusal('too-large', `more than ${this.most} points`);
		this.atMs.push(point.atMs ?? NaN);
		READ.forEach((name, i) => this.values[i].push(point[name] ?? NaN));
	}

	/** instants and one column a channel, NaN = missing */
	columns(): { atMs: Float64Array; columns: { -readonly [name in keyof Columns]: Float64Array } } {
		const columns = READ.map((name, i) => [name, Float64Array.from(this.values[i])] as const);
		return { atMs: Float64Array.from(this.atMs), columns: Object.fromEntries(columns) };
	}
}

/**
 * Text of an element as a number.
 * @returns NaN when it is not a plain decimal number
 */
export function decimal(text: string): number {
	return /^[+-]?(\d+\.?\d*|\.\d+)([eE][+-]?\d{1,3})?$/.test(text) ? Number(text) : NaN;
}
