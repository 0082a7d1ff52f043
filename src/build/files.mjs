/**
 * Into which file a module goes. What every worksheet needs from its first moment is one file, and what only one of them
 * needs another: they compress better whole than in pieces, and no page carries what it does not use. What is fetched when it
 * is first needed is parted as it comes. The test of the built scripts holds each page to its weight.
 */

/** Needed from the first moment by every worksheet. */
const base =
  /\/node_modules\/(preact|@preact)\/|\/src\/calc\/(apparatus|atmosphere|coil|constants|dewPoint|dryAirFlow|enhancement|enthalpy|errors|humidityRatio|limits|moistAir|outcome|satur|specificVolume|temperatureRise|trace|units|wetBulb)|\/src\/job\/(choices|edit|entered|format|newId|notes|number|quantities|read|readings|tables|units)\.|\/src\/islands\/(jobStore|keep|lazy|opening|show|JobLine|LateFold)\.|\/src\/parts\/(Step|Mark|href)\.|\/src\/words\/en\/jobLine\./;

/** By the air chart: the drawing, which other pages show too, and its own page. */
const chart =
  /\/src\/charts\/((box|clip|grid|placing|shapes|Shapes)\.|moistAir\/(?!standalone|describe))|\/src\/words\/en\/moistAirChart\./;
const air = /\/src\/islands\/moistAir\/\w+\.|\/src\/job\/(state|process)|\/src\/calc\/mix|\/src\/words\/en\/moistAir\./;

/** By the capacity sheet: the assessment, the fields, the steps. */
const sheet =
  /\/src\/(calc|job|words)\/|\/src\/parts\/(Field|TextField|Select|Echo|AnswerBar|Choices|Caution)\.|\/src\/islands\/(store|fields|early|QuantityField|ChoiceField|NoteField)\.|\/src\/islands\/capacity\/(index|model|cells|travel|Bar|Answer|remarks|Remarks|StepFrame|start|steps\/\w+)\./;

/** Fetched when it is first needed. */
const late =
  /sources?Labels|\/src\/calc\/(index|sources)\.|\/src\/job\/(demo|csv|states(From)?Csv|encode|decode|link|storage|database|schema|(rating|probeLimit)Edits)|\/src\/words\/en\/(chartInPlace|results|remarks|working|identity|margin|figures|notices|sheetPage|moistAir(?!Chart)\w+|home|lessons|reference|sections|worksheets)\./;

const files = Object.entries({ base, chart, air, sheet });
/** A module goes into the first file that takes it. */
const fileOf = (id) => (late.test(id) ? undefined : files.find(([, takes]) => takes.test(id))?.[0]);

export const codeSplitting = {
  groups: files.map(([name]) => ({ name, test: (id) => fileOf(id) === name })),
};
