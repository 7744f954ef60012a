import { describe, expect, it } from 'vitest';
import { chartTableCsv } from '$lib/charts/chartTable';
import { drawTrace } from '$lib/charts/drawTrace';
import { minMaxLevels } from '$lib/charts/minMaxLevels';
import { printedLook, screenInks } from '$lib/charts/printedLook';
import { fileNameOf } from '$lib/charts/saveFile';
import { svgPen } from '$lib/charts/svgPen';
import { wrapped } from '$lib/charts/wrapped';

describe('chartTableCsv', () => {
	it('neutralises what a spreadsheet would run, quotes what it would split, leaves empty what is not known', () => {
		const csv = chartTableCsv({
			columns: ['what', 'at_km'],
			rows: [
				['=HYPERLINK("x")', 1.5],
				['a, b', null]
			]
		});
		expect(csv).toBe('what,at_km\r\n"\'=HYPERLINK(""x"")",1.5\r\n"a, b",\r\n');
	});
});

describe('fileNameOf', () => {
	it('takes what every file system takes', () => {
		expect(fileNameOf('Räder / "A" <1>', 'svg')).toBe('ra-der-a-1.svg');
		expect(fileNameOf('../..', 'csv')).toBe('chart.csv');
	});
});

describe('svgPen', () => {
	it('keeps lines, fills and clips of a drawing, neighbours of one look as one element', () => {
		const pen = svgPen('a');
		const { context } = pen;
		context.save();
		context.beginPath();
		context.rect(0, 0, 100, 50);
		context.clip();
		context.fillStyle = '#7b2d6f26';
		context.fillRect(1, 2, 3, 4);
		context.fillRect(5, 6, 7, 8);
		context.strokeStyle = '#000';
		context.setLineDash([5, 3]);
		context.beginPath();
		context.moveTo(0, 0.04);
		context.lineTo(10.26, 5);
		context.stroke();
		context.restore();
		expect(pen.svg()).toBe(
			'<clipPath id="a-clip-0"><path d="M0,0h100v50h-100z"/></clipPath><g clip-path="url(#a-clip-0)">' +
				'<path fill="#7b2d6f" fill-opacity="0.149" d="M1,2h3v4h-3zM5,6h7v8h-7z"/>' +
				'<path fill="none" stroke="#000" stroke-width="1" stroke-linejoin="miter" stroke-dasharray="5 3" d="M0,0L10.3,5"/></g>'
		);
	});

	it('draws the lines of strips', () => {
		const pen = svgPen('b');
		const levels = minMaxLevels(Float32Array.of(0, 10, NaN, 5));
		drawTrace(
			pen.context,
			{ levels, tone: 'ink' },
			{ x: (s) => 10 * s, y: (v) => 20 - v, window: [0, 3], pixels: 30 },
			'#000'
		);
		expect(pen.svg()).toContain('d="M0,19.5L0,20L10,10M30,14.5L30,15"');
	});
});

describe('printedLook', () => {
	const style = (values: Record<string, string>) => ({
		getPropertyValue: (name: string) => values[name] ?? ''
	});
	const inks = screenInks((token) =>
		token === 'ink'
			? 'rgb(236, 231, 217)'
			: token === 'accent-wash'
				? 'rgba(227, 163, 211, 0.2)'
				: `rgb(${token})`
	);

	it('writes the inks of a dark screen as those of paper, and only what SVG would not take by itself', () => {
		const look = printedLook(
			style({ fill: 'none', stroke: 'rgb(236, 231, 217)', 'stroke-width': '1px', 'font-size': '12px' }),
			false,
			inks
		);
		expect(look).toEqual([
			['fill', 'none'],
			['stroke', '#000']
		]);
	});

	it('splits an ink that lets the ground through, and keeps patterns', () => {
		expect(printedLook(style({ fill: 'rgba(227, 163, 211, 0.2)' }), false, inks)).toEqual([
			['fill', '#7b2d6f'],
			['fill-opacity', '0.149']
		]);
		expect(printedLook(style({ fill: 'url("#gained-hatch")' }), false, inks)).toEqual([
			['fill', 'url(#gained-hatch)']
		]);
	});
});

describe('wrapped', () => {
	it('breaks captions between words', () => {
		expect(wrapped('one two three', 7)).toEqual(['one two', 'three']);
		expect(wrapped('engagement step', 5)).toEqual(['engagement', 'step']);
	});
});
