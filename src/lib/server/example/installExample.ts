import { createReadStream } from 'node:fs';
import { basename, join } from 'node:path';
import type { Actor } from '../actor';
import { createBuild } from '../hardware/builds';
import { fitBuild } from '../hardware/fittedPeriods';
import { createWheel } from '../hardware/wheels';
import { leaveTrail } from '../ledger/leaveTrail';
import type { Ledger } from '../ledger/openLedger';
import { addPerson } from '../people/people';
import { LedgerRefusal } from '../refusal';
import { readSetting, writeSetting } from '../settings/storedSetting';
import { storeFile } from '../store/storeFile';
import { exampleState } from './exampleState';
import { freeName } from './freeName';
import { attachDrawings, installBuilds } from './installBuilds';
import { installInspections } from './installInspections';
import { installRelease } from './installRelease';
import { installUpkeep } from './installUpkeep';
import { exampleAnswers } from './exampleAnswers';
import { readProgramme, type Programme } from './programmeFile';

interface ExampleIds {
	wheels: Map<string, number>;
	builds: Map<string, number>;
	riders: Map<string, number>;
}

/**
 * Puts the example workshop into the ledger: wheels, builds, fitted periods and riders at once, its ride
 * files into the store and the queue. Everything is marked as example and goes again as a whole.
 *
 * @throws LedgerRefusal conflict when it is there already or a name of it is taken
 */
export async function installExample(ledger: Ledger, actor: Actor): Promise<void> {
	const { folder, programme } = readProgramme();
	const ids = ledger.database
		.transaction(() => {
			const added = addHardware(ledger, actor, programme);
			installBuilds(ledger, actor, folder, added.builds);
			installUpkeep(ledger, actor, folder, added.wheels);
			installInspections(ledger, actor, folder, added);
			installRelease(ledger, actor, folder, added.builds);
			return added;
		})
		.immediate();
	await attachDrawings(ledger, actor, folder, ids.builds);
	const lapsMeanSlips = new Map(programme.riders.map((rider) => [rider.code, rider.lapsMeanSlips]));
	const said = exampleAnswers(folder);
	for (const ride of programme.rides) {
		const name = basename(ride.file);
		await storeFile(ledger, actor, {
			name,
			bytes: createReadStream(join(folder, name)),
			hints: {
				wheelId: ids.wheels.get(ride.wheel),
				riderId: ids.riders.get(ride.rider),
				// only what the programme says for certain: an outdoor ride may still be refused as a trainer's
				trainer: ride.trainer || null,
				wet: ride.wet ?? null,
				lapsMeanSlips: lapsMeanSlips.get(ride.rider) ?? null,
				...said.get(name)
			},
			example: true
		});
	}
}

function addHardware(ledger: Ledger, actor: Actor, programme: Programme): ExampleIds {
	if (exampleState(ledger).installed)
		throw new LedgerRefusal('conflict', 'The example workshop is in the ledger already.');
	const wheels = new Map<string, number>();
	const riders = new Map<string, number>();
	const builds = new Map<string, number>();
	for (const { id, name, hub, circumferenceM } of programme.wheels)
		wheels.set(
			id,
			createWheel(
				ledger,
				actor,
				{ name: freeName(ledger, 'wheel', name), hub, circumferenceM },
				{ example: true }
			)
		);
	for (const { id, name, description, stepHubDeg, parts } of programme.builds) {
		const whole = [
			description,
			...(parts ?? []).map(
				({ part, detail }) => `${part.charAt(0).toUpperCase()}${part.slice(1)}: ${detail}.`
			)
		].join(' ');
		const options = { example: true, state: 'in test' } as const;
		builds.set(
			id,
			createBuild(
				ledger,
				actor,
				{ name: freeName(ledger, 'build', name), description: whole, stepHubDeg },
				options
			)
		);
	}
	for (const { code } of programme.riders) {
		const name = `Rider ${code} of the example`;
		riders.set(code, addPerson(ledger, { name, role: 'rider', example: true, code }).id);
	}
	for (const { wheel, build, from, until } of programme.fittedPeriods) {
		const wheelId = wheels.get(wheel);
		const buildId = builds.get(build);
		if (wheelId === undefined || buildId === undefined)
			throw new LedgerRefusal('wrong-value', 'The example fits a build that it does not describe.');
		fitBuild(ledger, actor, { wheelId, buildId, from, until }, { example: true });
	}
	writeSetting(ledger, 'started', 'example');
	if (readSetting(ledger, 'timeZone') === null) writeSetting(ledger, 'timeZone', programme.workshop.timeZone);
	leaveTrail(ledger, actor, 'installed', 'example', 'all', { rides: programme.rides.length });
	return { wheels, builds, riders };
}
