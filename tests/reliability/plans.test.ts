import { describe, expect, it } from 'vitest';
import { acceptanceProbability } from '$lib/reliability/acceptanceProbability';
import { demonstrationExposure } from '$lib/reliability/demonstrationExposure';
import { fixedPlan } from '$lib/reliability/fixedPlan';
import { poissonRateUpperBound } from '$lib/reliability/poissonRateUpperBound';
import { randomNumbers, type RandomNumbers } from '$lib/reliability/randomNumbers';
import { sequentialPlan, type SequentialPlan } from '$lib/reliability/sequentialPlan';
import { sequentialPlanRisks } from '$lib/reliability/sequentialPlanRisks';
import { sequentialPlanKeepingRisks } from '$lib/reliability/sequentialPlanKeepingRisks';
import { sequentialState } from '$lib/reliability/sequentialState';

const RISKS = { goodRate: 0.002, badRate: 0.008, producerRisk: 0.1, consumerRisk: 0.1 };

/** one run of a plan, event after event: the naive reference */
function run(plan: SequentialPlan, rate: number, draw: RandomNumbers): { pass: boolean; exposure: number } {
	for (let events = 0, exposure = 0; ;) {
		const next = exposure - Math.log(1 - draw.next()) / rate;
		const { passesAt } = sequentialState(plan, events, exposure);
		if (passesAt <= next) return { pass: true, exposure: passesAt };
		exposure = next;
		events++;
		if (sequentialState(plan, events, exposure).state === 'fail') return { pass: false, exposure };
	}
}

describe('demonstrationExposure', () => {
	it('is the exposure at which the one-sided bound meets the target (independent function)', () => {
		for (const allowed of [0, 1, 3, 8]) {
			const exposure = demonstrationExposure(0.01, 0.9, allowed);
			expect(poissonRateUpperBound(allowed, exposure, 0.9)).toBeCloseTo(0.01, 10);
		}
	});

	it('asks 300 km without an event for at most 10 in 1000 km, and more for each event allowed', () => {
		expect(demonstrationExposure(0.01, 0.95, 0)).toBeCloseTo(299.57, 2);
		expect(demonstrationExposure(0.01, 0.95, 1)).toBeGreaterThan(470);
	});

	it('asks for as many times more as bursts are large, and never for less', () => {
		expect(demonstrationExposure(0.01, 0.9, 0, 3)).toBeCloseTo(3 * demonstrationExposure(0.01, 0.9, 0), 9);
		expect(demonstrationExposure(0.01, 0.9, 2, 3)).toBeGreaterThan(demonstrationExposure(0.01, 0.9, 2));
		expect(demonstrationExposure(0.01, 0.9, 2, 0.5)).toBe(demonstrationExposure(0.01, 0.9, 2));
	});

	it('keeps its risk where events come in bursts of three, told of it, and not otherwise (4,000 seeded)', () => {
		const passes = (exposure: number, seed: number) => {
			const draw = randomNumbers(seed);
			let passed = 0;
			for (let i = 0; i < 4000; i++) if (3 * draw.poisson((0.01 * exposure) / 3) <= 3) passed++;
			return passed / 4000;
		};
		expect(passes(demonstrationExposure(0.01, 0.9, 3), 1)).toBeGreaterThan(0.2);
		expect(passes(demonstrationExposure(0.01, 0.9, 3, 3), 1)).toBeLessThan(0.1 + 4 * 0.0048);
	});

	it('refuses a target of nought and a broken number', () => {
		expect(() => demonstrationExposure(0, 0.9, 0)).toThrow(/targetRate .* 0/);
		expect(() => demonstrationExposure(0.1, 0.9, 1.5)).toThrow(/allowedEvents .* 1.5/);
	});
});

describe('acceptanceProbability', () => {
	it('passes for certain at no rate or no exposure, and hardly at a high rate', () => {
		expect(acceptanceProbability(0, 500, 0)).toBe(1);
		expect(acceptanceProbability(0.5, 0, 0)).toBe(1);
		expect(acceptanceProbability(0.5, 500, 3)).toBeLessThan(1e-20);
	});
});

describe('fixedPlan', () => {
	it('keeps both risks, and a shorter plan with fewer allowed does not (seeded comparison)', () => {
		const draw = randomNumbers(6);
		for (let i = 0; i < 15; i++) {
			const risks = {
				goodRate: 0.001 + 0.004 * draw.next(),
				badRate: 0.01 + 0.02 * draw.next(),
				producerRisk: 0.05 + 0.2 * draw.next(),
				consumerRisk: 0.05 + 0.2 * draw.next()
			};
			const plan = fixedPlan(risks)!;
			expect(plan.producerRisk).toBeLessThanOrEqual(risks.producerRisk + 1e-12);
			expect(plan.consumerRisk).toBeLessThanOrEqual(risks.consumerRisk + 1e-9);
			if (plan.allowedEvents === 0) continue;
			const fewer = demonstrationExposure(risks.badRate, 1 - risks.consumerRisk, plan.allowedEvents - 1);
			expect(1 - acceptanceProbability(risks.goodRate, fewer, plan.allowedEvents - 1)).toBeGreaterThan(
				risks.producerRisk
			);
		}
	});

	it('finds no plan for rates that are as good as equal, and refuses a bad rate below the good one', () => {
		expect(fixedPlan({ ...RISKS, badRate: 0.00201 })).toBeNull();
		expect(() => fixedPlan({ ...RISKS, badRate: 0.001 })).toThrow(/badRate must be above/);
		expect(() => fixedPlan({ ...RISKS, producerRisk: 0.6, consumerRisk: 0.5 })).toThrow(/risks/);
	});
});

