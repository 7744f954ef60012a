export interface ChosenFile {
	readonly file: File;
	/** with its folders, as the browser tells them; "" = chosen by itself */
	readonly folder: string;
}

const CALLED_LIKE_ONE = /\.((fit|tcx|gpx|csv)(\.gz)?|zip)$/i;

/** Of a folder only what is called like a ride or an archive; a file chosen by itself is what somebody meant. */
export function ridesAmong(files: readonly ChosenFile[]): { rides: ChosenFile[]; leftOut: number } {
	const rides = files.filter(
		({ file, folder }) =>
			folder === '' ||
			(CALLED_LIKE_ONE.test(file.name) && !/(^|\/)(\.|__MACOSX)/.test(`${folder}/${file.name}`))
	);
	return { rides, leftOut: files.length - rides.length };
}

/** Files of a picker; of one for folders each knows its path. */
export function picked(files: Iterable<File>): ChosenFile[] {
	return Array.from(files, (file) => ({
		file,
		folder: file.webkitRelativePath ? file.webkitRelativePath.split('/').slice(0, -1).join('/') : ''
	}));
}

/** Everything that was dropped, folders with all below them. */
export async function dropped(transfer: DataTransfer): Promise<ChosenFile[]> {
	// the list of items is empty after the first wait
	const entries = [...transfer.items].map((item) => item.webkitGetAsEntry?.() ?? null);
	const files = [...transfer.files];
	if (!entries.some((entry) => entry?.isDirectory)) return files.map((file) => ({ file, folder: '' }));
	const found: ChosenFile[] = [];
	for (const entry of entries) if (entry) await walk(entry, '', found);
	return found;
}

async function walk(entry: FileSystemEntry, folder: string, found: ChosenFile[]): Promise<void> {
	if (entry.isFile) {
		const file = await new Promise<File | null>((resolve) =>
			(entry as FileSystemFileEntry).file(resolve, () => resolve(null))
		);
		if (file) found.push({ file, folder });
		return;
	}
	const reader = (entry as FileSystemDirectoryEntry).createReader();
	const inside = folder === '' ? entry.name : `${folder}/${entry.name}`;
	for (;;) {
		// a browser hands over a hundred at a time
		const some = await new Promise<FileSystemEntry[]>((resolve) =>
			reader.readEntries(resolve, () => resolve([]))
		);
		if (some.length === 0) return;
		for (const one of some) await walk(one, inside, found);
	}
}
