import { render } from 'svelte/server';
import { expect, it } from 'vitest';
import AnswerForm from '../../src/routes/answers/AnswerForm.svelte';
import QuestionList from '../../src/routes/answers/QuestionList.svelte';
import type { AnswerRow, AnswersView } from '$lib/server';

const ride = {
	id: 4,
	startedAt: '2026-05-10T07:00:00.000Z',
	localOffsetMin: 120,
	totalM: 45_000,
	wheel: null,
	build: null,
	rider: null,
	state: 'counted',
	fileName: 'ride.fit'
} as unknown as AnswerRow['ride'];
const row = { ride, options: null, offered: null, sure: false, reason: null };
const laps = {
	name: 'laps',
	title: 'What a lap meant',
	sentence: 'What was it?',
	holdsBack: false,
	rides: 18
} as NonNullable<AnswersView['chosen']>;
const text = (body: string) =>
	body
		.replace(/<!--.*?-->/gs, '')
		.replace(/<[^>]*>/g, ' ')
		.replace(/\s+/g, ' ');

it('says of each question what its number counts', () => {
	const { body } = render(QuestionList, {
		props: { questions: [laps, { ...laps, name: 'surface', title: 'Surface', rides: 1 }], chosen: 'laps' }
	});
	expect(text(body)).toContain('What a lap meant 18 rides');
	expect(text(body)).toContain('Surface 1 ride ');
});

it('says that laps are what is answered where several lie on one ride', () => {
	const rows = [60, 600].map((lapS) => ({ ...row, key: `4@${lapS}`, lapS }));
	const { body } = render(AnswerForm, { props: { question: laps, options: [], rows, further: 0 } });
	expect(text(body)).toContain('2 laps on 1 ride: each lap has an answer of its own.');
	expect(text(body)).toContain('For all ticked laps');
});

it('speaks of rides where a ride has one answer', () => {
	const rows = [{ ...row, key: '4', lapS: null }];
	const { body } = render(AnswerForm, {
		props: { question: { ...laps, name: 'surface' }, options: [], rows, further: 0 }
	});
	expect(text(body)).toContain('For all ticked rides');
	expect(text(body)).not.toContain('lap');
});
