import type { Asking } from '$lib/server';

declare global {
	namespace App {
		interface Locals extends Asking {
			/** people have to sign in, because the server can be reached from elsewhere */
			guarded: boolean;
			/** browsers reach it over https */
			secure: boolean;
			/** address of whoever asks */
			client: string;
		}
		interface Error {
			message: string;
			/** what the log calls this failure */
			reference?: string;
		}
	}
}

export {};
