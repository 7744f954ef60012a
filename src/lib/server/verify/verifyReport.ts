import type { Instant } from '../views';

/** What is looked at, in this order. */
export const VERIFY_PARTS = [
	'ledger',
	'traces',
	'files',
	'strays',
	'sums',
	'decisions',
	'analysed again'
] as const;
export type VerifyPartName = (typeof VERIFY_PARTS)[number];

export interface VerifyFinding {
	/** damage = something that was accepted is not whole; note = worth knowing, nothing is lost */
	readonly severity: 'damage' | 'note';
	/** what it is about: a table, a SHA-256, a ride's or decision's number */
	readonly subject: string;
	readonly sentence: string;
}

export interface VerifyPart {
	readonly name: VerifyPartName;
	readonly state: 'whole' | 'damaged' | 'not checked';
	/** one plain sentence: what was looked at, how many */
	readonly sentence: string;
	readonly checked: number;
	/** all of them, also those that are not listed */
	readonly damages: number;
	readonly notes: number;
	/** at most MOST_FINDINGS */
	readonly findings: readonly VerifyFinding[];
}

export interface VerifyReport {
	readonly checkedAt: Instant;
	/** how long it took */
	readonly seconds: number;
	readonly whole: boolean;
	/** which rides were analysed again is drawn with it */
	readonly seed: string;
	readonly parts: readonly VerifyPart[];
}

export const MOST_FINDINGS = 200;

/** Gathers what one part finds. */
export class PartFindings {
	readonly #findings: VerifyFinding[] = [];
	#damages = 0;
	#notes = 0;
	checked = 0;

	damage(subject: string, sentence: string): void {
		this.#damages++;
		this.#add({ severity: 'damage', subject, sentence });
	}

	note(subject: string, sentence: string): void {
		this.#notes++;
		this.#add({ severity: 'note', subject, sentence });
	}

	part(name: VerifyPartName, sentence: string): VerifyPart {
		return {
			name,
			state: this.#damages > 0 ? 'damaged' : 'whole',
			sentence,
			checked: this.checked,
			damages: this.#damages,
			notes: this.#notes,
			findings: this.#findings
		};
	}

	#add(finding: VerifyFinding): void {
		if (this.#findings.length < MOST_FINDINGS) this.#findings.push(finding);
	}
}
