import { redirectTo } from '$lib/address/redirectTo';
import { firstLook, getLedger } from '$lib/server';
import { placeOf } from '../placeOf';
import type { RequestHandler } from './$types';

/** Leads to the page of a step; back to the list when there is none. */
export const GET: RequestHandler = ({ params }) => {
	redirectTo(303, placeOf(Number(params.step), firstLook(getLedger())) ?? '/first-look');
};
