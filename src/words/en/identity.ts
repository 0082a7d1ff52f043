/** Words of the fold about the job and its equipment. */
export const identity = {
  title: 'The job and the system',
  lead: 'For the report. Nothing here is needed for the answer, but the blower’s place and heat sharpen it.',
  address: 'Address or name of the job',
  tester: 'Read by',
  outdoorModel: 'Outdoor unit, model',
  outdoorSerial: 'Outdoor unit, serial',
  indoorModel: 'Indoor unit or coil, model',
  indoorSerial: 'Indoor unit or coil, serial',
  furnaceModel: 'Furnace, model',
  certificate: 'Certificate or reference number of the match',
  damper: {
    say: 'Outdoor-air damper (economiser): let its control shut it, and see it shut. If it may not be, the mixed air is your return air: read it between damper and coil, at several points. Never pair a probe in the room with one behind the coil.',
    more: 'Where, and how',
  },
  notCovered:
    'Covered: ducted equipment with one indoor coil. Not covered: ductless heads, several indoor units on one outdoor unit, reheat modes, chilled water.',
} as const;
