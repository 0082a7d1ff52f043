/** How a slider is called beside the field of the same name. */
export const slideName = (name: string) => `${name}, slide`;
