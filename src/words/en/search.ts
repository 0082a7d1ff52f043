/** Words of the search. */

export const title = 'Search';
export const description = 'Search every page of this site, with no signal too.';
export const ask = 'Look for a word, a symptom, a symbol';
export const needsScripts =
  'Searching needs scripts, and they are off. Everything can be reached from the menu and from “Look up” without them.';
export const more = 'Show more';
export const nothing = (asked: string) => `Nothing found for “${asked}”. Try fewer letters, or another word for it.`;
export const found = (count: number, asked: string) =>
  count === 1 ? `One page speaks of “${asked}”.` : `${count} pages speak of “${asked}”.`;
export const failed = 'The index of the search could not be loaded. Load the page again once there is a signal.';
