import { randomBytes, scrypt, timingSafeEqual, type ScryptOptions } from 'node:crypto';
import { LedgerRefusal } from '../refusal';
import { PASSWORD_COST } from './passwordCost';

const SALT_BYTES = 16;
const HASH_BYTES = 32;
/** what a stored text may ask for at most; beyond that it was not written here */
const MOST_MEMORY_BYTES = 256 * 2 ** 20;

interface Cost {
	readonly N: number;
	readonly r: number;
	readonly p: number;
}

/** Hashing is done one at a time: each takes much memory, and who guesses passwords may not take all of it. */
let last: Promise<unknown> = Promise.resolve();
let waiting = 0;
const MOST_WAITING = 20;

/** "scrypt$N$r$p$salt$hash", with the parameters beside it so that they can be raised later. */
export async function hashPassword(password: string, cost: Cost = PASSWORD_COST): Promise<string> {
	const salt = randomBytes(SALT_BYTES);
	const hash = await derive(password, salt, cost);
	return ['scrypt', cost.N, cost.r, cost.p, salt.toString('base64url'), hash.toString('base64url')].join('$');
}

/**
 * Whether a password is the one that was hashed, and whether its hash is of another cost than today's, so that
 * it should be made anew while the password is at hand.
 *
 * @param stored as `hashPassword` wrote it; null = there is none: the same work is done and the answer is no,
 *   so that the time does not tell who has a password
 */
export async function checkPassword(
	password: string,
	stored: string | null
): Promise<{ right: boolean; stale: boolean }> {
	const parts = /^scrypt\$(\d{1,8})\$(\d{1,3})\$(\d{1,3})\$([\w-]{8,})\$([\w-]{8,})$/.exec(stored ?? '');
	if (!parts) {
		await derive(password, Buffer.alloc(SALT_BYTES), PASSWORD_COST);
		return { right: false, stale: false };
	}
	const cost = { N: Number(parts[1]), r: Number(parts[2]), p: Number(parts[3]) };
	const wanted = Buffer.from(parts[5], 'base64url');
	const found = await derive(password, Buffer.from(parts[4], 'base64url'), cost, wanted.length);
	const stale = cost.N !== PASSWORD_COST.N || cost.r !== PASSWORD_COST.r || cost.p !== PASSWORD_COST.p;
	return { right: timingSafeEqual(found, wanted), stale };
}

async function derive(password: string, salt: Buffer, cost: Cost, bytes = HASH_BYTES): Promise<Buffer> {
	const options: ScryptOptions = { ...cost, maxmem: Math.min(MOST_MEMORY_BYTES, 192 * cost.N * cost.r) };
	// two keyboards may write the same letter in two ways
	const text = password.normalize('NFKC');
	if (waiting >= MOST_WAITING)
		throw new LedgerRefusal('too-many', 'Many people are trying to come in at once. Try again in a minute.');
	waiting++;
	const mine = last.then(
		() =>
			new Promise<Buffer>((resolve, reject) =>
				scrypt(text, salt, bytes, options, (error, key) => (error ? reject(error) : resolve(key)))
			)
	);
	last = mine.catch(() => undefined).finally(() => waiting--);
	return mine;
}
