/** A place with room, in a sentence that names no note. */
import { VOICE_WORDS } from '../score/score.ts';
import type { Room } from './room.ts';

/** `There is room for a passing note in the tenor here.` */
export function roomInWords({ kind, voice }: Pick<Room, 'kind' | 'voice'>): string {
  const word = VOICE_WORDS[voice];
  switch (kind) {
    case 'passing note':
      return `There is room for a passing note in the ${word} here.`;
    case 'suspension':
      return `A note could be held over as a suspension in the ${word} here.`;
    case 'move':
      return `The ${word} repeats its note here; it could move.`;
    case 'seventh':
      return `This dominant could take its seventh in the ${word}.`;
  }
}
