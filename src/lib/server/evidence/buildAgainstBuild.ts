import { listBuildRecords } from '../hardware/builds';
import type { Ledger } from '../ledger/openLedger';
import { remember } from '../ledger/remember';
import { markedRides } from '../marks/markedRides';
import { buildsBefore, firstLender, type Lender } from '../rates/lender';
import { hasClock, type AgeClock } from './ageClocks';
import { binWidthM } from './binWidth';
import { ratesOverAge, ratesOverHours, ratesOverTorque, type BinnedRate, type Counting } from './binnedRates';
import { evidenceOfBuilds, type BuildEvidence } from './buildEvidence';
import { buildRates, unitsOf, type BuildRates } from './buildRates';
import { countedSlips, type CountedUnit } from './countedSlips';
import { correctedRate, correctedRatio, type CorrectedFigure } from './correctedFigures';
import { dependsOn, type DependsOn } from './dependsOn';
import { detectionFactor, type DetectionFactor } from './detectionFactor';
import { feltAndFound, type FeltAndFound } from './feltAndFound';
import { foundTallies } from './foundTallies';
import { lifeOfBuild, type LifeOfBuild } from './lifeOfBuild';
import { pickUpRate, type PickUpRate } from './pickUpRate';
import { setAgainst, type SetAgainst } from './setAgainst';
import { sprocketRates, type SprocketRates } from './sprocketRates';
import { torqueCoverage, type TorqueCoverage } from './torqueCoverage';
import { torqueCurve, type TorqueCurve } from './torqueCurve';

/** What a person chose on the page; printed with it. */
export interface ComparisonPolicy {
	readonly unit: CountedUnit;
	/** what charts count: everything found and not rejected, or confirmed slips only */
	readonly shown: 'found' | 'confirmed';
	/** from when the age of hardware is counted; since the build was fitted when not given */
	readonly age?: AgeClock;
	/** whether rates and ratios are also given corrected for slips that were not found */
	readonly detection?: 'as found' | 'corrected';
}

/** Rates as they would be had every slip been found. */
export interface CorrectedRates extends DetectionFactor {
	readonly worst: CorrectedFigure;
	readonly best: CorrectedFigure;
}

/** Everything that rides tell about one build, ready to be drawn. */
export interface BuildTold {
	readonly id: number;
	readonly name: string;
	/** of charts: by the chosen policy */
	readonly counted: number;
	readonly observedM: number;
	/** the farthest that one of its wheels has run */
	readonly endM: number;
	readonly unreviewed: number;
	/** with unreviewed events as slips, and with confirmed ones only */
	readonly worst: BuildRates;
	readonly best: BuildRates;
	readonly overAge: readonly BinnedRate[];
	readonly overTorque: readonly BinnedRate[];
	readonly overHours: readonly BinnedRate[];
	/** slips per power stroke against hub torque */
	readonly torqueCurve: TorqueCurve;
	readonly life: LifeOfBuild;
	readonly dependsOn: DependsOn;
	readonly bySprocket: SprocketRates;
	/** a kind of their own, in no rate of slips */
	readonly pickUps: PickUpRate;
	/** null = no ride of it says that laps mean slips */
	readonly feltAndFound: FeltAndFound | null;
	/** null unless asked for, or while too few slips were put into its rides */
	readonly corrected: CorrectedRates | null;
	/** whether the chosen clock of age exists for this build; else its age is since fitting */
	readonly hasClock: boolean;
}

/** One build set against the reference. */
export interface AgainstReference {
	readonly buildId: number;
	readonly build: string;
	/** unreviewed events count as slips of the build and as none of the reference */
	readonly decides: SetAgainst;
	/** unreviewed events count as slips of both */
	readonly asFound: SetAgainst;
	/** how much of the build was ridden at the torque at which the reference slipped, as charts count */
	readonly coverage: TorqueCoverage;
	/** both sides corrected for what was not found; null unless asked for and possible on both */
	readonly corrected: {
		readonly decides: CorrectedRatios;
		readonly asFound: CorrectedRatios;
	} | null;
}

export interface CorrectedRatios {
	readonly ratio: CorrectedFigure;
	readonly expected: CorrectedFigure;
}

export interface BuildAgainstBuild {
	readonly policy: ComparisonPolicy;
	/** width of the bins of distance, metres */
	readonly binM: number;
	/** the first is the reference */
	readonly builds: readonly BuildTold[];
	readonly against: readonly AgainstReference[];
}

/**
 * Builds set against each other on everything that their rides tell. The same rules of counting hold for all.
 *
 * @param builds the reference first; each once
 */
export function buildAgainstBuild(
	ledger: Ledger,
	builds: readonly { readonly id: number; readonly name: string }[],
	policy: ComparisonPolicy
): BuildAgainstBuild {
	return remember(ledger, nameOf(builds, policy), () => compute(ledger, builds, policy));
}

