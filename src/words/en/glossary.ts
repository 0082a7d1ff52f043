/** Words around the words of the trade; these themselves stand in content/glossary.yaml. */

export const title = 'Words of the trade';
export const description =
  'What the words of air conditioning and of measuring mean, in a sentence or two: wet bulb, latent, net, airflow per ton and others.';
export const say =
  'In plain words first, with the names that the trade has for it behind. Where a word stands underlined with dots in an article, the same definition opens there.';
export const alsoCalled = (names: readonly string[]) => `also: ${names.join(', ')}`;
export const inGlossary = 'All words';
export const letters = 'Letters';
