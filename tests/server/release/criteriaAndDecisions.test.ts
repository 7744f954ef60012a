import { expect, test } from 'vitest';
import { createBuild, type Actor } from '$lib/server';
import { recordBenchCheck } from '$lib/server/hardware/benchChecks';
import { putInTest } from '$lib/server/hardware/buildStates';
import { currentCriteria, listCriteria, setReleaseCriteria } from '$lib/server/release/releaseCriteria';
import {
	decisionRecord,
	listDecisions,
	sealRecord,
	signDecision,
	type DecisionInput
} from '$lib/server/release/releaseDecisions';
import { CRITERIA } from '../../release/testWords';
import { freshLedger, rowsOf, withHardware, type TestLedger } from '../testLedger';

function programme() {
	const test = freshLedger();
	const { buildId: oldId } = withHardware(test);
	const buildId = createBuild(test.ledger, test.actor, { name: 'New', description: 'harder spring' });
	return { test, oldId, buildId };
}

function setFirst({ test, oldId, buildId }: ReturnType<typeof programme>): number {
	return setReleaseCriteria(test.ledger, test.actor, {
		buildId,
		referenceBuildId: oldId,
		criteria: CRITERIA,
		reason: 'as agreed before the test',
		seenVersion: null
	});
}

const RECORD = { events: [{ ride: 1, overrunCrankDeg: 120 }], rides: [{ id: 1, observedM: 20_000.1 }] };

function decisionOn(buildId: number, criteriaId: number, change: Partial<DecisionInput> = {}): DecisionInput {
	return {
		buildId,
		decision: 'continue',
		reason: 'more wet kilometres are wanted',
		seenCriteriaId: criteriaId,
		seenRecordSha256: sealRecord(RECORD).sha256,
		...change
	};
}

test('Criteria are kept as they were set; a change is a new version and the old one stays readable', () => {
	const all = programme();
	setFirst(all);
	const { test, buildId } = all;
	test.clock.ms += 1000;
	setReleaseCriteria(test.ledger, test.actor, {
		buildId,
		referenceBuildId: null,
		criteria: { ...CRITERIA, riders: 4 },
		reason: 'a fourth rider joined',
		seenVersion: 1
	});
	const versions = listCriteria(test.ledger, buildId);
	expect(versions.map(({ version, criteria }) => [version, criteria.riders])).toEqual([
		[2, 4],
		[1, 2]
	]);
	expect(versions[1].criteria).toEqual(CRITERIA);
	expect(currentCriteria(test.ledger, buildId)).toMatchObject({ version: 2, setMs: test.clock.ms });
	expect(rowsOf(test.ledger, `SELECT action FROM trail WHERE subject = 'release criteria'`)).toHaveLength(2);
});

test('Nothing in the ledger can change or remove a version or a decision', () => {
	const all = programme();
	const criteriaId = setFirst(all);
	const { test, buildId } = all;
	signDecision(test.ledger, test.actor, decisionOn(buildId, criteriaId), RECORD, false);
	for (const sql of [
		`UPDATE release_criteria SET reason = 'other'`,
		'DELETE FROM release_criteria',
		`UPDATE release_decision SET decision = 'released'`,
		'DELETE FROM release_decision'
	])
		expect(() => test.ledger.database.prepare(sql).run()).toThrow(/never (changed|removed)/);
});

test('Criteria stay when the invented build that they were set against is removed, and change in nothing else', () => {
	const all = programme();
	setFirst(all);
	const { ledger } = all.test;
	ledger.database.prepare('UPDATE build SET example = 1 WHERE id = ?').run(all.oldId);
	expect(() =>
		ledger.database.prepare(`UPDATE release_criteria SET reference_build_id = NULL, reason = 'x'`).run()
	).toThrow(/never changed/);
	ledger.database.prepare('UPDATE release_criteria SET reference_build_id = NULL').run();
	expect(currentCriteria(ledger, all.buildId)).toMatchObject({ referenceBuildId: null, criteria: CRITERIA });
});

