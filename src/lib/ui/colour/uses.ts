/** What each colour of tokens.css may be used for; tests hold contrasts of these and the sources to it. */

/** Text may be written in these on any ground. */
export const TEXT_INKS = ['ink', 'soft', 'accent'] as const;

/** Marks, lines that carry data, edges of controls and the ring of the focus. */
export const MARK_INKS = ['ink', 'soft', 'rule-strong', 'accent', 'focus'] as const;

/** Everything but the accent and the focus ring looks like pencil and paper. */
export const NEUTRAL_INKS = ['ink', 'soft', 'rule', 'rule-strong'] as const;

export const GROUNDS = ['ground', 'sheet', 'sunken', 'accent-ground'] as const;

/** Text on a filled button; nowhere else. */
export const ON_ACCENT = 'on-accent';
