import { expect, test } from 'vitest';
import {
	createBuild,
	fieldWatches,
	fitBuild,
	recordVerdict,
	reportIncident,
	rideView,
	signDecision,
	withdrawBuild
} from '$lib/server';
import { recordBenchCheck } from '$lib/server/hardware/benchChecks';
import { putInTest } from '$lib/server/hardware/buildStates';
import { sealRecord } from '$lib/server/release/releaseDecisions';
import { setReleaseCriteria } from '$lib/server/release/releaseCriteria';
import { CRITERIA, WORDS } from '../../release/testWords';
import { addRide, freshLedger, HOUR_MS, slipAt, START_MS, withHardware } from '../testLedger';
import { PASSED } from '../trialBuild';

const RECORD = { rides: [] };

/** a build on a wheel that was released 30 h after the start, with a slip on a ride before that */
async function released() {
	const test = freshLedger();
	const { ledger, actor, clock } = test;
	const { wheelId } = withHardware(test);
	const buildId = createBuild(ledger, actor, { name: 'New', description: 'harder spring' });
	const at = (hours: number) => new Date(START_MS + hours * HOUR_MS).toISOString();
	clock.ms = START_MS + 20 * HOUR_MS;
	fitBuild(ledger, actor, { wheelId, buildId, from: at(10) });
	recordBenchCheck(ledger, actor, buildId, PASSED);
	putInTest(ledger, actor, buildId, true);
	const criteriaId = setReleaseCriteria(ledger, actor, {
		buildId,
		referenceBuildId: null,
		criteria: CRITERIA,
		reason: 'as agreed',
		seenVersion: null
	});
	await addRide(test, { startedAtMs: START_MS + 22 * HOUR_MS, events: [slipAt(100)] });
	clock.ms = START_MS + 30 * HOUR_MS;
	signDecision(
		ledger,
		actor,
		{
			buildId,
			decision: 'released',
			reason: 'all criteria hold',
			seenCriteriaId: criteriaId,
			seenRecordSha256: sealRecord(RECORD).sha256
		},
		RECORD,
		true
	);
	clock.ms = START_MS + 1000 * HOUR_MS;
	const watch = () => fieldWatches(ledger, WORDS, buildId)[0];
	const confirm = (rideId: number) => {
		for (const { id } of rideView(ledger, rideId)!.eventList)
			recordVerdict(ledger, actor, id, { verdict: 'confirmed' });
	};
	return { ...test, wheelId, buildId, at, watch, confirm };
}

test('Rides before the release are not the field: nothing yet', async () => {
	const { watch } = await released();
	expect(watch()).toMatchObject({
		state: 'nothing yet',
		build: 'New',
		criteriaVersion: 1,
		evidence: { rides: 0, observedM: 0, slipsAtObservedM: [] }
	});
});

test('Confirmed slips of field rides raise the alarm, a rejected one takes it back at once', async () => {
	const { ledger, actor, watch, confirm, ...test } = await released();
	const rideId = await addRide(
		{ ledger, actor, ...test },
		{
			startedAtMs: START_MS + 50 * HOUR_MS,
			events: [slipAt(100), slipAt(300), slipAt(500)]
		}
	);
	// 2 per 1000 km are allowed: three on 20 km are a hundred and fifty
	expect(watch().state).toBe('look');
	confirm(rideId);
	expect(watch()).toMatchObject({ state: 'alarm', evidence: { rides: 1, observedM: 20_000 } });
	for (const { id, verdict } of rideView(ledger, rideId)!.eventList)
		recordVerdict(ledger, actor, id, { verdict: 'rejected', reason: 'sensor' }, { verdictId: verdict!.id });
	expect(watch().state).toBe('no alarm');
});

test('A fall that is reported without a ride file is an alarm; one from before the release is not', async () => {
	const { ledger, actor, wheelId, at, watch } = await released();
	const incident = { reportedBy: null, felt: 'let go on a climb', injured: false };
	const report = (when: string, severity: string) =>
		reportIncident(ledger, actor, wheelId, { ...incident, at: when, what: 'slip', severity });
	report(at(25), 'fell');
	expect(watch().state).toBe('nothing yet');
	report(at(60), 'fell');
	expect(watch()).toMatchObject({ state: 'alarm', evidence: { reported: 1, harmed: 1 } });
});

test('A released build that was withdrawn goes on being watched: hubs are still on the road', async () => {
	const { ledger, actor, buildId, watch } = await released();
	withdrawBuild(ledger, actor, buildId, 'ring cracked');
	expect(watch().buildId).toBe(buildId);
});
