/** The place that a page keeps for its notices until they come, or until it is plain that none will. That the page showed the demo stays said. */
export function leavePlace(): void {
  const { dataset } = document.documentElement;
  if (dataset['opens'] === 'demo') dataset['demo'] = '';
  delete dataset['opens'];
}
