/** How long something still takes, in words. */
import { counted } from './words.ts';

/** Less than this much done tells nothing about the rest. */
const LEAST_DONE = 3;

/**
 * `about 2 minutes left`, from how much is done and in how many milliseconds; empty where that is too little to tell by.
 */
export function timeLeft(done: number, left: number, milliseconds: number): string {
  if (done < LEAST_DONE || milliseconds <= 0) return '';
  const seconds = ((milliseconds / done) * left) / 1000;
  if (seconds < 5) return 'a few seconds left';
  if (seconds < 90) return `about ${Math.ceil(seconds / 5) * 5} seconds left`;
  return `about ${counted(Math.round(seconds / 60), 'minute')} left`;
}
