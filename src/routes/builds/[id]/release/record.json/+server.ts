import { error } from '@sveltejs/kit';
import { decisionRecord, getLedger, listDecisions } from '$lib/server';
import { pathId } from '../../../../forms';
import type { RequestHandler } from './$types';

/** The frozen record of a decision, byte for byte as its hash was taken. */
export const GET: RequestHandler = ({ params, url }) => {
	const ledger = getLedger();
	const decisionId = pathId(url.searchParams.get('decision') ?? '');
	const ofBuild = listDecisions(ledger, pathId(params.id)).some(({ id }) => id === decisionId);
	const record = ofBuild ? decisionRecord(ledger, decisionId) : null;
	if (record === null) error(404, 'There is no such decision.');
	return new Response(record, {
		headers: {
			'content-type': 'application/json; charset=utf-8',
			'content-disposition': `attachment; filename="release-record-${decisionId}.json"`
		}
	});
};
