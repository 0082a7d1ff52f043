/** Words of the page about what a system should make, which stand there before anything moves. */
export const expectedPage = {
  title: 'What it should make',
  description:
    'The maker’s table as a surface over outdoor temperature and entering wet bulb, and every step from the nameplate to what this system should make here and now.',
  lead: 'A system named for 3 tons makes 3 tons at one point of its table, if there. Hotter outdoors it makes less; with damper air indoors it makes more. Here is the whole table, and every step from the nameplate to the figure to expect.',
  noScript: 'This page needs scripts to read the table of your own job. The picture shows an invented one.',
  still: 'The table of your own job is drawn here as soon as it is read.',
  stillCaption: 'Demo, invented: the total capacity of a table over outdoor temperature and entering wet bulb.',
} as const;
