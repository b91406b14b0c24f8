/** What the page asks of its workers, and what they answer. */
import type { Profile } from '../../src/profiles/profile.ts';
import type { WaysOut } from '../../src/review/ways-out.ts';
import type { RuleWords } from '../../src/rules/rule.ts';
import type { Pitch } from '../../src/score/pitch.ts';
import type { Score, VoiceName } from '../../src/score/score.ts';
import type { Ticks } from '../../src/score/time.ts';
import type { PhraseEnd } from '../../src/style/close.ts';
import type { Precedents } from '../../src/style/precedents.ts';
import type { Room } from '../../src/style/room.ts';
import type { PlainNear, PlainReview } from './plain.ts';

interface Ordered {
  /** Answers carry the number of their order. */
  readonly number: number;
  readonly score: Score;
  readonly profile: Profile;
}

export interface ReviewOrder extends Ordered {
  readonly kind: 'review';
  /** The place just written: where the whole takes long, the bars around it are looked at first. */
  readonly near?: Ticks;
}

export interface WaysOutOrder extends Ordered {
  readonly kind: 'ways out';
  readonly finding: string;
  readonly locked: readonly VoiceName[];
}

export interface PrecedentsOrder extends Ordered {
  readonly kind: 'precedents';
}

export interface RoomOrder extends Ordered {
  readonly kind: 'room';
  readonly locked: readonly VoiceName[];
}

export type Order = ReviewOrder | WaysOutOrder | PrecedentsOrder | RoomOrder;

/** Told once by each worker: the rules in words, which the page has no copy of. */
export interface RulesAnswer {
  readonly kind: 'rules';
  readonly rules: readonly RuleWords[];
}

export interface NearAnswer {
  readonly kind: 'near';
  readonly number: number;
  readonly near: PlainNear;
}

export interface ReviewAnswer {
  readonly kind: 'review';
  readonly number: number;
  readonly review: PlainReview;
}

/** The ways out of one finding, as the page shows them. */
export interface PlainWaysOut extends Pick<WaysOut, 'counts' | 'moves' | 'total'> {
  readonly ways: readonly {
    readonly voice: VoiceName;
    readonly at: Ticks;
    readonly was: Pitch;
    readonly pitch: Pitch;
  }[];
}

export interface WaysOutAnswer {
  readonly kind: 'ways out';
  readonly number: number;
  /** Undefined where the finding is no longer there. */
  readonly ways: PlainWaysOut | undefined;
}

/** How the model closed where this phrase's tune ends alike. */
export interface PhrasePrecedents extends Pick<PhraseEnd, 'tune' | 'own'> {
  readonly until: Ticks;
  readonly found: Precedents;
}

export interface PrecedentsAnswer {
  readonly kind: 'precedents';
  readonly number: number;
  readonly phrases: readonly PhrasePrecedents[];
}

export interface RoomAnswer {
  readonly kind: 'room';
  readonly number: number;
  readonly rooms: readonly Room[];
}

export type Answer = RulesAnswer | NearAnswer | ReviewAnswer | WaysOutAnswer | PrecedentsAnswer | RoomAnswer;
