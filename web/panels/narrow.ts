/** True where what stands beside the stave stands under it instead (see write.css), so that one is out of sight. */
export function isNarrow(): boolean {
  return matchMedia('(max-width: 60rem)').matches;
}
