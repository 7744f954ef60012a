/** Hands a text to the browser as a file to keep; nothing leaves the machine. */
export function saveFile(name: string, type: string, text: string): void {
	const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
	const link = document.createElement('a');
	link.href = address;
	link.download = name;
	link.click();
	// the browser reads it after the click
	setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

/**
 * A name that every file system takes.
 *
 * @example fileNameOf('Wheel A / spacing', 'csv') // "wheel-a-spacing.csv"
 */
export function fileNameOf(words: string, ending: 'svg' | 'csv'): string {
	const plain = words
		.toLowerCase()
		.normalize('NFKD')
		.replace(/[^a-z0-9]+/g, '-')
		.replace(/^-+|-+$/g, '')
		.slice(0, 80);
	return `${plain || 'chart'}.${ending}`;
}
