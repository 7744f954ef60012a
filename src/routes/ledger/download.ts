import { getLedger, LedgerRefusal, noteExport, type ExportOptions, type Ledger } from '$lib/server';
import { error, type RequestEvent } from '@sveltejs/kit';
import { Readable } from 'node:stream';
import { actorOf, text } from '../forms';

/**
 * Answers a form with a file that is made while it is sent: what goes along is in the form, and who took it
 * is written down first.
 *
 * @param what also the beginning of the file's name
 */
export async function download(
	{ request, locals }: RequestEvent,
	what: 'archive' | 'tables',
	make: (ledger: Ledger, options: ExportOptions) => Readable
): Promise<Response> {
	const form = await request.formData();
	const asked = (name: string) => text(form, name) === 'yes';
	const options = { sources: asked('sources'), attachments: asked('attachments'), names: asked('names') };
	const ledger = getLedger();
	try {
		noteExport(ledger, actorOf(locals), what, options);
	} catch (refused) {
		if (refused instanceof LedgerRefusal) error(403, refused.sentence);
		throw refused;
	}
	const day = new Date(ledger.now()).toISOString().slice(0, 10);
	return new Response(Readable.toWeb(make(ledger, options)) as ReadableStream<Uint8Array>, {
		headers: {
			'content-type': 'application/zip',
			'content-disposition': `attachment; filename="ledger-${what}-${day}.zip"`,
			'cache-control': 'no-store'
		}
	});
}
