/** A person's few requests to a running server, as the pages and the upload client make them. */

/** Chooses a name as the first page does; gives the cookie back. */
export async function chooseName(origin: string, name: string): Promise<string> {
	const answer = await fetch(`${origin}/welcome?/name`, {
		method: 'POST',
		headers: { origin, 'content-type': 'application/x-www-form-urlencoded' },
		body: new URLSearchParams({ name }),
		redirect: 'manual'
	});
	const cookie = answer.headers.getSetCookie().map((line) => line.split(';')[0]);
	if (cookie.length === 0) throw new Error(`no cookie for a name: status ${answer.status}`);
	return cookie.join('; ');
}

/** Sends a file in one piece; gives the number of its import back. */
export async function uploadFile(
	origin: string,
	cookie: string,
	name: string,
	bytes: Uint8Array
): Promise<number> {
	const headers = { cookie, origin };
	const created = await expectOk(
		await fetch(`${origin}/uploads`, {
			method: 'POST',
			headers: { ...headers, 'content-type': 'application/json' },
			body: JSON.stringify({ name, size: bytes.length })
		})
	);
	const { id } = (await created.json()) as { id: string };
	await expectOk(
		await fetch(`${origin}/uploads/${id}`, {
			method: 'PATCH',
			headers: { ...headers, 'content-type': 'application/octet-stream', 'upload-offset': '0' },
			body: bytes as BodyInit
		})
	);
	const finished = await expectOk(await fetch(`${origin}/uploads/${id}/finish`, { method: 'POST', headers }));
	return ((await finished.json()) as { importId: number }).importId;
}

/** Waits until an import has ended; gives its stage back. */
export async function waitForImport(origin: string, cookie: string, importId: number): Promise<string> {
	for (let tries = 0; tries < 2400; tries++) {
		const answer = await expectOk(await fetch(`${origin}/imports.json`, { headers: { cookie } }));
		const { imports } = (await answer.json()) as { imports: { id: number; stage: string }[] };
		const stage = imports.find((one) => one.id === importId)?.stage ?? 'waiting';
		if (!['receiving', 'waiting', 'analysing'].includes(stage)) return stage;
		await new Promise((resolve) => setTimeout(resolve, 25));
	}
	throw new Error(`import ${importId} did not end within a minute`);
}

async function expectOk(answer: Response): Promise<Response> {
	if (!answer.ok) throw new Error(`${answer.url}: ${answer.status} ${await answer.text()}`);
	return answer;
}
