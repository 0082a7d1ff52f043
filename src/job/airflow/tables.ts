/** The grids of the airflow sheet. A line of a traverse is a hole, its columns the points down from there, and the one that was read again. */
const points = ['p1', 'p2', 'p3', 'p4', 'p5', 'p6', 'p7', 'p8', 'p9', 'p10', 'again'] as const;

export const airflowTables = {
  fanTable: ['static', 'flow1', 'flow2', 'flow3', 'flow4', 'flow5'],
  'traverse.pressures': points,
  'traverse.velocities': points,
  'flowGrid.plates': ['flow'],
  'hood.returns': ['flow'],
  grilles: ['width', 'height', 'areaFactor', 'v1', 'v2', 'v3', 'v4', 'v5', 'v6', 'v7', 'v8', 'v9'],
} as const;

export type AirflowTableKey = keyof typeof airflowTables;
