import { WORD_GROUPS, wordsOf } from '$lib/ui/words';

export const load = () => ({ groups: WORD_GROUPS.map((group) => ({ group, words: wordsOf(group) })) });
