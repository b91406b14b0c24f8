import type { Profile } from './profile.ts';

const HEAVY = {
  acrossPhrases: 'query',
  withOrnaments: 'fault',
  decorated: 'fault',
  onBeats: 'fault',
} as const;

export const STRICT: Profile = {
  name: 'strict',
  statement: 'Classroom part-writing by the textbook: what the chorales allow themselves is marked here.',
  rules: {
    'parallel-fifths': { parameters: HEAVY },
    'parallel-octaves': { parameters: HEAVY },
    'parallel-unisons': { parameters: HEAVY },
    'contrary-fifths': { parameters: { withInnerVoice: 'fault', decorated: 'query' } },
    'contrary-octaves': { parameters: { withInnerVoice: 'fault', decorated: 'query' } },
    'unequal-fifths': { severity: 'fault' },
    'exposed-fifths': { severity: 'fault' },
    'exposed-octaves': { severity: 'fault' },
    'diminished-leap': { severity: 'fault' },
    'outlined-seventh': { severity: 'fault' },
    'unrecovered-leap': { severity: 'fault', parameters: { smallest: 5 } },
    'false-relation': { severity: 'fault' },
    'hammered-note': { parameters: { remarkable: 4, most: 4 } },
    'repeated-bass': { severity: 'fault' },
    'voice-range': { parameters: { comfortable: 'S C4–G5, A G3–C5, T C3–G4, B E2–C4', stretch: 0 } },
    'voice-spacing': { severity: 'fault', parameters: { slight: 0 } },
    'voice-crossing': { severity: 'fault', parameters: { innerVoices: 0 } },
    'voice-overlap': { severity: 'fault', parameters: { slight: 0 } },
    'held-unison': { severity: 'fault' },
  },
};
