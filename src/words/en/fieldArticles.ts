/** The list below a sheet: articles, each with the fields that it is about. */
export const fieldArticles = { heading: 'About the figures on this sheet' };
