/** The house profiles on offer. */
import { CHORALE, type Profile } from '../../src/profiles/profile.ts';

export const PROFILES: readonly Profile[] = [CHORALE];

export function profileNamed(name: string): Profile {
  return PROFILES.find((profile) => profile.name === name) ?? CHORALE;
}
