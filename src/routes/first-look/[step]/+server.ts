import { firstLook, getLedger } from '$lib/server';
import { redirect } from '@sveltejs/kit';
import { placeOf } from '../placeOf';
import type { RequestHandler } from './$types';

/** Leads to the page of a step; back to the list when there is none. */
export const GET: RequestHandler = ({ params }) => {
	redirect(303, placeOf(Number(params.step), firstLook(getLedger())) ?? '/first-look');
};
