/**
 * Into which file a module goes. Modules that are needed together are one file: they compress better whole than in pieces.
 * A module goes into the first file that lists it. One that no list names comes with whatever imports it, and so does
 * everything that a worksheet fetches by `import()`: the expectation, the words of remarks, every late part. Therefore a list
 * holds only what its pages need from their first moment. The test of the built scripts says what is in each file, what
 * it weighs, and that nothing stands in a first file for which nobody waits.
 */
import { posix, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

const files = {
  /** Every worksheet: how it is drawn, and the job. */
  base: [
    'node_modules/{preact,@preact}/**',
    'src/calc/{atmosphere,constants,errors,limits,lineSetLimits,outcome,trace,units}.ts',
    'src/job/{choices,edit,entered,format,lineSet,number,quantities,read,readings,tables,units}.ts',
    'src/islands/{jobStore,keep,lazy,opening,show,untouched,JobLine,LateFold}.{ts,tsx}',
    'src/parts/{Step,Mark,href}.{ts,tsx}',
    'src/words/en/jobLine.ts',
  ],
  /** What scrolls by itself, on articles too, which have no fields. */
  scroll: ['src/parts/ScrollRegion.tsx'],
  /** What any drawing needs that has the width of its box, or a point to take hold of. */
  hand: ['src/islands/{followWidth,hold,SaidAtRest,useWidth}.{ts,tsx}'],
  /** What any drawing is made of. */
  drawing: ['src/charts/{box,clip,grid,placing,scale,shapes,Shapes}.{ts,tsx}'],
  /** Moist air and the load of a coil. */
  moist: [
    'src/calc/{dewPoint,dryAirFlow,enhancement,enthalpy,humidityRatio,moistAir*,saturat*,specificVolume,wetBulb}.ts',
    'src/calc/{apparatus,coilLoad,coilTrace,temperatureRise}.ts',
  ],
  /** The drawing of moist air, which pages show that are not the air chart. */
  chart: ['src/charts/moistAir/!(standalone|describe).{ts,tsx}', 'src/words/en/moistAirChart.ts'],
  /** The air chart. */
  air: [
    'src/islands/moistAir/*.{ts,tsx}',
    'src/job/{stateEdits,states,processEdits,processRows,processWork,processes}.ts',
    'src/calc/mix*.ts',
    'src/words/en/moistAir.ts',
  ],
  /** Every worksheet of steps: its fields, the frame of a step, the bar. */
  steps: [
    'src/islands/{fields,early,travel,startSheet,sheetParts,sheetSteps,SheetStep,SheetBar,OpenAll}.{ts,tsx}',
    'src/islands/{QuantityField,ChoiceField,NoteField}.tsx',
    'src/parts/{Field,TextField,Select,Echo,AnswerBar,Choices,Caution}.tsx',
    'src/words/en/{choices,echoes,parts,problems,quantities,sheet,units}.ts',
  ],
  /** Grids of cells to type into: those of the ways to an airflow and of the probes. */
  gridCells: ['src/islands/GridInput.tsx', 'src/job/gridCells.ts'],
  /** The lines that a job describes: their own sheet, and every test. */
  linesOfJob: ['src/job/lineSet.ts'],
  /** Lines of refrigerant: their own sheet, and the expectation when there are any. */
  lines: [
    'src/calc/{lineSet,lineSetFactor,lineSetTrace,liquidLine,vaporLine,pipeDrop,refrigerant*,smoothCurve,tubes}.ts',
  ],
  /** The sheet on long lines. */
  lineSheet: [
    'src/islands/lineSet/{index,model,Answer,StepOf,TubeSelect}.{ts,tsx}',
    'src/islands/lineSet/steps/*.tsx',
    'src/words/en/{joinLineSet,lineSet,lineSetChoices,lineSetQuantities}.ts',
  ],
  /** The measured half of the assessment: the capacity sheet's, and what the air chart fetches for the process of the job. */
  measured: [
    'src/calc/{blowerDefaults,blowerHeat,blowerHere,emptyTest,hangTogether,measured*,readings,sideBySide}.ts',
    'src/calc/confidence/probeClasses.ts',
    'src/job/{blowerKinds,measuredTest,probeLimits,problems,usesSheet}.ts',
    'src/islands/store.ts',
  ],
  /** The rows of the airflow sheet, which the store of the device knows too. */
  rows: ['src/job/airflow/{quantities,choices,tables}.ts', 'src/calc/airflow/{limits,methods}.ts'],
  /** The rows of how sure, which the store of the device knows too. */
  sureRows: ['src/job/sure/{choices,quantities,tables,join}.ts'],
  /** What probes differ by: their sheet, and every test. */
  compare: [
    'src/job/{gridCells,sure/pairs,sure/supplyPoints}.ts',
    'src/calc/confidence/{compareProbes,batches,defaults}.ts',
    'src/words/en/{joinSure,sureFields}.ts',
  ],
  /** What is typed of limits and standards: both sheets that ask for it fetch it late, and every test. */
  limits: ['src/job/sure/{limits,otherLimits,standards}.ts', 'src/calc/confidence/standards.ts'],
  /** The airflow sheet: its lines, and the words that only it has. */
  airflow: [
    'src/islands/airflow/{index,MethodStep,model,start,flowText}.{ts,tsx}',
    'src/words/en/{airflowSheet,joinAirflow,airflowChoices,airflowQuantities}.ts',
  ],
  /** The probe sheet: its steps. */
  probes: [
    'src/islands/probes/{index,model,Answer,StepOf,PairCells}.{ts,tsx}',
    'src/islands/probes/steps/*.tsx',
    'src/words/en/probes.ts',
  ],
  /** The report, before there is a job to report on. */
  report: ['src/islands/report/{index,start}.{ts,tsx}'],
  /** The rows of the check of a report, which the store of the device knows too. */
  reportRows: ['src/job/readReport/{choices,quantities}.ts'],
  /** The check of a report: its lines. */
  readReport: [
    'src/islands/readReport/{index,model}.{ts,tsx}',
    'src/job/readReport/{join,lines}.ts',
    'src/words/en/readReport.ts',
  ],
  /** What a system should make, before its table is drawn. */
  expected: ['src/islands/expected/{index,standIn}.{ts,tsx}'],
  /** What a locked job says of itself: the report, and the store of the device. */
  locked: ['src/job/{lockChanges,lockList}.ts'],
  /** The store of the device and what follows every edit: fetched by every page of the job as soon as it stands. */
  kept: [
    'node_modules/{idb,valibot}/**',
    'src/islands/{device,followJob,linked,noticePlace,ownJob}.ts',
    'src/islands/undo/steps.ts',
    'src/job/{allKeys,database,mergeTables,newId,notes,schema,storage,undoShelf,undoSteps,upgrades}.ts',
    'src/job/ducts/{choices,quantities}.ts',
    'src/words/en/undo.ts',
  ],
  /** The capacity sheet: its steps. */
  sheet: [
    'src/islands/capacity/{index,model,cells,cellProblem,estimate,remarks,Remarks,Answer,StepFrame}.{ts,tsx}',
    'src/islands/capacity/steps/*.tsx',
    'src/words/en/{answer,steps}.ts',
  ],
};

export const fileNames = Object.keys(files);

/** The path of a module from the root of the project; what a bundler makes up itself has none. */
export const pathOf = (id) => relative(root, id.replace(/\?.*$/, '')).split(sep).join('/');

const takes = (patterns) => (id) => patterns.some((pattern) => posix.matchesGlob(pathOf(id), pattern));

/** Groups in the order of the list: the first that takes a module has it. */
export const codeSplitting = {
  groups: Object.entries(files).map(([name, patterns], index, all) => ({
    name,
    test: takes(patterns),
    priority: all.length - index,
  })),
};
