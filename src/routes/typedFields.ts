/** What a person typed, by field, to stand in the form again after a refusal; files are left out. */
export function typedFields(form: FormData): Record<string, string> {
	return Object.fromEntries(
		[...form].filter((entry): entry is [string, string] => typeof entry[1] === 'string')
	);
}
