import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { filesBelow } from '../lint/stylesOf';

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const CHARTS = at('src/lib/charts');
const ROUTES = at('src/routes');

/** Parts of charts: what they draw is in the pictures of the charts that hold them. */
const PARTS = [
	'ChartFrame',
	'EndNumbers',
	'FarCanvas',
	'LayeredDrawing',
	'NearCanvas',
	'SaveChart',
	'SlipGlyph',
	'StateRibbon',
	'ReadingLine',
	'StripAxis',
	'StripGround',
	'StripMarks',
	'TimeStrip'
];

/** Each chart, and for each place that shows it the file there with its buttons to save it. */
const CHARTS_SAVED: Record<string, Record<string, string>> = {
	CumulativeCurve: {
		'compare/LifeSection.svelte': 'compare/TakeAway.svelte',
		'report/ReportCharts.svelte': 'report/ReportCharts.svelte'
	},
	DriveStrips: { 'rides/[id]/StripStack.svelte': 'rides/[id]/RideStrips.svelte' },
	GearFan: { 'rides/[id]/FanView.svelte': 'rides/[id]/FanView.svelte' },
	ObservedShare: { 'BuildStory.svelte': 'SaveStory.svelte' },
	PlanCourse: {
		'builds/[id]/release/CourseChart.svelte': 'builds/[id]/release/CourseChart.svelte'
	},
	RateInterval: {
		'BuildStory.svelte': 'SaveStory.svelte',
		'compare/RateTable.svelte': 'compare/TakeAway.svelte',
		'report/Report.svelte': 'report/Report.svelte'
	},
	RatesByBin: {
		'compare/BinChart.svelte': 'compare/TakeAway.svelte',
		'report/ReportCharts.svelte': 'report/ReportCharts.svelte'
	},
	RideTrack: { 'rides/[id]/TrackView.svelte': 'rides/[id]/TrackView.svelte' },
	SlipsOverDistance: { 'compare/AgeChart.svelte': 'compare/TakeAway.svelte' },
	SmallCurve: { 'BuildStory.svelte': 'SaveStory.svelte' },
	TorqueCurve: {
		'compare/TorqueSection.svelte': 'compare/TakeAway.svelte',
		'report/ReportCharts.svelte': 'report/ReportCharts.svelte'
	},
	WearLine: { 'wheels/[id]/inspections/WearSection.svelte': 'wheels/[id]/inspections/WearSection.svelte' },
	WheelAxis: { 'wheels/[id]/AlongTheDistance.svelte': 'wheels/[id]/AlongTheDistance.svelte' },
	// the way to a window of the strips: what it shows they show larger
	WholeRideBand: { 'rides/[id]/RideStrips.svelte': 'rides/[id]/RideStrips.svelte' }
};

/** Pages that draw charts without buttons, and why. */
const NOT_SAVED: Record<string, string> = {
	'review/ReviewStrips.svelte': 'a file would carry the event out of blind review',
	'design/FigureSheet.svelte': 'no figures: the page of the look, which the built server does not have',
	'report/charts/chartSvg.ts': 'this makes the files'
};

const ways = /<SaveChart|<SaveStory|<ChartFiles|report\/charts|chartQuery|\.svg/;
const users = filesBelow(ROUTES, ['.svelte', '.ts']).flatMap((file) => {
	return [
		...readFileSync(join(ROUTES, file), 'utf8').matchAll(/from '\$lib\/charts\/([A-Z]\w*)\.svelte'/g)
	].map(([, chart]) => ({ file, chart }));
});

describe('every chart', () => {
	const components = readdirSync(CHARTS)
		.filter((name) => name.endsWith('.svelte'))
		.map((name) => name.replace('.svelte', ''));

	it('stands in the table, or is a part of one that does', () => {
		expect(components.sort()).toEqual([...PARTS, ...Object.keys(CHARTS_SAVED)].sort());
	});

	it('has a stored picture with rounded numbers', () => {
		const folder = at('tests/charts/__snapshots__');
		const pictures = readdirSync(folder)
			.map((name) => readFileSync(join(folder, name), 'utf8'))
			.flatMap((text) => text.split(/^exports\[`/m).slice(1));
		for (const chart of Object.keys(CHARTS_SAVED)) {
			const own = pictures.filter((picture) => picture.startsWith(`${chart} >`));
			expect(own.length, `${chart} has no snapshot`).toBeGreaterThan(0);
			for (const picture of own) expect(picture).not.toMatch(/\d\.\d{3,}/);
		}
	});

	it('has a name that a screen reader says, or parts that have one each', () => {
		const named = (component: string) => {
			const text = readFileSync(join(CHARTS, `${component}.svelte`), 'utf8');
			// the frame names what stands in it
			if (/<ChartFrame\s+(\{label\}|label=\{)/.test(text)) return true;
			return /role(=|: )['"]img['"]/.test(text) && /aria-label(=[{"]|': [\w`'"])|'aria-label':\s/.test(text);
		};
		for (const chart of Object.keys(CHARTS_SAVED)) {
			const names = chart === 'DriveStrips' ? ['TimeStrip', 'StateRibbon'] : [chart];
			for (const name of [...names, 'ChartFrame']) expect(named(name), `${name} has no name`).toBe(true);
		}
	});

	it('can be saved wherever it is shown', () => {
		for (const { file, chart } of users) {
			if (PARTS.includes(chart) || NOT_SAVED[file]) continue;
			const way = CHARTS_SAVED[chart]?.[file];
			expect(way, `${file} shows ${chart}: say in the table where it can be saved`).toBeDefined();
			expect(readFileSync(join(ROUTES, way), 'utf8'), `${way} should save ${chart}`).toMatch(ways);
		}
	});

	it('has no line in the table that is no longer true', () => {
		for (const [chart, places] of Object.entries(CHARTS_SAVED))
			for (const file of Object.keys(places)) expect(users).toContainEqual({ file, chart });
		for (const file of Object.keys(NOT_SAVED)) expect(users.map((user) => user.file)).toContain(file);
	});

	it('that a page draws by itself can be saved there too', () => {
		const pictures = new Set([
			// signs of a key, of a list, of the place of a sensor; a page of the look
			'rides/[id]/StripKey.svelte',
			'rides/[id]/EventTable.svelte',
			'recording/SensorPlaces.svelte',
			// the room of a drawing that is still to come
			'compare/DrawnInPage.svelte',
			'design/FigureSheet.svelte'
		]);
		for (const file of filesBelow(ROUTES, ['.svelte'])) {
			const text = readFileSync(join(ROUTES, file), 'utf8');
			if (/<svg[\s>]/.test(text) && !pictures.has(file)) expect(text, file).toMatch(ways);
		}
	});
});
