/** How often a test is drawn, and from where: always the same, so that the same job always gives the same verdict. */
export const draws = 100_000;
export const seed = 20_250_701;
