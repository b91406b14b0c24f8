import { describe, expect, it } from 'vitest';
import { identify, intakeDoubts, intakeSentence, isNoScript } from '../../src/desk/identities.ts';

function whose(...names: string[]) {
  return identify(names.map((file, id) => ({ id, file, title: '' }))).map(
    ({ candidate, draft }) => `${candidate ?? '?'} ${draft}`,
  );
}

describe('whose the scripts of a stack are', () => {
  it('a number that all names have is nobody’s, where most have another', () => {
    expect(whose('2026 4012.xml', '2026 4013.xml', '2026 4014.xml', '2026.xml')).toEqual([
      '4012 1',
      '4013 1',
      '4014 1',
      '? 1',
    ]);
    expect(whose('413 no. 12.xml', '413 no. 14.xml', '413 no. 15.xml')).toEqual(['12 1', '14 1', '15 1']);
  });

  it('three drafts of one candidate keep their number', () => {
    expect(whose('4012-draft1.xml', '4012-draft2.xml', '4012-draft3.xml')).toEqual([
      '4012 1',
      '4012 2',
      '4012 3',
    ]);
  });

  it('the same name again is the next draft, between those that say which they are', () => {
    expect(whose('4012.xml', 'late/4012.xml', '4012-draft2.xml', '4013.xml')).toEqual([
      '4012 1',
      '4012 3',
      '4012 2',
      '4013 1',
    ]);
  });

  it('the title counts where the name tells nobody', () => {
    expect(identify([{ id: 1, file: 'chorale.xml', title: 'Hymn 12, candidate 4101' }])).toEqual([
      { id: 1, candidate: '4101', draft: 1 },
    ]);
  });
});

describe('what lies on a stack', () => {
  const intake = {
    byCandidate: new Map<string | undefined, number>([
      ['4012', 1],
      ['4013', 2],
      ['4014', 2],
      ['4015', 3],
      [undefined, 1],
    ]),
    unreadable: 1,
    apart: ['Thumbs.db', 'notes.pdf'],
  };

  it('is told in a sentence', () => {
    expect(intakeSentence(intake)).toBe(
      '11 files: 9 scripts by 4 candidates, 2 of them twice and 1 of them 3 times; 1 of them can’t be read; 2 not scripts.',
    );
    expect(intakeSentence({ byCandidate: new Map([['7', 1]]), unreadable: 0, apart: [] })).toBe(
      '1 file: 1 script by 1 candidate.',
    );
  });

  it('what is doubtful comes first', () => {
    const doubts = intakeDoubts({ ...intake, byCandidate: new Map([...intake.byCandidate, ['2026', 12]]) });
    expect(doubts[0]).toMatch(/^12 files are read as candidate 2026’s\./);
    expect(doubts[1]).toMatch(/^1 script has no candidate number/);
    expect(doubts[2]).toBe('Not scripts, and left apart: Thumbs.db and notes.pdf.');
    expect(intakeDoubts({ byCandidate: new Map([['7', 1]]), unreadable: 0, apart: [] })).toEqual([]);
  });

  it.each([
    ['Thumbs.db', [0], true],
    ['4012.docx', [0x50, 0x4b], true],
    ['4012', [0x25, 0x50, 0x44, 0x46, 0x2d], true],
    ['4012.musicxml', [0xff, 0xd8, 0xff, 0xe0], true],
    ['4012.mxl', [0x50, 0x4b], false],
    ['4012.txt', [0x53, 0x3a], false],
    ['4012.xml', [], false],
  ] as const)('%s beginning with %j', (file, bytes, expected) => {
    expect(isNoScript(file, new Uint8Array(bytes))).toBe(expected);
  });
});
