/** The house profiles that come with the program. */
import { FIRST_STEPS } from './first-steps.ts';
import { CHORALE, type Profile } from './profile.ts';
import { STRICT } from './strict.ts';

/** From the gentlest to the strictest. */
export const PROFILES: readonly Profile[] = [FIRST_STEPS, CHORALE, STRICT];

/** The profile that holds where nobody says otherwise. */
export const DEFAULT_PROFILE: Profile = CHORALE;

/** The house profile of this name; undefined where there is none. */
export function profileNamed(name: string): Profile | undefined {
  return PROFILES.find((profile) => profile.name === name);
}
