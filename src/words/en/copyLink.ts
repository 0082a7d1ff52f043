/** Words of a link that is made to be copied. */
export const copyLink = {
  copy: 'Copy link',
  copied: 'The link is copied.',
  notCopied: 'This browser does not let the page copy. Take the link from the field.',
} as const;
