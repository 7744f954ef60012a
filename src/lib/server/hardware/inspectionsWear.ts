import { distanceReached } from '$lib/hardware/distanceReached';
import { wearSeries, type WearPoint } from '$lib/hardware/wearSeries';
import { FEWEST_POINTS_FOR_CROSSING } from '$lib/reliability/lineReachesValue';
import { straightLine, type StraightLine } from '$lib/reliability/straightLine';
import { straightLinePrediction } from '$lib/reliability/straightLinePrediction';
import { studentQuantile } from '$lib/reliability/studentQuantile';
import type { Ledger } from '../ledger/openLedger';
import { axisOfWheel } from './distances';
import type { Finding } from './inspectionsInput';
import type { InspectionKindName } from './inspectionsKinds';
import { limitAhead, type LimitReachedView } from './inspectionsLimit';
import { inspectionsOfWheel, type InspectionView } from './inspectionsView';
import { hardwareLimits } from './stackLimits';

const CONFIDENCE = 0.95;
/** the band is drawn through this many places */
const PLACES = 40;
const KM = 1000;

/** The line through the measurements after the run-in, with limits for one further measurement. */
export interface WearLineView {
	/** change per 1000 km, in the unit of the series */
	slopePerThousandKm: number;
	slopeLowerPerThousandKm: number;
	slopeUpperPerThousandKm: number;
	points: number;
	confidence: number;
	band: { distanceM: number; value: number; lower: number; upper: number }[];
}

/** One place of one build on this wheel over distance. */
export interface WearView {
	/** stable: for links and drawings */
	key: string;
	build: { id: number; name: string };
	kind: InspectionKindName;
	place: string;
	unit: string;
	points: readonly WearPoint[];
	/** measured while its distance is not known */
	withoutDistance: number;
	runInM: number;
	/** the limit of the newest measurement that has one */
	limit: { value: number; is: 'lowest' | 'highest' } | null;
	/** mean of the newest measurement lies beyond the limit */
	beyondLimit: boolean;
	/** distance of the build on this wheel up to now */
	reachedM: number;
	/** null below four points after the run-in, or when all lie at one distance */
	line: WearLineView | null;
	/** null without a line or a limit */
	limitReached: LimitReachedView | null;
	fewestPoints: number;
}

/** Every measured place of a wheel over the distance of its build, the newest build first. */
export function wearOfWheel(ledger: Ledger, wheelId: number): WearView[] {
	const { runInM } = hardwareLimits(ledger);
	const axis = axisOfWheel(ledger, wheelId);
	const inspections = inspectionsOfWheel(ledger, wheelId).reverse();
	const groups = new Map<string, { inspection: InspectionView; finding: Finding }[]>();
	for (const inspection of inspections)
		for (const finding of inspection.findings) {
			if (finding.unit === null || inspection.build === null) continue;
			const key = [inspection.build.id, finding.kind, finding.place.toLowerCase(), finding.unit].join('/');
			groups.set(key, [...(groups.get(key) ?? []), { inspection, finding }]);
		}
	return [...groups]
		.map(([key, readings]) => {
			const ofBuild = axis.filter(({ buildId }) => buildId === readings[0].inspection.build!.id);
			return viewOf(key, readings, { runInM, reachedM: distanceReached(ofBuild, Infinity) });
		})
		.sort((a, b) => b.build.id - a.build.id || a.kind.localeCompare(b.kind));
}

function viewOf(
	key: string,
	readings: readonly { inspection: InspectionView; finding: Finding }[],
	{ runInM, reachedM }: { runInM: number; reachedM: number }
): WearView {
	const { inspection: first, finding } = readings[0];
	const { points, withoutDistance } = wearSeries(
		readings.map(({ inspection, finding: { values, resolution } }) => ({
			inspectionId: inspection.id,
			distanceM: inspection.buildM,
			values,
			resolution
		})),
		runInM
	);
	const newest = [...readings].reverse().find(({ finding: { wearLimit } }) => wearLimit !== null)?.finding;
	const limit = newest ? { value: newest.wearLimit!, is: newest.limitIs! } : null;
	const used = points.filter(({ beforeRunIn }) => !beforeRunIn);
	const line =
		used.length < FEWEST_POINTS_FOR_CROSSING
			? null
			: straightLine(used.map(({ distanceM, mean }) => ({ x: distanceM / KM, y: mean })));
	const last = points.at(-1);
	return {
		key,
		build: first.build!,
		kind: finding.kind,
		place: finding.place,
		unit: finding.unit!,
		points,
		withoutDistance,
		runInM,
		limit,
		beyondLimit:
			limit !== null &&
			last !== undefined &&
			(limit.is === 'lowest' ? last.mean < limit.value : last.mean > limit.value),
		reachedM,
		line: line && lineView(line, used),
		limitReached: line && limit ? limitAhead(line, limit.value, CONFIDENCE) : null,
		fewestPoints: FEWEST_POINTS_FOR_CROSSING
	};
}

function lineView(line: StraightLine, used: readonly WearPoint[]): WearLineView {
	const fromKm = used[0].distanceM / KM;
	const toKm = used[used.length - 1].distanceM / KM;
	const band = Array.from({ length: PLACES + 1 }, (_, place) => {
		// a quarter further than was measured: the line knows nothing of a bend out there
		const km = fromKm + ((toKm - fromKm) * 1.25 * place) / PLACES;
		const { value, lower, upper } = straightLinePrediction(line, km, CONFIDENCE);
		return { distanceM: km * KM, value, lower, upper };
	});
	const reach = studentQuantile((1 + CONFIDENCE) / 2, line.degreesOfFreedom) * line.slopeStandardError;
	return {
		slopePerThousandKm: line.slope * 1000,
		slopeLowerPerThousandKm: (line.slope - reach) * 1000,
		slopeUpperPerThousandKm: (line.slope + reach) * 1000,
		points: line.pointCount,
		confidence: CONFIDENCE,
		band
	};
}
