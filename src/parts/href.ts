/** The address of a page or file of this site, given its path from the site's root: puts the base before it. */
export function href(path: string): string {
  return import.meta.env.BASE_URL.replace(/\/$/, '') + path;
}
