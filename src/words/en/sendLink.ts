/** Words of the link that carries a job, on the side of who sends it and of who opens it. */
import type { LinkRefusal } from '../../job/linkText.ts';

export const sendLink = {
  lead: 'The figures stand in the link itself, behind the #: browsers send nothing of that to a server. Whoever has the link can read them.',
  named: 'With address and tester’s name',
  field: 'Link to this job',
  send: 'Send link',
  title: 'Ton for Ton: a job',
  long: (characters: string) =>
    `${characters} characters: some programs cut so long a link short. Look whether it opens before you rely on it.`,
} as const;

export const linkNotices = {
  banner: 'From a link: somebody’s readings as they were sent. Look around; to type, keep a copy.',
  keep: 'Keep a copy',
  keepSay: 'As a job of its own. A job that was open here stays on this device.',
  ask: 'Keep a copy, or start your own job?',
  askLead: 'The job of the link stays as it was sent, so that both of you look at the same figures.',
  own: 'Start my own job',
  copy: 'Keep a copy',
  stay: 'Keep looking',
} as const;

const own = 'Here is the job of this device instead.';
export const unreadLinks: Readonly<Record<`link.${LinkRefusal}`, string>> = {
  'link.notAJob': `The link holds no job. It may have been cut short: ask for it once more. ${own}`,
  'link.broken': `The link cannot be read. It may have been cut short or changed on its way: ask for it once more. ${own}`,
  'link.newer': `The link was made by a newer version of this site. Load the page again with a signal, then open it once more. ${own}`,
  'link.tooLong': `The link is longer than any job. ${own}`,
};
