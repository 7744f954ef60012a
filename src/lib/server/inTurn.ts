type Piece = () => void;

const waiting: Piece[] = [];

/**
 * Does work that can wait a moment: one piece after the other, and between two of them whoever asked for a page
 * meanwhile is answered. Fifty riders who send at once would otherwise stand before everybody else.
 *
 * @returns what the work returns, when it was its turn
 */
export function inTurn<Result>(work: () => Result): Promise<Result> {
	return new Promise((resolve, reject) => {
		waiting.push(() => {
			try {
				resolve(work());
			} catch (error) {
				reject(error);
			}
		});
		// the first one waits as well: what came in with it goes first
		if (waiting.length === 1) setImmediate(next);
	});
}

function next(): void {
	waiting[0]();
	waiting.shift();
	if (waiting.length > 0) setImmediate(next);
}
