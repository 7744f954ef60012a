import { attachmentFile, getLedger } from '$lib/server';
import { error } from '@sveltejs/kit';
import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import { pathId } from '../../forms';
import type { RequestHandler } from './$types';

/** Only pictures are shown in place; whatever a file holds, nothing in it may run or load anything. */
export const GET: RequestHandler = ({ params }) => {
	const file = attachmentFile(getLedger(), pathId(params.id));
	if (!file) error(404, 'There is no such attachment, or it was withdrawn.');
	const shown = file.mediaType.startsWith('image/') ? 'inline' : 'attachment';
	const plain = file.fileName.replace(/[^\x20-\x7e]|["\\%]/g, '_');
	return new Response(Readable.toWeb(createReadStream(file.path)) as ReadableStream, {
		headers: {
			'content-type': file.mediaType === 'text/plain' ? 'text/plain; charset=utf-8' : file.mediaType,
			'content-length': String(file.bytes),
			'content-disposition': `${shown}; filename="${plain}"; filename*=UTF-8''${encodeURIComponent(file.fileName)}`,
			'content-security-policy': "default-src 'none'; sandbox",
			'x-content-type-options': 'nosniff',
			'cache-control': 'private, no-cache'
		}
	});
};
