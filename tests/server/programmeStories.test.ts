import { expect, test } from 'vitest';
import { programmeStories, recordBenchCheck, recordVerdict, rideView } from '$lib/server';
import { setReleaseCriteria } from '$lib/server/release/releaseCriteria';
import { criteriaWords } from '../../src/routes/criteriaWords';
import { CRITERIA, WORDS } from '../release/testWords';
import { addRide, freshLedger, slipAt, withHardware } from './testLedger';

async function programme() {
	const test = freshLedger();
	const { buildId } = withHardware(test);
	const rideId = await addRide(test, { events: [slipAt(100), slipAt(900)] });
	return { ...test, buildId, rideId };
}

test('A story ends where the wheels end and counts what is not rejected, one wheel alone: two slips, then one', async () => {
	const { ledger, actor, rideId } = await programme();
	const curve = () => programmeStories(ledger, WORDS)[0].curve;
	expect(programmeStories(ledger, WORDS)[0]).toMatchObject({ endM: 30_000, criteria: null });
	expect(curve().at(-1)!.value).toBe(2);
	const [{ id }] = rideView(ledger, rideId)!.eventList;
	recordVerdict(ledger, actor, id, { verdict: 'rejected', reason: 'shift' });
	expect(curve().at(-1)!.value).toBe(1);
});

test('Criteria stand on the programme as on the release page, also after hardware changed and no ride did', async () => {
	const { ledger, actor, buildId } = await programme();
	setReleaseCriteria(ledger, actor, {
		...{ buildId, referenceBuildId: null, criteria: CRITERIA, reason: 'before the test', seenVersion: null }
	});
	const hold = () => programmeStories(ledger, WORDS)[0].criteria!.hold;
	const before = hold();
	recordBenchCheck(ledger, actor, buildId, {
		...{ at: new Date(ledger.now()).toISOString(), staticTorqueNm: 160 },
		...{ torqueHeld: true, coastsFreely: true, noCreep: true }
	} as Parameters<typeof recordBenchCheck>[3]);
	expect(hold()).toBe(before + 1);
});

test('Criteria are told in words: what holds, and what ends the test', () => {
	const formats = { number: (value: number) => String(value) };
	const asked = { hold: 9, asked: 12, failing: [] };
	expect(criteriaWords({ ...asked, state: 'not yet' }, formats)).toEqual({
		lead: '9 of 12 hold',
		more: 'the test goes on'
	});
	expect(criteriaWords({ ...asked, state: 'stopped', failing: ['stop rule'] }, formats).more).toBe(
		'it does not pass: stop rule'
	);
});
