import type { Ledger } from '../ledger/openLedger';
import { evidenceKey } from '../ledger/remember';
import { keepFirstVersion } from './analysisVersions';
import { listDerivations, type Derivation } from './derivations';
import { takeNextImport, type QueuedImport } from './importQueue';
import { nextInsertion, type Insertion } from './insertionQueue';
import type { LeaseHolder } from './lease';
import { ridesTouchedSince } from './ridesTouchedSince';

export type Task = { import: QueuedImport } | { derivation: Derivation } | { insertion: Insertion };

/** What waits for the children of one runner, the most urgent first. */
export class WaitingWork {
	/** what has to be derived, as it was at the last entry of the trail that was seen */
	#derivations: Derivation[] | null = null;
	#seenTrail = -1;
	/** evidence at which every ride had its slips put in; nothing is looked for until it changes */
	#allInsertedAt = -1;

	/** @param underWay tasks that were handed out and are not stored yet */
	constructor(
		private readonly ledger: Ledger,
		private readonly holder: LeaseHolder,
		private readonly underWay: () => readonly Task[]
	) {}

	/** New files first: somebody waits for them. Slips are put into rides when nothing else is left. */
	next(): Task | null {
		const queued = takeNextImport(this.ledger, this.holder);
		if (queued) return { import: queued };
		const derivation = this.#nextDerivation();
		if (derivation) return { derivation };
		const insertion = this.#nextInsertion();
		return insertion ? { insertion } : null;
	}

	/** Somebody else may have derived meanwhile, or something went wrong: all is listed anew. */
	lookAnew(): void {
		this.#derivations = null;
	}

	#nextInsertion(): Insertion | null {
		const evidence = evidenceKey(this.ledger);
		if (evidence === this.#allInsertedAt) return null;
		const insertion = nextInsertion(this.ledger, this.#busyRides());
		if (!insertion && this.underWay().length === 0) this.#allInsertedAt = evidence;
		return insertion;
	}

	/** People's corrections leave a trail and may change what a ride's analysis is told: then all is listed anew. */
	#nextDerivation(): Derivation | null {
		const trail = newestTrail(this.ledger);
		if (!this.#derivations || (this.#derivations.length === 0 && trail !== this.#seenTrail)) {
			const busy = new Set(this.#busyRides());
			const known = this.#derivations !== null && this.#seenTrail >= 0;
			const only = known ? ridesTouchedSince(this.ledger, this.#seenTrail) : null;
			const all = listDerivations(this.ledger, only);
			this.#derivations = all.filter(({ rideId }) => !busy.has(rideId));
			// a ride that is worked on with what was known before is looked at again when that is done
			this.#seenTrail = this.#derivations.length === all.length ? trail : -1;
			keepFirstVersion(this.ledger);
		}
		return this.#derivations.shift() ?? null;
	}

	#busyRides(): number[] {
		return this.underWay().flatMap((task) =>
			'derivation' in task ? [task.derivation.rideId] : 'insertion' in task ? [task.insertion.rideId] : []
		);
	}
}

function newestTrail(ledger: Ledger): number {
	return ledger.database.prepare<[], { id: number | null }>('SELECT max(id) AS id FROM trail').get()!.id ?? 0;
}
