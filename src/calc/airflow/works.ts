import type { Source } from '../sources.ts';

/** What the ways of finding an airflow rest on: a part of the bibliography. */
export const airflowWorks = {
  traverseRules: {
    citation:
      'ISO 3966:2008 (log-Tchebycheff and log-linear rules), ASHRAE 41.2 and ANSI/ASHRAE 111-2008: positions, lines by the size of the duct, and three quarters of the velocity pressures above a tenth of the greatest. From memory; the positions are derived again in the tests.',
    known: 'memory',
  },
  fieldTraverse: {
    citation:
      'UFGS 15951N, testing industrial ventilation systems, paragraphs 3.2.2.2 and 3.2.2.3: 5 diameters of straight duct behind a fan, 7.5 behind any other disturbance; a reading taken again within 10 %; velocities averaged, not pressures; no Pitot tube below 600 fpm.',
    known: 'read',
  },
  velocityPressure: {
    citation:
      'ASHRAE Handbook: Fundamentals, measurement and instruments: w = √(2·p/ρ), 4005·√p in fpm and inches of water for standard air. From memory, and it follows from Bernoulli’s equation.',
    known: 'memory',
  },
  thermalAnemometer: {
    citation:
      'ASTM D3464, average velocity in a duct using a thermal anemometer: 1 to 30 m/s, the gas is taken as standard air, its humidity not considered. Read in the abstract of its scope.',
    known: 'read',
  },
  californiaAirflow: {
    citation:
      'California Energy Commission, 2008 Reference Appendices, Residential, RA3.3: airflow by hood at the returns, by flow grid and by pressure matching with a calibrated fan; as standard air, for an uncorrected reading can be off by 15 %.',
    known: 'read',
  },
  californiaGauge: {
    citation:
      'California Energy Commission, Reference Appendices, Residential, RA3.7.2.1: a pressure gauge is good to 1 % of its reading or 0.2 Pa, whichever is more.',
    known: 'read',
  },
  pressureMatching: {
    citation:
      'California Energy Commission, 2008 Reference Appendices, Residential, RA3.3.3.1.1: flow goes with the square root of the pressure where the fan cannot reach it. The formula from memory.',
    known: 'memory',
  },
  flowGridCorrection: {
    citation:
      'California Energy Commission, 2008 Reference Appendices, Residential, RA3.3.2.1.3: plate in the filter slot. Its correction by the square root of two supply pressures from memory.',
    known: 'memory',
  },
  systemExponent: {
    citation:
      'Pressure of ducts with filter and wet coil goes with the flow to the power 1.8 to 2. A habit of the trade; the band here is wider.',
    known: 'common practice',
  },
  fanLaws: {
    citation:
      'Fan laws, as a mining engineering note states them: at one speed the volume does not change with density, pressure and power do; along a system’s curve the pressure goes with the square of the flow.',
    known: 'read',
  },
  highStatic: {
    citation:
      'Northwest ENERGY STAR and BPA, central air-conditioner commissioning forms (January 2012): both static pressures are added without their signs; 0.8 in. w.c. (200 Pa) and more can cost extreme fan energy and an early failure.',
    known: 'read',
  },
  furnacePosition: {
    citation:
      'P. Francisco, L. Palmiter, Home Energy, March/April 2002: with the temperature rise in the plenum of a furnace the answer can vary by more than a factor of two with the place of the probe. Read in its opening; the standard uncertainties here are ours.',
    known: 'read',
  },
  fieldHoods: {
    citation:
      'Lawrence Berkeley National Laboratory, Measuring residential ventilation system airflows, part 2 (15 homes): powered hoods about 6 %, others 11 to 25 %, at low flows; CEC-500-10-052 (2014), returns: some up to 5 %, others up to 25 %. Read in the abstracts.',
    known: 'read',
  },
  leastSquares: {
    citation:
      'JCGM 100:2008, clause 5 and annex F, correlated inputs; the mean with the least variance under known covariances is that of generalised least squares (Aitken, 1935).',
    known: 'memory',
  },
  birgeRatio: {
    citation:
      'R. T. Birge, The calculation of errors by the method of least squares, Physical Review 40, 207–227 (1932): the uncertainty of a mean is widened by √(χ²/ν).',
    known: 'memory',
  },
  chiSquare: {
    citation: 'Tables of the χ² distribution, upper 5 % points, for instance in the NIST/SEMATECH handbook, 1.3.6.7.4.',
    known: 'memory',
  },
} as const satisfies Record<string, Omit<Source, 'label'>>;
