/** What stands in the drawings of where the two probes go. */
export const probePlaces = {
  return: 'return probe',
  supply: 'supply probe',
  takeOff: 'first take-off',
  never: 'never here',
  blower: 'blower',
  coil: 'coil',
  filter: 'filter',
  outdoorCoil: 'outdoor coil',
  floor: 'floor',
  indoors: 'indoors',
  outdoors: 'outdoors',
} as const;

/** The same for those who do not see them. */
export const probePlacesSaid = {
  upflow:
    'An upright cabinet. The return duct comes in below and turns up through filter, coil and blower. The return probe stands in the return duct, past its last branch and before the filter. At the top the supply turns to the side; the supply probe stands after that turn, before the first take-off. A cross marks the cabinet beside the coil: never drill there.',
  downflow:
    'An upright cabinet with the air going down. The return duct comes in at the top and turns down through filter, blower and coil. The return probe stands in the return duct before that turn. Below the floor the supply turns to the side; the supply probe stands after the turn, before the first take-off. A cross marks the cabinet beside the coil: never drill there.',
  horizontal:
    'A cabinet on its side, air from left to right. The return probe stands in the return duct just before the filter. Then come blower and coil, and a turn of the supply duct; the supply probe stands after the turn, before the first take-off. A cross marks the cabinet over the coil: never drill there.',
  packaged:
    'A packaged unit outdoors, with both ducts through one wall of it. The return probe stands in the return duct close to the cabinet. The supply probe stands in the supply duct indoors, after its first turn and before the first take-off. A cross marks the cabinet at the coil: never drill there.',
} as const;
