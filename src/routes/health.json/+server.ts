import { answerJson, getLedger, health } from '$lib/server';
import type { RequestHandler } from './$types';

export const GET: RequestHandler = () => answerJson(() => health(getLedger));
