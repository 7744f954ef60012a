import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { deserialize, serialize } from 'node:v8';

/** What was gathered, from the file where it lies there; else gathered and, with a file, kept in it. */
export async function keptRows<T>(file: string | undefined, gathered: () => Promise<T>): Promise<T> {
	if (file && existsSync(file)) {
		console.log(`gathered before: ${file}`);
		return deserialize(readFileSync(file));
	}
	const rows = await gathered();
	if (file) writeFileSync(file, serialize(rows));
	return rows;
}
