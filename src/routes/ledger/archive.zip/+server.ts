import { exportArchive } from '$lib/server';
import { download } from '../download';
import type { RequestHandler } from './$types';

export const POST: RequestHandler = (event) => download(event, 'archive', exportArchive);
