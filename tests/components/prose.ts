/** What a reader reads of an article: its text without code, formulas and marks. */

/** The words of a body of MDX, tables and lists among them. */
export const prose = (body: string): string =>
  body
    .replace(/^(import|export) [\s\S]*?;$/gm, '')
    .replace(/\$\$[\s\S]*?\$\$|\$[^$\n]*\$/g, '')
    .replace(/<[A-Za-z/](?:[^<>{}]|\{(?:[^{}]|\{[^{}]*\})*\})*>/g, ' ')
    .replace(/\{[^{}]*\}/g, ' ');

/** Of it the sentences: without tables and headings, each item of a list a paragraph of its own. */
export const plainProse = (body: string): string =>
  prose(body)
    .replace(/\]\([^)]*\)/g, ']')
    .replace(/^\|.*$/gm, '')
    .replace(/^#+ .*$/gm, '\n')
    .replace(/^(?:-|\d+\.) /gm, '\n\n')
    .replace(/[*`|>[\]]/g, '');
