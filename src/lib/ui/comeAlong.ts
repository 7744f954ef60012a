/**
 * A box that tells something comes along into sight while its place on the page is out of sight, until it is put away
 * or its place is seen; sent forms may say something new, so they bring it back. Its place keeps its height meanwhile.
 *
 * @param spot the place, with the box as its only child; the box has the class `away` while it comes along
 * @returns ends it
 */
export function comeAlong(spot: HTMLElement): () => void {
	const box = spot.firstElementChild as HTMLElement;
	const close = document.createElement('button');
	close.type = 'button';
	close.className = 'quiet close';
	close.setAttribute('aria-label', 'Put away');
	let outOfSight = false;
	let putAway = false;

	function place() {
		const away = outOfSight && !putAway;
		if (away === box.classList.contains('away')) return;
		spot.style.minHeight = away ? `${box.offsetHeight}px` : '';
		box.classList.toggle('away', away);
		if (away) box.append(close);
		else close.remove();
	}

	const watch = new IntersectionObserver(([{ isIntersecting }]) => {
		outOfSight = !isIntersecting;
		place();
	});
	watch.observe(spot);
	close.onclick = () => {
		putAway = true;
		place();
	};
	const sent = () => {
		putAway = false;
		place();
	};
	document.addEventListener('submit', sent);
	return () => {
		watch.disconnect();
		document.removeEventListener('submit', sent);
	};
}
