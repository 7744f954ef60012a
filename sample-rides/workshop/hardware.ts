import type { HubSpec } from '../generator/rideSpec';
import type { ProgrammeBuild } from '../programme';

/** A build in the workshop's words, and how it behaves in the simulation. */
export interface PlannedBuild {
	readonly told: ProgrammeBuild;
	readonly behaves: Omit<HubSpec, 'kmSinceFitting'>;
}

/**
 * The three builds of the invented workshop. What they do was chosen so that the example tells a story
 * worth reading; no real hub behaves by these figures.
 */
export const BUILDS: readonly PlannedBuild[] = [
	{
		told: {
			id: 'original',
			name: 'Original',
			description: 'The hub as it came in: it lets go under load, more often from week to week.',
			pointsOfEngagement: 24,
			stepHubDeg: 15,
			parts: [
				{ part: 'ratchet ring', detail: '24 teeth, pressed in, case-hardened, tooth tips rounded by use' },
				{ part: 'pawls', detail: '3, in step, one shared wire spring' },
				{ part: 'spring', detail: 'round wire 0.6 mm, 0.9 N at the pawl tip' },
				{
					part: 'spacers',
					detail: 'none between ring and bearing seat; freehub body 0.25 mm towards the drive side'
				},
				{ part: 'grease', detail: 'unknown, stiff in the cold' }
			]
		},
		behaves: {
			points: 24,
			slipsPerHour: 10,
			torqueExponent: 1.7,
			wearKm: 70,
			wearExponent: 1.3,
			wetFactor: 1.4,
			pickUpFactor: 3,
			burstFactor: 2.5,
			failedPickUp: 0.0015,
			medianOverrunDeg: 95,
			overrunSigma: 0.6,
			longSlip: 0.03
		}
	},
	{
		told: {
			id: 'prototype-1',
			name: 'Prototype 1',
			description: 'The old ring with new pawls and a stiffer spring: slips less often, but still slips.',
			pointsOfEngagement: 24,
			stepHubDeg: 15,
			parts: [
				{ part: 'ratchet ring', detail: 'the original one, 24 teeth, tips dressed by hand' },
				{ part: 'pawls', detail: '3, in step, tip angle 2 degrees steeper, through-hardened' },
				{ part: 'spring', detail: 'round wire 0.7 mm, 1.5 N at the pawl tip' },
				{ part: 'spacers', detail: '0.25 mm behind the freehub body: pawls stand in the middle of the ring' },
				{ part: 'grease', detail: 'thin freehub grease, 0.5 g' }
			]
		},
		behaves: {
			points: 24,
			slipsPerHour: 6.5,
			torqueExponent: 2.2,
			wearKm: 260,
			wearExponent: 1.2,
			wetFactor: 1.3,
			pickUpFactor: 2,
			burstFactor: 2,
			failedPickUp: 0.0004,
			medianOverrunDeg: 80,
			overrunSigma: 0.6,
			longSlip: 0.02
		}
	},
	{
		told: {
			id: 'retrofit',
			name: 'Retrofit',
			description:
				'New ring with finer teeth and pawls with a spring each: what is meant to go into the batch.',
			pointsOfEngagement: 36,
			stepHubDeg: 10,
			parts: [
				{ part: 'ratchet ring', detail: '36 teeth, ground after hardening, screwed in against a shoulder' },
				{ part: 'pawls', detail: '4, in step, 6 mm wide (original 4.5 mm)' },
				{ part: 'spring', detail: 'one leaf spring a pawl, 1.4 N at each tip' },
				{
					part: 'spacers',
					detail: '0.25 mm behind the freehub body, 0.10 mm at the ring; end float 0.02 mm measured'
				},
				{ part: 'grease', detail: 'thin freehub grease, 0.5 g' }
			]
		},
		behaves: {
			points: 36,
			slipsPerHour: 0.35,
			torqueExponent: 2.2,
			wearKm: Infinity,
			wearExponent: 1,
			wetFactor: 1.2,
			pickUpFactor: 2,
			burstFactor: 1,
			failedPickUp: 0,
			medianOverrunDeg: 70,
			overrunSigma: 0.5,
			longSlip: 0
		}
	}
];
