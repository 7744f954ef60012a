import { PREFIX } from '$lib/address/prefix';
/** How far one upload is. */
export interface SendProgress {
	readonly sentBytes: number;
	readonly totalBytes: number;
}

export interface SendOptions {
	/** the page's fetch; a test gives its own */
	readonly fetch: typeof fetch;
	readonly onProgress?: (progress: SendProgress) => void;
	/** waits before an attempt is repeated; a test gives one that does not wait */
	readonly wait?: (ms: number) => Promise<void>;
	/** a clock */
	readonly nowMs?: () => number;
	/** how large the first piece is; the next ones grow on a quick line and shrink on a slow one */
	readonly firstPieceBytes?: number;
	readonly signal?: AbortSignal;
	/** an upload of this very file that was begun before; it goes on where it stopped */
	readonly uploadId?: string;
	/** told as soon as the server knows the file */
	readonly onAnnounced?: (uploadId: string) => void;
	/** what the rider already said about the file, sent with its name: wheel, rider, wet... */
	readonly hints?: Readonly<Record<string, unknown>>;
}

/** An upload that the server refused; `sentence` is meant for the rider. */
export class SendRefused extends Error {
	constructor(
		readonly status: number,
		readonly sentence: string
	) {
		super(sentence);
		this.name = 'SendRefused';
	}
}

/** The largest piece: small enough that a broken link loses little, large enough to cost few requests. */
export const PIECE_BYTES = 1_000_000;
const LEAST_PIECE_BYTES = 2 ** 16;
/** a piece that takes longer is too large for this line; one that takes less could be larger */
const SLOW_MS = 8_000;
const QUICK_MS = 1_500;
const ATTEMPTS = 6;
/** An announcement on its way is heard to its end, else the server holds an upload of which nobody here knows. */
const HEARD_TO_ITS_END_MS = 10_000;

/**
 * Sends one file by the resumable protocol: create, append each piece at the offset the server holds,
 * finish. A broken connection is taken up where the server says it stopped.
 *
 * @returns the id of the import that the server queued
 * @throws SendRefused when the server does not take the file; the last network error after 6 attempts
 */
export async function sendFile(file: File, options: SendOptions): Promise<number> {
	const announced = (await goOn(options)) ?? (await announce(file, options));
	const id = encodeURIComponent(announced.id);
	options.onAnnounced?.(announced.id);
	let { offset } = announced;
	const report = () => options.onProgress?.({ sentBytes: offset, totalBytes: file.size });
	report();
	let stuck = 0;
	let pieceBytes = options.firstPieceBytes ?? PIECE_BYTES;
	const nowMs = options.nowMs ?? (() => performance.now());
	while (offset < file.size) {
		let broken = false;
		const before = offset;
		let begunMs = nowMs();
		offset = await attempt(options, async () => {
			// after a break only the server knows how much of the last piece arrived
			const from = broken ? await heldOffset(id, options) : offset;
			broken = true;
			begunMs = nowMs();
			const sent = await options.fetch(`${PREFIX}/uploads/${id}`, {
				method: 'PATCH',
				headers: { 'content-type': 'application/octet-stream', 'upload-offset': String(from) },
				body: file.slice(from, from + pieceBytes),
				signal: options.signal
			});
			// 409: the server holds another offset than we thought; it is asked, and the loop goes on from there
			if (sent.status === 409) return heldOffset(id, options);
			const answer = await answered(sent);
			return typeof answer.offset === 'number' ? answer.offset : Math.min(file.size, from + pieceBytes);
		});
		stuck = offset > before ? 0 : stuck + 1;
		pieceBytes = nextPiece(pieceBytes, nowMs() - begunMs);
		if (stuck >= ATTEMPTS) throw new Error(`no progress past byte ${offset}`);
		report();
	}
	const finished = await attempt(options, async () =>
		answered(
			await options.fetch(`${PREFIX}/uploads/${id}/finish`, { method: 'POST', signal: options.signal })
		)
	);
	return Number(finished.importId);
}

function nextPiece(bytes: number, tookMs: number): number {
	if (tookMs > SLOW_MS) return Math.max(LEAST_PIECE_BYTES, Math.floor(bytes / 2));
	return tookMs < QUICK_MS ? Math.min(PIECE_BYTES, bytes * 2) : bytes;
}

async function announce(file: File, options: SendOptions): Promise<{ id: string; offset: number }> {
	const later = abortedLater(options.signal, HEARD_TO_ITS_END_MS);
	try {
		const created = await attempt(options, async () =>
			answered(
				await options.fetch(`${PREFIX}/uploads`, {
					method: 'POST',
					headers: { 'content-type': 'application/json' },
					body: JSON.stringify({ ...options.hints, name: file.name, size: file.size }),
					signal: later.signal
				})
			)
		);
		return { id: String(created.id), offset: typeof created.offset === 'number' ? created.offset : 0 };
	} finally {
		later.forget();
	}
}

/** A signal that follows another one by so much, until it is forgotten. */
function abortedLater(first: AbortSignal | undefined, ms: number) {
	const controller = new AbortController();
	let timer: ReturnType<typeof setTimeout> | undefined;
	const begin = () => (timer = setTimeout(() => controller.abort(), ms));
	first?.addEventListener('abort', begin, { once: true });
	return {
		signal: controller.signal,
		forget() {
			first?.removeEventListener('abort', begin);
			clearTimeout(timer);
		}
	};
}

/** Where an upload that was begun before stands; null when there is none or the server gave it up. */
async function goOn(options: SendOptions): Promise<{ id: string; offset: number } | null> {
	const { uploadId } = options;
	if (uploadId === undefined) return null;
	try {
		return {
			id: uploadId,
			offset: await attempt(options, () => heldOffset(encodeURIComponent(uploadId), options))
		};
	} catch (error) {
		if (error instanceof SendRefused && error.status === 404) return null;
		throw error;
	}
}

async function heldOffset(id: string, options: SendOptions): Promise<number> {
	const answer = await answered(await options.fetch(`${PREFIX}/uploads/${id}`, { signal: options.signal }));
	return Number(answer.offset);
}

async function answered(response: Response): Promise<Record<string, unknown>> {
	const text = await response.text();
	let body: Record<string, unknown> = {};
	try {
		body = text === '' ? {} : (JSON.parse(text) as Record<string, unknown>);
	} catch {
		// a proxy or the framework answered with a page; the status says enough
	}
	if (response.ok) return body;
	const said = body.sentence ?? body.message;
	throw new SendRefused(
		response.status,
		typeof said === 'string' ? said : `The server did not take the file (answer ${response.status}).`
	);
}

async function attempt<T>(options: SendOptions, action: () => Promise<T>): Promise<T> {
	const wait = options.wait ?? ((ms: number) => new Promise<void>((done) => setTimeout(done, ms)));
	for (let tried = 1; ; tried++) {
		try {
			return await action();
		} catch (error) {
			// what the server refuses it will refuse again; a broken connection or a 5xx may mend
			const mayMend = !(error instanceof SendRefused) || error.status >= 500;
			if (!mayMend || tried >= ATTEMPTS || options.signal?.aborted) throw error;
			await wait(500 * 2 ** (tried - 1));
		}
	}
}
