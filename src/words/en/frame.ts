/** Words of the page's frame. */

export const siteName = 'Ton for Ton';
export const skip = 'Skip to the content';
export const menu = 'Menu';
export const menuName = 'Site';
export const home = 'Home';

/** The menu, in the order of the trade's day. Every path leads to a page that exists. */
export const menuLinks = [
  { path: '/worksheets/', label: 'On the job' },
  { path: '/method/', label: 'How to' },
  { path: '/cautions/', label: 'Safety' },
  { path: '/reports/', label: 'Your report' },
  { path: '/classroom/', label: 'In class' },
  { path: '/reference/', label: 'Look up' },
  { path: '/search/', label: 'Search' },
] as const;

export const settings = 'Units and light';
export const unitsAsk = 'Units';
export const units = { ip: '°F, Btu/h', si: '°C, kW' } as const;
export const unitsShort = { ip: '°F', si: '°C' } as const;
export const lightAsk = 'Light';
export const light = { auto: 'Auto', light: 'Light', dark: 'Dark', sun: 'Sun' } as const;

export const staysHere = 'What you type stays on this device.';
export const licence = 'Free to use, copy and change (MIT licence).';
export const savedOffline = 'Saved for use with no signal';
export const newVersion = 'A newer version of this site is ready.';
export const useNewVersion = 'Use it now';