function nameOf(builds: readonly { readonly id: number; readonly name: string }[], policy: ComparisonPolicy) {
	const { unit, shown, age = 'build', detection = 'as found' } = policy;
	return `builds ${builds.map(({ id, name }) => `${id} ${name}`).join()} by ${unit}, ${shown}, ${age}, ${detection}`;
}

function compute(
	ledger: Ledger,
	builds: readonly { readonly id: number; readonly name: string }[],
	policy: ComparisonPolicy
): BuildAgainstBuild {
	const clock = policy.age ?? 'build';
	const evidence = evidenceOfBuilds(ledger, builds, clock);
	const marked = markedRides(ledger);
	const binM = binWidthM(Math.max(0, ...evidence.map(endOf)));
	const [reference, ...others] = evidence;
	const factors = policy.detection === 'corrected' ? factorsOf(ledger, evidence, policy.unit) : null;
	const tolds = evidence.map((build) =>
		toldOf(build, lenderOf(ledger, build, reference, policy.unit), policy, binM)
	);
	return {
		policy,
		binM,
		builds: evidence.map((build, place) => {
			const told = tolds[place];
			const factor = factors?.[place] ?? null;
			return {
				...told,
				feltAndFound: feltAndFound(build.rides, marked),
				corrected: factor && {
					...factor,
					worst: correctedRate(told.worst.pooled, factor),
					best: correctedRate(told.best.pooled, factor)
				},
				hasClock: hasClock(ledger, clock, build.buildId)
			};
		}),
		against: others.map((build, place) => {
			const decides = setAgainst(build.rides, reference.rides, policy.unit, 'none');
			const asFound = setAgainst(build.rides, reference.rides, policy.unit, 'slip');
			const own = factors?.[place + 1];
			const its = factors?.[0];
			const corrected = (of: SetAgainst) => ({
				ratio: correctedRatio(of.ratio, own!, its!),
				expected: correctedRatio(of.expected, own!, its!)
			});
			return {
				buildId: build.buildId,
				build: build.build,
				decides,
				asFound,
				coverage: torqueCoverage(tolds[0], tolds[place + 1]),
				corrected: own && its ? { decides: corrected(decides), asFound: corrected(asFound) } : null
			};
		})
	};
}

function factorsOf(ledger: Ledger, evidence: readonly BuildEvidence[], unit: CountedUnit) {
	return evidence.map(({ rides }) =>
		detectionFactor(
			rides,
			foundTallies(
				ledger,
				rides.map(({ rideId }) => rideId)
			),
			{ unit, unreviewed: 'slip' }
		)
	);
}

function toldOf(
	build: BuildEvidence,
	lender: Lender | undefined,
	policy: ComparisonPolicy,
	binM: number
): Omit<BuildTold, 'feltAndFound' | 'corrected' | 'hasClock'> {
	const { unit } = policy;
	const shown: Counting = { unit, unreviewed: policy.shown === 'found' ? 'slip' : 'none' };
	return {
		id: build.buildId,
		name: build.build,
		counted: build.rides.reduce(
			(sum, { events }) => sum + countedSlips(events, unit, shown.unreviewed).length,
			0
		),
		observedM: build.rides.reduce((sum, ride) => sum + ride.observedM, 0),
		endM: endOf(build),
		unreviewed: build.rides.reduce(
			(sum, { events }) => sum + events.filter(({ standing }) => standing === 'unreviewed').length,
			0
		),
		worst: buildRates(build, { unit, unreviewed: 'slip' }, lender),
		best: buildRates(build, { unit, unreviewed: 'none' }, lender),
		overAge: ratesOverAge(build.rides, binM, shown),
		overTorque: ratesOverTorque(build.rides, shown),
		overHours: ratesOverHours(build.rides, shown),
		torqueCurve: torqueCurve(build, shown),
		life: lifeOfBuild(build, shown),
		dependsOn: dependsOn(build, shown),
		bySprocket: sprocketRates(build, shown),
		pickUps: pickUpRate(build.rides)
	};
}

/**
 * From whom a build with few slips may borrow how far counts scatter: from the builds that it descends from, as on
 * every page, else from the reference.
 */
function lenderOf(
	ledger: Ledger,
	build: BuildEvidence,
	reference: BuildEvidence,
	unit: CountedUnit
): Lender | undefined {
	const units = ({ rides }: BuildEvidence) => unitsOf(rides, { unit, unreviewed: 'slip' });
	const before = buildsBefore(listBuildRecords(ledger), build.buildId);
	const lender = firstLender(before, (one) => units(evidenceOfBuilds(ledger, [one])[0]));
	if (lender || build === reference) return lender;
	return firstLender([{ ...reference, name: reference.build }], units);
}

function endOf({ wheels }: BuildEvidence): number {
	return Math.max(0, ...wheels.map(({ endM }) => endM));
}
