/**
 * Makes the refrigerant rows of the calculation package from the published ones:
 * `npx node src/build/makeRefrigerantData.mjs` writes `src/calc/refrigerantData.ts` from `tests/published/data/refrigerants.csv`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const rowsFile = new URL('../../tests/published/data/refrigerants.csv', import.meta.url);
const moduleFile = new URL('../calc/refrigerantData.ts', import.meta.url);

/** The refrigerants that the package knows; the file has more. */
const wanted = ['R-410A', 'R-32', 'R-454B', 'R-22'];
/** Columns of the file under the names that the package gives them. */
const columns = {
  temperature: 'temperature_C',
  bubblePressure: 'pressure_bubble_Pa',
  dewPressure: 'pressure_dew_Pa',
  liquidDensity: 'density_liquid_kg_m3',
  liquidEnthalpy: 'enthalpy_liquid_J_kg',
  liquidViscosity: 'viscosity_liquid_Pa_s',
  vaporDensity: 'density_vapor_kg_m3',
  vaporEnthalpy: 'enthalpy_vapor_J_kg',
  vaporViscosity: 'viscosity_vapor_Pa_s',
  superheatedDensity: 'density_vapor_10K_superheat_kg_m3',
  superheatedEnthalpy: 'enthalpy_vapor_10K_superheat_J_kg',
  superheatedViscosity: 'viscosity_vapor_10K_superheat_Pa_s',
};

/** The rows of a refrigerant, in the order of the file. @param {string} text @param {string} refrigerant */
function rowsOf(text, refrigerant) {
  const [head = '', ...lines] = text.trim().split(/\r?\n/);
  const names = head.split(',');
  return lines
    .map((line) => line.split(','))
    .filter(([name]) => name === refrigerant)
    .map((cells) => Object.fromEntries(names.map((name, index) => [name, Number(cells[index])])));
}

/** The text of the module that holds the rows, from the text of the file. @param {string} text */
export function refrigerantModule(text) {
  const blocks = wanted.map((refrigerant) => {
    const rows = rowsOf(text, refrigerant);
    const lists = Object.entries(columns).map(
      ([name, column]) => `    ${name}: [${rows.map((row) => row[column]).join(', ')}],`,
    );
    return `  '${refrigerant}': {\n${lists.join('\n')}\n  },`;
  });
  return `/** Made by \`src/build/makeRefrigerantData.mjs\` from published rows: run that again rather than change a figure here. */
// biome-ignore-all format: one line a column.

/**
 * Saturated refrigerant, and its vapour ${superheat} K above the dew point at the dew pressure, by temperature: °C, Pa, kg/m³, J/kg, Pa·s.
 * CoolProp 8.0.0; R-454B as R-32 and R-1234yf 0.689 to 0.311 by mass, its viscosities by mole-fraction mixing.
 */
export const refrigerantData = {
${blocks.join('\n')}
} as const;
`;
}

/** Superheat of the last three columns, K. */
const superheat = 10;

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(moduleFile, refrigerantModule(readFileSync(rowsFile, 'utf8')));
}