test('Whoever did not see the version that stands does not replace it', () => {
	const all = programme();
	setFirst(all);
	const again = () => setFirst(all);
	expect(again).toThrow(/set version 1/);
	expect(listCriteria(all.test.ledger, all.buildId)).toHaveLength(1);
});

test('A plan that cannot show its rate is refused and nothing is kept', () => {
	const { test, buildId, oldId } = programme();
	const input = {
		buildId,
		referenceBuildId: oldId,
		criteria: { ...CRITERIA, rateAtMostPerThousandKm: 0.5 },
		reason: 'hopeful',
		seenVersion: null
	};
	expect(() => setReleaseCriteria(test.ledger, test.actor, input)).toThrow(/cannot show the rate/);
	expect(() =>
		setReleaseCriteria(test.ledger, test.actor, { ...input, criteria: CRITERIA, referenceBuildId: buildId })
	).toThrow(/set against itself/);
	expect(listCriteria(test.ledger, buildId)).toEqual([]);
});

test('A decision keeps its record byte for byte, and its hash finds any change', () => {
	const all = programme();
	const criteriaId = setFirst(all);
	const { ledger, actor } = all.test;
	const id = signDecision(ledger, actor, decisionOn(all.buildId, criteriaId), RECORD, false);
	expect(JSON.parse(decisionRecord(ledger, id)!)).toEqual(RECORD);
	expect(listDecisions(ledger, all.buildId)).toMatchObject([
		{ decision: 'continue', criteriaVersion: 1, whole: true, recordSha256: sealRecord(RECORD).sha256 }
	]);
	// somebody gets past the triggers, with another program
	ledger.database.exec('DROP TRIGGER release_decision_is_not_changed');
	ledger.database.prepare(`UPDATE release_decision SET record = '{}'`).run();
	expect(listDecisions(ledger, all.buildId)[0].whole).toBe(false);
});

test('Only an owner signs', () => {
	const all = programme();
	const criteriaId = setFirst(all);
	for (const role of ['engineer', 'rider'] as const) {
		const actor: Actor = { ...all.test.actor, role };
		expect(() =>
			signDecision(all.test.ledger, actor, decisionOn(all.buildId, criteriaId), RECORD, true)
		).toThrow(/Only an owner/);
	}
	expect(listDecisions(all.test.ledger, all.buildId)).toEqual([]);
});

test('A release needs every criterion to hold, and moves the build to that state', () => {
	const all = programme();
	const criteriaId = setFirst(all);
	const { ledger, actor } = all.test;
	const release = decisionOn(all.buildId, criteriaId, { decision: 'released', reason: 'all criteria hold' });
	expect(() => signDecision(ledger, actor, release, RECORD, false)).toThrow(/cannot be released/);
	// a draft was never tested, whatever the figures say
	expect(() => signDecision(ledger, actor, release, RECORD, true)).toThrow(/draft cannot become released/);
	expect(listDecisions(ledger, all.buildId)).toEqual([]);
	const check = { staticTorqueNm: 90, torqueHeld: true, coastsFreely: true, noCreep: true };
	recordBenchCheck(ledger, actor, all.buildId, check);
	putInTest(ledger, actor, all.buildId, true);
	signDecision(ledger, actor, release, RECORD, true);
	expect(stateOf(all.test, all.buildId)).toBe('released');
	expect(() => setFirst({ ...all })).toThrow(/released/);
});

test('What changed between looking and signing stops the signature', () => {
	const all = programme();
	const criteriaId = setFirst(all);
	const { ledger, actor } = all.test;
	const changed = { ...RECORD, events: [] };
	expect(() => signDecision(ledger, actor, decisionOn(all.buildId, criteriaId), changed, true)).toThrow(
		/changed/
	);
	expect(() => signDecision(ledger, actor, decisionOn(all.buildId, criteriaId + 1), RECORD, true)).toThrow(
		/changed/
	);
	expect(listDecisions(ledger, all.buildId)).toEqual([]);
});

function stateOf({ ledger }: TestLedger, buildId: number): unknown {
	return rowsOf(ledger, `SELECT state FROM build WHERE id = ${buildId}`)[0].state;
}
