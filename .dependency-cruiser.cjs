/**
 * Data flows one way and imports go against it: score ← notation, musicxml, harmony ← rules ← review ← report ← doors.
 * Each folder lists what it may import; anything else fails `npm run check:imports`. The table in DEVELOPERS.md says
 * the same, and tests/imports.test.ts holds the two together.
 */
const MAY_IMPORT = {
  english: [],
  refusal: [],
  score: ['english'],
  notation: ['refusal', 'score', 'english'],
  writing: ['score'],
  musicxml: ['refusal', 'score', 'english'],
  abc: ['musicxml', 'refusal', 'score'],
  open: ['abc', 'refusal', 'notation', 'musicxml', 'score'],
  harmony: ['score'],
  rules: ['harmony', 'score', 'english'],
  profiles: ['refusal', 'rules', 'harmony', 'score'],
  review: ['profiles', 'rules', 'harmony', 'score', 'english'],
  style: ['review', 'profiles', 'rules', 'writing', 'harmony', 'score'],
  report: [
    'style',
    'refusal',
    'open',
    'musicxml',
    'review',
    'profiles',
    'rules',
    'harmony',
    'score',
    'english',
  ],
  brief: [
    'open',
    'musicxml',
    'style',
    'refusal',
    'report',
    'notation',
    'review',
    'profiles',
    'rules',
    'harmony',
    'score',
    'english',
  ],
  set: ['brief', 'open', 'musicxml', 'notation', 'harmony', 'score', 'refusal', 'english'],
  practice: ['set', 'brief', 'style', 'review', 'profiles', 'rules', 'score', 'refusal'],
  desk: [
    'style',
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
    'english',
  ],
};

/** The rooms of src/harmony. What lies in the folder itself (keys, chord types, the analysis as data) is for all of them. */
const HARMONY_MAY_IMPORT = {
  questions: [],
  words: ['questions'],
  'by-ear': ['questions'],
  reading: ['questions', 'words'],
};

/** `inside` is the folder that holds the rooms; `common` what each of them may import besides. */
const roomRules = (inside, rooms, common) =>
  Object.entries(rooms).map(([room, allowed]) => ({
    name: `layers-${room}`,
    comment: `${inside}/${room} may import ${allowed.length === 0 ? 'no other room' : allowed.map((a) => `${inside}/${a}`).join(', ')}.`,
    severity: 'error',
    from: { path: `^${inside}/${room}/` },
    to: { path: common.path, pathNot: [`^${inside}/(${[room, ...allowed].join('|')})/`, ...common.besides] },
  }));

const layers = [
  ...roomRules('src', MAY_IMPORT, { path: '^(src|server|web|tests)/', besides: [] }),
  ...roomRules('src/harmony', HARMONY_MAY_IMPORT, {
    path: '^src/harmony/',
    besides: ['^src/harmony/(analysis|chord-types|key|tonal)\\.ts$'],
  }),
  {
    name: 'layers-harmony-floor',
    comment: 'What every room of src/harmony stands on imports none of them.',
    severity: 'error',
    from: { path: '^src/harmony/(analysis|chord-types|key|tonal)\\.ts$' },
    to: { path: '^src/harmony/', pathNot: '^src/harmony/(analysis|chord-types|key|tonal)\\.ts$' },
  },
];

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
      // How Node is to compile is set alike for both.
      to: { path: '^(web|src/cli)/', pathNot: '^src/cli/short-runs\\.mjs$' },
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
