import type { StackView } from '$lib/server';
import type { Formats } from '$lib/ui/formats';
import { mm, signed } from './stackWords';

type Warning = StackView['warnings'][number];

/** What a warning means for the one who would ride the wheel, in plain words. */
export function warningWords({ code, certain, valueMm, limitMm }: Warning, formats: Formats): string {
	const value = mm(valueMm, formats);
	const limit = mm(limitMm, formats);
	const may = certain
		? ''
		: ' That is if the lengths that are not measured lie at the wrong end: measure them.';
	switch (code) {
		case 'too wide':
			return `${certain ? 'Too wide' : 'May be too wide'} for the frame: ${value} over the faces, at most ${limit} may be. Do not spread the frame over it.${may}`;
		case 'too narrow':
			return `${certain ? 'Too narrow' : 'May be too narrow'} for the frame: ${value} over the faces, at least ${limit} is wanted. Tightening the axle would pull the frame together.${may}`;
		case 'bearing clamped':
			return `${certain ? 'No end float' : 'There may be no end float'} (${signed(valueMm, formats)}): clamping the axle would load the bearings, and the freehub may bind or fail to disengage. It is not ridden like this.${may}`;
		case 'end float too large':
			return `${certain ? 'Too much end float' : 'There may be too much end float'}: ${value}, at most ${limit} may be. The freehub can move away from its engagement.${may}`;
		case 'engagement too shallow':
			return `${certain ? 'Too little engagement' : 'There may be too little engagement'}: ${value}, at least ${limit} is wanted. It can let go under load. It is not ridden like this.${may}`;
		case 'rim off':
			return `The rim stands ${value} from where it is wanted, at most ${limit} may be: dish the wheel anew, and look at brake and frame clearance before it is ridden.`;
	}
}
