/** `--profile`: a house profile by its name, or a teacher's own from a JSON file. */
import { decodeText } from '../musicxml/index.ts';
import { PROFILES, profileNamed } from '../profiles/list.ts';
import type { Profile } from '../profiles/profile.ts';
import { Refused } from '../refusal/refusal.ts';
import { readInput } from './input.ts';

/** @throws {Refused} naming every error in a file. */
export async function loadProfile(asked: string): Promise<Profile> {
  const known = profileNamed(asked);
  if (known !== undefined) return known;
  if (!/[./\\]/.test(asked)) {
    const names = PROFILES.map(({ name }) => name).join(', ');
    throw new Refused(
      `There is no profile called “${asked}”. Built in are ${names}; your own is named by its file: --profile ours.json`,
    );
  }
  const input = await readInput(asked);
  if (!input.ok) throw new Refused(`${asked}: ${input.message}`);
  const text = decodeText(input.bytes);
  if (text === undefined) throw new Refused(`${asked} is no text: a profile is written as JSON, in UTF-8.`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch (error) {
    throw new Refused(`${asked} is no JSON: ${(error as Error).message}`);
  }
  // Only a profile of one's own needs the checker, and what it checks with.
  const { readProfile } = await import('../profiles/read.ts');
  const read = readProfile(data);
  if (!read.ok)
    throw new Refused([`${asked} is no profile that can be used:`, ...read.message.split('\n')].join('\n  '));
  return read.profile;
}
