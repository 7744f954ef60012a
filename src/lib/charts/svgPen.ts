import { toTenth } from './toTenth';

/**
 * What a drawing does on a canvas, kept as SVG: as much of the canvas's commands as the charts use. It has no
 * pixels, so drawings that would paint by pixels take paths.
 */
export interface SvgPen {
	/** hand this to a drawing function */
	readonly context: CanvasRenderingContext2D;
	/** the elements drawn so far */
	readonly svg: () => string;
}

/** @param id begins the names of clip paths; unique in the file */
export function svgPen(id: string): SvgPen {
	const parts: string[] = [];
	let path = '';
	let clips = 0;
	let open = 0;
	const depths: number[] = [];
	let last: { readonly style: string; d: string } | null = null;
	let dash = '';

	/** neighbours of one look become one element */
	const add = (style: string, d: string) => {
		if (last?.style === style) last.d += d;
		else {
			flush();
			last = { style, d };
		}
	};
	const flush = () => {
		if (last) parts.push(`<path ${last.style} d="${last.d}"/>`);
		last = null;
	};
	const box = (x: number, y: number, width: number, height: number) =>
		`M${toTenth(x)},${toTenth(y)}h${toTenth(width)}v${toTenth(height)}h${toTenth(-width)}z`;
	const pen = {
		fillStyle: '',
		strokeStyle: '',
		lineWidth: 1,
		lineJoin: 'miter',
		globalAlpha: 1,
		beginPath: () => (path = ''),
		moveTo: (x: number, y: number) => (path += `M${toTenth(x)},${toTenth(y)}`),
		lineTo: (x: number, y: number) => (path += `L${toTenth(x)},${toTenth(y)}`),
		rect: (x: number, y: number, width: number, height: number) => (path += box(x, y, width, height)),
		clearRect: () => {},
		setLineDash: (lengths: readonly number[]) =>
			(dash = lengths.length ? ` stroke-dasharray="${lengths.join(' ')}"` : ''),
		stroke: () =>
			path &&
			add(
				`fill="none" ${ink('stroke', pen.strokeStyle, pen.globalAlpha)} stroke-width="${pen.lineWidth}" stroke-linejoin="${pen.lineJoin}"${dash}`,
				path
			),
		fill: () => path && add(ink('fill', pen.fillStyle, pen.globalAlpha), path),
		fillRect: (x: number, y: number, width: number, height: number) =>
			add(ink('fill', pen.fillStyle, pen.globalAlpha), box(x, y, width, height)),
		save: () => depths.push(open),
		restore: () => {
			flush();
			for (const before = depths.pop() ?? 0; open > before; open--) parts.push('</g>');
		},
		clip: () => {
			flush();
			const name = `${id}-clip-${clips++}`;
			parts.push(`<clipPath id="${name}"><path d="${path}"/></clipPath><g clip-path="url(#${name})">`);
			open++;
		}
	};
	return {
		context: pen as unknown as CanvasRenderingContext2D,
		svg: () => {
			flush();
			return parts.join('') + '</g>'.repeat(open);
		}
	};
}

/** Colours of eight digits are split: not every program that reads SVG knows them. */
function ink(name: 'fill' | 'stroke', colour: string, alpha: number): string {
	const parts = /^(#[\da-f]{6})([\da-f]{2})$/i.exec(colour);
	const share = alpha * (parts ? parseInt(parts[2], 16) / 255 : 1);
	const opacity = share < 1 ? ` ${name}-opacity="${Math.round(share * 1000) / 1000}"` : '';
	return `${name}="${parts?.[1] ?? colour}"${opacity}`;
}
