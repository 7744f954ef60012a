/** What is looked at when a hub is opened, and how it is written down. */
export interface InspectionKind {
	readonly kind: InspectionKindName;
	/** units to choose from; none where only words are written */
	readonly units: readonly string[];
	/** a reading beyond this is mistyped, in any of the units */
	readonly most: number;
	/** which way the part wears: the limit is the lowest or the highest value that may be */
	readonly limitIs: 'lowest' | 'highest';
	/** what is meant, for the form */
	readonly hint: string;
}

export const INSPECTION_KIND_NAMES = [
	'tooth height',
	'engagement depth',
	'pawl edge',
	'spring force',
	'coasting drag',
	'end float',
	'preload',
	'bearing feel',
	'witness marks'
] as const;
export type InspectionKindName = (typeof INSPECTION_KIND_NAMES)[number];

/** Bounds of plausible readings: common practice, no source. */
export const INSPECTION_KINDS: readonly InspectionKind[] = [
	{
		kind: 'tooth height',
		units: ['mm'],
		most: 30,
		limitIs: 'lowest',
		hint: 'say which teeth, the same ones each time'
	},
	{
		kind: 'engagement depth',
		units: ['mm'],
		most: 60,
		limitIs: 'lowest',
		hint: 'how far pawl and ring, or both rings, overlap'
	},
	{ kind: 'pawl edge', units: ['mm'], most: 10, limitIs: 'highest', hint: 'radius or flat of the edge' },
	{
		kind: 'spring force',
		units: ['N'],
		most: 500,
		limitIs: 'lowest',
		hint: 'say where: at the tip, at which height'
	},
	{
		kind: 'coasting drag',
		units: ['Nm', 'N'],
		most: 100,
		limitIs: 'highest',
		hint: 'torque at the freehub body, or pull on the cassette and at which radius'
	},
	{ kind: 'end float', units: ['mm'], most: 5, limitIs: 'highest', hint: 'clamped as in the frame' },
	{
		kind: 'preload',
		units: ['Nm', 'N', 'mm'],
		most: 300,
		limitIs: 'lowest',
		hint: 'as the adjuster or its screw was found'
	},
	{ kind: 'bearing feel', units: [], most: 0, limitIs: 'highest', hint: 'smooth, rough, notched: in words' },
	{
		kind: 'witness marks',
		units: [],
		most: 0,
		limitIs: 'highest',
		hint: 'where parts touched: bright spots, chips, a ring that crept'
	}
];
