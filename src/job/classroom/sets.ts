/** Sets have numbers from 1 to this. */
export const lastSet = 9999;
