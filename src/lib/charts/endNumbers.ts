/** Where a line ends and the number by which its band names it. */
export interface LineEnd {
	readonly number: number;
	readonly x: number;
	readonly y: number;
}

/**
 * Numbers at the ends of lines; those whose ends lie closer together than a number is large are written as
 * one, at the end that lies farthest right.
 *
 * @param near distance in pixels below which two numbers would run into each other
 * @example endNumbers([{ number: 1, x: 90, y: 50 }, { number: 2, x: 95, y: 52 }], 16) // one text: "1, 2"
 */
export function endNumbers(ends: readonly LineEnd[], near: number): { text: string; x: number; y: number }[] {
	const groups: LineEnd[][] = [];
	for (const end of ends) {
		const group = groups.find((members) =>
			members.some((member) => Math.abs(member.x - end.x) < near * 1.5 && Math.abs(member.y - end.y) < near)
		);
		if (group) group.push(end);
		else groups.push([end]);
	}
	return groups.map((members) => ({
		text: members.map(({ number }) => number).join(', '),
		x: Math.max(...members.map(({ x }) => x)),
		y: members.reduce((sum, { y }) => sum + y, 0) / members.length
	}));
}
