import type { BuildRow } from '$lib/server/views';

/** What a build waits for, as a sentence and where to do it. */
export function nextStep(build: BuildRow): { sentence: string; href: string; action: string } {
	if (build.wheels.length === 0) {
		return {
			sentence: 'It is on no wheel yet: say which wheel it was fitted to, and when.',
			href: `/builds/${build.id}`,
			action: 'Fit it'
		};
	}
	if (build.incidents.openWheelId !== null) {
		const many = build.incidents.open;
		return {
			sentence: `${many} ${many === 1 ? 'incident was' : 'incidents were'} reported and not closed: open the hub before the next ride, then say what it was.`,
			href: `/wheels/${build.incidents.openWheelId}/incidents`,
			action: 'Look at it'
		};
	}
	if (build.rides === 0 && build.state === 'draft') {
		return {
			sentence: 'It is a draft: a bench check comes before the first ride.',
			href: `/builds/${build.id}#state`,
			action: 'Check it'
		};
	}
	if (build.rides === 0) {
		return {
			sentence: 'It has no rides yet.',
			href: '/rides',
			action: 'Upload rides'
		};
	}
	if (build.counted.unreviewed > 0) {
		const many = build.counted.unreviewed;
		return {
			sentence: `${many} ${many === 1 ? 'event waits' : 'events wait'} for a person to confirm or reject.`,
			href: '/review',
			action: 'Review'
		};
	}
	if (build.observedM === 0) {
		return {
			sentence: 'No ride of it could have shown a slip: see what a recording needs.',
			href: '/method#recording',
			action: 'Read'
		};
	}
	return {
		sentence: 'Everything found is reviewed. More observed kilometres narrow the limits.',
		href: '/compare',
		action: 'Set it against another'
	};
}