describe('sequentialPlan', () => {
	it('passes, fails and goes on where its lines say', () => {
		const plan = sequentialPlan(RISKS)!;
		const first = -plan.passIntercept / plan.slope;
		expect(sequentialState(plan, 0, first - 1).state).toBe('continue');
		expect(sequentialState(plan, 0, first + 1).state).toBe('pass');
		expect(sequentialState(plan, 2, 1).state).toBe('fail');
		expect(sequentialState(plan, 0, 0)).toMatchObject({ state: 'continue', failsWith: 2 });
	});

	it('fails at the very start with as many events as its line says, whatever rounding does to it', () => {
		// the line begins at log(9) / log(3) = 2, which comes out as 2.0000000000000004
		const plan = sequentialPlan({ goodRate: 0.001, badRate: 0.003, producerRisk: 0.1, consumerRisk: 0.1 })!;
		expect(sequentialState(plan, 2, 0).state).toBe('fail');
		expect(sequentialState(plan, 1, 0)).toMatchObject({ state: 'continue', failsWith: 2 });
	});

	it('ends for certain at its longest exposure', () => {
		const plan = sequentialPlan(RISKS, 1200)!;
		for (let events = 0; events <= plan.allowedAtEnd; events++)
			expect(sequentialState(plan, events, 1200).state).toBe('pass');
		expect(sequentialState(plan, plan.allowedAtEnd + 1, 300).state).toBe('fail');
	});

	it('has the risks and the mean exposure that seeded runs of it show (20,000 runs at three rates)', () => {
		const plan = sequentialPlan(RISKS, 900)!;
		const draw = randomNumbers(17);
		for (const rate of [0.002, 0.004, 0.008]) {
			let [passed, exposure, squares] = [0, 0, 0];
			for (let i = 0; i < 20_000; i++) {
				const one = run(plan, rate, draw);
				if (one.pass) passed++;
				exposure += one.exposure;
				squares += one.exposure ** 2;
			}
			const got = sequentialPlanRisks(plan, rate);
			const mean = exposure / 20_000;
			expect(Math.abs(passed / 20_000 - got.pass)).toBeLessThan(4 * Math.sqrt(0.25 / 20_000));
			expect(Math.abs(mean - got.meanExposure)).toBeLessThan(
				4 * Math.sqrt((squares / 20_000 - mean * mean) / 20_000)
			);
			expect(got.pass + got.fail).toBeCloseTo(1, 10);
		}
	});

	it('is drawn apart until its true risks are those asked for, or is none', () => {
		const draw = randomNumbers(23);
		let found = 0;
		for (let i = 0; i < 25; i++) {
			const risks = {
				goodRate: 0.002,
				badRate: 0.004 + 0.008 * draw.next(),
				producerRisk: 0.05 + 0.2 * draw.next(),
				consumerRisk: 0.05 + 0.2 * draw.next()
			};
			const kept = sequentialPlanKeepingRisks(risks);
			if (kept === null) continue;
			found++;
			expect(sequentialPlanRisks(kept.plan, 0.002).fail).toBeLessThanOrEqual(risks.producerRisk);
			expect(sequentialPlanRisks(kept.plan, risks.badRate).pass).toBeLessThanOrEqual(risks.consumerRisk);
			expect(kept.plan).toMatchObject(risks);
			expect(kept.atGoodRate.meanExposure).toBeLessThan(fixedPlan(risks)!.exposure);
		}
		expect(found).toBeGreaterThan(20);
		expect(sequentialPlanKeepingRisks(RISKS, 50)).toBeNull();
	});

	it('ends sooner on average than the fixed plan, at both rates', () => {
		const plan = sequentialPlan(RISKS)!;
		const fixed = fixedPlan(RISKS)!;
		for (const rate of [RISKS.goodRate, RISKS.badRate])
			expect(sequentialPlanRisks(plan, rate).meanExposure).toBeLessThan(fixed.exposure);
	});

	it('passes for certain without any event, at the first exposure that its line allows', () => {
		const plan = sequentialPlan(RISKS)!;
		const got = sequentialPlanRisks(plan, 0);
		expect(got.pass).toBe(1);
		expect(got.meanExposure).toBeCloseTo(-plan.passIntercept / plan.slope, 9);
		expect(got.reachesEnd).toBe(0);
	});

	it('is the fixed plan of the same length when it is cut off before either line can be crossed', () => {
		const plan = sequentialPlan(RISKS, 100)!;
		const got = sequentialPlanRisks(plan, 0.004);
		expect(got.pass).toBeCloseTo(acceptanceProbability(0.004, 100, plan.allowedAtEnd), 10);
	});
});
