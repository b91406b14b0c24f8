import type { Profile } from './profile.ts';

export const FIRST_STEPS: Profile = {
  name: 'first-steps',
  statement:
    'For first exercises in plain chords: the faults that matter most, and nothing about the finer points of line and style.',
  rules: {
    'contrary-fifths': { severity: 'query' },
    'unequal-fifths': { severity: 'remark' },
    'exposed-fifths': { severity: 'remark' },
    'exposed-octaves': { severity: 'remark' },
    'outlined-seventh': { severity: 'off' },
    'unrecovered-leap': { severity: 'off' },
    'hammered-note': { severity: 'off' },
    'circling-line': { severity: 'off' },
    'voice-crossing': { severity: 'fault' },
    'voice-overlap': { severity: 'remark' },
    'voice-spacing': { severity: 'fault' },
    'held-unison': { severity: 'remark' },
    'doubled-third': { severity: 'off' },
    'weak-six-four': { severity: 'remark' },
    'backward-step': { severity: 'remark' },
    'mediant-out-of-place': { severity: 'off' },
    'submediant-out-of-place': { severity: 'off' },
    'unprepared-seventh': { severity: 'remark' },
    'accented-passing-consecutives': { severity: 'remark' },
    'early-home-close': { severity: 'off' },
    'missing-predominant': { severity: 'off' },
    'no-tierce': { severity: 'off' },
    'harmony-held-over': { severity: 'remark' },
  },
};
