import type { Actor } from '$lib/server';

declare global {
	namespace App {
		interface Locals {
			/** who is asking; null until a name was chosen on this browser */
			actor: Actor | null;
		}
		interface Error {
			message: string;
			/** what the log calls this failure */
			reference?: string;
		}
	}
}

export {};
