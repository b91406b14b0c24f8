/**
 * Data flows one way and imports go against it: score ← notation, musicxml, harmony ← rules ← review ← report ← doors.
 * Each folder lists what it may import; anything else fails `npm run check:imports`.
 */
const MAY_IMPORT = {
  refusal: [],
  score: [],
  notation: ['refusal', 'score'],
  writing: ['score'],
  musicxml: ['refusal', 'score'],
  harmony: ['score'],
  rules: ['harmony', 'score'],
  profiles: ['refusal', 'rules', 'harmony', 'score'],
  review: ['profiles', 'rules', 'harmony', 'score'],
  open: ['refusal', 'notation', 'musicxml', 'score'],
  brief: ['refusal', 'report', 'notation', 'review', 'profiles', 'rules', 'harmony', 'score'],
  report: ['refusal', 'open', 'musicxml', 'review', 'profiles', 'rules', 'harmony', 'score'],
  desk: [
    'refusal',
    'brief',
    'report',
    'open',
    'review',
    'profiles',
    'rules',
    'harmony',
    'score',
    'notation',
    'writing',
  ],
};

const layers = Object.entries(MAY_IMPORT).map(([folder, allowed]) => ({
  name: `layers-${folder}`,
  comment: `src/${folder} may import ${allowed.length === 0 ? 'nothing of ours' : allowed.map((a) => `src/${a}`).join(', ')}.`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^(src|server|web|tests)/', pathNot: `^src/(${[folder, ...allowed].join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...layers,
    { name: 'no-cycles', severity: 'error', from: {}, to: { circular: true } },
    {
      name: 'no-node-in-engine',
      comment: 'The engine runs in the page too.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/cli/' },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'doors-apart',
      comment: 'The page and the service share the engine, not code of their own.',
      severity: 'error',
      from: { path: '^web/' },
      to: { path: '^(server|src/cli)/' },
    },
    {
      name: 'service-without-page',
      severity: 'error',
      from: { path: '^server/' },
      to: { path: '^(web|src/cli)/' },
    },
    {
      name: 'cli-starts-service',
      comment: 'The command line may load server/main.ts, only to start the service.',
      severity: 'error',
      from: { path: '^src/cli/' },
      to: { path: '^(web/|server/(?!main\\.ts$))' },
    },
    {
      name: 'one-engraver',
      comment: 'Only web/engrave knows VexFlow.',
      severity: 'error',
      from: { pathNot: '^web/engrave/' },
      to: { path: 'node_modules/vexflow' },
    },
    {
      name: 'one-tonal-adapter',
      comment: 'tonal answers errors as values; one file validates before it asks.',
      severity: 'error',
      from: { pathNot: '^src/harmony/tonal\\.ts$' },
      to: { path: 'node_modules/(tonal|@tonaljs)' },
    },
    {
      name: 'unresolvable',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true, pathNot: '\\?' },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
    },
  },
};
