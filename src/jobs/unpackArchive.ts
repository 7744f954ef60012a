/**
 * Child process: unpacks one archive, file by file, and waits after each until its parent has written it down.
 * It has no ledger; its parent watches its time and memory and may end it at any moment.
 */
import { endWithParent } from './analysis/endWithParent';
import type { UnpackMessage, UnpackRequest } from './unpack/messages';
import { unpackZip } from './unpack/unpackZip';

endWithParent(Number(process.argv[2]));
let goOn = () => {};
process.on('message', (request: UnpackRequest | { kind: 'next' }) => {
	if (request.kind === 'next') goOn();
	else void unpack(request);
});

async function unpack(request: UnpackRequest): Promise<void> {
	try {
		const refusal = await unpackZip(request, {
			begun: (facts) => say({ kind: 'begun', facts }),
			member: (facts, outcome) => {
				const next = new Promise<void>((resolve) => (goOn = resolve));
				say({ kind: 'member', facts, outcome });
				return next;
			}
		});
		say(refusal ? { kind: 'refused', refusal } : { kind: 'end' });
	} catch (error) {
		say({ kind: 'broke', detail: error instanceof Error ? (error.stack ?? error.message) : String(error) });
	}
}

function say(message: UnpackMessage): void {
	process.send?.(message, undefined, undefined, (error) => {
		if (error) process.exit(1);
	});
}
