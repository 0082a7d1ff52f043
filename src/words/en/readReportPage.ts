/** Words of the page that checks a report, as far as they stand there before anything is typed. */
export const readReportPage = {
  title: 'Check a report',
  description:
    'Type in the figures of a cooling report that somebody gave you: what they show, what they cannot show, what is missing, and what to ask.',
  say: 'Copy what stands on your report, one line at a time. “Not on mine” is a full answer. This looks at the figures, not at people.',
  stays: 'What you type stays in this page and is kept nowhere; it is gone when you close it.',
  noScript: 'The figures are judged in your browser, and scripts are switched off.',
} as const;
