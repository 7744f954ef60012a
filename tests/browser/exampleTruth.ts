import Database from 'better-sqlite3';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { BuildAgainstBuild } from '../../src/lib/server';
import { canonicalJson } from '../../src/lib/release/canonicalJson';
import { REFERENCE_SLIP_CRANK_DEG } from '../../src/lib/slip/analysis';
import { project, runCommand } from '../faults/runCommand';

interface Truth {
	readonly events: readonly { readonly t0: number; readonly kind: string; readonly crankDeg: number }[];
}

/** What truly happened on the observed stretches of one build of the example, and how far they reach. */
interface TrueBuild {
	slips: number;
	observedM: number;
}

/** the onset that was found may fall into the second before or after the true one */
const ONSET_S = 1;

/** Counts the slips of truth.json that began where the ledger says that they could have been shown, by build. */
export function truthOnObserved(dataFolder: string): Map<string, TrueBuild> {
	const read = <T>(name: string) =>
		JSON.parse(readFileSync(join(project, 'sample-rides', name), 'utf8')) as T;
	const truth = read<Record<string, Truth>>('truth.json');
	const database = new Database(join(dataFolder, 'ledger.sqlite'), { readonly: true });
	const rides = database
		.prepare(
			`SELECT r.id, r.file_name AS file, s.version, s.observed_m AS observedM, b.name AS build FROM ride r
			JOIN result s ON s.ride_id = r.id
			JOIN fitted_period p ON p.wheel_id = r.wheel_id AND p.from_ms <= r.started_ms
				AND r.started_ms < coalesce(p.until_ms, 9e15)
			JOIN build b ON b.id = p.build_id
			WHERE r.twin_of IS NULL AND r.withdrawn_ms IS NULL`
		)
		.all() as { id: number; file: string; version: number; observedM: number; build: string }[];
	const stretches = database.prepare(
		'SELECT start_s AS fromS, end_s AS toS FROM observed_stretch WHERE ride_id = ? AND version = ?'
	);
	const builds = new Map<string, TrueBuild>();
	for (const { id, file, version, observedM, build } of rides) {
		const observed = stretches.all(id, version) as { fromS: number; toS: number }[];
		const slips = truth[file.replace('.fit', '')].events.filter(
			({ t0, kind, crankDeg }) =>
				kind === 'slip' &&
				crankDeg >= REFERENCE_SLIP_CRANK_DEG &&
				observed.some(({ fromS, toS }) => t0 >= fromS - ONSET_S && t0 < toS + ONSET_S)
		);
		const sum = builds.get(build) ?? { slips: 0, observedM: 0 };
		builds.set(build, { slips: sum.slips + slips.length, observedM: sum.observedM + observedM });
	}
	database.close();
	return builds;
}

/**
 * Holds the evidence of the example against its truth: each build's true rate on observed stretches lies within THE
 * interval of what was found, and the true ratio within the limits of both comparisons. Nothing is reviewed yet, so
 * what was found counts on both. Then the terminal has to give the figures of the page.
 *
 * @param figures `told` of /report/figures.json: Original before, Retrofit after
 */
export async function expectEvidenceHoldsTruth(
	figures: BuildAgainstBuild,
	dataFolder: string
): Promise<void> {
	const truth = truthOnObserved(dataFolder);
	const per100 = ({ slips, observedM }: TrueBuild) => (slips / observedM) * 100_000;
	expect(truth.get('Original')!.slips).toBeGreaterThan(20);
	for (const { name, worst, observedM } of figures.builds) {
		const { pooled } = worst;
		const trueRate = per100(truth.get(name)!);
		expect(Math.abs(observedM - truth.get(name)!.observedM)).toBeLessThan(1);
		expect(pooled.lowerPerHundredKm, name).toBeLessThanOrEqual(trueRate);
		expect(pooled.upperPerHundredKm!, name).toBeGreaterThanOrEqual(trueRate);
	}
	const [before, after] = figures.builds.map(({ name }) => per100(truth.get(name)!));
	const { ratio, expected } = figures.against[0].asFound;
	for (const limits of [ratio, expected]) {
		expect(limits.lower).toBeLessThanOrEqual(after / before);
		expect(limits.upper!).toBeGreaterThanOrEqual(after / before);
		expect(limits.upper!).toBeLessThan(1);
	}
	const told = await runCommand('evidence', [
		'--before',
		'Original',
		'--after',
		'Retrofit',
		'--json',
		'--data',
		dataFolder
	]);
	expect(told.stderr).toBe('');
	expect(canonicalJson(withoutRiders(JSON.parse(told.stdout)))).toBe(canonicalJson(withoutRiders(figures)));
}

/** The page for others leaves riders out; all else has to be the same. */
function withoutRiders({ policy, binM, builds, against }: BuildAgainstBuild) {
	return { policy, binM, against, builds: builds.map(({ dependsOn: _, ...build }) => build) };
}
