import { getContext, setContext } from 'svelte';
import { createFormats, type Formats } from './formats';

const KEY = Symbol('formats');

/** Called once by the layout; the getter keeps later changes of the zone alive. */
export function provideFormats(current: () => Formats): void {
	setContext(KEY, current);
}

/** The user's formats; a chart rendered outside the layout (tests) gets English and UTC. */
export function useFormats(): Formats {
	const current = getContext<(() => Formats) | undefined>(KEY);
	return current ? current() : createFormats('en-GB', 'UTC');
}
