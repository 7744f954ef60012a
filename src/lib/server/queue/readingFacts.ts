import { createHash } from 'node:crypto';
import type { Bike } from '$lib/drivetrain/bike';
import { canonicalJson } from '$lib/release/canonicalJson';
import type { ColumnMapping } from '$lib/ride/columnMapping';
import { bikeFacts, statedFacts } from './bikeFacts';

/**
 * The part of a result's key that stands for all that people said of a file before it was read: of the bike, and of
 * a logger's table by which columns. A result whose key is another one is made again.
 *
 * @param columns null = the file needs none
 * @returns 32 hexadecimal digits; '' when nothing was said
 */
export function readingFacts(bike: Bike, columns: ColumnMapping | null): string {
	if (columns === null) return bikeFacts(bike);
	const said = canonicalJson({ bike: statedFacts(bike), columns });
	return createHash('sha256').update(said).digest('hex').slice(0, 32);
}
